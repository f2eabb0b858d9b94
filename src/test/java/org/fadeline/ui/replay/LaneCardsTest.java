package org.fadeline.ui.replay;

import static org.fadeline.ui.HandMade.minute;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Set;
import java.util.stream.Collectors;
import javafx.scene.Node;
import javafx.scene.control.Label;
import javafx.scene.layout.VBox;
import org.fadeline.ui.WindowHarness;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.extension.ExtendWith;
import org.testfx.framework.junit5.ApplicationExtension;
import org.testfx.util.WaitForAsyncUtils;

/** What stands at the end of a lane. */
@ExtendWith(ApplicationExtension.class)
class LaneCardsTest extends WindowHarness {
  /** A row without words takes no room from those that have some. */
  @Test
  void aLineNotFishedYetSaysSoHoweverLowItsLane() {
    open("Replay");
    for (int height : new int[] {800, 480}) {
      robot.interact(() -> node("play", Node.class).getScene().getWindow().setHeight(height));
      robot.interact(() -> bench.transport().seek(minute(15)));
      WaitForAsyncUtils.waitForFxEvents();
      assertTrue(
          shown().contains(List.of("not fished yet, fed 10 min ago")), height + ": " + shown());
    }
  }

  private Set<List<String>> shown() {
    return robot.lookup(".lane-card").queryAllAs(VBox.class).stream()
        .map(VBox::getChildren)
        .map(
            rows ->
                rows.stream()
                    .filter(row -> row.isVisible() && row.isManaged())
                    .map(row -> ((Label) row).getText())
                    .toList())
        .collect(Collectors.toSet());
  }
}
