/** The Log screen: pads and keys that make the record, as it happens or from a recording. */
@NullMarked
package org.fadeline.ui.log;

import org.jspecify.annotations.NullMarked;
