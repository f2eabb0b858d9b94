/** A talk as it is composed: slides in order, each with its words and the picture it asks for. */
@NullMarked
package org.fadeline.model.talk;

import org.jspecify.annotations.NullMarked;
