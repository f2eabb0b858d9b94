/**
 * Many sessions together: what each kind of line paid by hour of the match, first bites and fades
 * over the season, and what is learned from them for the next review.
 *
 * <p>Sessions are the unit: limits come from drawing whole sessions, never from fish pooled across
 * them. Pure functions of small summaries, one a session, that can be kept and need not be worked
 * out again.
 */
@NullMarked
package org.fadeline.analysis.season;

import org.jspecify.annotations.NullMarked;
