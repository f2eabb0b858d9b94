package org.fadeline.ui;

import static java.util.Objects.requireNonNull;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Objects;
import javafx.scene.Node;
import javafx.scene.control.Button;
import javafx.scene.control.CheckBox;
import javafx.scene.control.ComboBox;
import javafx.scene.control.Label;
import javafx.scene.control.ListCell;
import javafx.scene.control.ListView;
import javafx.scene.control.MenuButton;
import javafx.scene.input.KeyCode;
import org.controlsfx.control.CheckComboBox;
import org.fadeline.analysis.LearnedPriors;
import org.fadeline.analysis.Review;
import org.fadeline.demo.DemoMatch;
import org.fadeline.demo.DemoWaters;
import org.fadeline.io.SessionWriter;
import org.fadeline.ui.control.picture.FigureCanvas;
import org.jspecify.annotations.Nullable;
import org.junit.jupiter.api.Test;
import org.testfx.util.WaitForAsyncUtils;

/** A folder of sessions in the window. */
class SeasonScreenTest extends SeasonHarness {
  @Test
  void theFolderIsReadKeptAndItsBrokenFileIsListed() {
    assertEquals(2, table().getItems().size());
    assertTrue(Files.exists(folder.resolve(".fadeline-season")));
    assertTrue(shows("too few for limits"));
    robot.push(KeyCode.ALT, KeyCode.DIGIT7);
    assertEquals(1, table().getItems().size());
  }

  @Test
  void aRowLeadsToItsSessionsAndOneOpensInTheReplay() throws Exception {
    robot.push(KeyCode.ALT, KeyCode.DIGIT2);
    robot.interact(() -> table().getSelectionModel().select(0));
    ListView<?> behind = node("season-behind", ListView.class);
    assertFalse(behind.getItems().isEmpty());
    WaitForAsyncUtils.waitForFxEvents();
    ListCell<?> first = robot.from(behind).lookup(".list-cell").query();
    double below =
        first.lookupAll(".text").stream()
            .mapToDouble(t -> first.sceneToLocal(t.localToScene(t.getLayoutBounds())).getMaxY())
            .max()
            .orElseThrow();
    assertTrue(
        below <= first.getHeight(),
        "the last row of words is cut: " + below + " of " + first.getHeight());
    robot.interact(
        () -> {
          behind.requestFocus();
          behind.getSelectionModel().select(0);
        });
    robot.push(KeyCode.ENTER);
    settle(() -> !robot.lookup("#timeline").queryAll().isEmpty());
    assertTrue(bench.state().open() != null);
  }

  @Test
  void filtersLeaveSessionsOutAndAreTakenAwayAgain() throws Exception {
    @SuppressWarnings("unchecked") // the box of waters holds their names
    CheckComboBox<String> waters = node("season-waters", CheckComboBox.class);
    assertEquals(2, waters.getItems().size());
    robot.interact(() -> waters.getCheckModel().check(0));
    settle(() -> shows("1 of 2 matches"));
    assertEquals("Water", waters.getTitle());
    ComboBox<?> warmth = node("season-warmth", ComboBox.class);
    robot.interact(() -> warmth.getSelectionModel().selectLast());
    settle(() -> shows("0 of 2 matches"));
    press("season-everything");
    settle(() -> shows("2 matches, 1 file"));
    assertEquals("Any water", waters.getTitle());
  }

  @Test
  void theFigureShownIsPutOnTheTalkOverWhatIsLookedAt() throws Exception {
    @SuppressWarnings("unchecked") // the box of waters holds their names
    CheckComboBox<String> waters = node("season-waters", CheckComboBox.class);
    robot.interact(() -> waters.getCheckModel().check(0));
    settle(() -> shows("1 of 2 matches"));
    robot.push(KeyCode.ALT, KeyCode.DIGIT6);
    robot.push(KeyCode.CONTROL, KeyCode.SHIFT, KeyCode.T);
    assertTrue(shows("There is no picture here to put on the talk"), "a page of tables");
    robot.push(KeyCode.ALT, KeyCode.DIGIT1);
    robot.push(KeyCode.CONTROL, KeyCode.SHIFT, KeyCode.T);
    assertTrue(shows("On the talk: Season: each match"));
    robot.interact(() -> window.showScreen("Talk"));
    settle(() -> slide().contains(": 1 match, least "));
    assertTrue(slide().contains(": 1 match, least "), slide());
    assertEquals(1, node("slides", ListView.class).getItems().size());
  }

  private String slide() {
    return robot.lookup("#slide").queryAll().stream()
        .map(Node::getAccessibleText)
        .filter(Objects::nonNull)
        .findFirst()
        .orElse("");
  }

  @Test
  void aPageNotInViewIsMadeOfWhatIsChosenOnceItIsShown() throws Exception {
    robot.push(KeyCode.ALT, KeyCode.DIGIT4);
    settle(() -> pastPlain().contains(" of 2 matches stayed"));
    robot.push(KeyCode.ALT, KeyCode.DIGIT1);
    @SuppressWarnings("unchecked") // the box of waters holds their names
    CheckComboBox<String> waters = node("season-waters", CheckComboBox.class);
    robot.interact(() -> waters.getCheckModel().check(0));
    settle(() -> shows("1 of 2 matches"));
    robot.push(KeyCode.ALT, KeyCode.DIGIT4);
    assertTrue(pastPlain().contains(" of 1 match stayed"), pastPlain());
    assertEquals(1, sessionsOfTheFirstRow());
  }

  private String pastPlain() {
    return node("season-past-plain", FigureCanvas.class).getAccessibleText();
  }

  private int sessionsOfTheFirstRow() {
    return ((org.fadeline.analysis.season.Season.FadeGroup) table().getItems().get(0))
        .sessions()
        .size();
  }

