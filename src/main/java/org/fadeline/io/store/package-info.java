/** A session kept on disk: journal, saves, backups, lock and recovery. */
@NullMarked
package org.fadeline.io.store;

import org.jspecify.annotations.NullMarked;
