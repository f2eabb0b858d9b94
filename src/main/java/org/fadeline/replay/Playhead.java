package org.fadeline.replay;

import org.jspecify.annotations.Nullable;

/**
 * Where the replay stands and how it moves: plain arithmetic, no clock of its own.
 *
 * @param at the instant shown, epoch milliseconds, inside {@code range}, both ends included
 * @param nanos what has gone by since {@code at} but is not a whole millisecond yet, in [0,
 *     1,000,000)
 * @param range the instants that can be reached
 * @param motion how it moves
 */
public record Playhead(long at, int nanos, Range range, Motion motion) {
  private static final long NANOS_PER_MILLI = 1_000_000;

  /** Checks that the instant lies inside the range. */
  public Playhead {
    if (at < range.from || at > range.to || nanos < 0 || nanos >= NANOS_PER_MILLI) {
      throw new IllegalArgumentException("the playhead must lie inside its range");
    }
  }

  /** Returns a playhead that stands at the start of a range. */
  public static Playhead startOf(Range range) {
    return new Playhead(range.from, 0, range, Motion.STANDING);
  }

  /**
   * Instants, both ends included.
   *
   * @param from first instant, epoch milliseconds
   * @param to last instant, epoch milliseconds, not before {@code from}
   */
  public record Range(long from, long to) {
    /** Checks the order. */
    public Range {
      if (to < from) {
        throw new IllegalArgumentException("a range must not end before it starts");
      }
    }

    /** Returns the range with the given ends in either order. */
    public static Range between(long a, long b) {
      return new Range(Math.min(a, b), Math.max(a, b));
    }

    /** Returns the instant of the range nearest to the given one. */
    public long clamp(long instant) {
      return Math.max(from, Math.min(to, instant));
    }

    /** Returns whether the instant lies in the range. */
    public boolean holds(long instant) {
      return instant >= from && instant <= to;
    }

    /** Returns the shortest range that holds this one and another. */
    public Range and(Range other) {
      return new Range(Math.min(from, other.from), Math.max(to, other.to));
    }

    /** Returns the length in milliseconds. */
    public long millis() {
      return to - from;
    }
  }

  /**
   * How a playhead moves.
   *
   * @param playing whether it moves at all
   * @param speed seconds of the session for each second that goes by, in [1, 600]
   * @param reverse whether it runs backwards
   * @param loop the stretch it keeps to, or null
   */
  public record Motion(boolean playing, int speed, boolean reverse, @Nullable Range loop) {
    /** The slowest speed. */
    public static final int SLOWEST = 1;

    /** The fastest speed. */
    public static final int FASTEST = 600;

    /** Standing still; a minute a second once it plays. */
    public static final Motion STANDING = new Motion(false, 60, false, null);

    /** Checks the speed. */
    public Motion {
      if (speed < SLOWEST || speed > FASTEST) {
        throw new IllegalArgumentException("speed must be 1 to 600: " + speed);
      }
    }

    /** Returns this motion, playing or not. */
    public Motion withPlaying(boolean newPlaying) {
      return new Motion(newPlaying, speed, reverse, loop);
    }

    /** Returns this motion at another speed, brought into [1, 600]. */
    public Motion withSpeed(int newSpeed) {
      return new Motion(playing, Math.max(SLOWEST, Math.min(FASTEST, newSpeed)), reverse, loop);
    }

    /** Returns this motion in the given direction. */
    public Motion withReverse(boolean newReverse) {
      return new Motion(playing, speed, newReverse, loop);
    }

    /** Returns this motion with another loop, or none. */
    public Motion withLoop(@Nullable Range newLoop) {
      return new Motion(playing, speed, reverse, newLoop);
    }
  }

  /** Returns this playhead at the instant of its range nearest to the given one. */
  public Playhead seek(long instant) {
    return new Playhead(range.clamp(instant), 0, range, motion);
  }

  /** Returns this playhead moving differently. */
  public Playhead with(Motion newMotion) {
    return new Playhead(at, nanos, range, newMotion);
  }

  /** Returns this playhead on another range, at the nearest instant, its loop kept inside. */
  public Playhead within(Range newRange) {
    Range loop = motion.loop;
    Range kept =
        loop == null ? null : new Range(newRange.clamp(loop.from), newRange.clamp(loop.to));
    return new Playhead(newRange.clamp(at), 0, newRange, motion.withLoop(kept));
  }

  /**
   * Returns this playhead playing. Where it stands at the end it runs towards, it starts again from
   * the other.
   */
  public Playhead play() {
    boolean atEnd = at == (motion.reverse ? range.from : range.to);
    long start = atEnd ? (motion.reverse ? range.to : range.from) : at;
    return new Playhead(start, start == at ? nanos : 0, range, motion.withPlaying(true));
  }

  /**
   * Returns this playhead after some time has gone by. In a loop it starts again at the loop's
   * start (backwards: at its end); at an end of the range it stops.
   *
   * @param elapsedNanos time gone by, nanoseconds, 0 or more
   */
  public Playhead advance(long elapsedNanos) {
    if (elapsedNanos < 0) {
      throw new IllegalArgumentException("time does not run backwards: " + elapsedNanos);
    }
    if (!motion.playing) {
      return this;
    }
    long run = Math.multiplyExact(elapsedNanos, motion.speed);
    long position = position(at) + nanos + (motion.reverse ? -run : run);
    Range loop = motion.loop;
    if (loop != null && loop.millis() > 0) {
      return atPosition(loop.holds(at) ? wrapped(position, loop) : restart(loop), motion);
    }
    long end = position(range.to);
    if (position < 0 || (position == 0 && motion.reverse)) {
      return atPosition(0, motion.withPlaying(false));
    }
    if (position >= end) {
      return atPosition(end, motion.withPlaying(false));
    }
    return atPosition(position, motion);
  }

  private long restart(Range loop) {
    return position(motion.reverse ? loop.to : loop.from);
  }

  private long wrapped(long position, Range loop) {
    long start = position(loop.from);
    long length = position(loop.to) - start;
    long into = position - start;
    return into >= 0 && into <= length ? position : start + Math.floorMod(into, length);
  }

  private long position(long instant) {
    return Math.multiplyExact(instant - range.from, NANOS_PER_MILLI);
  }

  private Playhead atPosition(long position, Motion newMotion) {
    long millis = Math.floorDiv(position, NANOS_PER_MILLI);
    int rest = (int) Math.floorMod(position, NANOS_PER_MILLI);
    return new Playhead(range.from + millis, rest, range, newMotion);
  }
}
