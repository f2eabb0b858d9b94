package org.fadeline.analysis;

/**
 * A rate with its limits.
 *
 * @param perHour events or grams per hour, 0 or more
 * @param low lower limit, 0 or more
 * @param high upper limit, at least {@code perHour}
 * @param level confidence level of the limits, in (0, 1)
 */
public record Rate(double perHour, double low, double high, double level) {}
