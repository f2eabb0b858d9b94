package org.fadeline.ui.replay;

import java.util.List;
import javafx.css.PseudoClass;
import javafx.geometry.Pos;
import javafx.scene.control.Label;
import javafx.scene.control.TextField;
import javafx.scene.control.ToggleButton;
import javafx.scene.control.Tooltip;
import javafx.scene.layout.BorderPane;
import javafx.scene.layout.HBox;
import javafx.scene.layout.Priority;
import javafx.scene.layout.Region;
import javafx.scene.layout.VBox;
import org.fadeline.replay.Playhead;
import org.fadeline.ui.control.Icon;
import org.fadeline.ui.control.Labels;
import org.fadeline.ui.control.Say;
import org.fadeline.ui.control.Watch;
import org.fadeline.ui.control.command.KeysBack;
import org.fadeline.ui.control.form.Segments;
import org.fadeline.ui.control.play.PlayButton;
import org.fadeline.ui.control.play.PlayheadSlider;
import org.fadeline.ui.state.OpenSession;
import org.fadeline.ui.state.PreferenceStore;
import org.fadeline.ui.state.Transport;
import org.fadeline.ui.state.Workbench;
import org.fadeline.ui.state.WorkbenchState;

/** Play, step, seek, loop, speed. */
final class TransportBar {
  private static final PseudoClass ERROR = PseudoClass.getPseudoClass("error");
  private static final String CAUTION =
      "Keep 30 m from power lines.\nYour water's rules and the organiser decide.";

  /** Percent of the normal text size. */
  private static final int LARGE_TEXT = 125;

  private final Workbench bench;
  private final PreferenceStore preferences;
  private final BorderPane view = new BorderPane();
  private final ToggleButton reverse = new ToggleButton();
  private final ToggleButton loop = new ToggleButton();
  private final TextField time = new TextField();
  private final Label between = new Label();
  private final Segments<Integer> speeds;
  private final Runnable wentTo;

  /**
   * Makes the bar.
   *
   * @param wentTo gives the keys back to the screen once a typed time was gone to or a button
   *     clicked
   */
  TransportBar(Workbench bench, PreferenceStore preferences, Runnable toggleLoop, Runnable wentTo) {
    this.bench = bench;
    this.wentTo = wentTo;
    this.preferences = preferences;
    Transport t = bench.transport();
    speeds = new Segments<>("Speed", Transport.SPEEDS, v -> v + "×", t::speed);
    PlayheadSlider scrub = new PlayheadSlider(bench, "Playhead");
    scrub.setId("scrub");
    PlayButton play = new PlayButton(bench, "");
    play.setId("play");
    Icon.BACKWARDS.on(reverse, "Play backwards", "R");
    reverse.setOnAction(e -> t.reverse(reverse.isSelected()));
    Icon.LOOP.on(loop, "Loop what is picked, or between the two cursors", "L");
    loop.setOnAction(
        e -> {
          toggleLoop.run();
          // Where there is nothing to loop the press must not leave it down.
          loop.setSelected(bench.state().playhead().motion().loop() != null);
        });
    time.setPromptText("hh:mm");
    time.setPrefColumnCount(6);
    time.setMinWidth(Region.USE_PREF_SIZE);
    time.setId("typed-time");
    time.setAccessibleText("Go to a clock time; type hours and minutes, then Enter");
    time.setTooltip(new Tooltip("Go to a time: 12:48, Enter  (G)"));
    time.setOnAction(e -> typed());
    time.textProperty().addListener((p, before, now) -> time.pseudoClassStateChanged(ERROR, false));
    HBox buttons =
        new HBox(
            4,
            Icon.TURN_BEFORE.button(
                "Previous turning point", "Ctrl + Left", () -> t.turningPoint(false)),
            Icon.EVENT_BEFORE.button("Previous event", "Left", () -> t.step(false)),
            reverse,
            play,
            Icon.EVENT_AFTER.button("Next event", "Right", () -> t.step(true)),
            Icon.TURN_AFTER.button(
                "Next turning point", "Ctrl + Right", () -> t.turningPoint(true)),
            loop);
    buttons.setAlignment(Pos.CENTER);
    HBox middle = new HBox(18, time, buttons, speeds);
    middle.setAlignment(Pos.CENTER);
    Label caution = Labels.wrapped(CAUTION, "quiet");
    between.getStyleClass().add("quiet");
    HBox left = new HBox();
    left.setAlignment(Pos.CENTER_LEFT);
    HBox right = new HBox(between);
    right.setAlignment(Pos.CENTER_RIGHT);
    Region gap = new Region();
    Region otherGap = new Region();
    HBox.setHgrow(gap, Priority.ALWAYS);
    HBox.setHgrow(otherGap, Priority.ALWAYS);
    HBox row = new HBox(12, left, gap, middle, otherGap, right);
    right.prefWidthProperty().bind(left.widthProperty());
    right.setMinWidth(60);
    HBox below = new HBox();
    below.setAlignment(Pos.CENTER);
    view.setCenter(new VBox(2, scrub, row, below));
    Watch.part(
        preferences.property(),
        p -> p.textPercent() >= LARGE_TEXT,
        large -> {
          // Beside large buttons there is no room for it.
          caution.setText(large ? CAUTION.replace('\n', ' ') : CAUTION);
          (large ? below : left).getChildren().setAll(caution);
        });
    view.getStyleClass().add("foot");
    KeysBack.afterClicksOn(view, wentTo);
    Watch.part(bench.stateProperty(), WorkbenchState::playhead, this::follow);
    Watch.part(
        bench.stateProperty(),
        s -> List.of(s.selection(), s.playhead().at(), s.choices()),
        x -> showBetween());
  }

  BorderPane view() {
    return view;
  }

  TextField time() {
    return time;
  }

  private void follow(Playhead playhead) {
    reverse.setSelected(playhead.motion().reverse());
    loop.setSelected(playhead.motion().loop() != null);
    speeds.choose(playhead.motion().speed());
  }

  private void typed() {
    OpenSession open = bench.state().open();
    if (open == null) {
      return;
    }
    var at =
        Say.typedTime(
            time.getText(), bench.state().playhead().at(), open.session().occasion().zone());
    time.pseudoClassStateChanged(ERROR, at.isEmpty());
    if (at.isPresent()) {
      bench.transport().seek(at.get());
      time.clear();
      wentTo.run();
    } else {
      bench.tell("“" + time.getText() + "” is not a clock time; type it as 12:48 or 12:48:30");
    }
  }

  private void showBetween() {
    between.setText(Between.words(bench.state(), preferences.get().units()));
  }
}
