package org.fadeline.ui.control;

import org.jspecify.annotations.Nullable;

/**
 * What the window must know of a screen, whether it is made yet or not.
 *
 * @param title its name, as on its tab
 * @param needsSession whether it shows the match in hand, and so has nothing to show without one
 * @param judges whether it says of the match in hand what a match may not allow while it is on:
 *     rates, pace, verdicts
 * @param offer what the first screen offers to begin here, such as "Set up a match", or null where
 *     nothing begins here
 */
public record ScreenFacts(
    String title, boolean needsSession, boolean judges, @Nullable String offer) {}
