package org.fadeline.ui.replay;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import javafx.geometry.Pos;
import javafx.scene.Node;
import javafx.scene.control.Button;
import javafx.scene.control.ComboBox;
import javafx.scene.control.TextField;
import javafx.scene.layout.HBox;
import javafx.scene.layout.Region;
import org.fadeline.model.EventEdits;
import org.fadeline.model.EventKind;
import org.fadeline.model.Line;
import org.fadeline.model.Session;
import org.fadeline.model.SessionEvent;
import org.fadeline.model.WeightText;
import org.fadeline.ui.control.Labels;
import org.fadeline.ui.control.Nodes;
import org.fadeline.ui.control.Say;
import org.fadeline.ui.control.Watch;
import org.fadeline.ui.control.form.OneChoice;
import org.fadeline.ui.control.form.Worded;
import org.fadeline.ui.state.OpenSession;
import org.fadeline.ui.state.PreferenceStore;
import org.fadeline.ui.state.Workbench;
import org.fadeline.ui.state.WorkbenchState;
import org.jspecify.annotations.Nullable;

/** What is picked, with everything about it that can be changed. */
final class Inspector {
  private static final String NOTHING_PICKED = "A click picks an event, Shift a stretch of them";

  private final Workbench bench;
  private final PreferenceStore preferences;
  private final HBox view = new HBox(10);
  private final BulkEdit bulk;
  private final Runnable leave;

  /**
   * Makes the row.
   *
   * @param leave takes the focus where nothing is picked any more
   */
  Inspector(Workbench bench, PreferenceStore preferences, Runnable leave) {
    this.bench = bench;
    this.leave = leave;
    this.preferences = preferences;
    bulk = new BulkEdit(bench);
    view.setAlignment(Pos.CENTER_LEFT);
    view.getStyleClass().add("inspector");
    Watch.part(
        bench.stateProperty(),
        s -> new Shown(s.open(), s.selection().events()),
        shown -> show(shown.open, shown.ids));
    Watch.part(preferences.property(), p -> p.units(), u -> showNow());
  }

  private record Shown(@Nullable OpenSession open, Set<String> ids) {}

  HBox view() {
    return view;
  }

  /** Returns the kind of an event in words, or "event" where it is gone. */
  static String kindOf(WorkbenchState state, String id) {
    OpenSession open = state.open();
    return open == null
        ? "event"
        : open.session().events().stream()
            .filter(e -> e.id().equals(id))
            .findFirst()
            .map(e -> e.kind().word())
            .orElse("event");
  }

  void takeFocus() {
    view.getChildren().stream()
        .filter(n -> n instanceof TextField)
        .findFirst()
        .ifPresent(Node::requestFocus);
  }

  private void showNow() {
    show(bench.state().open(), bench.state().selection().events());
  }

  private void show(@Nullable OpenSession open, Set<String> ids) {
    List<SessionEvent> picked =
        open == null
            ? List.of()
            : open.session().events().stream().filter(e -> ids.contains(e.id())).toList();
    // Its place is kept while nothing is picked: the lanes must not move under the pointer.
    view.setVisible(open != null);
    boolean inHand = hasFocus();
    if (open == null || picked.isEmpty()) {
      String drag = bench.editing().allowed() ? "; drag one to move it in time" : "";
      view.getChildren().setAll(Labels.line(NOTHING_PICKED + drag, "quiet"));
      if (inHand) {
        leave.run();
      }
      return;
    }
    List<Node> parts = new ArrayList<>();
    Session session = open.session();
    if (open.source().readOnly() != null) {
      parts.add(Labels.line(described(picked), "strong"));
      parts.add(Labels.line("read-only: " + open.source().readOnly(), "quiet"));
    } else if (picked.size() == 1) {
      one(session, picked.get(0), parts);
    } else {
      parts.add(Labels.line(described(picked), "strong"));
      parts.addAll(bulk.fields(session, picked));
      parts.add(lines(session, ids, null));
      parts.add(bulk.preview());
    }
    Region space = Nodes.gap();
    parts.add(space);
    if (bench.editing().allowed()) {
      Button delete = new Button("Delete");
      delete.setAccessibleText("Delete what is picked");
      delete.setOnAction(
          e -> {
            String what =
                picked.size() == 1 ? picked.get(0).kind().word() : picked.size() + " events";
            bench.editing().edit("Delete " + what, EventEdits.remove(ids));
            bench.picking().none();
          });
      parts.add(delete);
    }
    String focused = inHand ? focused() : null;
    view.getChildren().setAll(parts);
    if (focused != null) {
      // Each change makes the parts anew; the hand is still at the one it changed.
      parts.stream()
          .filter(n -> focused.equals(n.getAccessibleText()))
          .findFirst()
          .ifPresent(Node::requestFocus);
    }
  }

  /** Asked of the scene: a row whose focused part was taken out still says it has the focus. */
  private boolean hasFocus() {
    Node at = view.getScene() == null ? null : view.getScene().getFocusOwner();
    while (at != null && at != view) {
      at = at.getParent();
    }
    return at != null;
  }

  private @Nullable String focused() {
    return view.getChildren().stream()
        .filter(n -> n.isFocused() || n.isFocusWithin())
        .findFirst()
        .map(Node::getAccessibleText)
        .orElse(null);
  }

