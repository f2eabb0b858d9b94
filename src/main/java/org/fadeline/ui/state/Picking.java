package org.fadeline.ui.state;

import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;
import org.fadeline.model.SessionEvent;
import org.jspecify.annotations.Nullable;

/** The commands that pick events and set the second cursor. */
public final class Picking {
  private final Workbench bench;

  Picking(Workbench bench) {
    this.bench = bench;
  }

  /** Picks one event and nothing else; an id that is not in the session picks nothing. */
  public void pick(String id) {
    bench.change(
        s ->
            has(s, id)
                ? s.withSelection(s.selection().withEvents(Set.of(id), id))
                : s.withSelection(s.selection().withEvents(Set.of(), null)));
  }

  /** Adds an event to what is picked, or takes it away. */
  public void toggle(String id) {
    bench.change(
        s -> {
          Set<String> picked = new LinkedHashSet<>(s.selection().events());
          if (!picked.remove(id) && has(s, id)) {
            picked.add(id);
          }
          return s.withSelection(
              s.selection().withEvents(picked, picked.contains(id) ? id : last(picked)));
        });
  }

  /** Picks everything in time between the event picked last and this one, both included. */
  public void extend(String id) {
    bench.change(
        s -> {
          String lead = s.selection().lead();
          OpenSession open = s.open();
          if (open == null || lead == null || !has(s, id)) {
            return has(s, id) ? s.withSelection(s.selection().withEvents(Set.of(id), id)) : s;
          }
          List<String> ids = open.session().events().stream().map(SessionEvent::id).toList();
          int a = ids.indexOf(lead);
          int b = ids.indexOf(id);
          if (a < 0) {
            return s.withSelection(s.selection().withEvents(Set.of(id), id));
          }
          Set<String> between =
              new LinkedHashSet<>(ids.subList(Math.min(a, b), Math.max(a, b) + 1));
          return s.withSelection(s.selection().withEvents(between, lead));
        });
  }

  /** Picks every one of these events. */
  public void pickAll(List<String> ids) {
    bench.change(
        s ->
            s.withSelection(
                s.selection()
                    .withEvents(
                        new LinkedHashSet<>(ids), ids.isEmpty() ? null : ids.get(ids.size() - 1))));
  }

  /** Picks nothing. */
  public void none() {
    bench.change(s -> s.withSelection(s.selection().withEvents(Set.of(), null)));
  }

  /** Sets the second cursor, or takes it away. */
  public void mark(@Nullable Long at) {
    bench.change(
        s ->
            s.withSelection(
                s.selection().withMark(at == null ? null : s.playhead().range().clamp(at))));
  }

  private static boolean has(WorkbenchState s, String id) {
    OpenSession open = s.open();
    return open != null && open.session().events().stream().anyMatch(e -> e.id().equals(id));
  }

  private static @Nullable String last(Set<String> ids) {
    return ids.isEmpty() ? null : new ArrayList<>(ids).get(ids.size() - 1);
  }
}
