package org.fadeline;

import java.nio.file.Path;
import java.util.Optional;
import org.fadeline.cli.Console;
import org.fadeline.cli.Fadeline;

/** Starts Fadeline: the workbench where there is a display, the command line otherwise. */
public final class Main {
  private Main() {}

  /** Runs the program with the given command-line arguments and ends the process. */
  public static void main(String[] args) {
    // Figures are measured and drawn with AWT, which must not look for a display of its own.
    System.setProperty("java.awt.headless", "true");
    System.exit(Fadeline.run(Console.ofProcess(), Main::window, args));
  }

  private static void window(Optional<Path> session) {
    throw new UnsupportedOperationException("no window yet for " + session);
  }
}
