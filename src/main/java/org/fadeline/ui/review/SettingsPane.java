package org.fadeline.ui.review;

import java.util.List;
import java.util.Locale;
import java.util.function.Function;
import javafx.geometry.Pos;
import javafx.geometry.VPos;
import javafx.scene.control.Button;
import javafx.scene.control.Label;
import javafx.scene.layout.GridPane;
import javafx.scene.layout.HBox;
import javafx.scene.layout.Region;
import javafx.scene.layout.VBox;
import org.fadeline.analysis.ReviewSettings;
import org.fadeline.analysis.ReviewSettings.Measure;
import org.fadeline.ui.control.Labels;
import org.fadeline.ui.control.Nodes;
import org.fadeline.ui.control.Say;
import org.fadeline.ui.control.Watch;
import org.fadeline.ui.control.form.Segments;
import org.fadeline.ui.state.Workbench;

/** The settings that the findings move with; each change reviews the match again. */
final class SettingsPane {
  private final Workbench bench;
  private final GridPane grid = new GridPane();
  private final Label state = new Label();
  private final VBox view;

  SettingsPane(Workbench bench) {
    this.bench = bench;
    grid.setHgap(16);
    grid.setVgap(6);
    row(
        "A fade is plain at",
        List.of(0.5, 0.8, 0.9, 0.95),
        v -> Math.round(v * 100) + "%",
        ReviewSettings::callLevel,
        ReviewSettings::withCallLevel);
    row(
        "Changes of rate expected",
        List.of(0.1, 0.25, 0.5, 1.0),
        v -> String.format(Locale.ROOT, "%s an hour", v),
        ReviewSettings::changeHazard,
        ReviewSettings::withChangeHazard);
    row(
        "A fade is judged on",
        List.of(Measure.values()),
        SettingsPane::label,
        ReviewSettings::measure,
        ReviewSettings::withMeasure);
    row(
        "Moving costs",
        List.of(0.0, 2.0, 4.0, 8.0),
        v -> Say.number(v) + " min",
        ReviewSettings::moveCostMinutes,
        ReviewSettings::withMoveCostMinutes);
    row(
        "Rolling rate over",
        List.of(15.0, 30.0, 45.0, 60.0),
        v -> Say.number(v) + " min",
        ReviewSettings::windowMinutes,
        ReviewSettings::withWindowMinutes);
    Label title = Labels.line("What the findings rest on", "strong");
    Button defaults = new Button("Back to the defaults");
    defaults.getStyleClass().add("flat");
    defaults.setOnAction(e -> bench.settings(ReviewSettings.DEFAULT));
    state.getStyleClass().add("quiet");
    Watch.part(
        bench.stateProperty(),
        s -> s.review().pending(),
        pending -> state.setText(pending ? "Reviewing again…" : ""));
    Region gap = Nodes.gap();
    HBox head = new HBox(12, title, state, gap, defaults);
    head.setAlignment(Pos.CENTER_LEFT);
    view = new VBox(6, head, grid, learning());
  }

  VBox view() {
    return view;
  }

  /** Says which other sessions the review learned from, and lets the angler end that. */
  private HBox learning() {
    Label words = new Label();
    words.setId("learning");
    words.setWrapText(true);
    Button stop = new Button("Learn from none");
    stop.setId("learn-from-none");
    stop.setMinWidth(Region.USE_PREF_SIZE);
    stop.setOnAction(e -> bench.teach(null));
    HBox box = new HBox(16, words, stop);
    box.setAlignment(Pos.CENTER_LEFT);
    Watch.part(
        bench.stateProperty(),
        s -> s.choices().teaching(),
        teaching -> {
          Nodes.show(box, teaching != null);
          words.setText(
              teaching == null
                  ? ""
                  : "Learns from the other matches of “"
                      + teaching.name()
                      + "”: they set how often the rate changes.");
        });
    return box;
  }

  private interface Change<T> {
    ReviewSettings with(ReviewSettings settings, T value);
  }

  private <T> void row(
      String words,
      List<T> values,
      Function<T, String> label,
      Function<ReviewSettings, T> now,
      Change<T> change) {
    Segments<T> choice =
        new Segments<>(
            words,
            values,
            label,
            v -> bench.settings(change.with(bench.state().choices().settings(), v)));
    // With large text they are a little smaller, as pages are, so that all are in sight.
    choice.getStyleClass().add("tabs");
    Watch.part(bench.stateProperty(), s -> now.apply(s.choices().settings()), choice::choose);
    Label name = new Label(words);
    name.setMinWidth(Region.USE_PREF_SIZE);
    GridPane.setValignment(name, VPos.CENTER);
    grid.addRow(grid.getRowCount(), name, choice);
  }

  private static String label(Measure measure) {
    return switch (measure) {
      case BITES -> "bites";
      case HOOK_UPS -> "hook-ups";
      case FISH -> "fish";
    };
  }
}
