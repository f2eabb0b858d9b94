package org.fadeline.ui;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Set;
import java.util.TreeSet;
import javafx.scene.Parent;
import javafx.scene.input.KeyCode;
import org.fadeline.io.SessionWriter;
import org.fadeline.ui.help.Manual;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.extension.ExtendWith;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.testfx.framework.junit5.ApplicationExtension;

/**
 * What the manual sets in bold stands on the screen its page is about, or is a key that does
 * something there; a button that can be pressed then is pressed. The season's page is checked in
 * {@link ManualSeasonTest}.
 */
@ExtendWith(ApplicationExtension.class)
// openWindow, before each test, sets every field.
@SuppressWarnings("NullAway.Init")
class ManualClicksTest extends WindowHarness {
  private ManualNames names;

  @BeforeEach
  void readTheManual() {
    names = new ManualNames(window);
  }

  private Parent view(String screen) {
    return (Parent) screen(screen).view();
  }

  @ParameterizedTest
  @CsvSource({
    "replay.md, Replay",
    "review.md, Review",
    "log.md, Log",
    "import.md, Import",
    "weigh-in.md, Weigh-in",
    "talk.md, Talk"
  })
  void whatIsBoldIsOnTheScreen(String file, String screen) {
    open(screen);
    robot.interact(
        () -> bench.picking().pickAll(session().events().stream().map(e -> e.id()).toList()));
    names.readAll(view(screen));
    names.check(file);
  }

  @Test
  void settingUpFromNothingAndAfterwards() throws Exception {
    robot.interact(() -> window.showScreen("Set up"));
    names.readAll(view("Set up"));
    press("begin-match");
    waitUntil(() -> bench.state().open() != null);
    press("add-line");
    names.readAll(view("Set up"));
    names.check("set-up.md");
  }

  @Test
  void theFirstScreenAndTheMenu() {
    robot.interact(() -> bench.open(FILE));
    robot.interact(window::showStart);
    names.read(window.scene().getRoot());
    // Of saving and taking back the page tells for the screens of a match.
    robot.interact(() -> window.showScreen("Replay"));
    names.check("matches.md");
    names.check("settings.md");
  }

  @Test
  void twoMatchesSideBySide(@TempDir Path folder) throws Exception {
    Path file = folder.resolve("other-day.session.json");
    Files.write(file, SessionWriter.toBytes(HandMade.session()));
    open("Compare");
    names.readAll(view("Compare"));
    paths.answer(file);
    robot.push(KeyCode.S);
    waitUntil(() -> shows("What differed most"));
    paths.answer(null);
    names.readAll(view("Compare"));
    names.check("compare.md");
  }

  @Test
  void everyPageAboutAScreenIsChecked() {
    Set<String> about = new TreeSet<>();
    for (var screen : window.screens()) {
      about.add(new Manual().about(screen.title()).file());
    }
    assertEquals(
        Set.of(
            "replay.md",
            "review.md",
            "compare.md",
            "log.md",
            "set-up.md",
            "import.md",
            "weigh-in.md",
            "talk.md",
            "season.md"),
        about);
  }

  @Test
  void aWordThatIsNowhereIsMissed() {
    robot.interact(window::showStart);
    names.read(window.scene().getRoot());
    assertTrue(names.isShown("Samples"));
    assertFalse(names.isShown("Specimens"));
    assertTrue(ManualNames.key("Samples").isEmpty());
    assertTrue(names.doesSomething(ManualNames.key("Ctrl+Shift+.").orElseThrow()));
    assertFalse(names.doesSomething(ManualNames.key("Ctrl+Shift+K").orElseThrow()));
  }
}
