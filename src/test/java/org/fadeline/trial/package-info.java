/**
 * Whole matches simulated with known truth and put through the review: is what it claims borne out?
 *
 * <p>Each trial has a small seeded form, run with every build, and a main that prints the tables of
 * the methods document.
 */
@NullMarked
package org.fadeline.trial;

import org.jspecify.annotations.NullMarked;
