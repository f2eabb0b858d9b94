/**
 * Two sessions side by side: laid on one axis, their lines paired, what each pair paid with the
 * limits of the comparison, and what differed most.
 *
 * <p>Pure functions of two reviews. Ratios are always the first session over the second; an
 * undefined number is null.
 */
@NullMarked
package org.fadeline.analysis.compare;

import org.jspecify.annotations.NullMarked;
