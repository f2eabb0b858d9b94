/**
 * What the window shows and the commands that change it, free of any picture: one immutable record
 * in one read-only property, and background work.
 */
@NullMarked
package org.fadeline.ui.state;

import org.jspecify.annotations.NullMarked;
