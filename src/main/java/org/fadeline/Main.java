package org.fadeline;

import org.fadeline.cli.Console;
import org.fadeline.cli.Fadeline;
import org.fadeline.ui.WorkbenchLauncher;

/** Starts Fadeline: the workbench where there is a display, the command line otherwise. */
public final class Main {
  private Main() {}

  /** Runs the program with the given command-line arguments and ends the process. */
  public static void main(String[] args) {
    // Figures are measured and drawn with AWT, which must not look for a display of its own.
    System.setProperty("java.awt.headless", "true");
    // Writing slides must not print a notice on the error stream.
    System.setProperty(
        "log4j2.loggerContextFactory",
        "org.apache.logging.log4j.simple.SimpleLoggerContextFactory");
    System.exit(Fadeline.run(Console.ofProcess(), WorkbenchLauncher::launch, args));
  }
}
