/** The command line: thin commands over the packages that do the work. */
@NullMarked
package org.fadeline.cli;

import org.jspecify.annotations.NullMarked;
