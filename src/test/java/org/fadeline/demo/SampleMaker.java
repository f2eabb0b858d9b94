package org.fadeline.demo;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.function.Function;
import org.fadeline.io.SessionWriter;
import org.fadeline.model.Fish;
import org.fadeline.model.Session;
import org.fadeline.model.SessionEvent;
import org.fadeline.model.Stamp;
import org.jspecify.annotations.Nullable;

/**
 * The sample sessions that are generated, and a main that writes them.
 *
 * <p>The seeds were picked from the first sixty: water A's first match and water B's show a line
 * that faded and was stayed on, water A's second a doubtful fade, water C's none.
 */
public final class SampleMaker {
  private SampleMaker() {}

  /** Returns the sessions by file name. */
  public static Map<String, Session> all() {
    Map<String, Session> sessions = new LinkedHashMap<>();
    sessions.put("quillthorn-first-open.session.json", quillthornFirst());
    sessions.put("quillthorn-second-open.session.json", quillthornSecond());
    sessions.put("brackwith-spring.session.json", brackwith());
    sessions.put("ostlerby-winter.session.json", ostlerby());
    return sessions;
  }

  /** Writes the sessions into a folder, {@code sample-sessions} where none is given. */
  public static void main(String... arguments) {
    write(Path.of(arguments.length == 0 ? "sample-sessions" : arguments[0]));
  }

  /** Writes the sessions into a folder. */
  static void write(Path folder) {
    all().forEach((name, session) -> write(folder.resolve(name), session));
  }

  private static void write(Path file, Session session) {
    try {
      Files.write(file, SessionWriter.toBytes(session));
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  private static Session quillthornFirst() {
    Session session = DemoMatch.generate(DemoWaters.waterA(), DemoWaters.planA(), 2);
    return with(
        session,
        remark(52, "shallow", at -> new SessionEvent.Sign(at), "fish swirling over the feed"),
        remark(74, null, at -> neighbour(at, "18", 2000.0), "first fish on the next peg"),
        remark(96, "shallow", at -> new SessionEvent.Indication(at), "lifts, nothing with it"),
        remark(121, null, at -> new SessionEvent.Weather(at), "sun full on the water"),
        remark(186, "left", at -> new SessionEvent.Sign(at), "a tail over the edge"),
        remark(214, "left", at -> new SessionEvent.Change(at, "corn"), "to get past small fish"));
  }

  private static Session quillthornSecond() {
    Session session =
        DemoMatch.generate(DemoWaters.waterASecondDay(), DemoWaters.planASecondDay(), 12);
    return with(
        session,
        remark(34, null, at -> new SessionEvent.Weather(at), "wind getting up, ripple on"),
        remark(118, "shallow", at -> new SessionEvent.Change(at, null), "down six inches"),
        remark(207, null, at -> neighbour(at, "16", 2700.0), "two quick ones from the edge"),
        remark(258, "left", at -> new SessionEvent.Sign(at), "fizzing"));
  }

  private static Session brackwith() {
    Session session = DemoMatch.generate(DemoWaters.waterB(), DemoWaters.planB(), 12);
    return with(
        session,
        remark(92, "pole", at -> new SessionEvent.Sign(at), "bubbles over the balls"),
        remark(171, "pole", at -> new SessionEvent.Indication(at), "liners"),
        remark(201, null, at -> neighbour(at, "7", 1800.0), "a carp from the lilies"));
  }

  private static Session ostlerby() {
    Session session = DemoMatch.generate(DemoWaters.waterC(), DemoWaters.planC(), 26);
    return with(
        session,
        remark(18, null, at -> new SessionEvent.Note(at), "cold hands, bites gentle"),
        remark(104, null, at -> new SessionEvent.Weather(at), "drizzle"),
        remark(160, "long", at -> new SessionEvent.Change(at, "two maggots"), "one size up"));
  }

  private static SessionEvent neighbour(Stamp stamp, String peg, double grams) {
    return new SessionEvent.Neighbour(stamp, peg, new Fish(1, "carp", grams, false));
  }

  /** Something seen or done that leaves fishing and feeding as they were. */
  private record Remark(
      int minute, @Nullable String line, Function<Stamp, SessionEvent> event, String note) {}

  private static Remark remark(
      int minute, @Nullable String line, Function<Stamp, SessionEvent> event, String note) {
    return new Remark(minute, line, event, note);
  }

  private static Session with(Session session, Remark... remarks) {
    List<SessionEvent> events = new ArrayList<>(session.events());
    SessionEvent allOut = events.remove(events.size() - 1);
    for (int i = 0; i < remarks.length; i++) {
      Remark remark = remarks[i];
      long at = session.match().allIn() + remark.minute() * 60_000L;
      events.add(remark.event().apply(new Stamp("r" + (i + 1), at, remark.line(), remark.note())));
    }
    events.add(allOut);
    return session.withEvents(events);
  }
}
