package org.fadeline.ui.imports;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import org.fadeline.io.FreshIds;
import org.fadeline.model.Line;
import org.fadeline.model.Outcome;
import org.fadeline.model.Session;
import org.fadeline.model.SessionEvent;
import org.fadeline.model.Stamp;
import org.jspecify.annotations.Nullable;

/** Adds the events of one session to another, on its lines where they have the same name. */
final class Joining {
  private final List<Line> lines;
  private final List<SessionEvent> events;
  private final Map<String, String> lineIds = new HashMap<>();

  private Joining(Session into) {
    lines = new ArrayList<>(into.lines());
    events = new ArrayList<>(into.events());
  }

  /**
   * Returns a session with the events of another added. Lines are told apart by name without regard
   * to case; events get ids of their own; an event that is there already, the same in everything
   * but its id, is left out. The frame, the water and the weigh-in stay; corrections of clocks are
   * kept.
   */
  static Session add(Session into, Session from) {
    Joining joining = new Joining(into);
    Set<String> used = new HashSet<>();
    from.events().forEach(e -> Optional.ofNullable(e.lineId()).ifPresent(used::add));
    from.lines().stream().filter(line -> used.contains(line.id())).forEach(joining::line);
    joining.events(from.events());
    Outcome outcome = into.outcome();
    for (Outcome.Imported one : from.outcome().imports()) {
      outcome = outcome.withImport(one);
    }
    return into.withLines(joining.lines).withEvents(joining.events).withOutcome(outcome);
  }

  private void line(Line line) {
    for (Line there : lines) {
      if (there.name().strip().equalsIgnoreCase(line.name().strip())) {
        lineIds.put(line.id(), there.id());
        return;
      }
    }
    Set<String> taken = new HashSet<>();
    for (Line there : lines) {
      taken.add(there.id());
      taken.add(there.spot());
    }
    String id = line.id();
    for (int i = 2; taken.contains(id); i++) {
      id = line.id() + "-" + i;
    }
    lineIds.put(line.id(), id);
    lines.add(new Line(id, line.name(), line.kind(), id, line.place(), line.rig()));
  }

  private void events(List<SessionEvent> added) {
    Set<String> taken = new HashSet<>();
    Set<SessionEvent> there = new HashSet<>();
    for (SessionEvent event : events) {
      taken.add(event.id());
      there.add(unnamed(event, event.lineId()));
    }
    FreshIds fresh = new FreshIds(taken);
    for (SessionEvent event : added) {
      String line = event.lineId() == null ? null : lineIds.get(event.lineId());
      if (!there.contains(unnamed(event, line))) {
        Stamp stamp = new Stamp(fresh.next(), event.at(), line, event.note());
        events.add(event.withStamp(stamp));
      }
    }
  }

  private static SessionEvent unnamed(SessionEvent event, @Nullable String line) {
    return event.withStamp(new Stamp("", event.at(), line, event.note()));
  }
}
