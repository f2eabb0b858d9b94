/**
 * What goes on about the start of the program: the match read ahead, the log of starts and
 * failures, the archive that shortens the next start.
 */
@NullMarked
package org.fadeline.ui.start;

import org.jspecify.annotations.NullMarked;
