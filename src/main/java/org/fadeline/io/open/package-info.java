/** Any file a session can come from, told apart and read. */
@NullMarked
package org.fadeline.io.open;

import org.jspecify.annotations.NullMarked;
