/** Setting up a match: where, when, by which rules, and the lines with their rigs. */
@NullMarked
package org.fadeline.ui.setup;

import org.jspecify.annotations.NullMarked;
