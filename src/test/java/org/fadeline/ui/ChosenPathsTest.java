package org.fadeline.ui;

import static java.util.Objects.requireNonNull;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertNull;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import javafx.scene.control.TableView;
import javafx.scene.input.KeyCode;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.fadeline.ui.control.file.PathChooser.Question;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.testfx.util.WaitForAsyncUtils;

/** Files chosen, and not chosen after all, wherever the window asks for one. */
class ChosenPathsTest extends WindowHarness {
  @TempDir Path folder;

  private void keys(KeyCode... keys) {
    robot.push(keys);
    WaitForAsyncUtils.waitForFxEvents();
  }

  private List<String> files() throws IOException {
    try (var files = Files.list(folder)) {
      return files.map(f -> f.getFileName().toString()).sorted().toList();
    }
  }

  @Test
  void theMatchChosenIsOpenedAndGivingUpLeavesTheOneInHand() {
    open("Replay");
    desk.with("other.session.json", HandMade.session());
    keys(KeyCode.CONTROL, KeyCode.O);
    assertEquals("Open a match", paths.last().title());
    assertTrue(paths.last().kinds().get(0).patterns().contains("*.csv"));
    assertEquals(FILE, requireNonNull(bench.state().open()).source().path());
    Path other = folder.resolve("other.session.json");
    paths.answer(other);
    keys(KeyCode.CONTROL, KeyCode.O);
    assertEquals(other, requireNonNull(bench.state().open()).source().path());
    keys(KeyCode.CONTROL, KeyCode.O);
    assertEquals(folder, paths.last().near(), "where the latest match is");
  }

  @Test
  void theMatchIsSavedUnderTheNameChosenWithItsEnding() {
    open("Replay");
    keys(KeyCode.CONTROL, KeyCode.SHIFT, KeyCode.S);
    assertEquals("Save the match", paths.last().title());
    assertEquals(FILE, requireNonNull(bench.state().open()).source().path(), "given up");
    paths.answer(folder.resolve("august"));
    keys(KeyCode.CONTROL, KeyCode.SHIFT, KeyCode.S);
    assertEquals(
        folder.resolve("august.session.json"),
        requireNonNull(bench.state().open()).source().path());
  }

  @Test
  void theTimelineOfReplayIsSavedAsAPicture() throws IOException {
    open("Replay");
    keys(KeyCode.CONTROL, KeyCode.SHIFT, KeyCode.P);
    assertEquals("Save the picture", paths.last().title());
    assertEquals(List.of(), files(), "given up");
    paths.answer(folder.resolve("timeline.svg"));
    keys(KeyCode.CONTROL, KeyCode.SHIFT, KeyCode.P);
    assertTrue(Files.readString(folder.resolve("timeline.svg")).contains("<title"));
    assertTrue(shows("timeline.svg is written"));
  }

  @Test
  void aChartOfTheReviewIsSavedAsAPicture() throws IOException {
    open("Review");
    keys(KeyCode.ALT, KeyCode.DIGIT5);
    keys(KeyCode.CONTROL, KeyCode.SHIFT, KeyCode.P);
    assertEquals(List.of(), files(), "given up");
    paths.answer(folder.resolve("quarters"));
    keys(KeyCode.CONTROL, KeyCode.SHIFT, KeyCode.P);
    assertEquals(List.of("quarters.png"), files());
  }

  @Test
  void thePageOfTheMatchIsSavedAsItsPdf() throws IOException {
    open("Review");
    keys(KeyCode.ALT, KeyCode.DIGIT7);
    press("save-page");
    assertTrue(paths.last().name().endsWith(".pdf"), paths.last().name());
    assertEquals(List.of(), files(), "given up");
    paths.answer(folder.resolve("page"));
    press("save-page");
    try (PDDocument page = Loader.loadPDF(folder.resolve("page.pdf").toFile())) {
      assertEquals(1, page.getNumberOfPages());
    }
  }

  @Test
  void theFileChosenIsBroughtIn() throws IOException {
    robot.interact(() -> window.showScreen("Import"));
    press("import-choose");
    assertTrue(paths.last().kinds().get(0).patterns().contains("*.vtt"));
    assertTrue(shows("No table yet."), "given up");
    paths.answer(Files.writeString(folder.resolve("a.csv"), "time,event\n10:00,bite\n"));
    press("import-choose");
    assertEquals(1, node("import-rows", TableView.class).getItems().size());
  }

  @Test
  void whatStandsUnderTheWholeNameIsAskedAboutBeforeItIsWrittenOver() throws IOException {
    Path there = Files.writeString(folder.resolve("page.pdf"), "kept");
    paths.answer(folder.resolve("page"));
    assertNull(paths.save(Question.of("Where", null), ".pdf"), "the ending was left once more");
    assertEquals(List.of("", "page.pdf"), paths.asked().stream().map(Question::name).toList());
    assertEquals(folder, paths.last().near());
    paths.answer(there);
    assertEquals(there, paths.save(Question.of("Where", null), ".pdf"));
    assertEquals(3, paths.asked().size(), "a whole name is the dialog's own to ask about");
    assertFalse(Files.readString(there).isEmpty());
  }
}
