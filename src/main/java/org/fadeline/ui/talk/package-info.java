/** The screen on which a talk is composed and written. */
@NullMarked
package org.fadeline.ui.talk;

import org.jspecify.annotations.NullMarked;
