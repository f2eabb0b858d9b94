/** Entry point: chooses between the workbench window and the command line. */
@NullMarked
package org.fadeline;

import org.jspecify.annotations.NullMarked;
