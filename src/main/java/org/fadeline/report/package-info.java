/** A review, a comparison or a season as text for people and as JSON for programs. */
@NullMarked
package org.fadeline.report;

import org.jspecify.annotations.NullMarked;
