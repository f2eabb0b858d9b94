package org.fadeline.ui.window;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.function.Consumer;
import javafx.geometry.Pos;
import javafx.scene.control.Button;
import javafx.scene.control.Label;
import javafx.scene.control.ScrollPane;
import javafx.scene.control.Tooltip;
import javafx.scene.layout.FlowPane;
import javafx.scene.layout.HBox;
import javafx.scene.layout.Pane;
import javafx.scene.layout.Priority;
import javafx.scene.layout.StackPane;
import javafx.scene.layout.VBox;
import javafx.scene.shape.Arc;
import javafx.scene.shape.ArcType;
import javafx.scene.shape.Rectangle;
import org.fadeline.io.SessionNames;
import org.fadeline.ui.control.Labels;
import org.fadeline.ui.control.Nodes;
import org.fadeline.ui.control.Say;
import org.fadeline.ui.control.Screen;
import org.fadeline.ui.control.Watch;
import org.fadeline.ui.state.PreferenceStore;

/** The first screen: open a match, take up a recent one, try a sample, or begin something else. */
final class StartScreen {
  private static final int SHOWN = 6;

  private final StackPane view = new StackPane();
  private final VBox recent = new VBox(2);
  private final VBox samples = new VBox(2);
  private final VBox sampleColumn;
  private final Button openButton = new Button("Open a match…");
  private final FlowPane offers = new FlowPane(12, 8);
  private final Consumer<Path> open;

  StartScreen(PreferenceStore preferences, Consumer<Path> open, Runnable choose) {
    this.open = open;
    Label name = Labels.line("Fadeline", "start-title");
    Label purpose =
        Labels.wrapped(
            "Replay a match. See what each line was worth by the hour, when it faded, and when that"
                + " was plain.");
    openButton.getStyleClass().add("main-button");
    openButton.setDefaultButton(true);
    openButton.setOnAction(e -> choose.run());
    Label drop =
        Labels.line("or drop its file, or a table of events (CSV), on this window", "quiet");
    HBox first = new HBox(12, openButton, drop);
    first.setAlignment(Pos.CENTER_LEFT);
    sampleColumn = column("Samples", samples);
    HBox columns = new HBox(28, column("Opened lately", recent), sampleColumn);
    showSamples(List.of());
    Label caution =
        Labels.wrapped(
            "Carbon poles conduct: keep 30 m from power lines. Your water's rules and the match"
                + " organiser decide.",
            "quiet");
    VBox card = new VBox(name, purpose, first, offers, columns, caution);
    card.getStyleClass().add("start-card");
    card.setMaxHeight(VBox.USE_PREF_SIZE);
    ScrollPane scroll = Nodes.scrollFilled(new StackPane(card));
    view.getStyleClass().add("start");
    view.getChildren().addAll(new Swim(), scroll);
    Watch.part(preferences.property(), p -> p.recent(), this::showRecent);
  }

  StackPane view() {
    return view;
  }

  /** Offers what can be begun on the screens given, and the first page of the manual. */
  void offer(List<Screen> screens, Consumer<Screen> show, Runnable begin) {
    for (Screen screen : screens) {
      String offer = screen.facts().offer();
      if (offer != null) {
        Button button = new Button(offer);
        button.setOnAction(e -> show.accept(screen));
        offers.getChildren().add(button);
      }
    }
    Button how = new Button("How to begin");
    how.setAccessibleText("How to begin: the manual's first page");
    how.setOnAction(e -> begin.run());
    offers.getChildren().add(how);
  }

  Button openButton() {
    return openButton;
  }

  void showSamples(List<Path> found) {
    samples.getChildren().setAll(rows(found));
    Nodes.show(sampleColumn, !found.isEmpty());
  }

  private List<Button> rows(List<Path> found) {
    return found.stream()
        .limit(SHOWN)
        .map(sample -> row(Say.title(sample), sample.toString(), sample))
        .toList();
  }

  private void showRecent(List<String> paths) {
    recent
        .getChildren()
        .setAll(
            paths.stream()
                .map(Path::of)
                .filter(Files::isRegularFile)
                .limit(SHOWN)
                .map(path -> row(SessionNames.bare(path), path.toString(), path))
                .toList());
    if (recent.getChildren().isEmpty()) {
      Label none = Labels.line("Nothing yet", "quiet");
      none.setStyle("-fx-padding: 0.4em 0 0.4em 0;");
      recent.getChildren().add(none);
    }
  }

  private Button row(String title, String place, Path path) {
    Button button = new Button(title);
    button.getStyleClass().add("row-button");
    button.setAccessibleHelp(place);
    button.setTooltip(new Tooltip(place));
    button.setOnAction(e -> open.accept(path));
    return button;
  }

  private static VBox column(String heading, VBox rows) {
    Label label = Labels.line(heading, "strong");
    label.setStyle("-fx-padding: 0.6em 0 0.2em 0;");
    VBox column = new VBox(label, rows);
    HBox.setHgrow(column, Priority.ALWAYS);
    column.setPrefWidth(300);
    return column;
  }

  /** The water as seen from the peg: working lengths, and the bank at the foot. */
  private static final class Swim extends Pane {
    private static final double[] LENGTHS = {5, 8, 11, 13, 16, 20, 25, 31, 38, 46};
    private final Rectangle bank = new Rectangle();
    private final Arc[] arcs = new Arc[LENGTHS.length];

    Swim() {
      bank.getStyleClass().add("start-bank");
      for (int i = 0; i < arcs.length; i++) {
        arcs[i] = new Arc();
        arcs[i].setType(ArcType.OPEN);
        arcs[i].setStartAngle(0);
        arcs[i].setLength(180);
        arcs[i].getStyleClass().add("start-arc");
        getChildren().add(arcs[i]);
      }
      getChildren().add(bank);
      setMouseTransparent(true);
      setMinSize(0, 0);
      Rectangle clip = new Rectangle();
      clip.widthProperty().bind(widthProperty());
      clip.heightProperty().bind(heightProperty());
      setClip(clip);
    }

    @Override
    protected void layoutChildren() {
      double shore = getHeight() * 0.93;
      double metre = Math.max(getWidth() / 2, getHeight()) / 40;
      for (int i = 0; i < arcs.length; i++) {
        arcs[i].setCenterX(getWidth() / 2);
        arcs[i].setCenterY(shore + 2 * metre);
        arcs[i].setRadiusX(LENGTHS[i] * metre);
        arcs[i].setRadiusY(LENGTHS[i] * metre);
      }
      bank.setX(0);
      bank.setY(shore);
      bank.setWidth(getWidth());
      bank.setHeight(getHeight() - shore);
    }
  }
}
