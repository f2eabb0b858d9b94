/**
 * What every screen is built of: what a screen is, how it says things and follows the state. Below
 * it {@code command} (what can be done, with its keys), {@code form} (what is typed or chosen),
 * {@code table}, {@code picture} (figures on screen), {@code play} (the playhead) and {@code file}
 * (files asked for or dropped).
 */
@NullMarked
package org.fadeline.ui.control;

import org.jspecify.annotations.NullMarked;
