package org.fadeline.ui.log;

import java.nio.file.Path;
import java.util.function.Consumer;
import javafx.scene.layout.Region;

/** A film of the match that goes with the log's clock. */
interface Footage extends AutoCloseable {
  /** Opens films; the screen works as well with one that opens none. */
  @FunctionalInterface
  interface Opener {
    /**
     * Opens a film, which stands at its start.
     *
     * @param file the film
     * @param trouble told, on the window's thread, what keeps it from playing; it may come later
     */
    Footage open(Path file, Consumer<String> trouble);
  }

  /** Returns what shows the film. */
  Region view();

  /**
   * Brings the film to where the clock is; called often, so it does nothing where it is there.
   *
   * @param position milliseconds from the film's start
   * @param running whether it plays
   * @param speed how fast, in [0.25, 16]
   */
  void follow(double position, boolean running, double speed);

  /** Lets the film go. */
  @Override
  void close();
}
