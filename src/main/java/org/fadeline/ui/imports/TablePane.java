package org.fadeline.ui.imports;

import java.nio.file.Path;
import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.CancellationException;
import java.util.function.UnaryOperator;
import javafx.geometry.Pos;
import javafx.scene.Node;
import javafx.scene.control.Button;
import javafx.scene.control.Label;
import javafx.scene.control.ProgressIndicator;
import javafx.scene.control.ScrollPane;
import javafx.scene.layout.HBox;
import javafx.scene.layout.Priority;
import javafx.scene.layout.Region;
import javafx.scene.layout.VBox;
import org.fadeline.io.CsvMapping;
import org.fadeline.io.CsvPreview;
import org.fadeline.io.EventCsv;
import org.fadeline.io.FileText;
import org.fadeline.io.ImportReport;
import org.fadeline.io.Problem;
import org.fadeline.io.ReadOptions;
import org.fadeline.io.ReadResult;
import org.fadeline.io.WholeFile;
import org.fadeline.model.Session;
import org.fadeline.ui.control.Invitation;
import org.fadeline.ui.control.Nodes;
import org.fadeline.ui.control.file.PathChooser;
import org.fadeline.ui.control.file.PathChooser.Kind;
import org.fadeline.ui.control.file.PathChooser.Question;
import org.fadeline.ui.control.table.DataTable;
import org.fadeline.ui.state.Activity.Trouble;
import org.fadeline.ui.state.OpenSession;
import org.fadeline.ui.state.TaskService;
import org.fadeline.ui.state.Workbench;
import org.jspecify.annotations.Nullable;

/**
 * A table of somebody else's: its rows, what each column is taken for, everything wrong with it,
 * and where its events go.
 */
final class TablePane {
  private static final String CHANNEL = "import-table";

  private final Workbench bench;
  private final Landing landing;
  private final PathChooser paths;
  private final VBox view = new VBox(10);
  private final RowsTable rows = new RowsTable(this::column);
  private final TableChoices choices = new TableChoices(this::choose);
  private final DataTable<Problem> problems =
      new DataTable<Problem>("What was found", "What is wrong with a table is listed here.")
          .words("Where", 150, p -> "row " + p.row() + (p.field() == null ? "" : ", " + p.field()))
          .words("What is wrong", 430, Problem::what)
          .words("What to do", 600, Problem::whatToDo);
  private final Label summary = new Label("No table yet.");
  private final Invitation invitation =
      new Invitation(
          "A table of catches or events",
          "From a spreadsheet or another program. You say what each of its columns is; everything"
              + " wrong is listed with its row, and nothing is taken before you say so.");
  private final VBox read = new VBox(10);
  private final ScrollPane scroll = Nodes.scrollFilled(read);
  private final HBox foot;
  private final HBox busy = new HBox(8);
  private final ProgressIndicator turning = new ProgressIndicator();
  private final LayoutBar layout;
  private final Button begin = new Button("Open as a new match");
  private final Button add;
  private final Button saveRejects = new Button("Save the rows left out…");
  private @Nullable Path file;
  private ReadOptions options = ReadOptions.DEFAULT;
  private @Nullable ReadResult result;

  TablePane(Workbench bench, Landing landing, PathChooser paths) {
    this.bench = bench;
    this.paths = paths;
    this.landing = landing;
    layout = new LayoutBar(bench, paths, this::column, () -> mapping(options));
    add = landing.addButton("import-table-add", () -> session().ifPresent(landing::add));
    begin.setId("import-table-begin");
    begin.getStyleClass().add("main-button");
    begin.setOnAction(e -> session().ifPresent(landing::begin));
    saveRejects.setId("import-table-rejects");
    saveRejects.setOnAction(e -> chooseRejects());
    summary.setId("import-table-summary");
    summary.setWrapText(true);
    Button giveUp = new Button("Give up");
    giveUp.setOnAction(e -> cancel());
    giveUp.setId("import-table-give-up");
    turning.setId("import-table-progress");
    turning.setMaxSize(40, 40);
    bench.tasks().runningProperty().addListener((p, before, now) -> progress(now));
    busy.getChildren().addAll(turning, new Label("Reading the table"), giveUp);
    busy.setAlignment(Pos.CENTER_LEFT);
    Region gap = Nodes.gap();
    for (Button button : List.of(saveRejects, add, begin)) {
      button.setMinWidth(Region.USE_PREF_SIZE);
    }
    foot = new HBox(10, summary, gap, busy, saveRejects, add, begin);
    foot.setAlignment(Pos.CENTER_LEFT);
    problems.table().setId("import-problems");
    problems
        .table()
        .getSelectionModel()
        .selectedItemProperty()
        .addListener((p, before, problem) -> goTo(problem));
    problems.setPrefHeight(200);
    VBox.setVgrow(problems, Priority.SOMETIMES);
    rows.view().setPrefHeight(190);
    VBox.setVgrow(rows.view(), Priority.ALWAYS);
    read.getChildren().addAll(choices.view(), layout.view(), rows.view(), problems);
    // With large text there may be no room for all of it at once.
    read.setMinHeight(Region.USE_PREF_SIZE);
    VBox.setVgrow(scroll, Priority.ALWAYS);
    VBox.setVgrow(invitation, Priority.ALWAYS);
    view.getChildren().addAll(invitation, scroll, foot);
    working(false);
    landing.watch(can -> offer());
  }

