/**
 * The playhead's own controls: the slider, the button that plays, and what of the match is known.
 */
@NullMarked
package org.fadeline.ui.control.play;

import org.jspecify.annotations.NullMarked;
