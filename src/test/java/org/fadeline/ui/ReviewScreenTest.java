package org.fadeline.ui;

import static java.util.Objects.requireNonNull;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Set;
import javafx.scene.Node;
import javafx.scene.control.Button;
import javafx.scene.control.TableView;
import javafx.scene.control.ToggleButton;
import javafx.scene.input.KeyCode;
import org.fadeline.analysis.OtherSettings;
import org.fadeline.analysis.Review;
import org.fadeline.analysis.StayOrGo;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.extension.ExtendWith;
import org.testfx.framework.junit5.ApplicationExtension;

/** The review: findings, tables, lessons that lead into the replay, settings that review again. */
@ExtendWith(ApplicationExtension.class)
class ReviewScreenTest extends WindowHarness {
  @BeforeEach
  void openReview() {
    open("Review");
  }

  private Review review() {
    return requireNonNull(bench.state().review().latest());
  }

  @Test
  void everyStayIsListedWithItsWords() {
    assertEquals(3, review().stays().size());
    review().stays().forEach(stay -> assertTrue(shows(told(stay))));
  }

  @Test
  void aFindingLeadsIntoTheReplayAtItsMinute() {
    Button go =
        robot
            .lookup((Node n) -> n instanceof Button b && b.getText().startsWith("Replay from"))
            .query();
    robot.interact(go::fire);
    assertEquals(review().stays().get(0).spell().span().from(), bench.state().playhead().at());
    assertFalse(robot.lookup("#timeline").queryAll().isEmpty());
  }

  @Test
  void theEvidenceOfAFadeAsksWhetherItWasTheWater() {
    StayOrGo faded =
        review().stays().stream().filter(s -> s.quiet() != null).findFirst().orElseThrow();
    Node card = robot.lookup(told(faded)).query().getParent();
    robot.interact(card::requestFocus);
    robot.push(KeyCode.ENTER);
    assertTrue(shows(requireNonNull(faded.quiet()).text()));
    assertTrue(shows("No neighbour's fish are noted."));
  }

  @Test
  void theTablesHoldEveryLineAndEveryFish() {
    robot.push(KeyCode.ALT, KeyCode.DIGIT2);
    TableView<?> lines = robot.lookup(".table-view").query();
    assertEquals(2, lines.getItems().size());
    robot.push(KeyCode.ALT, KeyCode.DIGIT6);
    TableView<?> fish = robot.lookup(".table-view").query();
    assertEquals(16, fish.getItems().size(), "2 + 12 + 2 fish were landed");
  }

  @Test
  void otherSettingsReviewAgain() {
    robot.push(KeyCode.ALT, KeyCode.DIGIT8);
    assertTrue(shows("This is a full record"));
    robot.push(KeyCode.ALT, KeyCode.DIGIT9);
    TableView<?> moved = robot.lookup(".table-view").query();
    assertEquals(
        OtherSettings.of(review().session(), review().settings()).rows().size(),
        moved.getItems().size());
    assertTrue(shows("One setting changed at a time."));
    Set<ToggleButton> fish =
        robot
            .lookup((Node n) -> n instanceof ToggleButton b && b.getText().equals("50%"))
            .queryAllAs(ToggleButton.class);
    robot.interact(() -> fish.iterator().next().fire());
    assertEquals(0.5, review().settings().callLevel());
  }
}