  Node view() {
    return view;
  }

  /** Reads a file with the columns guessed from its header. */
  void read(Path newFile) {
    file = newFile;
    OpenSession open = bench.state().open();
    ReadOptions fresh = choices.fresh(open == null ? null : open.session().occasion());
    // The table's own name says more of its day than the match that happens to be open.
    LocalDate date = EventCsv.dateIn(FileText.nameOf(newFile)).orElse(fresh.date());
    submit(newFile, fresh.withDate(date), true);
  }

  private record Loaded(ReadOptions options, Optional<CsvPreview> preview, ReadResult result) {}

  private void submit(Path path, ReadOptions asked, boolean guess) {
    working(true);
    bench
        .tasks()
        .submit(
            CHANNEL,
            "Reading " + FileText.nameOf(path),
            progress -> load(path, asked, guess, progress),
            new TaskService.Answer<>(this::show, this::failed));
  }

  private static Loaded load(
      Path path, ReadOptions asked, boolean guess, TaskService.Progress progress) {
    CsvMapping mapping = mapping(asked);
    Optional<CsvPreview> preview = CsvPreview.read(path, mapping.delimiter());
    ReadOptions used = asked;
    if (guess && preview.isPresent()) {
      CsvPreview found = preview.get();
      used =
          asked.withMapping(
              new CsvMapping(
                  found.guesses(),
                  mapping.events(),
                  mapping.dateOrder(),
                  found.delimiter(),
                  found.delimiter() == ';'));
    }
    return new Loaded(used, preview, EventCsv.read(path, used, watched(progress)));
  }

  private static EventCsv.Watcher watched(TaskService.Progress progress) {
    return (done, of) -> {
      if (progress.cancelled()) {
        throw new CancellationException();
      }
      progress.report(Math.min(1, (double) done / of));
    };
  }

  /** Shows how far the reading is; the wheel turns until that is known. */
  private void progress(List<TaskService.Running> running) {
    running.stream()
        .filter(r -> r.channel().equals(CHANNEL))
        .findFirst()
        .ifPresent(r -> turning.setProgress(r.done()));
  }

  private void show(Loaded loaded) {
    working(false);
    options = loaded.options;
    result = loaded.result;
    CsvMapping mapping = mapping(options);
    choices.show(options);
    rows.show(loaded.preview, mapping);
    layout.show(loaded.preview, mapping);
    problems.show(loaded.result.report().problems());
    offer();
  }

  /** Before a table is read there is nothing to choose and nothing to say of it. */
  private void showParts() {
    boolean known = result != null;
    Nodes.show(invitation, !known && !busy.isVisible());
    Nodes.show(scroll, known);
    Nodes.show(foot, known || busy.isVisible());
  }

  private void failed(Exception failure) {
    working(false);
    bench.report(
        Trouble.unforeseen("The table could not be read", failure, "Nothing was changed."));
  }

  private void cancel() {
    bench.tasks().cancel(CHANNEL);
    working(false);
  }

  private void working(boolean works) {
    Nodes.show(busy, works);
    offer();
  }

  private Optional<Session> session() {
    return result == null ? Optional.empty() : result.session();
  }

  private void offer() {
    showParts();
    boolean usable = !busy.isVisible() && session().isPresent();
    begin.setDisable(!usable);
    add.setDisable(!usable || !landing.canAdd());
    ImportReport report = result == null ? ImportReport.CLEAN : result.report();
    saveRejects.setDisable(busy.isVisible() || report.rejects().isEmpty());
    summary.setText(summary(report));
  }

  private String summary(ImportReport report) {
    if (result == null) {
      return "No table yet.";
    }
    int left = Math.max(0, report.rejects().size() - 1);
    String events =
        session()
            .map(s -> s.events().size() + " events on " + s.lines().size() + " lines")
            .orElse("Nothing is taken while there are errors");
    String out =
        left == 0
            ? ""
            : session().isPresent()
                ? "; " + left + " rows left out"
                : "; " + left + " rows cannot be used";
    return events + out + "; " + report.errors() + " errors, " + report.warnings() + " warnings";
  }

  private void choose(UnaryOperator<ReadOptions> change) {
    Path path = file;
    options = change.apply(options);
    if (path != null) {
      submit(path, options, false);
    }
  }

  private void column(UnaryOperator<CsvMapping> change) {
    CsvMapping now = mapping(options);
    choose(o -> o.withMapping(change.apply(now)));
  }

  private static CsvMapping mapping(ReadOptions options) {
    CsvMapping given = options.mapping();
    return given == null ? CsvMapping.NONE : given;
  }

  private void goTo(@Nullable Problem problem) {
    if (problem != null) {
      rows.select(problem.row());
    }
  }

  private void chooseRejects() {
    Path chosen =
        paths.save(
            Question.of("Save the rows left out", view)
                .named("left-out.csv")
                .ofKinds(Kind.of("Tables", "*.csv")),
            ".csv");
    if (chosen != null) {
      saveRejects(chosen);
    }
  }

  /** Saves the rows that could not be used, with the header, in the background. */
  private void saveRejects(Path to) {
    ReadResult read = result;
    if (read != null) {
      bench.write(
          "import-rejects", to, file -> WholeFile.write(file, EventCsv.rejects(read.report())));
    }
  }
}
