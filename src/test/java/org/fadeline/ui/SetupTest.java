package org.fadeline.ui;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNull;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Objects;
import javafx.geometry.Point2D;
import javafx.scene.control.Label;
import javafx.scene.control.TextField;
import javafx.scene.input.KeyCode;
import javafx.scene.input.MouseButton;
import javafx.scene.layout.Pane;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.text.PDFTextStripper;
import org.fadeline.figure.FigureStyle;
import org.fadeline.figure.PegFigure;
import org.fadeline.figure.PegLayout;
import org.fadeline.figure.Theme;
import org.fadeline.model.Line;
import org.fadeline.model.LineCodes;
import org.fadeline.model.MatchRules;
import org.fadeline.model.Session;
import org.fadeline.replay.ReplayFrame;
import org.jspecify.annotations.Nullable;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Setting a match up in the window: begun, changed field by field, lines put on the water. */
class SetupTest extends WindowHarness {
  private Line line(String id) {
    return session().line(id).orElseThrow();
  }

  private String text(String id) {
    return node(id, Label.class).getText();
  }

  @Test
  void aMatchIsBegunFromNothingInAFileOfItsOwn() throws Exception {
    robot.interact(() -> window.showScreen("Set up"));
    type("title", "Evening match");
    type("venue", "Invented Mere");
    type("peg-number", "7");
    type("date", "5 Sep 2026");
    type("all-in", "18:00");
    type("all-out", "21:00");
    type("begin-path", "evening");
    press("begin-match");
    waitUntil(() -> bench.state().open() != null);
    assertEquals("Evening match", session().occasion().title());
    assertEquals("7", session().occasion().peg().number());
    assertEquals(3 * 3_600_000L, session().match().lengthMillis());
    assertEquals(
        Path.of("evening.session.json"),
        Objects.requireNonNull(bench.state().open()).source().path());
    press("add-line");
    type("line-name", "Waggler");
    assertEquals("Waggler", session().lines().get(0).name());
    assertEquals(List.of("Add a line", "Set name"), desk.kept);
  }

  @Test
  void aNewMatchIsNotKeptAmongTheSamples(@TempDir Path folder) throws Exception {
    Path samples = Files.createDirectories(folder.resolve("sample-sessions"));
    Path own = Files.createDirectories(folder.resolve("matches"));
    robot.interact(
        () -> {
          preferences.change(p -> p.withRecent(own.resolve("b.session.json").toString()));
          preferences.change(p -> p.withRecent(samples.resolve("a.session.json").toString()));
          window.showScreen("Set up");
        });
    String offered = node("begin-path", TextField.class).getText();
    assertEquals(own, Path.of(offered).getParent());
  }

  @Test
  void aMatchTakesTheLinesOfAnEarlierOne() throws Exception {
    robot.interact(() -> window.showScreen("Set up"));
    choose("begin-lines-from", FILE);
    assertTrue(shows("Shallow, Short line."));
    type("begin-path", "next");
    press("begin-match");
    waitUntil(() -> bench.state().open() != null);
    assertEquals(2, session().lines().size());
    assertTrue(session().events().isEmpty());
  }

  @Test
  void aChangeIsOneStepThatIsTakenBack() throws Exception {
    open("Set up");
    type("peg-number", "22");
    assertEquals("22", session().occasion().peg().number());
    assertEquals(List.of("Set peg"), desk.kept);
    robot.interact(() -> bench.editing().undo());
    waitUntil(() -> "14".equals(session().occasion().peg().number()));
    assertEquals("14", node("peg-number", TextField.class).getText());
  }

  @Test
  void whatCannotBeUsedIsToldBesideItsField() {
    open("Set up");
    type("all-in", "tennish");
    assertTrue(text("all-in-error").contains("10:00"), text("all-in-error"));
    assertEquals(HandMade.ALL_IN, session().match().allIn());
    type("all-in", "09:45");
    assertEquals(HandMade.ALL_IN - 900_000, session().match().allIn());
    assertEquals("", text("all-in-error"));
  }

