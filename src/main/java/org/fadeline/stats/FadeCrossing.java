package org.fadeline.stats;

import org.jspecify.annotations.Nullable;

/**
 * One crossing of the call level while watching minute by minute, as section 4 of the methods
 * document defines it.
 *
 * @param minute bait minute at which the bin that brought it ended
 * @param up whether the level was reached; otherwise the call was withdrawn
 * @param probability of a fade as seen then, in [0, 1]
 * @param asSeenThen for an upward crossing, the moment as the record up to then places it
 */
public record FadeCrossing(
    double minute, boolean up, double probability, @Nullable FadeMoment asSeenThen) {}
