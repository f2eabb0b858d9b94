package org.fadeline.ui.setup;

import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import java.util.Optional;
import java.util.function.Consumer;
import java.util.function.UnaryOperator;
import javafx.geometry.Pos;
import javafx.scene.Node;
import javafx.scene.control.Button;
import javafx.scene.control.ComboBox;
import javafx.scene.control.Label;
import javafx.scene.control.ScrollPane;
import javafx.scene.control.TextField;
import javafx.scene.control.ToggleButton;
import javafx.scene.layout.FlowPane;
import javafx.scene.layout.HBox;
import javafx.scene.layout.Priority;
import javafx.scene.layout.Region;
import javafx.scene.layout.VBox;
import org.fadeline.figure.Theme;
import org.fadeline.model.Line;
import org.fadeline.model.Session;
import org.fadeline.model.Units;
import org.fadeline.ui.control.Labels;
import org.fadeline.ui.control.LineBar;
import org.fadeline.ui.control.Nodes;
import org.fadeline.ui.control.Say;
import org.fadeline.ui.control.form.Entry;
import org.fadeline.ui.control.form.EntryBox;
import org.jspecify.annotations.Nullable;

/** The lines of the match, and one of them with its place and rig. */
final class LinesPane {
  private static final List<String> KINDS =
      List.of(
          "",
          "edge",
          "margin",
          "shallow",
          "deck",
          "short line",
          "long line",
          "waggler",
          "feeder",
          "bomb",
          "whip");

  private final VBox list = new VBox(2);
  private final VBox detail = new VBox(8);
  private final ScrollPane view;
  private final EntryBox.Commit<Session> commit;
  private final Consumer<String> tell;
  private final Consumer<@Nullable String> chosen;
  private final List<Form> forms = new ArrayList<>();
  private final Label balance = Labels.wrapped("", "quiet");
  private final ComboBox<String> kind = new ComboBox<>();
  private final ComboBox<String> spot = new ComboBox<>();
  private final Button add = new Button("Add a line");
  private final Button remove = new Button("Remove");
  private final Button up = new Button("Up");
  private final Button down = new Button("Down");
  private Session session;
  private @Nullable String picked;
  private @Nullable String built;
  private boolean filling;

  /**
   * Makes the pane.
   *
   * @param session what is shown first
   * @param tell says a line of news
   * @param chosen is told which line is picked
   */
  LinesPane(
      Session session,
      EntryBox.Commit<Session> commit,
      Consumer<String> tell,
      Consumer<@Nullable String> chosen) {
    this.session = session;
    this.commit = commit;
    this.tell = tell;
    this.chosen = chosen;
    balance.setId("rig-balance");
    kind.getItems().setAll(KINDS);
    kind.setEditable(true);
    box(kind, "line-kind", "Kind of line");
    box(spot, "line-spot", "Shares its feed with");
    kind.setOnAction(e -> onPicked("Set kind", l -> l.withKind(orNull(kind.getValue()))));
    spot.setOnAction(e -> share());
    button(add, "add-line", this::add);
    button(remove, "remove-line", this::remove);
    button(up, "line-up", () -> move(-1));
    button(down, "line-down", () -> move(1));
    FlowPane buttons = new FlowPane(6, 6, add, up, down, remove);
    VBox body = new VBox(8, Labels.wrapped("Lines", "title"), list, buttons, detail);
    body.setStyle("-fx-padding: 1em 1.1em 1.2em 1.1em;");
    view = Nodes.scroll(body);
  }

  /** Adds a line, whose name is typed next. */
  private void add() {
    commit.change("Add a line", SetupLines::added);
    if (detail.lookup("#line-name") instanceof TextField name) {
      name.requestFocus();
      name.selectAll();
    }
  }

  private static void box(ComboBox<String> box, String id, String words) {
    box.setId(id);
    box.setAccessibleText(words);
    box.setMaxWidth(Double.MAX_VALUE);
  }

  private static void button(Button button, String id, Runnable action) {
    button.setId(id);
    button.setMinWidth(Region.USE_PREF_SIZE);
    button.setOnAction(e -> action.run());
  }

  private static @Nullable String orNull(@Nullable String text) {
    return text == null || text.isBlank() ? null : text.strip();
  }

  Node view() {
    return view;
  }

