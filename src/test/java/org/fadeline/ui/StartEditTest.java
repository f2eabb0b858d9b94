package org.fadeline.ui;

import static java.util.Objects.requireNonNull;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNotEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.concurrent.Callable;
import java.util.concurrent.TimeUnit;
import java.util.concurrent.TimeoutException;
import javafx.scene.Node;
import javafx.scene.control.ComboBox;
import javafx.scene.control.Labeled;
import javafx.scene.input.KeyCode;
import org.fadeline.analysis.Course.TurningKind;
import org.fadeline.analysis.Course.TurningPoint;
import org.fadeline.analysis.Review;
import org.fadeline.analysis.ReviewSettings;
import org.fadeline.analysis.Reviewer;
import org.fadeline.io.SessionReader;
import org.fadeline.model.EventKind;
import org.fadeline.model.Session;
import org.fadeline.model.Units;
import org.fadeline.ui.start.HeadStart;
import org.fadeline.ui.state.Workbench;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.extension.ExtendWith;
import org.junit.jupiter.api.io.TempDir;
import org.testfx.api.FxRobot;
import org.testfx.api.FxToolkit;
import org.testfx.framework.junit5.ApplicationExtension;
import org.testfx.util.NodeQueryUtils;
import org.testfx.util.WaitForAsyncUtils;

/**
 * The program itself, started on a match as a double click does, edited by keys: Replay, Review,
 * fades and the file on the disk follow each edit and its undoing.
 */
// begin, before each test, sets every field.
@SuppressWarnings("NullAway.Init")
@ExtendWith(ApplicationExtension.class)
class StartEditTest {
  private static final Path SAMPLES = Path.of("sample-sessions");

  @TempDir private Path folder = Path.of("");

  private final FxRobot robot = new FxRobot();
  private final String home = System.getProperty("user.home", "");
  private Thread.UncaughtExceptionHandler handler;
  private FadelineApp app;
  private Path file;

  @BeforeEach
  void begin() {
    // What the program keeps for itself is kept here.
    System.setProperty("user.home", folder.toString());
    handler = Thread.getDefaultUncaughtExceptionHandler();
  }

  private void start(String sample) throws Exception {
    file = Files.copy(SAMPLES.resolve(sample), folder.resolve("match.session.json"));
    FadelineApp.startFrom(new HeadStart(file, new FileDesk(folder), Units.LB_OZ_AND_METRES));
    FxToolkit.registerPrimaryStage();
    // A first start reads every class there is; on a busy machine that takes its time.
    FxToolkit.toolkitContext().setSetupTimeoutInMillis(180_000);
    app = (FadelineApp) FxToolkit.setupApplication(FadelineApp::new);
    waitUntil(() -> !texts(".lane-figures").isEmpty());
  }

  @AfterEach
  void end() throws Exception {
    FxToolkit.cleanupStages();
    if (app != null) {
      FxToolkit.cleanupApplication(app);
    }
    FadelineApp.startFrom(null);
    System.setProperty("user.home", home);
    Thread.setDefaultUncaughtExceptionHandler(handler);
  }

  private static void waitUntil(Callable<Boolean> condition) throws TimeoutException {
    WaitForAsyncUtils.waitFor(60, TimeUnit.SECONDS, condition);
    WaitForAsyncUtils.waitForFxEvents();
  }

  /** Returns the words seen in nodes of a style class, as they stand. */
  private List<String> texts(String query) {
    return WaitForAsyncUtils.waitForAsyncFx(
        60_000,
        () ->
            robot.lookup(query).queryAll().stream()
                .filter(n -> n instanceof Labeled && NodeQueryUtils.isVisible().test(n))
                .map(n -> ((Labeled) n).getText())
                .toList());
  }

  private boolean shows(String text) {
    return WaitForAsyncUtils.waitForAsyncFx(
        60_000,
        () ->
            !robot
                .lookup(
                    (Node n) ->
                        n instanceof Labeled label
                            && NodeQueryUtils.isVisible().test(n)
                            && String.valueOf(label.getText()).contains(text))
                .queryAll()
                .isEmpty());
  }

