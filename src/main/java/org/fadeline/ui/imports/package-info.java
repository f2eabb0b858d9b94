/** Bringing in what was written elsewhere: tables, captions, typed notes. */
@NullMarked
package org.fadeline.ui.imports;

import org.jspecify.annotations.NullMarked;
