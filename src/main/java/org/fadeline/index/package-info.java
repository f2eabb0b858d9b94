/**
 * A folder of sessions read as one: summaries of its files, worked out in the background and kept,
 * so that only files that changed are read again. The session files stay the truth; what is kept
 * can be deleted at any time.
 */
@NullMarked
package org.fadeline.index;

import org.jspecify.annotations.NullMarked;
