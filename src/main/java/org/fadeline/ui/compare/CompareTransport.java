package org.fadeline.ui.compare;

import java.util.List;
import javafx.geometry.Pos;
import javafx.scene.Node;
import javafx.scene.control.Button;
import javafx.scene.control.Label;
import javafx.scene.control.Slider;
import javafx.scene.layout.HBox;
import javafx.scene.layout.Priority;
import javafx.scene.layout.Region;
import org.fadeline.analysis.compare.Alignment;
import org.fadeline.analysis.compare.Comparison;
import org.fadeline.replay.Playhead;
import org.fadeline.ui.control.Icon;
import org.fadeline.ui.control.Say;
import org.fadeline.ui.control.Watch;
import org.fadeline.ui.control.form.Segments;
import org.fadeline.ui.state.Transport;
import org.fadeline.ui.state.Workbench;
import org.jspecify.annotations.Nullable;

/** The one playhead of both matches: play, step, seek, speed, and what was known then. */
final class CompareTransport {
  private final Workbench bench;
  private final HBox view;
  private final Slider scrub = new Slider();
  private final Button play = new Button();
  private final Label times = new Label();
  private @Nullable Comparison comparison;
  private boolean following;

  CompareTransport(Workbench bench) {
    this.bench = bench;
    Transport t = bench.transport();
    Icon.PLAY.on(play, "Play both", "Space");
    play.setId("compare-play");
    play.getStyleClass().add("play-button");
    play.setOnAction(e -> t.toggle());
    Button before = Icon.EVENT_BEFORE.on(new Button(), "Previous event", "Left");
    before.setOnAction(e -> t.step(false));
    Button after = Icon.EVENT_AFTER.on(new Button(), "Next event", "Right");
    after.setOnAction(e -> t.step(true));
    scrub.setId("compare-scrub");
    scrub.setAccessibleText("Playhead of both matches");
    scrub.valueProperty().addListener((p, was, now) -> scrubbed(now.doubleValue()));
    HBox.setHgrow(scrub, Priority.ALWAYS);
    times.setMinWidth(Region.USE_PREF_SIZE);
    times.setId("compare-times");
    Segments<Integer> speeds =
        new Segments<>("Speed", List.of(10, 60, 120, 300), v -> v + "×", t::speed);
    Segments<Boolean> knowledge =
        new Segments<>(
            "Shown",
            List.of(false, true),
            hindsight -> hindsight ? "with hindsight" : "as known then",
            bench::hindsight);
    view = new HBox(10, before, play, after, scrub, times, speeds, knowledge);
    view.setAlignment(Pos.CENTER);
    view.getStyleClass().add("foot");
    Watch.part(bench.stateProperty(), s -> s.choices().hindsight(), knowledge::choose);
    Watch.part(bench.stateProperty(), s -> s.playhead().motion().speed(), speeds::choose);
    Watch.part(bench.stateProperty(), s -> s.playhead(), this::follow);
  }

  Node view() {
    return view;
  }

  void show(@Nullable Comparison newComparison) {
    comparison = newComparison;
    follow(bench.state().playhead());
  }

  private void scrubbed(double seconds) {
    if (!following) {
      bench.transport().seek(bench.state().playhead().range().from() + Math.round(seconds * 1000));
    }
  }

  private void follow(Playhead playhead) {
    following = true;
    scrub.setMax(Math.max(1, playhead.range().millis() / 1000.0));
    scrub.setBlockIncrement(60);
    scrub.setValue((playhead.at() - playhead.range().from()) / 1000.0);
    following = false;
    boolean playing = playhead.motion().playing();
    play.setGraphic((playing ? Icon.PAUSE : Icon.PLAY).node());
    play.setAccessibleText(playing ? "Pause both" : "Play both");
    times.setText(comparison == null ? "" : words(comparison, playhead.at()));
  }

  /** Says the clock of each match at the playhead: "first 12:05 · second 11:35". */
  static String words(Comparison comparison, long at) {
    Alignment alignment = comparison.setup().alignment();
    long other = alignment.secondInstant(alignment.firstMinutes(at));
    return "first "
        + Say.shortClock(at, comparison.first().session().occasion().zone())
        + "  ·  second "
        + Say.shortClock(other, comparison.second().session().occasion().zone());
  }
}
