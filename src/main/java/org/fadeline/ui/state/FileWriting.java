package org.fadeline.ui.state;

import java.io.IOException;
import java.nio.file.Path;
import org.fadeline.io.DiskFault;
import org.fadeline.ui.state.Activity.Trouble;

/** Writes one file, or some into a folder; each whole or not at all. */
@FunctionalInterface
public interface FileWriting {
  /**
   * Writes it; called on a background thread.
   *
   * @throws Exception if it cannot be written; the message says why
   */
  void to(Path file) throws Exception;

  /** Returns what is told of writing that failed. */
  static Trouble trouble(Path target, Exception failure) {
    String title = target.getFileName() + " was not written";
    if (failure instanceof IOException fault) {
      return Trouble.of(
          title, DiskFault.of(target, fault) + ". Nothing was left behind; choose another place.");
    }
    return failure instanceof IllegalArgumentException
        ? Trouble.of(title, failure.getMessage() + ". Nothing was left behind.")
        : Trouble.unforeseen(title, failure, "Nothing was left behind.");
  }
}
