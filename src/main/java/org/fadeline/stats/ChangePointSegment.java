package org.fadeline.stats;

/**
 * A stretch of bins with one rate.
 *
 * @param from first bin, counted from 0
 * @param to bin after the last, above {@code from}
 * @param rate events per unit of exposure, 0 or more
 */
public record ChangePointSegment(int from, int to, double rate) {}
