/**
 * Domain-free statistics: exact limits for counts and rates, survival curves with delayed entry,
 * predictive counts, leaving times and change points.
 *
 * <p>Nothing here knows about angling but the words for fades, which are those of the record (line,
 * spell, bait minute). May import the JDK, the JSpecify annotations and Commons Statistics (with
 * the Commons Numbers gamma functions it brings). Every number that has a published or
 * independently computed counterpart is held against it by a test.
 */
@NullMarked
package org.fadeline.stats;

import org.jspecify.annotations.NullMarked;
