package org.fadeline.ui;

import static java.util.Objects.requireNonNull;
import static org.fadeline.ui.HandMade.minute;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertNotEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import javafx.scene.Node;
import javafx.scene.control.Button;
import javafx.scene.control.Labeled;
import javafx.scene.control.ScrollPane;
import javafx.scene.control.TableView;
import javafx.scene.control.TextField;
import javafx.scene.control.ToggleButton;
import javafx.scene.input.Clipboard;
import javafx.scene.input.KeyCode;
import org.fadeline.analysis.Course.Lesson;
import org.fadeline.analysis.Review;
import org.fadeline.analysis.ReviewSettings;
import org.fadeline.analysis.StayOrGo;
import org.fadeline.model.SessionEvent;
import org.fadeline.model.Units;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.extension.ExtendWith;
import org.testfx.framework.junit5.ApplicationExtension;
import org.testfx.util.WaitForAsyncUtils;

/** Tables of the review sorted, filtered and copied; links that seek; settings that tell. */
@ExtendWith(ApplicationExtension.class)
class ReviewTablesTest extends WindowHarness {
  @BeforeEach
  void openReview() {
    open("Review");
  }

  private Review review() {
    return requireNonNull(bench.state().review().latest());
  }

  private TableView<SessionEvent> fish() {
    robot.push(KeyCode.ALT, KeyCode.DIGIT6);
    WaitForAsyncUtils.waitForFxEvents();
    return robot.lookup(".table-view").query();
  }

  private static List<String> ids(TableView<SessionEvent> table) {
    return table.getItems().stream().map(SessionEvent::id).toList();
  }

  private String clipboard() {
    return WaitForAsyncUtils.waitForAsyncFx(
        5_000, () -> String.valueOf(Clipboard.getSystemClipboard().getString()));
  }

  private Node header(String words) {
    return robot
        .lookup(".column-header .label")
        .match((Node n) -> n instanceof Labeled l && l.getText().equals(words))
        .query();
  }

  @Test
  void aClickOnAHeadingSortsByWeight() {
    TableView<SessionEvent> fish = fish();
    assertEquals("s", ids(fish).get(0), "first in time order");
    robot.clickOn(header("Weight"));
    assertEquals("t", ids(fish).get(0), "the lightest, 900 g");
    robot.clickOn(header("Weight"));
    assertEquals("w11", ids(fish).get(0), "the heaviest, 1950 g");
  }

  @Test
  void aTypedWordFiltersAndCopyTakesWhatIsLeft() {
    TableView<SessionEvent> fish = fish();
    robot.clickOn(
        robot
            .lookup((Node n) -> "Show only rows that hold this text".equals(n.getAccessibleText()))
            .queryAs(TextField.class));
    robot.write("short");
    assertEquals(List.of("s", "t", "z", "y"), ids(fish));
    Button copy =
        robot
            .lookup(
                (Node n) -> "Copy the rows shown, with their heading".equals(n.getAccessibleText()))
            .query();
    robot.clickOn(copy);
    List<String> rows = clipboard().lines().toList();
    assertEquals("Time\tLine\tSpecies\tFish\tWeight\tWeight is\tCounts", rows.get(0));
    assertEquals(5, rows.size());
    // 1100 g / 453.59237 g = 2.425 lb: 2 lb 7 oz to the ounce.
    assertEquals("10:08:00\tShort line\tcarp\t1\t2 lb 7 oz\testimated\tyes", rows.get(1));
  }

  @Test
  void theKeysCopyTheRowsPicked() {
    TableView<SessionEvent> fish = fish();
    robot.interact(
        () -> {
          fish.requestFocus();
          fish.getSelectionModel().clearAndSelect(1);
        });
    robot.push(KeyCode.CONTROL, KeyCode.C);
    List<String> rows = clipboard().lines().toList();
    assertEquals(2, rows.size(), rows::toString);
    assertTrue(rows.get(1).startsWith("10:15:00\tShort line"), rows.get(1));
  }

  @Test
  void aRowChosenIsReplayed() {
    TableView<SessionEvent> fish = fish();
    robot.interact(
        () -> {
          fish.requestFocus();
          fish.getSelectionModel().clearAndSelect(2);
        });
    robot.push(KeyCode.ENTER);
    assertEquals(minute(30), bench.state().playhead().at());
    assertFalse(robot.lookup("#timeline").queryAll().isEmpty());
  }

