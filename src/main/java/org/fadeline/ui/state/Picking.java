package org.fadeline.ui.state;

import java.util.ArrayList;
import java.util.Collections;
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

  /** Adds the events of a mark to what is picked, or takes them away where all of them are. */
  public void toggle(List<String> ids) {
    bench.change(
        s -> {
          Set<String> picked = new LinkedHashSet<>(s.selection().events());
          if (picked.containsAll(ids)) {
            ids.forEach(picked::remove);
          } else {
            ids.stream().filter(id -> has(s, id)).forEach(picked::add);
          }
          return s.withSelection(s.selection().withEvents(picked, last(picked)));
        });
  }

  /** Picks everything in time between the event picked last and those of a mark, all included. */
  public void extend(List<String> ids) {
    bench.change(
        s -> {
          String lead = s.selection().lead();
          OpenSession open = s.open();
          List<String> all =
              open == null
                  ? List.of()
                  : open.session().events().stream().map(SessionEvent::id).toList();
          int from = lead == null ? -1 : all.indexOf(lead);
          List<Integer> places = ids.stream().map(all::indexOf).filter(i -> i >= 0).toList();
          if (places.isEmpty()) {
            return s;
          }
          if (from < 0) {
            return s.withSelection(s.selection().withEvents(new LinkedHashSet<>(ids), ids.get(0)));
          }
          int first = Math.min(from, Collections.min(places));
          int last = Math.max(from, Collections.max(places));
          Set<String> between = new LinkedHashSet<>(all.subList(first, last + 1));
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
