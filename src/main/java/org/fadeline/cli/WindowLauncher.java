package org.fadeline.cli;

import java.nio.file.Path;
import java.util.Optional;

/** Opens the workbench's window; handed in by the program's entry, so that no command knows it. */
@FunctionalInterface
public interface WindowLauncher {
  /**
   * Opens the window and returns once it is closed.
   *
   * @param session the file to open, or empty
   * @throws UnsupportedOperationException if there is no display
   */
  void launch(Optional<Path> session);
}
