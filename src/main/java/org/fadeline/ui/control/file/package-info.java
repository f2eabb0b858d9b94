/** Files and folders asked for, or dropped on the window. */
@NullMarked
package org.fadeline.ui.control.file;

import org.jspecify.annotations.NullMarked;
