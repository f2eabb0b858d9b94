package org.fadeline.cli;

import java.io.IOException;
import java.nio.file.AccessDeniedException;
import java.nio.file.FileSystemException;
import java.nio.file.Path;

/** Says what is wrong with an output. */
final class Writing {
  private Writing() {}

  static InputFault fault(Path out, IOException e) {
    String why =
        e instanceof AccessDeniedException
            ? "permission denied"
            : e instanceof FileSystemException f && f.getReason() != null
                ? f.getReason()
                : String.valueOf(e.getMessage());
    return new InputFault(
        out + ":1:1: cannot be written (" + why + "); choose another place or free some room");
  }
}
