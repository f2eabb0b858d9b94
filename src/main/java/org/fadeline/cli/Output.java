package org.fadeline.cli;

import java.io.IOException;
import java.nio.file.Path;
import java.util.Locale;
import org.fadeline.io.DiskFault;

/** How a command writes what it makes, the same for every command. */
final class Output {
  private Output() {}

  /** Something that writes files. */
  @FunctionalInterface
  interface Written {
    void write() throws IOException;
  }

  /**
   * Writes an output.
   *
   * @param target the file or folder to name where that fails
   * @throws InputFault if it cannot be written
   */
  static void to(Path target, Written written) {
    try {
      written.write();
    } catch (IOException e) {
      throw fault(target, e);
    }
  }

  /** Returns whether a file's name ends so, in letters of either case. */
  static boolean endsIn(Path file, String ending) {
    return String.valueOf(file.getFileName()).toLowerCase(Locale.ROOT).endsWith(ending);
  }

  /** Returns the fault of a name that ends otherwise than what can be written. */
  static InputFault wrongEnding(Path out, String endings) {
    return new InputFault(out + ":1:1: this ending cannot be written; end the name in " + endings);
  }

  /** Says what is wrong with an output. */
  static InputFault fault(Path out, IOException e) {
    return new InputFault(
        out
            + ":1:1: cannot be written ("
            + DiskFault.why(out, e)
            + "); choose another place or free some room");
  }
}
