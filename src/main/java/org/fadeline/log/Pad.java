package org.fadeline.log;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import org.fadeline.model.EventKind;

/**
 * One pad: what a press of it logs, and on which line.
 *
 * @param kind of event
 * @param line place of the line in the session, from 0, or {@link #AROUND} for a pad of no line
 */
public record Pad(EventKind kind, int line) {
  /** The place of pads that belong to no line. */
  public static final int AROUND = -1;

  /** What can happen on a line, in the order it does. */
  public static final List<EventKind> ON_A_LINE =
      List.of(
          EventKind.FED,
          EventKind.CAST,
          EventKind.INDICATION,
          EventKind.BITE,
          EventKind.HOOKED,
          EventKind.LANDED,
          EventKind.LOST,
          EventKind.FOUL,
          EventKind.SIGN,
          EventKind.MOVE);

  /** What happens around the lines; {@code STOPPED} is also the way on. */
  public static final List<EventKind> OFF_THE_LINES =
      List.of(
          EventKind.OFF,
          EventKind.CHANGE,
          EventKind.COUNT,
          EventKind.NET,
          EventKind.NEIGHBOUR,
          EventKind.WEATHER,
          EventKind.NOTE,
          EventKind.STOPPED,
          EventKind.ALL_IN,
          EventKind.ALL_OUT);

  /** Returns the pads of a line. */
  public static List<Pad> ofLine(int line) {
    return ON_A_LINE.stream().map(kind -> new Pad(kind, line)).toList();
  }

  /** Returns the pads that belong to no line. */
  public static List<Pad> around() {
    return OFF_THE_LINES.stream().map(kind -> new Pad(kind, AROUND)).toList();
  }

  /** Returns every pad of a session with so many lines. */
  public static List<Pad> all(int lines) {
    List<Pad> pads = new ArrayList<>();
    for (int line = 0; line < lines; line++) {
      pads.addAll(ofLine(line));
    }
    pads.addAll(around());
    return pads;
  }

  /** Returns the name under which its key is kept: "2.bite" for the second line, or "net". */
  public String slot() {
    return line == AROUND
        ? kind.word()
        : String.format(Locale.ROOT, "%d.%s", line + 1, kind.word());
  }
}
