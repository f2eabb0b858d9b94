package org.fadeline.ui;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import javafx.scene.Node;
import javafx.scene.control.TableView;
import javafx.scene.image.PixelFormat;
import javafx.scene.image.WritableImage;
import org.fadeline.io.ReadOptions;
import org.fadeline.io.SessionWriter;
import org.fadeline.io.open.SessionFiles;
import org.fadeline.model.Session;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.testfx.util.WaitForAsyncUtils;

/** As known then, Compare shows of two whole records what it shows of the two cut at the moment. */
class CompareKnownThenTest extends WindowHarness {
  private static final List<String> PAGES =
      List.of("Timelines", "Pegs", "Catch", "Rates", "First bites", "Line by line", "Pairing");
  private static final long STEP = 97 * 60_000L + 7_000;

  @TempDir Path folder;

  @ParameterizedTest
  @CsvSource({
    "quillthorn-first-open, quillthorn-second-open",
    "brackwith-spring, evening-moves-and-fish"
  })
  void nothingAheadOfThePlayheadShows(String one, String other) throws IOException {
    Session first = read(one);
    Session second = read(other);
    List<Long> minutes = new ArrayList<>();
    for (long at = STEP; at < first.match().allOut() - first.match().allIn(); at += STEP) {
      minutes.add(at);
    }
    assertTrue(minutes.size() >= 2);
    openBoth(first, second);
    List<List<Shown>> whole = new ArrayList<>();
    for (long at : minutes) {
      whole.add(shownAt(first.match().allIn() + at));
    }
    List<String> told = new ArrayList<>();
    for (int i = 0; i < minutes.size(); i++) {
      long at = first.match().allIn() + minutes.get(i);
      openBoth(upTo(first, at), upTo(second, second.match().allIn() + minutes.get(i)));
      List<Shown> cut = shownAt(at);
      for (int p = 0; p < PAGES.size(); p++) {
        if (!cut.get(p).isAs(whole.get(i).get(p))) {
          told.add(
              PAGES.get(p)
                  + ", "
                  + minutes.get(i) / 60_000
                  + " min: "
                  + cut.get(p).words
                  + " but "
                  + whole.get(i).get(p).words);
        }
      }
    }
    assertEquals(List.of(), told);
  }

  /** The switch does change what is shown: otherwise the test above would hold of nothing. */
  @Test
  void withHindsightTheRestIsShown() throws IOException {
    Session first = read("quillthorn-first-open");
    openBoth(first, read("quillthorn-second-open"));
    List<Shown> then = shownAt(first.match().allIn() + STEP);
    assertTrue(node("compare-so-far", Node.class).isVisible());
    assertFalse(node("compare-afterwards", Node.class).isVisible());
    robot.interact(() -> bench.hindsight(true));
    assertFalse(node("compare-so-far", Node.class).isVisible());
    assertTrue(node("compare-afterwards", Node.class).isVisible());
    List<Shown> afterwards = new ArrayList<>();
    for (String page : PAGES) {
      afterwards.add(shown(page));
    }
    for (int i = 0; i < PAGES.size(); i++) {
      assertFalse(then.get(i).isAs(afterwards.get(i)), PAGES.get(i));
    }
  }

  /** The window's pixels without its tables, and what is said in those and of the pictures. */
  private static final class Shown {
    /** A mark in a crowd may stand with its column already, or still alone: a few pixels. */
    private static final int CROWD = 24;

    private final List<String> words;
    private final int[] pixels;

    Shown(List<String> words, int[] pixels) {
      this.words = words;
      this.pixels = pixels;
    }

    boolean isAs(Shown other) {
      int differing = 0;
      for (int i = 0; i < pixels.length; i++) {
        differing += pixels[i] == other.pixels[i] ? 0 : 1;
      }
      return differing <= CROWD && words.equals(other.words);
    }
  }

  private List<Shown> shownAt(long at) {
    robot.interact(
        () -> {
          bench.hindsight(false);
          bench.transport().seek(at);
        });
    List<Shown> all = new ArrayList<>();
    for (String page : PAGES) {
      all.add(shown(page));
    }
    return all;
  }

  private Shown shown(String page) {
    run(page);
    return WaitForAsyncUtils.waitForAsyncFx(
        20_000,
        () -> {
          List<String> words = new ArrayList<>();
          for (Node table : window.scene().getRoot().lookupAll(".table-view")) {
            if (ScreenJudge.isSeen(table)) {
              words.add(String.valueOf(((TableView<?>) table).getItems()));
            }
            table.setOpacity(0);
          }
          WritableImage image = window.scene().snapshot(null);
          window.scene().getRoot().lookupAll(".table-view").forEach(table -> table.setOpacity(1));
          int width = (int) image.getWidth();
          int height = (int) image.getHeight();
          int[] pixels = new int[width * height];
          image
              .getPixelReader()
              .getPixels(0, 0, width, height, PixelFormat.getIntArgbInstance(), pixels, 0, width);
          for (String id : List.of("first-timeline", "second-timeline", "pegs", "running")) {
            window.scene().getRoot().lookupAll("#" + id).stream()
                .map(Node::getAccessibleText)
                .forEach(words::add);
          }
          return new Shown(words, pixels);
        });
  }

  private void run(String command) {
    robot.interact(
        () ->
            window.commands().stream()
                .filter(c -> c.title().equals(command))
                .forEach(c -> c.action().run()));
    WaitForAsyncUtils.waitForFxEvents();
  }

  private void openBoth(Session first, Session second) throws IOException {
    desk.with("hand.session.json", first);
    Path file = folder.resolve("second.session.json");
    Files.write(file, SessionWriter.toBytes(second));
    open("Compare");
    paths.answer(file);
    run("Choose the second match");
  }

  private static Session upTo(Session whole, long at) {
    return whole.withEvents(whole.events().stream().filter(e -> e.at() <= at).toList());
  }

  private static Session read(String sample) {
    return SessionFiles.read(
            Path.of("sample-sessions", sample + ".session.json"), ReadOptions.DEFAULT)
        .session()
        .orElseThrow();
  }
}