  private static String described(List<SessionEvent> picked) {
    return picked.size() == 1 ? picked.get(0).kind().word() : picked.size() + " events picked";
  }

  private void one(Session session, SessionEvent event, List<Node> parts) {
    Set<String> ids = Set.of(event.id());
    TextField time =
        new TypedField(
            Say.clock(event.at(), session.occasion().zone()),
            7,
            "Time of the event",
            text -> retime(session, event, text));
    time.setId("event-time");
    ComboBox<EventKind> kinds = new ComboBox<>();
    kinds.getItems().setAll(EventKind.values());
    kinds.setConverter(new Worded<>(EventKind::word));
    kinds.setValue(event.kind());
    kinds.setId("event-kind");
    kinds.setAccessibleText("Kind of event");
    OneChoice.of(
        kinds,
        kind -> {
          if (kind != null) {
            bench
                .editing()
                .edit(
                    "Change " + event.kind().word() + " to " + kind.word(),
                    EventEdits.kind(ids, kind));
          }
        });
    parts.add(time);
    parts.add(kinds);
    parts.add(lines(session, ids, event.lineId()));
    if (event.fishOrNull() != null) {
      parts.add(weight(event));
    }
    if (hasReason(event.kind())) {
      parts.add(reason(event));
    }
    TextField note =
        new TypedField(
            event.note() == null ? "" : event.note(),
            16,
            "Words on the event",
            text -> {
              bench
                  .editing()
                  .edit("Note on " + event.kind().word(), EventEdits.note(event.id(), text));
              return true;
            });
    note.setPromptText("note");
    parts.add(note);
  }

  private static boolean hasReason(EventKind kind) {
    return switch (kind) {
      case MOVE, OFF, STOPPED -> true;
      default -> false;
    };
  }

  /** Why a line was left and the like: the usual words to choose from, or own ones typed. */
  private ComboBox<String> reason(SessionEvent event) {
    ComboBox<String> box = new ComboBox<>();
    if (event.kind() == EventKind.MOVE) {
      box.getItems().setAll(SessionEvent.Move.USUAL_REASONS);
    }
    box.setEditable(true);
    box.setPromptText("reason");
    box.setPrefWidth(130);
    box.setId("event-reason");
    box.setAccessibleText("Reason");
    String now = event.reasonOrNull();
    box.setValue(now == null ? "" : now);
    OneChoice.of(
        box,
        reason ->
            bench
                .editing()
                .edit(
                    "Reason of " + event.kind().word(),
                    EventEdits.reason(event.id(), reason == null ? "" : reason)));
    return box;
  }

  private boolean retime(Session session, SessionEvent event, String text) {
    Optional<Long> at = Say.typedTime(text, event.at(), session.occasion().zone());
    if (at.isEmpty()) {
      bench.tell("“" + text + "” is not a clock time; type it as 12:48:30");
      return false;
    }
    // What is typed is to the second; the milliseconds stay where the second does.
    long millis = at.get() - Math.floorDiv(event.at(), 1000) * 1000;
    bench
        .editing()
        .edit("Move " + event.kind().word(), EventEdits.shift(Set.of(event.id()), millis));
    return true;
  }

  private Node weight(SessionEvent event) {
    var units = preferences.get().units();
    var fish = event.fishOrNull();
    Double grams = fish == null ? null : fish.grams();
    TextField field =
        new TypedField(
            grams == null ? "" : Say.fishWeight(grams, units),
            9,
            "Weight of the fish",
            text -> reweigh(event, text));
    field.setPromptText("weight");
    field.setId("event-weight");
    return field;
  }

  private boolean reweigh(SessionEvent event, String text) {
    try {
      Double typed =
          text.isBlank()
              ? null
              : WeightText.grams(text.strip(), preferences.get().units().weight());
      bench.editing().edit("Weight of fish", EventEdits.weight(event.id(), typed));
      return true;
    } catch (IllegalArgumentException notAWeight) {
      bench.tell(String.valueOf(notAWeight.getMessage()));
      return false;
    }
  }

  private ComboBox<Optional<Line>> lines(Session session, Set<String> ids, @Nullable String now) {
    ComboBox<Optional<Line>> box = new ComboBox<>();
    box.getItems().add(Optional.empty());
    session.lines().forEach(line -> box.getItems().add(Optional.of(line)));
    box.setConverter(new Worded<>(l -> l.map(x -> Say.capital(x.name())).orElse("no line")));
    box.setValue(now == null ? null : session.line(now));
    if (now == null && ids.size() == 1) {
      box.setValue(Optional.empty());
    }
    box.setPromptText("line");
    box.setAccessibleText("Line of what is picked");
    OneChoice.of(
        box,
        line -> {
          if (line != null) {
            String id = line.map(Line::id).orElse(null);
            String name = line.map(l -> "to " + l.name()).orElse("off its line");
            bench.editing().edit("Put " + name, EventEdits.line(ids, id));
          }
        });
    return box;
  }

  static TextField field(String text, int columns, String words) {
    TextField field = new TextField(text);
    field.setPrefColumnCount(columns);
    field.setMinWidth(Region.USE_PREF_SIZE);
    field.setAccessibleText(words);
    return field;
  }
}
