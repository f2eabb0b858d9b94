/**
 * Simulated lines whose truth is known, and the benchmark of the moment a line faded that runs on
 * them: {@code FadeBenchmark} has a main for the full set; a small set runs with every build.
 */
@NullMarked
package org.fadeline.sim;

import org.jspecify.annotations.NullMarked;
