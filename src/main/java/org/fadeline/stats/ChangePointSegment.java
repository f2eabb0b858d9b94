package org.fadeline.stats;

/**
 * A stretch of bins with one rate, a segment of a change-point model (Fearnhead 2006, Statistics
 * and Computing 16:203–213).
 *
 * @param from first bin, counted from 0
 * @param to bin after the last, above {@code from}
 * @param rate events per unit of exposure, 0 or more
 */
public record ChangePointSegment(int from, int to, double rate) {}
