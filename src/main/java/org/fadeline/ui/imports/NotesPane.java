package org.fadeline.ui.imports;

import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.function.Consumer;
import java.util.function.Supplier;
import java.util.function.UnaryOperator;
import javafx.geometry.Insets;
import javafx.geometry.Pos;
import javafx.scene.Node;
import javafx.scene.control.Button;
import javafx.scene.control.Label;
import javafx.scene.control.TextArea;
import javafx.scene.layout.BorderPane;
import javafx.scene.layout.HBox;
import javafx.scene.layout.Priority;
import javafx.scene.layout.Region;
import javafx.scene.layout.VBox;
import org.fadeline.model.EventText;
import org.fadeline.model.Session;
import org.fadeline.model.SessionEvent;
import org.fadeline.ui.control.Labels;
import org.fadeline.ui.control.Nodes;
import org.fadeline.ui.control.Say;
import org.fadeline.ui.control.table.DataTable;
import org.fadeline.ui.imports.Draft.Verdict;
import org.fadeline.ui.state.PreferenceStore;
import org.fadeline.ui.state.Workbench;
import org.jspecify.annotations.Nullable;

/** Notes beside the events they seem to tell, each accepted, changed or refused. */
final class NotesPane {
  private static final String SURE =
      "Read from words, and wrong at times: of notes the reader had not seen before, some four"
          + " proposals in five were right, and one event in four was missed. Look at each.";

  private static final String EXAMPLE =
      """
      10:00 all in
      10:42 short fed 10 pellets
      10:51 short landed carp 8lb 4oz
      11:20 short move dead""";

  private final Workbench bench;
  private final PreferenceStore preferences;
  private final Landing landing;
  private final BorderPane view = new BorderPane();
  private final TextArea typed = new TextArea();
  private final DataTable<SessionEvent> proposals =
      new DataTable<SessionEvent>("Proposed events", "No notes yet.")
          .words("Decided", 80, e -> draft().map(d -> d.word(e)).orElse(""))
          .words("Time", 75, e -> clockOf(e))
          .words("Event", 80, e -> e.kind().word())
          .words("Line", 100, e -> lineName(e))
          .words("What", 140, e -> details(e))
          .numbers("Sure", 60, e -> sure(e), e -> Math.round(100 * sure(e)) + "%")
          .words("Said or written", 360, e -> draft().map(d -> d.said().get(e.id())).orElse(""));
  private final NoteReading reading;
  private final ProposalEditor editor;
  private final DeviceClock clock;
  private final Label summary = new Label();
  private final Button found = new Button();
  private final Button begin = new Button("Open as a new match");
  private final Button add;
  private @Nullable Draft draft;

  NotesPane(Workbench bench, PreferenceStore preferences, Landing landing) {
    this.bench = bench;
    this.preferences = preferences;
    this.landing = landing;
    reading = new NoteReading(bench, preferences, this::take);
    editor = new ProposalEditor(preferences, this::edit, bench::tell, this::takeFocus);
    clock = new DeviceClock(bench, this::draft, this::correct);
    add = landing.addButton("import-notes-add", () -> land(landing::add));
    begin.setId("import-notes-begin");
    begin.getStyleClass().add("main-button");
    begin.setOnAction(e -> land(landing::begin));
    proposals.table().setId("import-proposals");
    proposals
        .table()
        .getSelectionModel()
        .selectedItemProperty()
        .addListener((p, before, event) -> showEditor(event));
    view.setLeft(source());
    view.setCenter(proposals);
    view.setBottom(foot());
    BorderPane.setMargin(proposals, new Insets(0, 0, 0, 14));
    landing.watch(can -> offer());
    clock.show(null);
    offer();
  }

  Node view() {
    return view;
  }

  private Node source() {
    typed.setId("import-shorthand");
    typed.setAccessibleText("Notes in shorthand, one event a line");
    typed.setPrefColumnCount(20);
    VBox.setVgrow(typed, Priority.ALWAYS);
    Button read = new Button("Read what is typed");
    read.setId("import-read");
    read.setOnAction(e -> reading.typed(typed.getText()));
    Label sure = Labels.wrapped(SURE, "quiet");
    Label how = new Label("Or type one event a line, such as");
    how.setWrapText(true);
    Label example = new Label(EXAMPLE);
    example.getStyleClass().add("quiet");
    example.setMinHeight(Region.USE_PREF_SIZE);
    VBox box = new VBox(8, how, example, typed, read, sure);
    box.setStyle("-fx-pref-width: 21.5em;");
    return box;
  }

  private Node foot() {
    Button yes = button("Accept", "import-accept", this::accept);
    Button no = button("Refuse", "import-refuse", this::refuse);
    Button rest = button("Accept all open", "import-accept-rest", this::acceptRest);
    found.setId("import-notes-problems");
    found.setOnAction(e -> tellProblems());
    Region gap = Nodes.gap();
    HBox decide = new HBox(10, yes, no, editor.view(), gap);
    decide.setAlignment(Pos.CENTER_LEFT);
    Region second = Nodes.gap();
    summary.setId("import-notes-summary");
    summary.setWrapText(true);
    for (Button button : List.of(found, rest, add, begin)) {
      button.setMinWidth(Region.USE_PREF_SIZE);
    }
    HBox last = new HBox(10, summary, found, second, rest, add, begin);
    last.setAlignment(Pos.CENTER_LEFT);
    VBox box = new VBox(10, decide, clock.view(), last);
    box.setPadding(new Insets(10, 0, 0, 0));
    return box;
  }

