/**
 * A folder of sessions as one: read in the background, filtered, drawn, and led back to its files.
 */
@NullMarked
package org.fadeline.ui.season;

import org.jspecify.annotations.NullMarked;
