package org.fadeline.ui.replay;

import java.time.ZoneId;
import java.util.List;
import java.util.Set;
import org.fadeline.model.EventEdits;
import org.fadeline.replay.Playhead.Range;
import org.fadeline.ui.control.Say;
import org.fadeline.ui.state.OpenSession;
import org.fadeline.ui.state.Workbench;

/** What the replay screen does with the pointer's gestures. */
final class ReplayHost implements TimelineGestures.Host {
  private final Workbench bench;
  private final ReplayScreen screen;

  ReplayHost(Workbench bench, ReplayScreen screen) {
    this.bench = bench;
    this.screen = screen;
  }

  @Override
  public Range shown() {
    return screen.shown();
  }

  @Override
  public void show(Range range) {
    screen.show(range);
  }

  @Override
  public Range whole() {
    return screen.whole();
  }

  @Override
  public boolean mayEdit() {
    return bench.editing().allowed();
  }

  @Override
  public List<String> movedWords(String eventId, long millis) {
    OpenSession open = bench.state().open();
    Set<String> ids = movedIds(eventId);
    if (open == null) {
      return List.of();
    }
    String by = (millis < 0 ? "−" : "+") + Say.difference(millis);
    if (ids.size() > 1) {
      return List.of(ids.size() + " events, " + by);
    }
    return open.session().events().stream()
        .filter(e -> e.id().equals(eventId))
        .map(e -> Say.clock(e.at() + millis, open.session().occasion().zone()) + "  (" + by + ")")
        .toList();
  }

  private Set<String> movedIds(String eventId) {
    Set<String> picked = bench.state().selection().events();
    return picked.contains(eventId) ? picked : Set.of(eventId);
  }

  @Override
  public void move(String eventId, long millis) {
    Set<String> ids = movedIds(eventId);
    String what =
        ids.size() == 1 ? Inspector.kindOf(bench.state(), eventId) : ids.size() + " events";
    bench.editing().edit("Move " + what, EventEdits.shift(ids, millis));
  }

  @Override
  public String loopWords(long from, long to) {
    OpenSession open = bench.state().open();
    if (open == null) {
      return "";
    }
    ZoneId zone = open.session().occasion().zone();
    return Say.clock(from, zone) + " to " + Say.clock(to, zone) + ", " + Say.difference(to - from);
  }
}
