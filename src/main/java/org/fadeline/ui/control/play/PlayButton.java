package org.fadeline.ui.control.play;

import javafx.scene.control.Button;
import org.fadeline.ui.control.Icon;
import org.fadeline.ui.control.Watch;
import org.fadeline.ui.state.Workbench;

/** Plays, or stands still; shows and says which of the two it would do. */
public final class PlayButton extends Button {
  /**
   * Makes the button.
   *
   * @param what is played where it is not the match alone, such as "both"; may be empty
   */
  public PlayButton(Workbench bench, String what) {
    String object = what.isEmpty() ? "" : " " + what;
    Icon.PLAY.on(this, "Play" + object, "Space");
    getStyleClass().add("play-button");
    setOnAction(e -> bench.transport().toggle());
    Watch.part(
        bench.stateProperty(),
        s -> s.playhead().motion().playing(),
        playing -> {
          setGraphic((playing ? Icon.PAUSE : Icon.PLAY).node());
          setAccessibleText((playing ? "Pause" : "Play") + object);
        });
  }
}
