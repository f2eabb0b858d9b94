/** The manual and what the program is made of, read offline in the window. */
@NullMarked
package org.fadeline.ui.help;

import org.jspecify.annotations.NullMarked;
