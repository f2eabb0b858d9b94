/**
 * Reading and keeping the record: session JSON, event CSV, the journal beside a document and its
 * recovery.
 *
 * <p>Readers collect every problem with its place and return a session only when the file as a
 * whole can be trusted, or in part where that was asked for. Nothing read here can reach outside
 * the file's folder, and no class is ever chosen by what a file says.
 */
@NullMarked
package org.fadeline.io;

import org.jspecify.annotations.NullMarked;