  @Test
  void aLessonLeadsToItsMinute() {
    List<Lesson> lessons = review().course().lessons();
    assertFalse(lessons.isEmpty());
    for (Lesson lesson : lessons) {
      robot.interact(() -> window.showScreen("Review"));
      robot.interact(() -> bench.transport().toEnd());
      Node card = robot.lookup(lesson.text()).query().getParent();
      Button go = robot.from(card).lookup(".button").query();
      robot.interact(go::fire);
      assertEquals(lesson.at(), bench.state().playhead().at());
      assertFalse(bench.state().playhead().motion().playing());
      assertFalse(robot.lookup("#timeline").queryAll().isEmpty());
    }
  }

  @Test
  void theMinuteAFadeWasPlainIsALinkToo() {
    StayOrGo late =
        review().stays().stream().filter(s -> s.past() != null).findFirst().orElseThrow();
    Button go =
        robot
            .lookup((Node n) -> n instanceof Button b && b.getText().endsWith("when it was plain"))
            .query();
    robot.interact(go::fire);
    assertEquals(requireNonNull(late.past()).plainAt(), bench.state().playhead().at());
  }

  @Test
  void settingsChangeTheFindingsAndStayOnTheirPage() {
    List<String> before = words();
    robot.push(KeyCode.ALT, KeyCode.DIGIT9);
    for (String value : new String[] {"50%", "1.0 an hour", "fish", "8 min", "60 min"}) {
      ToggleButton button =
          robot
              .lookup((Node n) -> n instanceof ToggleButton b && value.equals(b.getText()))
              .query();
      robot.interact(button::fire);
      assertTrue(button.isSelected(), value);
    }
    ReviewSettings now = review().settings();
    assertEquals(0.5, now.callLevel());
    assertEquals(1.0, now.changeHazard());
    assertEquals(ReviewSettings.Measure.FISH, now.measure());
    assertEquals(8, now.moveCostMinutes());
    assertEquals(60, now.windowMinutes());
    assertNotEquals(before, words());
    assertTrue(shows("How the findings move with the settings"), "the page stays");
    review().stays().forEach(stay -> assertTrue(shows(told(stay))));
    robot.interact(
        () ->
            robot
                .lookup(
                    (Node n) -> n instanceof Button b && b.getText().equals("Back to the defaults"))
                .queryAs(Button.class)
                .fire());
    assertEquals(before, words());
  }

  private List<String> words() {
    return review().stays().stream().map(s -> s.wording().text()).toList();
  }

  /** A stay looked at stays the one looked at when the review is worked out again. */
  @Test
  void theFindingChosenSurvivesAChangeOfUnits() {
    StayOrGo last = review().stays().get(2);
    Node card = robot.lookup(told(last)).query().getParent();
    robot.interact(card::requestFocus);
    robot.push(KeyCode.ENTER);
    assertTrue(shows("Short line, 13:01–"));
    robot.interact(() -> preferences.change(p -> p.withUnits(Units.KG_AND_METRES)));
    WaitForAsyncUtils.waitForFxEvents();
    assertTrue(shows("Short line, 13:01–"), "not thrown back to the first");
    assertTrue(shows("kg"));
  }

  @Test
  void theListOfStaysScrollsToItsLast() {
    ScrollPane scroll =
        (ScrollPane)
            robot
                .lookup(".finding")
                .queryAll()
                .iterator()
                .next()
                .getParent()
                .getParent()
                .getParent()
                .getParent();
    Node last = robot.lookup(told(review().stays().get(2))).query().getParent();
    robot.interact(last::requestFocus);
    WaitForAsyncUtils.waitForFxEvents();
    var port = scroll.localToScene(scroll.getBoundsInLocal());
    var card = last.localToScene(last.getBoundsInLocal());
    assertTrue(card.getMinY() < port.getMaxY(), "the card in focus is in view");
    robot.interact(() -> scroll.setVvalue(1));
    WaitForAsyncUtils.waitForFxEvents();
    card = last.localToScene(last.getBoundsInLocal());
    assertTrue(card.getMaxY() <= port.getMaxY() + 1, "and can be seen to its end");
  }
}
