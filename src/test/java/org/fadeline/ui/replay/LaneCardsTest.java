package org.fadeline.ui.replay;

import static org.fadeline.ui.HandMade.minute;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Set;
import java.util.stream.Collectors;
import javafx.scene.Node;
import javafx.scene.Scene;
import javafx.scene.control.Label;
import javafx.scene.layout.VBox;
import org.fadeline.analysis.ReviewSettings;
import org.fadeline.analysis.Reviewer;
import org.fadeline.figure.FigureStyle;
import org.fadeline.figure.Theme;
import org.fadeline.figure.TimelineFigure;
import org.fadeline.model.Units;
import org.fadeline.ui.HandMade;
import org.fadeline.ui.WindowHarness;
import org.fadeline.ui.replay.Readout.Card;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.extension.ExtendWith;
import org.testfx.framework.junit5.ApplicationExtension;
import org.testfx.util.WaitForAsyncUtils;

/** What stands at the end of a lane. */
@ExtendWith(ApplicationExtension.class)
class LaneCardsTest extends WindowHarness {
  private static final TimelineFigure TIMELINE =
      new TimelineFigure(
          Reviewer.review(HandMade.session(), ReviewSettings.DEFAULT),
          FigureStyle.of(Theme.LIGHT, Units.LB_OZ_AND_METRES));

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

  /** In a lane too low for two rows a line left says when, not half of how long ago. */
  @Test
  void wordsThatHaveNoRoomAreLeftOutWhole() {
    LaneCards cards = new LaneCards();
    robot.interact(
        () -> {
          new Scene(cards);
          cards.follow(TIMELINE.layout(700, 70));
          cards.show(List.of(new Card("short", false, "left 10:25, rested 2 h 35 min", "", "")));
          settle(cards);
        });
    assertEquals(List.of("left 10:25"), rows(cards));
    robot.interact(
        () ->
            cards.show(List.of(new Card("short", false, "left 10:25, rested 2 h 36 min", "", ""))));
    assertEquals(List.of("left 10:25"), rows(cards), "other words, as long as those before");
  }

  /** Whatever the height of its lane, a row shown has room for all its words. */
  @Test
  void noRowIsCutAHairShort() {
    Card card =
        new Card(
            "short",
            true,
            "8 lb 14 oz an hour (1–32 lb)",
            "5 fish an hour (0.6–18.2), 2 fish in 24 min",
            "fed 2 min, bite 9 min ago");
    for (int height = 80; height < 300; height++) {
      LaneCards cards = new LaneCards();
      int tall = height;
      robot.interact(
          () -> {
            new Scene(cards);
            cards.follow(TIMELINE.layout(700, tall));
            cards.show(List.of(card));
            cards.resize(190, tall);
            cards.applyCss();
            cards.layout();
          });
      for (Node row : ((VBox) cards.getChildrenUnmodifiable().get(0)).getChildren()) {
        Label label = (Label) row;
        if (label.isVisible()) {
          double needed = label.prefHeight(label.getWidth());
          assertTrue(label.getHeight() >= needed - 0.01, height + ": " + label.getText());
        }
      }
    }
  }

  private static void settle(LaneCards cards) {
    cards.resize(130, 70);
    cards.applyCss();
    cards.layout();
  }

  private static List<String> rows(LaneCards cards) {
    return rows((VBox) cards.getChildrenUnmodifiable().get(0));
  }

  private static List<String> rows(VBox card) {
    return card.getChildren().stream()
        .filter(row -> row.isVisible() && row.isManaged())
        .map(row -> ((Label) row).getText())
        .toList();
  }

  private Set<List<String>> shown() {
    return robot.lookup(".lane-card").queryAllAs(VBox.class).stream()
        .map(LaneCardsTest::rows)
        .collect(Collectors.toSet());
  }
}
