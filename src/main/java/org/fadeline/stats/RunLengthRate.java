package org.fadeline.stats;

/**
 * One gamma component of what the current rate may be (Adams &amp; MacKay 2007, arXiv:0710.3742).
 *
 * @param runLength bins of the run it rests on, 0 for the prior alone
 * @param weight its probability, in [0, 1]
 * @param shape of the gamma distribution, above 0
 * @param rate of the gamma distribution, in units of exposure, above 0
 */
public record RunLengthRate(int runLength, double weight, double shape, double rate) {}
