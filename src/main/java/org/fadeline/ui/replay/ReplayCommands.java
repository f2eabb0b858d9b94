package org.fadeline.ui.replay;

import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import org.fadeline.model.EventEdits;
import org.fadeline.model.SessionEvent;
import org.fadeline.replay.Playhead.Range;
import org.fadeline.ui.control.command.Command;
import org.fadeline.ui.control.command.Undoing;
import org.fadeline.ui.state.OpenSession;
import org.fadeline.ui.state.Transport;
import org.fadeline.ui.state.Workbench;
import org.fadeline.ui.state.WorkbenchState;
import org.jspecify.annotations.Nullable;

/** The commands of the replay screen, with their keys. */
final class ReplayCommands {
  private static final String PLAY = "Play";
  private static final String LOOK = "Look";
  private static final String PICK = "Pick";
  private static final String EDIT = "Edit";
  private static final long MINUTE = 60_000;

  /** A range shorter than this is not worth a loop, milliseconds. */
  static final long SHORTEST_LOOP = 1000;

  private final Workbench bench;
  private final ReplayScreen screen;

  ReplayCommands(Workbench bench, ReplayScreen screen) {
    this.bench = bench;
    this.screen = screen;
  }

  List<Command> all() {
    List<Command> all = new ArrayList<>(own());
    all.addAll(Undoing.of(EDIT, bench));
    return all;
  }

  private List<Command> own() {
    Transport t = bench.transport();
    return List.of(
        Command.of(PLAY, "Play or pause", t::toggle, "Space"),
        Command.of(PLAY, "Next event", () -> t.step(true), "Right"),
        Command.of(PLAY, "Previous event", () -> t.step(false), "Left"),
        Command.of(PLAY, "A minute on", () -> t.nudge(MINUTE), "Shift+Right"),
        Command.of(PLAY, "A minute back", () -> t.nudge(-MINUTE), "Shift+Left"),
        Command.of(PLAY, "Next turning point", () -> t.turningPoint(true), "Shortcut+Right", "N"),
        Command.of(
            PLAY, "Previous turning point", () -> t.turningPoint(false), "Shortcut+Left", "P"),
        Command.of(PLAY, "To the start", t::toStart, "Home"),
        Command.of(PLAY, "To the end", t::toEnd, "End"),
        Command.of(PLAY, "Faster", () -> t.faster(true), "Plus", "Equals", "Add"),
        Command.of(PLAY, "Slower", () -> t.faster(false), "Minus", "Subtract"),
        Command.of(
            PLAY,
            "Forwards or backwards",
            () -> t.reverse(!bench.state().playhead().motion().reverse()),
            "R"),
        Command.of(PLAY, "Loop picked, or between cursors", this::toggleLoop, "L"),
        Command.of(PLAY, "Type a time to go to", screen::focusTypedTime, "G"),
        Command.of(
            LOOK,
            "As known then, or with hindsight",
            () -> bench.hindsight(!bench.state().choices().hindsight()),
            "H"),
        Command.of(LOOK, "Closer", () -> zoom(0.5), "Shortcut+Plus", "Shortcut+Equals"),
        Command.of(LOOK, "Farther", () -> zoom(2), "Shortcut+Minus"),
        Command.of(LOOK, "The whole match", () -> screen.show(screen.whole()), "Shortcut+0", "0"),
        Command.of(LOOK, "Onto what is picked", this::zoomOnto, "Z"),
        Command.of(LOOK, "Earlier", () -> pan(-1), "Page_Up"),
        Command.of(LOOK, "Later", () -> pan(1), "Page_Down"),
        Command.of(PICK, "Second cursor here, or none", this::toggleMark, "M"),
        Command.of(PICK, "Pick the next event", () -> pickNext(1), "Period"),
        Command.of(PICK, "Pick the event before", () -> pickNext(-1), "Comma"),
        Command.of(
            PICK, "Pick every event shown", () -> pickEverything(Long.MIN_VALUE), "Shortcut+A"),
        Command.of(
            PICK,
            "Pick every event shown from here on",
            () -> pickEverything(bench.state().playhead().at()),
            "Shortcut+Shift+A"),
        Command.of(PICK, "Pick nothing", () -> bench.picking().none(), "Esc"),
        Command.of(EDIT, "Delete what is picked", this::delete, "Delete", "Back_Space"),
        Command.of(EDIT, "A second later", () -> shift(1000), "Alt+Right"),
        Command.of(EDIT, "A second earlier", () -> shift(-1000), "Alt+Left"),
        Command.of(EDIT, "Edit what is picked", screen::focusInspector, "Enter"));
  }

