package org.fadeline.cli;

import java.io.IOException;
import java.nio.file.Path;
import org.fadeline.io.DiskFault;

/** Says what is wrong with an output. */
final class Writing {
  private Writing() {}

  static InputFault fault(Path out, IOException e) {
    return new InputFault(
        out
            + ":1:1: cannot be written ("
            + DiskFault.why(out, e)
            + "); choose another place or free some room");
  }
}
