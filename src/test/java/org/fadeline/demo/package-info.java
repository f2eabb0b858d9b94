/**
 * Invented waters and matches: test code that simulations and sample sessions share.
 *
 * <p>Waters, people and figures are made up. No real fishery is meant.
 */
@NullMarked
package org.fadeline.demo;

import org.jspecify.annotations.NullMarked;
