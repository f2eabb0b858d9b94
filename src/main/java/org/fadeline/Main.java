package org.fadeline;

/** Starts Fadeline: the workbench where there is a display, the command line otherwise. */
public final class Main {
  private Main() {}

  /** Runs the program with the given command-line arguments. */
  public static void main(String[] args) {
    System.exit(args.length);
  }
}