  private void delete() {
    Set<String> ids = bench.state().selection().events();
    if (!ids.isEmpty()) {
      bench.editing().edit("Delete " + named(ids), EventEdits.remove(ids));
      bench.picking().none();
    }
  }

  private void shift(long millis) {
    Set<String> ids = bench.state().selection().events();
    if (!ids.isEmpty()) {
      bench.editing().edit("Move " + named(ids), EventEdits.shift(ids, millis));
    }
  }

  private String named(Set<String> ids) {
    return ids.size() == 1
        ? Inspector.kindOf(bench.state(), ids.iterator().next())
        : ids.size() + " events";
  }

  private void zoom(double factor) {
    Range shown = screen.shown();
    long at = bench.state().playhead().at();
    long about = shown.holds(at) ? at : shown.from() + shown.millis() / 2;
    screen.show(Zoom.about(shown, screen.whole(), about, factor));
  }

  private void pan(int way) {
    Range shown = screen.shown();
    screen.show(Zoom.pan(shown, screen.whole(), way * shown.millis() / 2));
  }

  private void zoomOnto() {
    Range stretch = pickedStretch(bench.state());
    if (stretch != null) {
      screen.show(Zoom.onto(stretch, screen.whole()));
    }
  }

  void toggleLoop() {
    WorkbenchState s = bench.state();
    if (s.playhead().motion().loop() != null) {
      bench.transport().loop(null);
      return;
    }
    Long mark = s.selection().mark();
    Range stretch = pickedStretch(s);
    if (stretch == null && mark != null) {
      stretch = Range.between(mark, s.playhead().at());
    }
    if (stretch == null || stretch.millis() < SHORTEST_LOOP) {
      bench.tell(
          "Drag along the clock with Shift, pick some events, or set the second cursor with M");
    } else {
      bench.transport().loop(stretch);
    }
  }

  /** Returns the stretch from the first event picked to the last, or null with fewer than two. */
  private static @Nullable Range pickedStretch(WorkbenchState s) {
    OpenSession open = s.open();
    Set<String> ids = s.selection().events();
    if (open == null || ids.isEmpty()) {
      return null;
    }
    long from = Long.MAX_VALUE;
    long to = Long.MIN_VALUE;
    for (SessionEvent event : open.session().events()) {
      if (ids.contains(event.id())) {
        from = Math.min(from, event.at());
        to = Math.max(to, event.at());
      }
    }
    return from <= to ? new Range(from, to) : null;
  }

  private void toggleMark() {
    bench
        .picking()
        .mark(bench.state().selection().mark() == null ? bench.state().playhead().at() : null);
  }

  /**
   * Picks what is known at the playhead, or all with hindsight, on the lanes that are shown.
   *
   * @param from nothing earlier than this instant, epoch milliseconds
   */
  private void pickEverything(long from) {
    WorkbenchState s = bench.state();
    OpenSession open = s.open();
    if (open == null) {
      return;
    }
    long until = s.choices().hindsight() ? Long.MAX_VALUE : s.playhead().at();
    bench
        .picking()
        .pickAll(
            open.session().events().stream()
                .filter(e -> e.at() >= from && e.at() <= until && isShown(s, e.lineId()))
                .map(SessionEvent::id)
                .toList());
  }

  private static boolean isShown(WorkbenchState s, @Nullable String lineId) {
    return lineId == null || !s.choices().hiddenLines().contains(lineId);
  }

  private void pickNext(int way) {
    WorkbenchState s = bench.state();
    OpenSession open = s.open();
    if (open == null || open.session().events().isEmpty()) {
      return;
    }
    List<SessionEvent> events = open.session().events();
    String lead = s.selection().lead();
    int index = -1;
    for (int i = 0; lead != null && i < events.size(); i++) {
      if (events.get(i).id().equals(lead)) {
        index = i + way;
      }
    }
    if (lead == null || (index == -1 && way > 0)) {
      int seen = open.track().eventsSeen(s.playhead().at());
      index = Math.max(0, seen - 1);
    }
    index = Math.max(0, Math.min(events.size() - 1, index));
    bench.picking().pick(events.get(index).id());
    bench.transport().seek(events.get(index).at());
  }
}
