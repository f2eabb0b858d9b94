/**
 * The window that every screen is shown in: its head, menu and commands, the first screen, and what
 * lies over the others.
 */
@NullMarked
package org.fadeline.ui.window;

import org.jspecify.annotations.NullMarked;
