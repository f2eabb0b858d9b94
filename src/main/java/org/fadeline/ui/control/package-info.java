/** Controls that more than one screen uses, and the canvas that shows a figure. */
@NullMarked
package org.fadeline.ui.control;

import org.jspecify.annotations.NullMarked;
