package org.fadeline.cli;

import java.io.FileDescriptor;
import java.io.FileOutputStream;
import java.io.PrintStream;
import java.nio.charset.StandardCharsets;

/**
 * Where a command writes; the only place in the program that knows the standard streams is the
 * caller that makes one.
 *
 * @param out results
 * @param err problems and notices
 */
public record Console(PrintStream out, PrintStream err) {
  /** Returns the process's own streams, in UTF-8. */
  public static Console ofProcess() {
    return new Console(
        new PrintStream(new FileOutputStream(FileDescriptor.out), true, StandardCharsets.UTF_8),
        new PrintStream(new FileOutputStream(FileDescriptor.err), true, StandardCharsets.UTF_8));
  }
}
