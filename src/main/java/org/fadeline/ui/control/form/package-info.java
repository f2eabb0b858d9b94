/** What is typed or chosen: entries of a record, with what is wrong beside the field. */
@NullMarked
package org.fadeline.ui.control.form;

import org.jspecify.annotations.NullMarked;