  private void pickLast(EventKind kind) {
    robot.push(KeyCode.END);
    for (int i = 0; i < 12; i++) {
      robot.push(KeyCode.COMMA);
      ComboBox<?> kinds = robot.lookup("#event-kind").queryAs(ComboBox.class);
      if (kinds.getValue() == kind) {
        return;
      }
    }
    throw new AssertionError("no " + kind + " among the last events");
  }

  private Session onDisk() {
    return SessionReader.read(file).session().orElseThrow();
  }

  private void save() throws TimeoutException {
    robot.push(KeyCode.CONTROL, KeyCode.S);
    waitUntil(() -> shows("Saved"));
  }

  @Test
  void aFishDeletedIsGoneEverywhereAndUndoneItIsBack() throws Exception {
    start("evening-moves-and-fish.session.json");
    Session before = onDisk();
    pickLast(EventKind.LANDED);
    robot.push(KeyCode.END);
    List<String> head = texts(".figure-large");
    List<String> lanes = texts(".lane-figures");
    robot.push(KeyCode.DELETE);
    // The lanes are drawn from the review: another one comes, of the match as it is now.
    waitUntil(() -> !texts(".lane-figures").equals(lanes));
    assertNotEquals(head, texts(".figure-large"), "the readout at the playhead");
    save();
    assertEquals(before.events().size() - 1, onDisk().events().size());
    robot.push(KeyCode.CONTROL, KeyCode.Z);
    waitUntil(() -> texts(".lane-figures").equals(lanes));
    assertEquals(head, texts(".figure-large"));
    save();
    assertEquals(before.events(), onDisk().events());
  }

  private Workbench bench() {
    return requireNonNull(app.bench());
  }

  private Session session() {
    return requireNonNull(bench().state().open()).session();
  }

  /** Returns the review once it is of the match as it now is. */
  private Review reviewed() throws TimeoutException {
    waitUntil(
        () -> {
          Review latest = bench().state().review().latest();
          return latest != null && latest.session().equals(session());
        });
    return requireNonNull(bench().state().review().latest());
  }

  @Test
  void theReviewIsOfTheMatchAsItIsNow() throws Exception {
    start("evening-moves-and-fish.session.json");
    Review first = reviewed();
    pickLast(EventKind.LANDED);
    ComboBox<?> kinds = robot.lookup("#event-kind").queryAs(ComboBox.class);
    robot.interact(kinds::requestFocus);
    robot.push(KeyCode.DOWN);
    waitUntil(kinds::isShowing);
    robot.push(KeyCode.DOWN).push(KeyCode.ENTER);
    waitUntil(() -> shows("Change landed to lost"));
    Review then = reviewed();
    assertNotEquals(first.lines(), then.lines());
    assertEquals(Reviewer.review(session(), ReviewSettings.DEFAULT).lines(), then.lines());
    robot.push(KeyCode.CONTROL, KeyCode.Z);
    assertEquals(first.lines(), reviewed().lines());
  }

  private boolean listsAFade() {
    return WaitForAsyncUtils.waitForAsyncFx(
        60_000,
        () ->
            robot.lookup("#turning-points").queryListView().getItems().stream()
                .anyMatch(p -> ((TurningPoint) p).kind() == TurningKind.FADED));
  }

  @Test
  void fadesGoWithTheEventsTheyRestOnAndComeBack() throws Exception {
    start("quillthorn-first-open.session.json");
    assertTrue(reviewed().lines().stream().anyMatch(l -> !l.fades().isEmpty()));
    waitUntil(this::listsAFade);
    robot.push(KeyCode.CONTROL, KeyCode.A);
    robot.push(KeyCode.DELETE);
    waitUntil(() -> !listsAFade());
    assertTrue(reviewed().lines().stream().allMatch(l -> l.fades().isEmpty()));
    robot.push(KeyCode.CONTROL, KeyCode.Z);
    waitUntil(this::listsAFade);
    assertEquals(onDisk().events(), session().events());
  }
}
