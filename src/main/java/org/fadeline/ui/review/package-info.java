/** The Review screen. */
@NullMarked
package org.fadeline.ui.review;

import org.jspecify.annotations.NullMarked;
