package org.fadeline.ui.state;

import java.util.List;
import java.util.function.UnaryOperator;
import org.fadeline.analysis.Course.TurningPoint;
import org.fadeline.model.SessionEvent;
import org.fadeline.replay.Playhead;
import org.fadeline.replay.Playhead.Motion;
import org.fadeline.replay.Playhead.Range;
import org.jspecify.annotations.Nullable;

/** The commands that move the playhead. Without a session they do nothing. */
public final class Transport {
  /** The speeds offered, seconds of the session for each second. */
  public static final List<Integer> SPEEDS = List.of(1, 10, 60, 120, 300, 600);

  private final Workbench bench;

  Transport(Workbench bench) {
    this.bench = bench;
  }

  private void move(UnaryOperator<Playhead> step) {
    bench.change(
        s -> {
          if (s.open() == null) {
            return s;
          }
          WorkbenchState moved = s.withPlayhead(step.apply(s.playhead()));
          return moved.playhead().at() < s.playhead().at() ? moved.withoutPicksAhead() : moved;
        });
  }

  /**
   * Lets the playhead go beyond the session's own range, as far as a match beside it goes; null
   * brings it back into its own.
   */
  public void reach(@Nullable Range beside) {
    bench.change(
        s -> {
          if (s.open() == null) {
            return s;
          }
          Range own = s.open().range();
          Range range = beside == null ? own : own.and(beside);
          return range.equals(s.playhead().range())
              ? s
              : s.withPlayhead(s.playhead().within(range));
        });
  }

  private void motion(UnaryOperator<Motion> step) {
    move(p -> p.with(step.apply(p.motion())));
  }

  /** Goes to an instant (epoch milliseconds), or the nearest the session reaches. */
  public void seek(long at) {
    move(p -> p.seek(at));
  }

  /** Goes some milliseconds on, or back where negative. */
  public void nudge(long millis) {
    move(p -> p.seek(p.range().clamp(p.at() + millis)));
  }

  /** Goes to the start of the range. */
  public void toStart() {
    move(p -> p.seek(p.range().from()));
  }

  /** Goes to the end of the range. */
  public void toEnd() {
    move(p -> p.seek(p.range().to()));
  }

  /**
   * Goes to the next instant with an event, or the one before.
   *
   * @param forward which way
   */
  public void step(boolean forward) {
    WorkbenchState s = bench.state();
    OpenSession open = s.open();
    if (open == null) {
      return;
    }
    List<SessionEvent> events = open.session().events();
    long at = s.playhead().at();
    int seen = open.track().eventsSeen(forward ? at : at - 1);
    int target = forward ? seen : seen - 1;
    if (target >= 0 && target < events.size()) {
      seek(events.get(target).at());
    } else if (forward) {
      toEnd();
    } else {
      toStart();
    }
  }

  /**
   * Goes to the next turning point that is known, or the one before; stays where there is none. As
   * known then, nothing ahead of the playhead is known.
   *
   * @param forward which way
   */
  public void turningPoint(boolean forward) {
    WorkbenchState s = bench.state();
    Long best = null;
    for (TurningPoint point : s.turningPoints()) {
      boolean beyond = forward ? point.at() > s.playhead().at() : point.at() < s.playhead().at();
      if (beyond && (best == null || (forward ? point.at() < best : point.at() > best))) {
        best = point.at();
      }
    }
    if (best != null) {
      seek(best);
    } else if (forward && !s.choices().hindsight() && s.open() != null) {
      bench.tell("As known then, the next turning point is still to come; with hindsight it shows");
    }
  }

  /** Plays, from the other end where it stands at the end it runs towards. */
  public void play() {
    move(Playhead::play);
  }

  /** Stands still. */
  public void pause() {
    motion(m -> m.withPlaying(false));
  }

  /** Plays if standing, stands if playing. */
  public void toggle() {
    if (bench.state().playhead().motion().playing()) {
      pause();
    } else {
      play();
    }
  }

  /** Sets the direction. */
  public void reverse(boolean reverse) {
    motion(m -> m.withReverse(reverse));
  }

  /** Sets the speed, brought into 1 to 600. */
  public void speed(int speed) {
    motion(m -> m.withSpeed(speed));
  }

  /** Takes the next faster or slower of the speeds offered. */
  public void faster(boolean faster) {
    int now = bench.state().playhead().motion().speed();
    SPEEDS.stream()
        .filter(v -> faster ? v > now : v < now)
        .min((a, b) -> Integer.compare(Math.abs(a - now), Math.abs(b - now)))
        .ifPresent(this::speed);
  }

  /** Keeps to a stretch of the session, or to none. */
  public void loop(@Nullable Range loop) {
    move(
        p -> {
          Range kept =
              loop == null
                  ? null
                  : new Range(p.range().clamp(loop.from()), p.range().clamp(loop.to()));
          return p.with(p.motion().withLoop(kept));
        });
  }

  /**
   * Lets time go by.
   *
   * @param elapsedNanos time gone by, nanoseconds, 0 or more
   */
  public void advance(long elapsedNanos) {
    move(p -> p.advance(elapsedNanos));
  }
}
