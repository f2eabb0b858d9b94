package org.fadeline.ui.season;

import java.nio.file.Path;
import javafx.geometry.Pos;
import javafx.scene.Node;
import javafx.scene.control.Button;
import javafx.scene.control.Label;
import javafx.scene.control.MenuButton;
import javafx.scene.control.ProgressBar;
import javafx.scene.layout.HBox;
import javafx.scene.layout.Priority;
import javafx.scene.layout.Region;
import org.fadeline.analysis.season.Season;
import org.fadeline.ui.control.Say;

/** The head of the season screen: the folder, what it holds, how far it is read. */
final class SeasonHead {
  private final Button choose = new Button("Choose a folder…");
  private final Label folder = new Label();
  private final Label counts = new Label();
  private final ProgressBar bar = new ProgressBar();
  private final Label reading = new Label();
  private final Button stop = new Button("Stop");
  private final Button changed = new Button();
  private final Label problem = new Label();
  private final MenuButton export;
  private final HBox view;

  /**
   * Makes the head.
   *
   * @param chooseFolder asks for another folder
   * @param desk reads and stops
   * @param export the menu that writes the season out
   */
  SeasonHead(Runnable chooseFolder, SeasonDesk desk, MenuButton export) {
    this.export = export;
    choose.getStyleClass().add("main-button");
    choose.setId("season-choose");
    choose.setOnAction(e -> chooseFolder.run());
    folder.getStyleClass().add("figure-large");
    counts.getStyleClass().add("quiet");
    counts.setId("season-counts");
    reading.getStyleClass().add("quiet");
    stop.getStyleClass().add("flat");
    stop.setId("season-stop");
    stop.setAccessibleText("Stop reading the folder; what was read stays");
    stop.setOnAction(e -> desk.stop());
    changed.getStyleClass().add("link");
    changed.setId("season-changed");
    changed.setOnAction(e -> desk.readAgain());
    problem.getStyleClass().add("warning-text");
    problem.setWrapText(true);
    bar.setPrefWidth(140);
    bar.setAccessibleText("How far the folder is read");
    Region spring = new Region();
    HBox.setHgrow(spring, Priority.ALWAYS);
    view = new HBox(12, folder, counts, changed, spring, bar, reading, stop, export, choose);
    view.setAlignment(Pos.CENTER_LEFT);
  }

  HBox view() {
    return view;
  }

  /** Returns what says what is the matter with the folder as a whole. */
  Label problem() {
    return problem;
  }

  void takeFocus() {
    choose.requestFocus();
  }

  void show(SeasonState state) {
    Path chosen = state.folder();
    // With nothing chosen the page itself says how to begin, and there is nothing to export.
    for (Node node : new Node[] {export, choose}) {
      node.setVisible(chosen != null);
    }
    folder.setText(chosen == null ? "Season" : String.valueOf(chosen.getFileName()));
    counts.setText(chosen == null ? "" : counts(state));
    export.setDisable(chosen == null);
    SeasonState.Reading now = state.reading();
    for (Node node : new Node[] {bar, reading, stop}) {
      node.setVisible(now != null);
      node.setManaged(now != null);
    }
    if (now != null) {
      bar.setProgress(now.of() == 0 ? -1 : (double) now.done() / now.of());
      reading.setText(
          now.of() == 0 ? now.what() : now.what() + ", " + now.done() + " of " + now.of());
    }
    changed.setVisible(state.changed() > 0);
    changed.setManaged(state.changed() > 0);
    changed.setText(Say.count(state.changed(), "file") + " changed: read again");
    problem.setText(state.problem() == null ? "" : state.problem());
    problem.setManaged(state.problem() != null);
  }

  private static String counts(SeasonState state) {
    int all = state.found().entries().size();
    int shown = state.season().sessions().size();
    int broken = state.found().broken().size();
    return (shown == all ? Say.count(all, "match") : shown + " of " + Say.count(all, "match"))
        + (broken == 0 ? "" : ", " + Say.count(broken, "file") + " with a problem")
        + (shown > 0 && shown < Season.FEWEST_FOR_LIMITS ? ": too few for limits" : "");
  }
}
