package org.fadeline.ui;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertNull;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.HashSet;
import java.util.Set;
import javafx.scene.Node;
import javafx.scene.control.Button;
import javafx.scene.control.MenuButton;
import javafx.scene.control.MenuItem;
import javafx.scene.input.KeyCode;
import org.fadeline.demo.LargeSessions;
import org.fadeline.io.SessionWriter;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.testfx.util.WaitForAsyncUtils;

/** Which file the second match is read from, and where a comparison goes. */
class CompareFilesTest extends WindowHarness {
  @TempDir Path folder;
  private Path second = Path.of("");

  @BeforeEach
  void secondMatch() throws IOException {
    second = folder.resolve("other-day.session.json");
    Files.write(second, SessionWriter.toBytes(HandMade.session()));
    open("Compare");
  }

  private void choose() {
    press("choose-second");
  }

  private void save(String what) {
    MenuButton menu = node("save-comparison", MenuButton.class);
    MenuItem item =
        menu.getItems().stream().filter(i -> i.getText().equals(what)).findFirst().orElseThrow();
    robot.interact(item::fire);
    WaitForAsyncUtils.waitForFxEvents();
  }

  private boolean invited() {
    return shows("Set another match beside this one");
  }

  private void drop(Path... files) {
    robot.interact(() -> Drops.drop(node("choose-second", Button.class), files));
    WaitForAsyncUtils.waitForFxEvents();
  }

  @Test
  void aChosenFileIsTheSecondMatch() {
    paths.answer(second);
    choose();
    assertEquals("Choose the second match", paths.last().title());
    assertTrue(paths.last().kinds().get(0).patterns().contains("*.session.json"));
    assertFalse(invited());
  }

  @Test
  void aLargeMatchIsDrawnFromAnImage() throws IOException {
    Files.write(second, SessionWriter.toBytes(LargeSessions.of(1200, 1)));
    paths.answer(second);
    choose();
    Node strip = node("second-timeline", Node.class);
    Set<Integer> colours = new HashSet<>();
    robot.interact(
        () -> {
          var image = strip.snapshot(null, null);
          for (int x = 0; x < image.getWidth(); x += 3) {
            for (int y = 0; y < image.getHeight(); y += 3) {
              colours.add(image.getPixelReader().getArgb(x, y));
            }
          }
        });
    assertTrue(colours.size() > 20, "marks, bands and words: " + colours.size());
  }

  @Test
  void theKeyAsksAndBeginsWhereTheLatestMatchesAre() {
    robot.interact(() -> preferences.change(p -> p.withRecent(second.toString())));
    paths.answer(second);
    robot.push(KeyCode.S);
    WaitForAsyncUtils.waitForFxEvents();
    assertEquals(folder, paths.last().near());
    assertFalse(invited());
  }

  @Test
  void givingUpTheChoiceChangesNothing() {
    choose();
    assertEquals(1, paths.asked().size());
    assertTrue(invited());
    assertNull(bench.state().activity().trouble());
  }

  @Test
  void aChoiceThatCannotBeReadIsToldWithItsNameAndTheSecondMatchStays() throws IOException {
    paths.answer(second);
    choose();
    for (Path bad : new Path[] {folder.resolve("gone.session.json"), folder, scrap()}) {
      paths.answer(bad);
      robot.push(KeyCode.S);
      WaitForAsyncUtils.waitForFxEvents();
      var trouble = bench.state().activity().trouble();
      assertTrue(
          trouble != null && trouble.title().contains(bad.getFileName().toString()),
          () -> bad + ": " + trouble);
      robot.interact(bench::dismissTrouble);
      assertFalse(invited(), "what was compared stays");
    }
  }

  private Path scrap() throws IOException {
    Path scrap = folder.resolve("scrap.session.json");
    Files.write(scrap, new byte[] {0, 1, (byte) 0xff, 3});
    return scrap;
  }

  @Test
  void aDroppedFileIsTheSecondMatchAndTheFirstStays() {
    drop(second);
    assertFalse(invited());
    assertEquals(FILE, bench.state().open() == null ? null : bench.state().open().source().path());
  }

  @Test
  void aDroppedFileThatCannotBeReadIsTold() throws IOException {
    drop(scrap());
    assertTrue(invited());
    assertTrue(bench.state().activity().trouble() != null);
  }

  @Test
  void theComparisonIsSavedWhereTheUserSays() throws IOException {
    drop(second);
    Path json = folder.resolve("out.json");
    paths.answer(json);
    save("Everything as JSON…");
    assertEquals("comparison.json", paths.last().name());
    assertTrue(Files.readString(json).startsWith("{"));
    Path words = folder.resolve("out.txt");
    paths.answer(words);
    save("In words…");
    assertTrue(Files.readString(words).contains("One match of each cannot tell"));
    Path figures = folder.resolve("figures");
    paths.answer(figures);
    save("Figures as PNG and SVG…");
    try (var files = Files.list(figures)) {
      assertTrue(files.anyMatch(f -> f.toString().endsWith(".svg")));
    }
  }

  @Test
  void theFigureShownIsSavedByItself() throws IOException {
    drop(second);
    Path svg = folder.resolve("rates.svg");
    paths.answer(svg);
    robot.push(KeyCode.ALT, KeyCode.DIGIT4);
    save("This figure…");
    assertEquals("Rates of two matches, with hindsight.png", paths.last().name());
    assertTrue(Files.readString(svg).contains("<title"), "a drawing with its title");
    paths.answer(folder.resolve("rates"));
    robot.push(KeyCode.CONTROL, KeyCode.SHIFT, KeyCode.P);
    WaitForAsyncUtils.waitForFxEvents();
    assertTrue(Files.exists(folder.resolve("rates.png")), "dots where no ending says otherwise");
  }

  @Test
  void givingUpASaveWritesNothing() throws IOException {
    drop(second);
    save("Everything as JSON…");
    save("In words…");
    save("Figures as PNG and SVG…");
    assertEquals(3, paths.asked().size());
    try (var files = Files.list(folder)) {
      assertEquals(1, files.count());
    }
  }

  @Test
  void aSaveThatFailsIsToldWithItsPlaceAndLeavesNothing() throws IOException {
    drop(second);
    Path inTheWay = Files.writeString(folder.resolve("file"), "kept");
    paths.answer(inTheWay.resolve("out.json"));
    save("Everything as JSON…");
    var trouble = bench.state().activity().trouble();
    assertTrue(trouble != null && trouble.detail().contains("out.json"), () -> "" + trouble);
    assertEquals("kept", Files.readString(inTheWay));
  }
}
