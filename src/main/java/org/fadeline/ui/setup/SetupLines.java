package org.fadeline.ui.setup;

import java.util.ArrayList;
import java.util.Collections;
import java.util.HashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.function.UnaryOperator;
import org.fadeline.model.Line;
import org.fadeline.model.Session;

/** Adds, takes out and orders the lines of a session. */
final class SetupLines {
  private static final String NEW = "New line";

  private SetupLines() {}

  /**
   * Returns a line that is known to be there.
   *
   * @throws IllegalArgumentException if it is not
   */
  static Line line(Session session, String id) {
    return session
        .line(id)
        .orElseThrow(() -> new IllegalArgumentException("there is no such line any more"));
  }

  static Session replace(Session session, String id, UnaryOperator<Line> change) {
    List<Line> lines = new ArrayList<>(session.lines());
    lines.replaceAll(l -> l.id().equals(id) ? change.apply(l) : l);
    return session.withLines(lines);
  }

  /** Returns the session with one more line, not placed yet; it is the last. */
  static Session added(Session session) {
    String name = NEW;
    for (int i = 2; isTaken(session, name); i++) {
      name = NEW + " " + i;
    }
    return with(session, Line.named(freshId(session, name), name));
  }

  private static boolean isTaken(Session session, String name) {
    return session.lines().stream().anyMatch(l -> l.name().equalsIgnoreCase(name));
  }

  private static Session with(Session session, Line line) {
    List<Line> lines = new ArrayList<>(session.lines());
    lines.add(line);
    return session.withLines(lines);
  }

  private static String freshId(Session session, String name) {
    String plain =
        name.toLowerCase(Locale.ROOT).replaceAll("[^a-z0-9]+", "-").replaceAll("^-+|-+$", "");
    String base = plain.isEmpty() ? "line" : plain;
    String id = base;
    for (int i = 2; isUsed(session, id); i++) {
      id = base + "-" + i;
    }
    return id;
  }

  private static boolean isUsed(Session session, String id) {
    return session.lines().stream().anyMatch(l -> l.id().equals(id) || l.spot().equals(id));
  }

  /** Returns how many events name a line. */
  static long eventsOn(Session session, String id) {
    return session.events().stream().filter(e -> id.equals(e.lineId())).count();
  }

  /** Returns the session without a line; lines on its spot get spots of their own. */
  static Session removed(Session session, String id) {
    List<Line> lines = new ArrayList<>();
    for (Line line : session.lines()) {
      if (!line.id().equals(id)) {
        lines.add(line.spot().equals(id) ? line.withSpot(line.id()) : line);
      }
    }
    return session.withLines(lines);
  }

  /**
   * Returns the session with a line moved among the others.
   *
   * @param by places down, negative for up; one that leads out of the list changes nothing
   */
  static Session moved(Session session, String id, int by) {
    List<Line> lines = new ArrayList<>(session.lines());
    int from = lines.indexOf(line(session, id));
    int to = from + by;
    if (to < 0 || to >= lines.size()) {
      return session;
    }
    Collections.swap(lines, from, to);
    return session.withLines(lines);
  }

  /**
   * Returns the session with the lines of an earlier one that it lacks by name: places, rigs and
   * shared spots with them.
   */
  static Session taken(Session session, Session earlier) {
    Session now = session;
    Map<String, String> ids = new HashMap<>();
    List<Line> fresh = new ArrayList<>();
    for (Line line : earlier.lines()) {
      if (isTaken(now, line.name())) {
        continue;
      }
      String id = freshId(now, line.name());
      ids.put(line.id(), id);
      fresh.add(line);
      now = with(now, new Line(id, line.name(), line.kind(), id, line.place(), line.rig()));
    }
    for (Line line : fresh) {
      String spot = ids.get(line.spot());
      String id = ids.get(line.id());
      if (spot != null && id != null) {
        now = replace(now, id, l -> l.withSpot(spot));
      }
    }
    return now;
  }
}