  @Test
  void theRulesAreTicked() {
    open("Set up");
    press("foul-counts");
    press("live-figures");
    assertTrue(session().match().rules().foulHookedCounts());
    assertTrue(session().match().rules().liveFiguresAllowed());
    type("extra-minutes", "15");
    assertEquals(15, session().match().rules().playingAtWhistleMinutes());
  }

  @Test
  void aLineIsPlacedByTypingAndItsRigWeighed() {
    open("Set up");
    press("line-row-short");
    type("line-distance", "6.5");
    type("line-bearing", "10 left");
    assertEquals(6.5, line("short").place().distanceM());
    assertEquals(-10.0, line("short").place().bearingDegrees());
    type("rig-float", "0.4");
    type("rig-shotting", "6x8");
    assertEquals("0.36 g of shot, leaving 0.04 g of what the float takes.", text("rig-balance"));
    choose("line-kind", "deck");
    assertEquals("deck", line("short").kind());
    choose("line-spot", "Shallow");
    assertEquals("shallow", line("short").spot());
    choose("line-spot", "");
    assertEquals("short", line("short").spot());
  }

  @Test
  void aNewLineGoesWhereTheWaterIsPressedAndIsDraggedFromThere() throws Exception {
    open("Set up");
    press("add-line");
    assertNull(session().lines().get(2).place().distanceM());
    Pane swim = node("swim", Pane.class);
    waitUntil(() -> swim.getWidth() > 100);
    Point2D there = swim.localToScreen(swim.getWidth() * 0.72, swim.getHeight() * 0.5);
    robot.moveTo(there).press(MouseButton.PRIMARY).release(MouseButton.PRIMARY);
    waitUntil(() -> session().lines().get(2).place().distanceM() != null);
    Line placed = session().lines().get(2);
    assertTrue(Objects.requireNonNull(placed.place().bearingDegrees()) > 0, "to the right");
    robot.interact(() -> bench.editing().undo());
    waitUntil(() -> session().lines().get(2).place().distanceM() == null);
  }

  @Test
  void aLineWithEventsIsNotTakenOut() {
    open("Set up");
    press("line-row-short");
    press("remove-line");
    assertEquals(2, session().lines().size());
    press("add-line");
    press("remove-line");
    assertEquals(2, session().lines().size());
    assertEquals(List.of("Add a line", "Remove a line"), desk.kept);
  }

  @Test
  void weatherAndMarksAreAdded() {
    open("Set up");
    press("add-weather-note");
    type("weather-0-wind", "SW");
    type("weather-0-force", "3");
    type("weather-0-water", "16.5");
    assertEquals(16.5, session().occasion().weather().get(0).waterC());
    press("add-mark");
    type("feature-0-name", "reeds");
    type("feature-0-bearing", "30 left");
    assertEquals(-30, session().occasion().peg().features().get(0).bearingDegrees());
  }

  /** Returns where a line lies on the water, in the pane's own coordinates. */
  private Point2D drawn(String lineId, Pane swim) {
    Session session = session();
    ReplayFrame frame = ReplayFrame.at(session.withEvents(List.of()), session.match().allIn());
    PegLayout layout =
        new PegFigure(session, frame, FigureStyle.of(Theme.LIGHT, preferences.get().units()))
            .layoutForPlacing(Math.floor(swim.getWidth()), Math.floor(swim.getHeight()));
    double x = 0;
    double y = 0;
    int hits = 0;
    for (int i = 0; i < swim.getWidth(); i += 3) {
      for (int j = 0; j < swim.getHeight(); j += 3) {
        if (layout.at(i, j, frame).filter(h -> lineId.equals(h.lineId())).isPresent()) {
          x += i;
          y += j;
          hits++;
        }
      }
    }
    return new Point2D(x / hits, y / hits);
  }

