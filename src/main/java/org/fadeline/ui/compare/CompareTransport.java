package org.fadeline.ui.compare;

import java.util.List;
import javafx.geometry.Pos;
import javafx.scene.Node;
import javafx.scene.control.Button;
import javafx.scene.control.Label;
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
import org.fadeline.ui.control.play.KnowledgeChoice;
import org.fadeline.ui.control.play.PlayButton;
import org.fadeline.ui.control.play.PlayheadSlider;
import org.fadeline.ui.state.Transport;
import org.fadeline.ui.state.Workbench;
import org.jspecify.annotations.Nullable;

/** The one playhead of both matches: play, step, seek, speed, and what was known then. */
final class CompareTransport {
  private final Workbench bench;
  private final HBox view;
  private final Label times = new Label();
  private @Nullable Comparison comparison;

  CompareTransport(Workbench bench) {
    this.bench = bench;
    Transport t = bench.transport();
    PlayButton play = new PlayButton(bench, "both");
    play.setId("compare-play");
    Button before = Icon.EVENT_BEFORE.button("Previous event", "Left", () -> t.step(false));
    Button after = Icon.EVENT_AFTER.button("Next event", "Right", () -> t.step(true));
    PlayheadSlider scrub = new PlayheadSlider(bench, "Playhead of both matches");
    scrub.setId("compare-scrub");
    HBox.setHgrow(scrub, Priority.ALWAYS);
    times.setMinWidth(Region.USE_PREF_SIZE);
    times.setId("compare-times");
    Segments<Integer> speeds =
        new Segments<>("Speed", List.of(10, 60, 120, 300), v -> v + "×", t::speed);
    view = new HBox(10, before, play, after, scrub, times, speeds, new KnowledgeChoice(bench));
    view.setAlignment(Pos.CENTER);
    view.getStyleClass().add("foot");
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

  private void follow(Playhead playhead) {
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
