/**
 * Figures on screen: the canvas they are drawn on, small charts, and the ways a picture is taken
 * away.
 */
@NullMarked
package org.fadeline.ui.control.picture;

import org.jspecify.annotations.NullMarked;
