/** Captions, dictated notes and shorthand, read into proposed events. */
@NullMarked
package org.fadeline.io.notes;

import org.jspecify.annotations.NullMarked;
