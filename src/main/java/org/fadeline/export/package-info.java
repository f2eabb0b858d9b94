/**
 * Writes figures, talks and tables to files that other programs read. Every file is written whole
 * or not at all, and none needs a display.
 */
@NullMarked
package org.fadeline.export;

import org.jspecify.annotations.NullMarked;
