package org.fadeline.ui.control.play;

import javafx.scene.control.Slider;
import org.fadeline.replay.Playhead;
import org.fadeline.ui.control.Watch;
import org.fadeline.ui.state.Workbench;
import org.fadeline.ui.state.WorkbenchState;

/** The playhead on its way from the start to the end, in seconds; moved here, it goes there. */
public final class PlayheadSlider extends Slider {
  /** How far a press beside the thumb or Page Up and Down go, seconds. */
  private static final double BLOCK_SECONDS = 60;

  private final Workbench bench;
  private boolean following;

  /**
   * Makes the slider.
   *
   * @param words what it is, for the screen reader
   */
  public PlayheadSlider(Workbench bench, String words) {
    this.bench = bench;
    setAccessibleText(words);
    setBlockIncrement(BLOCK_SECONDS);
    valueProperty().addListener((p, before, seconds) -> seek(seconds.doubleValue()));
    Watch.part(bench.stateProperty(), WorkbenchState::playhead, this::follow);
  }

  private void seek(double seconds) {
    if (!following) {
      bench.transport().seek(bench.state().playhead().range().from() + Math.round(seconds * 1000));
    }
  }

  private void follow(Playhead playhead) {
    following = true;
    setMax(Math.max(1, playhead.range().millis() / 1000.0));
    setValue((playhead.at() - playhead.range().from()) / 1000.0);
    following = false;
  }
}
