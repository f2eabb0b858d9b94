/** Two records of one match put together, clashes told. */
@NullMarked
package org.fadeline.analysis.merge;

import org.jspecify.annotations.NullMarked;
