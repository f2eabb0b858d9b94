/**
 * What the record of a match says: effort, rates, first bites, fades, stay or go, pace.
 *
 * <p>Everything here is a function of the session and the settings, never of the playhead. Results
 * are immutable records; an undefined number is null, never 0 or NaN. Instants are epoch
 * milliseconds, exposures hours, weights grams; rates are per hour.
 */
@NullMarked
package org.fadeline.analysis;

import org.jspecify.annotations.NullMarked;
