package org.fadeline.ui.setup;

import java.nio.file.Files;
import java.nio.file.InvalidPathException;
import java.nio.file.Path;
import java.time.LocalDate;
import java.time.ZoneId;
import java.util.ArrayList;
import java.util.List;
import javafx.scene.Node;
import javafx.scene.control.Button;
import javafx.scene.control.ComboBox;
import javafx.scene.control.Label;
import javafx.scene.control.TextField;
import javafx.scene.layout.StackPane;
import javafx.scene.layout.VBox;
import org.fadeline.io.SessionNames;
import org.fadeline.io.open.SampleSessions;
import org.fadeline.model.Session;
import org.fadeline.ui.control.Labels;
import org.fadeline.ui.control.form.Entry;
import org.fadeline.ui.control.form.EntryBox;
import org.fadeline.ui.state.PreferenceStore;
import org.fadeline.ui.state.Workbench;

/** Begins a match from nothing or with the lines of an earlier one, in a file of its own. */
final class BeginPane {
  private final Workbench bench;
  private final PreferenceStore preferences;
  private final StackPane view = new StackPane();
  private final ComboBox<Path> earlier = new ComboBox<>();
  private final TextField path = new TextField();
  private final Label lines = Labels.wrapped("", "quiet");
  private final Label wrong = Labels.wrapped("", "quiet");
  private final Form form;
  private Session draft =
      NewMatch.on(LocalDate.now(ZoneId.systemDefault()), ZoneId.systemDefault());
  private String offered = "";

  BeginPane(Workbench bench, PreferenceStore preferences) {
    this.bench = bench;
    this.preferences = preferences;
    EntryBox.Commit<Session> commit = (name, change) -> show(change.apply(draft));
    List<Entry<Session>> entries = new ArrayList<>();
    entries.add(OccasionEntries.title());
    entries.add(OccasionEntries.water());
    entries.add(OccasionEntries.peg().get(0));
    entries.add(TimeEntries.date());
    entries.add(TimeEntries.allIn());
    entries.add(TimeEntries.allOut());
    form = new Form(3, entries, commit);
    earlier.setId("begin-lines-from");
    earlier.setAccessibleText("Take the lines of an earlier match");
    earlier.setPromptText("no earlier match");
    earlier.setMaxWidth(Double.MAX_VALUE);
    earlier.setOnShowing(e -> offerEarlier());
    earlier.setOnAction(e -> takeLines(earlier.getValue()));
    path.setId("begin-path");
    path.setAccessibleText("File the match is kept in");
    wrong.getStyleClass().setAll("label", "warning-text");
    wrong.setId("begin-error");
    Button begin = new Button("Begin this match");
    begin.setId("begin-match");
    begin.getStyleClass().add("main-button");
    begin.setOnAction(e -> begin());
    VBox card =
        new VBox(
            10,
            Labels.wrapped("Set up a match", "title"),
            Labels.wrapped("Everything here can be changed later. Lines come next.", "quiet"),
            form.view(),
            Labels.wrapped("Lines, with their places and rigs, from an earlier match", "quiet"),
            earlier,
            lines,
            Labels.wrapped(
                "Kept in this file; every change is written to it as it is made", "quiet"),
            path,
            wrong,
            begin);
    card.getStyleClass().add("panel");
    card.setStyle("-fx-padding: 1.4em 1.6em 1.6em 1.6em;");
    card.setMaxSize(680, VBox.USE_PREF_SIZE);
    view.getChildren().add(card);
    view.setStyle("-fx-padding: 1.5em;");
    show(draft);
  }

  Node view() {
    return view;
  }

  void show() {
    show(draft);
  }

  private void show(Session newDraft) {
    draft = newDraft;
    form.show(draft, preferences.get().units(), true);
    lines.setText(
        draft.lines().isEmpty()
            ? "No lines yet."
            : String.join(", ", draft.lines().stream().map(l -> l.name()).toList()) + ".");
    if (path.getText().equals(offered)) {
      offered = folder().resolve(NewMatch.fileName(draft)).toString();
      path.setText(offered);
    }
  }

  /** Returns where matches of one's own were lately; the samples' folder is not one of them. */
  private Path folder() {
    return preferences
        .get()
        .recentFolders()
        .filter(Files::isWritable)
        .filter(p -> !p.endsWith(SampleSessions.FOLDER))
        .findFirst()
        .orElse(Path.of(System.getProperty("user.home", ".")));
  }

  private List<Path> recent() {
    return preferences.get().recent().stream().map(Path::of).toList();
  }

  private void offerEarlier() {
    earlier.getItems().setAll(recent().stream().filter(Files::isRegularFile).toList());
  }

  private void takeLines(Path from) {
    if (from != null) {
      bench.look(from, session -> show(SetupLines.taken(draft, session)));
    }
  }

  private void begin() {
    wrong.setText("");
    try {
      Path typed = Path.of(path.getText().strip());
      if (typed.getFileName() == null || path.getText().isBlank()) {
        wrong.setText("Write where the match is to be kept.");
        return;
      }
      bench.begin(SessionNames.whole(typed), draft);
      draft = NewMatch.on(draft.occasion().date(), draft.occasion().zone());
    } catch (InvalidPathException notAPath) {
      wrong.setText("“" + path.getText() + "” cannot be the name of a file.");
    }
  }
}
