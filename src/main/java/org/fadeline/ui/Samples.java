package org.fadeline.ui;

import java.nio.file.Path;
import java.util.List;
import org.fadeline.io.open.SampleSessions;
import org.fadeline.ui.control.Say;

/** The sample sessions that came with the program. */
final class Samples {
  private Samples() {}

  /**
   * One sample.
   *
   * @param path its file
   * @param title what to call it
   */
  record Sample(Path path, String title) {}

  /** Returns the samples found beside the program or in the working folder, by name. */
  static List<Sample> find() {
    return SampleSessions.find().stream().map(file -> new Sample(file, title(file))).toList();
  }

  private static String title(Path file) {
    return Say.capital(SessionPaths.bareName(file).replace('-', ' ').replace('_', ' '));
  }
}
