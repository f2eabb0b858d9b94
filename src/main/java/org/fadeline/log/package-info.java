/**
 * How a match is logged, free of any screen: the pads and their keys, what a press makes of the
 * record, the angler's words for amounts and weights, and how a recording lies against the match.
 */
@NullMarked
package org.fadeline.log;

import org.jspecify.annotations.NullMarked;
