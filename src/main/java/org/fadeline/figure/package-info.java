/**
 * Pictures of a match: each figure lays itself out and draws once through {@link
 * java.awt.Graphics2D}, the same on screen, in print and on a slide.
 *
 * <p>Sizes are in pixels of the target's own scale. Text is in the bundled typeface, measured
 * without a display, so a picture comes out alike on every machine. Hue means the line, everywhere;
 * a letter says it again.
 */
@NullMarked
package org.fadeline.figure;

import org.jspecify.annotations.NullMarked;
