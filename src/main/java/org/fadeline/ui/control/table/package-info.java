/** Tables of figures that sort, filter, copy and share their width among their columns. */
@NullMarked
package org.fadeline.ui.control.table;

import org.jspecify.annotations.NullMarked;
