package org.fadeline.ui.imports;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import javafx.geometry.Insets;
import javafx.geometry.Pos;
import javafx.scene.Node;
import javafx.scene.control.Button;
import javafx.scene.control.Label;
import javafx.scene.layout.BorderPane;
import javafx.scene.layout.HBox;
import javafx.scene.layout.Region;
import org.fadeline.analysis.merge.Clash.Choice;
import org.fadeline.ui.control.Labels;
import org.fadeline.ui.control.Navigation;
import org.fadeline.ui.control.Screen;
import org.fadeline.ui.control.ScreenFacts;
import org.fadeline.ui.control.command.Command;
import org.fadeline.ui.control.command.Undoing;
import org.fadeline.ui.control.file.FileDrops;
import org.fadeline.ui.control.file.PathChooser;
import org.fadeline.ui.control.file.PathChooser.Kind;
import org.fadeline.ui.control.file.PathChooser.Question;
import org.fadeline.ui.control.form.Segments;
import org.fadeline.ui.state.PreferenceStore;
import org.fadeline.ui.state.Workbench;

/** Brings in a table of events, captions of a recording, or typed notes. */
public final class ImportScreen implements Screen {
  /** What the window must know of it. */
  public static final ScreenFacts FACTS =
      new ScreenFacts("Import", false, false, "Bring in a table or notes");

  private static final String TABLE = "A table (CSV)";
  private static final String NOTES = "Captions and notes";
  private static final String SECOND = "A second record";

  private final Workbench bench;
  private final PathChooser paths;
  private final BorderPane view = new BorderPane();
  private final TablePane table;
  private final NotesPane notes;
  private final SecondRecordPane second;
  private final Button choose = new Button("Choose a file…");
  private final Segments<String> what =
      new Segments<>("What is brought in", List.of(TABLE, NOTES, SECOND), s -> s, this::show);

  /** Makes the screen. */
  public ImportScreen(
      Workbench bench, PreferenceStore preferences, Navigation navigation, PathChooser paths) {
    this.paths = paths;
    this.bench = bench;
    Landing landing = new Landing(bench, navigation);
    table = new TablePane(bench, landing, paths);
    notes = new NotesPane(bench, preferences, landing);
    second = new SecondRecordPane(bench, preferences, landing);
    choose.setId("import-choose");
    choose.getStyleClass().add("main-button");
    choose.setOnAction(e -> choose());
    Label drop =
        Labels.line("or drop one here: .csv, .vtt, .srt, .txt, a second .session.json", "quiet");
    choose.setMinWidth(Region.USE_PREF_SIZE);
    drop.setWrapText(true);
    HBox top = new HBox(12, what, choose, drop);
    top.setAlignment(Pos.CENTER_LEFT);
    top.setPadding(new Insets(12, 12, 10, 12));
    view.setTop(top);
    for (Node page : List.of(table.view(), notes.view(), second.view())) {
      page.getStyleClass().addAll("panel", "import-page");
      BorderPane.setMargin(page, new Insets(0, 12, 10, 12));
    }
    FileDrops.on(view, file -> true, this::take);
    show(TABLE);
  }

  private void show(String which) {
    what.choose(which);
    view.setCenter(
        switch (which) {
          case NOTES -> notes.view();
          case SECOND -> second.view();
          default -> table.view();
        });
  }

  private void choose() {
    Path chosen =
        paths.open(
            Question.of("Bring in a table, captions, notes or a second record", view)
                .ofKinds(
                    Kind.of(
                        "Tables, captions, notes and records",
                        "*.csv",
                        "*.vtt",
                        "*.srt",
                        "*.txt",
                        "*.session.json"),
                    Kind.ALL));
    if (chosen != null) {
      take(chosen);
    }
  }

  /**
   * Reads a file: captions and plain text as notes, a session as a second record of the match in
   * hand, everything else as a table.
   */
  public void take(Path file) {
    String name = String.valueOf(file.getFileName()).toLowerCase(Locale.ROOT);
    boolean isNotes = name.endsWith(".vtt") || name.endsWith(".srt") || name.endsWith(".txt");
    boolean isRecord = name.endsWith(".json") || view.getCenter() == second.view();
    show(isNotes ? NOTES : isRecord ? SECOND : TABLE);
    if (isNotes) {
      notes.read(file);
    } else if (isRecord) {
      second.read(file);
    } else {
      table.read(file);
    }
  }

  @Override
  public ScreenFacts facts() {
    return FACTS;
  }

  @Override
  public Node view() {
    return view;
  }

  @Override
  public List<Command> commands() {
    List<Command> all = new ArrayList<>(ownCommands());
    all.addAll(Undoing.of(title(), bench));
    return all;
  }

  private List<Command> ownCommands() {
    return List.of(
        Command.of("Import", "Choose a file", this::choose, "F"),
        Command.of("Import", "Keep yours", () -> second.keep(Choice.MINE), "1"),
        Command.of("Import", "Keep theirs", () -> second.keep(Choice.THEIRS), "2"),
        Command.of("Import", "Keep both", () -> second.keep(Choice.BOTH), "3"),
        Command.of("Import", "Accept the proposal", notes::accept, "A"),
        Command.of("Import", "Refuse the proposal", notes::refuse, "R"),
        Command.of("Import", "Leave the proposal open again", notes::reopen, "U"),
        Command.of("Import", "Change the proposal", notes::change, "E"),
        Command.of("Import", "Accept all that are open", notes::acceptRest, "Shift+A"),
        Command.of("Import", "Give the time of the proposal", notes::align, "T"));
  }

  @Override
  public void takeFocus() {
    if (view.getCenter() == notes.view()) {
      notes.takeFocus();
    } else if (view.getCenter() == second.view()) {
      second.takeFocus();
    } else {
      choose.requestFocus();
    }
  }
}