  @Test
  void theFolderAskedForIsOpenedAndNoneLeavesTheScreenAsItIs() throws Exception {
    Path other = Files.createDirectory(folder.resolve("other"));
    Files.writeString(
        other.resolve("three.session.json"),
        SessionWriter.toJson(DemoMatch.generate(DemoWaters.waterC(), DemoWaters.planC(), 3)));
    paths.answer(null);
    press("season-choose");
    assertTrue(shows("2 matches, 1 file with a problem"));
    paths.answer(other);
    press("season-choose");
    settle(() -> shows("1 match: too few for limits") && !shows("Stop"));
  }

  @Test
  void theFigureShownIsSavedByItselfOrPutOnTheTalk() throws Exception {
    robot.push(KeyCode.ALT, KeyCode.DIGIT5);
    Path file = folder.resolve("written/feed.pdf");
    paths.answer(file);
    robot.push(KeyCode.CONTROL, KeyCode.SHIFT, KeyCode.P);
    assertEquals("Season feed and catch.png", paths.last().name());
    settle(() -> Files.exists(file));
    robot.push(KeyCode.CONTROL, KeyCode.SHIFT, KeyCode.T);
    settle(() -> shows("On the talk: Season: feed and catch"));
  }

  @Test
  void figuresTablesAndJsonAreWrittenWhereAsked() throws Exception {
    MenuButton export = node("season-export", MenuButton.class);
    Path figures = folder.resolve("written/figures");
    paths.answer(figures);
    robot.interact(() -> export.getItems().get(0).fire());
    waitUntil(() -> Files.exists(figures.resolve("season-feed.pdf")));
    Path tables = folder.resolve("written/tables");
    paths.answer(tables);
    robot.interact(() -> export.getItems().get(1).fire());
    waitUntil(() -> Files.exists(tables.resolve("season-learned.csv")));
    Path json = folder.resolve("written/season.json");
    paths.answer(json);
    robot.interact(() -> export.getItems().get(2).fire());
    waitUntil(() -> Files.exists(json));
    assertTrue(Files.exists(figures.resolve("season-results.png")));
    assertTrue(Files.readString(json).contains("fadeline-season"));
  }

  @Test
  void feedIsDrawnAndTabledAndALimitIsSaidAtTheFoot() throws Exception {
    assertFalse(node("season-foot", Label.class).isVisible());
    robot.push(KeyCode.ALT, KeyCode.DIGIT5);
    String said = node("season-feed", FigureCanvas.class).getAccessibleText();
    assertTrue(said.startsWith("Feed given against what came"), said);
    assertTrue(said.contains("too few to tell"), said);
    assertTrue(node("season-foot", Label.class).isVisible());
    assertEquals(2, robot.lookup(".table-view").queryAll().size());
    robot.interact(() -> table().getSelectionModel().select(0));
    assertFalse(node("season-behind", ListView.class).getItems().isEmpty());
  }

  @Test
  void aCellClickedLeadsToItsSessions() throws Exception {
    robot.push(KeyCode.ALT, KeyCode.DIGIT2);
    FigureCanvas hours = node("season-hours", FigureCanvas.class);
    ListView<?> behind = node("season-behind", ListView.class);
    robot.interact(() -> season.view().requestFocus());
    robot.clickOn(hours);
    settle(() -> !behind.getItems().isEmpty());
  }

  @Test
  void aChangedFileIsNotedAndReadWhenAsked() throws Exception {
    write("three", DemoMatch.generate(DemoWaters.waterC(), DemoWaters.planC(), 3));
    settle(() -> shows("1 file changed: read again"));
    assertEquals(2, table().getItems().size(), "nothing moves by itself");
    robot.interact(() -> node("season-changed", Button.class).fire());
    settle(() -> shows("3 matches, 1 file with a problem") && !shows("Stop"));
    WaitForAsyncUtils.waitForFxEvents();
    assertFalse(shows("changed: read again"));
  }

  @Test
  void aFilterByAWaterThatIsGoneFromTheFolderIsTakenAway() throws Exception {
    @SuppressWarnings("unchecked") // the box of waters holds their names
    CheckComboBox<String> waters = node("season-waters", CheckComboBox.class);
    robot.interact(() -> waters.getCheckModel().check("Brackwith Mere"));
    settle(() -> shows("1 of 2 matches, 1 file with a problem"));
    Files.delete(folder.resolve("two.session.json"));
    settle(() -> shows("1 file changed: read again"));
    robot.interact(() -> node("season-changed", Button.class).fire());
    settle(() -> shows("1 match, 1 file with a problem: too few for limits"));
  }

  @Test
  void reviewsLearnFromTheOtherSessionsWhereTheAnglerLetsThem() throws Exception {
    robot.interact(() -> bench.open(folder.resolve("one.session.json")));
    settle(() -> bench.state().review().latest() != null);
    robot.interact(() -> window.showScreen("Season"));
    robot.push(KeyCode.ALT, KeyCode.DIGIT6);
    CheckBox teach = node("season-teach", CheckBox.class);
    robot.interact(teach::fire);
    settle(() -> learned() != null);
    assertEquals(1, requireNonNull(learned()).sessions(), "not from the match itself");
    robot.interact(() -> window.showScreen("Review"));
    robot.push(KeyCode.ALT, KeyCode.DIGIT9);
    assertTrue(shows("Learns from the other matches of"));
    robot.interact(() -> node("learn-from-none", Button.class).fire());
    settle(() -> learned() == null);
    robot.interact(() -> window.showScreen("Season"));
    assertFalse(node("season-teach", CheckBox.class).isSelected());
  }

  private @Nullable LearnedPriors learned() {
    Review latest = bench.state().review().latest();
    return latest == null ? null : latest.settings().learned();
  }
}