  private static Button button(String text, String id, Runnable action) {
    Button button = new Button(text);
    button.setId(id);
    button.setOnAction(e -> action.run());
    return button;
  }

  private Optional<Draft> draft() {
    return Optional.ofNullable(draft);
  }

  private String clockOf(SessionEvent event) {
    return draft().map(d -> Say.clock(event.at(), d.session().occasion().zone())).orElse("");
  }

  private String lineName(SessionEvent event) {
    String id = event.lineId();
    return id == null
        ? ""
        : draft().flatMap(d -> d.session().line(id)).map(l -> Say.capital(l.name())).orElse(id);
  }

  private String details(SessionEvent event) {
    return EventText.details(event, preferences.get().units());
  }

  private Double sure(SessionEvent event) {
    return draft().map(d -> d.confidence().get(event.id())).orElse(0.0);
  }

  /** Reads captions or a file of shorthand, on the lines of the match in hand. */
  void read(Path file) {
    reading.file(file);
  }

  private void take(Draft read) {
    draft = read;
    show(0);
    takeFocus();
  }

  private void tellProblems() {
    draft()
        .ifPresent(
            d -> bench.report(NoteReading.trouble("What was found in the notes", d.report())));
  }

  private void show(int index) {
    Draft now = draft;
    if (now == null) {
      return;
    }
    List<SessionEvent> events = now.session().events();
    proposals.show(events);
    if (!events.isEmpty()) {
      int picked = Math.max(0, Math.min(index, events.size() - 1));
      proposals.table().getSelectionModel().clearAndSelect(picked);
      proposals.table().scrollTo(Math.max(0, picked - 3));
    }
    showEditor(picked());
    offer();
  }

  private void showEditor(@Nullable SessionEvent event) {
    Draft now = draft;
    if (now != null) {
      editor.show(now.session(), event);
    }
    clock.show(event);
  }

  private @Nullable SessionEvent picked() {
    return proposals.table().getSelectionModel().getSelectedItem();
  }

  private int index() {
    return proposals.table().getSelectionModel().getSelectedIndex();
  }

  private void offer() {
    Draft now = draft;
    long accepted =
        now == null
            ? 0
            : now.verdicts().values().stream().filter(v -> v == Verdict.ACCEPTED).count();
    begin.setDisable(accepted == 0);
    add.setDisable(accepted == 0 || !landing.canAdd());
    int problems = now == null ? 0 : now.report().errors() + now.report().warnings();
    found.setVisible(problems > 0);
    found.setText(Say.count(problems, "remark") + "…");
    summary.setText(
        now == null
            ? "Choose captions or a text, or type notes at the left."
            : accepted
                + " accepted, "
                + (now.verdicts().size() - accepted)
                + " refused, "
                + now.open().size()
                + " open"
                + (now.silent() == 0
                    ? ""
                    : "; " + Say.count(now.silent(), "note") + " gave no event"));
  }

  private void decide(Supplier<List<String>> which, Optional<Verdict> verdict) {
    Draft now = draft;
    if (now != null) {
      int index = index();
      draft = now.decided(which.get(), verdict);
      show(verdict.isPresent() ? nextOpen(index) : index);
    }
  }

  private int nextOpen(int from) {
    Draft now = draft;
    List<SessionEvent> events = proposals.table().getItems();
    for (int i = from + 1; now != null && i < events.size(); i++) {
      if (!now.verdicts().containsKey(events.get(i).id())) {
        return i;
      }
    }
    return from;
  }

  private List<String> pickedIds() {
    return proposals.table().getSelectionModel().getSelectedItems().stream()
        .map(SessionEvent::id)
        .toList();
  }

  void accept() {
    decide(this::pickedIds, Optional.of(Verdict.ACCEPTED));
  }

  void refuse() {
    decide(this::pickedIds, Optional.of(Verdict.REFUSED));
  }

  void reopen() {
    decide(this::pickedIds, Optional.empty());
  }

  void acceptRest() {
    decide(() -> draft().map(Draft::open).orElse(List.of()), Optional.of(Verdict.ACCEPTED));
  }

  void change() {
    editor.takeFocus();
  }

  void align() {
    clock.takeFocus();
  }

  private void correct(long millis) {
    int index = index();
    draft().ifPresent(d -> draft = d.corrected(millis));
    show(index);
    takeFocus();
  }

  private void edit(UnaryOperator<Session> change) {
    Draft now = draft;
    SessionEvent event = picked();
    if (now != null && event != null) {
      Draft after = now.changed(change);
      draft = after;
      List<SessionEvent> events = after.session().events();
      int place = index();
      for (int i = 0; i < events.size(); i++) {
        place = events.get(i).id().equals(event.id()) ? i : place;
      }
      show(place);
    }
  }

  private void land(Consumer<Session> where) {
    draft().map(Draft::accepted).filter(session -> !session.events().isEmpty()).ifPresent(where);
  }

  void takeFocus() {
    proposals.table().requestFocus();
  }
}
