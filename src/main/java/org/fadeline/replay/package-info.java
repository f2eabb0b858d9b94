/**
 * The timeline model: what has happened by an instant, and the arithmetic of the playhead.
 *
 * <p>What shows at an instant is a function of the session and the instant alone, never of the
 * steps taken to get there.
 */
@NullMarked
package org.fadeline.replay;

import org.jspecify.annotations.NullMarked;
