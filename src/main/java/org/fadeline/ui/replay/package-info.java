/** The Replay screen. */
@NullMarked
package org.fadeline.ui.replay;

import org.jspecify.annotations.NullMarked;
