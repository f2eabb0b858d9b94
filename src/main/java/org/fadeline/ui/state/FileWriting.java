package org.fadeline.ui.state;

import java.nio.file.Path;

/** Writes one file, whole or not at all. */
@FunctionalInterface
public interface FileWriting {
  /**
   * Writes it; called on a background thread.
   *
   * @throws Exception if it cannot be written; the message says why
   */
  void to(Path file) throws Exception;
}
