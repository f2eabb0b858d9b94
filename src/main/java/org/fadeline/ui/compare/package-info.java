/** The screen on which two sessions are set side by side. */
@NullMarked
package org.fadeline.ui.compare;

import org.jspecify.annotations.NullMarked;
