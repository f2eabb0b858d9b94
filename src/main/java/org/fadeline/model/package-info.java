/**
 * The match as recorded: a session, its lines, its events and its outcome, all immutable.
 *
 * <p>Instants are epoch milliseconds (UTC); the session's zone turns them into clock times. Weights
 * are grams, distances metres, angles degrees. This package knows nothing of files, statistics or
 * screens.
 */
@NullMarked
package org.fadeline.model;

import org.jspecify.annotations.NullMarked;
