/** The weigh-in: nets at the scales against the log, and the result. */
@NullMarked
package org.fadeline.ui.weighin;

import org.jspecify.annotations.NullMarked;