  @Test
  void aLineIsDraggedToWhereItLies() throws Exception {
    open("Set up");
    Pane swim = node("swim", Pane.class);
    waitUntil(() -> swim.getWidth() > 100);
    Line before = line("short");
    Point2D from = drawn("short", swim);
    Point2D to = from.add(swim.getWidth() * 0.15, -swim.getHeight() * 0.1);
    robot.moveTo(swim.localToScreen(from)).press(MouseButton.PRIMARY);
    robot.moveTo(swim.localToScreen(to));
    assertEquals(before, line("short"), "nothing is kept before the line is let go");
    robot.release(MouseButton.PRIMARY);
    waitUntil(() -> !line("short").equals(before));
    assertTrue(number(line("short").place().distanceM()) > number(before.place().distanceM()));
    assertTrue(
        number(line("short").place().bearingDegrees()) > number(before.place().bearingDegrees()));
    assertEquals(1, desk.kept.size(), "one step");
    waitUntil(() -> node("swim", Pane.class).getWidth() > 100);
    robot.interact(() -> bench.editing().undo());
    waitUntil(() -> line("short").equals(before));
  }

  private static double number(@Nullable Double value) {
    return value == null ? 0 : value;
  }

  @Test
  void aNewLineIsNamedAtOnceAndAPolesLengthIsInReach() throws Exception {
    robot.interact(() -> window.showScreen("Set up"));
    type("begin-path", "reach");
    press("begin-match");
    waitUntil(() -> bench.state().open() != null);
    press("add-line");
    waitUntil(() -> node("line-name", TextField.class).isFocused());
    robot.write("Long");
    robot.push(KeyCode.ENTER);
    assertEquals("Long", session().lines().get(0).name());
    Pane swim = node("swim", Pane.class);
    waitUntil(() -> swim.getWidth() > 100);
    robot
        .moveTo(swim.localToScreen(swim.getWidth() / 2, swim.getHeight() * 0.1))
        .press(MouseButton.PRIMARY)
        .release(MouseButton.PRIMARY);
    waitUntil(() -> session().lines().get(0).place().distanceM() != null);
    assertTrue(number(session().lines().get(0).place().distanceM()) > 13);
  }

  @Test
  void theBankSheetIsPrintedByItsButton(@TempDir Path folder) throws Exception {
    open("Set up");
    Path sheet = folder.resolve("sheet.pdf");
    paths.answer(sheet);
    press("print-sheet");
    assertTrue(shows("sheet.pdf is written"));
    try (PDDocument document = Loader.loadPDF(sheet.toFile())) {
      String text = new PDFTextStripper().getText(document);
      assertTrue(text.contains("Write for the line"), text);
      for (String code : LineCodes.of(session().lines()).values()) {
        assertTrue(text.contains(code), code);
      }
    }
    paths.answer(Files.writeString(folder.resolve("a file"), "x").resolve("sheet.pdf"));
    press("print-sheet");
    assertTrue(shows("sheet.pdf was not written"));
    assertTrue(desk.kept.isEmpty());
  }

  @Test
  void linesAreTakenFromAnEarlierMatchByItsButton() throws Exception {
    Session earlier = HandMade.session();
    desk.with(
        "earlier.session.json",
        earlier
            .withLines(List.of(earlier.lines().get(0), Line.named("far", "Far bank")))
            .withEvents(List.of()));
    open("Set up");
    int there = session().lines().size();
    paths.answer(Path.of("earlier.session.json"));
    press("take-lines");
    waitUntil(() -> session().lines().size() == there + 1);
    assertTrue(session().lines().stream().anyMatch(l -> l.name().equals("Far bank")));
    assertEquals(List.of("Take lines from another match"), desk.kept);
  }

  @Test
  void tooMuchShotForTheFloatIsTold() {
    open("Set up");
    press("line-row-short");
    type("rig-float", "0.3");
    type("rig-shotting", "6x8");
    assertTrue(text("rig-balance").contains("0.36 g"), text("rig-balance"));
    assertTrue(text("rig-balance").contains("0.06 g"), text("rig-balance"));
    assertTrue(text("rig-balance").contains("more than"), text("rig-balance"));
  }

  @Test
  void netsHaveALimit() {
    open("Set up");
    type("net-limit", "50");
    type("net-tolerance", "2");
    type("net-exceeding", "that net counts as nothing");
    assertEquals(
        new MatchRules.NetLimit(50 * 453.59237, 2 * 453.59237, "that net counts as nothing"),
        session().match().rules().netLimit());
  }
}
