/** The window: composition root, main window, start screen, preferences file. */
@NullMarked
package org.fadeline.ui;

import org.jspecify.annotations.NullMarked;
