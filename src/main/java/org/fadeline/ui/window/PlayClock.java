package org.fadeline.ui.window;

import javafx.animation.AnimationTimer;
import org.fadeline.ui.control.Watch;
import org.fadeline.ui.state.Workbench;

/** Lets time go by while the replay plays; asks for no frames while it stands. */
final class PlayClock {
  /** After a longer gap (a laptop asleep, a debugger) the replay does not leap. */
  private static final long LONGEST_GAP_NANOS = 250_000_000L;

  private final Workbench bench;
  private long before;

  private final AnimationTimer timer =
      new AnimationTimer() {
        @Override
        public void handle(long now) {
          long elapsed = before == 0 ? 0 : now - before;
          before = now;
          bench.transport().advance(Math.max(0, Math.min(elapsed, LONGEST_GAP_NANOS)));
        }
      };

  PlayClock(Workbench bench) {
    this.bench = bench;
    Watch.part(bench.stateProperty(), s -> s.playhead().motion().playing(), this::run);
  }

  /** Ends it: a window that is closed plays no more. */
  void stop() {
    timer.stop();
  }

  private void run(boolean playing) {
    before = 0;
    if (playing) {
      timer.start();
    } else {
      timer.stop();
    }
  }
}
