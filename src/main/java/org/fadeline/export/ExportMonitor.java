package org.fadeline.export;

import java.util.concurrent.CancellationException;

/** Watches a long export and may stop it. */
public interface ExportMonitor {
  /** Watches nothing and stops nothing. */
  ExportMonitor NONE =
      new ExportMonitor() {
        @Override
        public void progress(double share) {}

        @Override
        public boolean isCancelled() {
          return false;
        }
      };

  /** Is told how much is done, in [0, 1]. */
  void progress(double share);

  /** Returns whether to stop. */
  boolean isCancelled();

  /**
   * Tells the progress and stops if asked to.
   *
   * @throws CancellationException if the export is to stop; nothing is left behind
   */
  default void step(double share) {
    if (isCancelled()) {
      throw new CancellationException("the export was stopped");
    }
    progress(share);
  }
}