  void show(Session newSession, Units units, boolean editable) {
    boolean grown = newSession.lines().size() == session.lines().size() + 1;
    session = newSession;
    List<Line> lines = newSession.lines();
    if (grown && !lines.isEmpty()) {
      picked = lines.get(lines.size() - 1).id();
    }
    if (picked == null || newSession.line(picked).isEmpty()) {
      picked = lines.isEmpty() ? null : lines.get(0).id();
    }
    List<Node> rows = new ArrayList<>();
    for (int i = 0; i < lines.size(); i++) {
      rows.add(row(lines.get(i), i, units));
    }
    if (rows.isEmpty()) {
      rows.add(Labels.wrapped("No line yet. Add one, then put it on the water.", "quiet"));
    }
    list.getChildren().setAll(rows);
    build();
    filling = true;
    Optional<Line> line = picked == null ? Optional.empty() : newSession.line(picked);
    line.ifPresent(this::fill);
    filling = false;
    if (line.isPresent()) {
      forms.forEach(f -> f.show(newSession, units, editable));
    }
    add.setDisable(!editable);
    for (Node node : List.of(remove, up, down, kind, spot)) {
      node.setDisable(!editable || line.isEmpty());
    }
    chosen.accept(picked);
  }

  /** Picks a line, such as one pressed on the water. */
  void pick(String id, Units units, boolean editable) {
    picked = id;
    show(session, units, editable);
  }

  private ToggleButton row(Line line, int place, Units units) {
    Label letter = Labels.line(Theme.letter(place), "strong");
    LineBar bar = new LineBar().of(place);
    bar.setMinHeight(18);
    HBox cue = new HBox(6, bar, letter);
    cue.setAlignment(Pos.CENTER_LEFT);
    ToggleButton row = new ToggleButton(Say.line(line, units));
    row.setGraphic(cue);
    row.getStyleClass().setAll("row-button", "line-row");
    row.setId("line-row-" + line.id());
    row.setMaxWidth(Double.MAX_VALUE);
    row.setAccessibleText("Line " + Theme.letter(place) + ", " + Say.line(line, units));
    row.setSelected(line.id().equals(picked));
    row.setOnAction(e -> pick(line.id(), units, !add.isDisabled()));
    return row;
  }

  private void build() {
    if (Objects.equals(picked, built)) {
      return;
    }
    built = picked;
    forms.clear();
    detail.getChildren().clear();
    String id = picked;
    if (id == null) {
      return;
    }
    HBox choices = new HBox(10, named("Kind", kind), named("Shares its feed with", spot));
    detail
        .getChildren()
        .addAll(
            form(1, List.of(LineEntries.name(id))),
            choices,
            form(2, LineEntries.place(id)),
            Labels.wrapped("Rig", "title"),
            form(2, LineEntries.rig(id)),
            balance);
  }

  private Node form(int columns, List<Entry<Session>> entries) {
    Form form = new Form(columns, entries, commit);
    forms.add(form);
    return form.view();
  }

  private static VBox named(String words, Node node) {
    VBox box = new VBox(2, Labels.wrapped(words, "quiet"), node);
    HBox.setHgrow(box, Priority.ALWAYS);
    box.setPrefWidth(150);
    return box;
  }

  private void fill(Line line) {
    kind.setValue(line.kind() == null ? "" : line.kind());
    List<String> names = new ArrayList<>(List.of(""));
    session.lines().stream()
        .filter(l -> !l.id().equals(line.id()) && l.spot().equals(l.id()))
        .forEach(l -> names.add(l.name()));
    spot.getItems().setAll(names);
    spot.setValue(
        line.spot().equals(line.id()) ? "" : session.line(line.spot()).map(Line::name).orElse(""));
    String words = LineEntries.balance(line.rig());
    balance.setText(words);
    balance.setManaged(!words.isEmpty());
  }

  private void onPicked(String name, UnaryOperator<Line> change) {
    String id = picked;
    if (id != null && !filling) {
      commit.change(name, s -> SetupLines.replace(s, id, change));
    }
  }

  private void share() {
    String name = orNull(spot.getValue());
    onPicked(
        "Share feed",
        l ->
            l.withSpot(
                session.lines().stream()
                    .filter(o -> o.name().equals(name))
                    .map(Line::id)
                    .findFirst()
                    .orElse(l.id())));
  }

  private void move(int by) {
    String id = picked;
    if (id != null) {
      commit.change("Move a line in the list", s -> SetupLines.moved(s, id, by));
    }
  }

  private void remove() {
    String id = picked;
    if (id == null) {
      return;
    }
    long events = SetupLines.eventsOn(session, id);
    if (events > 0) {
      tell.accept(
          Say.count((int) events, "event")
              + " happened on "
              + SetupLines.line(session, id).name()
              + "; put them on another line first, on the Replay screen");
    } else {
      commit.change("Remove a line", s -> SetupLines.removed(s, id));
    }
  }
}
