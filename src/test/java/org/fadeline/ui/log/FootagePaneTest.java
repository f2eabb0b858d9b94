package org.fadeline.ui.log;

import static java.util.Objects.requireNonNull;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.function.Consumer;
import javafx.scene.control.Button;
import javafx.scene.control.Label;
import javafx.scene.layout.Region;
import org.fadeline.analysis.Reviewer;
import org.fadeline.demo.DemoMatch;
import org.fadeline.demo.DemoWaters;
import org.fadeline.log.Pad;
import org.fadeline.model.EventKind;
import org.fadeline.model.Outcome;
import org.fadeline.model.Session;
import org.fadeline.ui.FakePaths;
import org.fadeline.ui.state.DirectTaskService;
import org.fadeline.ui.state.FakeDesk;
import org.fadeline.ui.state.Workbench;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.testfx.api.FxToolkit;

/** A film beside the log: kept with the session, led by the log's clock, done without. */
class FootagePaneTest {
  private static final Session MATCH =
      DemoMatch.generate(DemoWaters.waterA(), DemoWaters.planA(), 7);

  @TempDir Path folder;

  private final FakePaths paths = new FakePaths();
  private final List<String> told = new ArrayList<>();
  private long now = MATCH.match().allOut() + 1;
  private Consumer<String> trouble = what -> {};
  private Workbench bench = workbench();
  private LogDesk desk = new LogDesk(bench, () -> now);
  private FootagePane pane = new FootagePane(desk, this::open, paths);

  @BeforeAll
  static void startToolkit() throws Exception {
    FxToolkit.registerPrimaryStage();
  }

  private Workbench workbench() {
    return new Workbench(
        new FakeDesk().with("a.session.json", MATCH),
        Reviewer::review,
        new DirectTaskService(),
        () -> {});
  }

  @BeforeEach
  void openMatch() {
    bench.open(folder.resolve("a.session.json"));
    desk.takeUp(session());
  }

  private Session session() {
    return requireNonNull(bench.state().open()).session();
  }

  /** A film that says what it is told. */
  private Footage open(Path file, Consumer<String> onTrouble) {
    told.add("open " + file.getFileName());
    trouble = onTrouble;
    Region view = new Region();
    return new Footage() {
      @Override
      public Region view() {
        return view;
      }

      @Override
      public void follow(double position, boolean running, double speed) {
        told.add(
            String.format(
                Locale.ROOT, "%.0f %s %.0f×", position, running ? "plays" : "stands", speed));
      }

      @Override
      public void close() {
        told.add("close");
      }
    };
  }

  private String words() {
    return pane.view().getChildren().stream()
        .filter(Label.class::isInstance)
        .map(node -> ((Label) node).getText())
        .findFirst()
        .orElse("");
  }

  private Path film() throws Exception {
    return Files.write(
        Files.createDirectories(folder.resolve("film")).resolve("peg.mp4"), new byte[1]);
  }

  @Test
  void theSessionKeepsTheFilmByItsPlaceBesideTheMatch() throws Exception {
    desk.turn((clock, at) -> clock.at(30_000, at));
    pane.take(film());
    Outcome.Media kept = session().outcome().media().get(0);
    assertEquals("film/peg.mp4", kept.path());
    assertEquals(0, kept.offsetMillis());
    pane.show(session());
    assertEquals(List.of("open peg.mp4"), told);
    bench.editing().undo();
    assertTrue(session().outcome().media().isEmpty());
    pane.show(session());
    assertEquals(List.of("open peg.mp4", "close"), told);
  }

  /** The format names no file outside the match's folder. */
  @Test
  void aFilmFromElsewhereIsNotTakenAndTheAnglerToldWhereToPutIt() {
    pane.take(folder.resolveSibling("elsewhere").resolve("peg.mp4"));
    assertTrue(session().outcome().media().isEmpty());
    assertTrue(words().contains("copy it beside the match's file"), words());
    assertTrue(words().contains(folder.toString()), words());
    assertEquals(List.of(), told);
  }

  @Test
  void theFilmIsTheOneChosenAndGivingUpChangesNothing() throws Exception {
    Button choose = (Button) requireNonNull(pane.view().lookup("#log-film"));
    choose.fire();
    assertEquals("A film of the match", paths.last().title());
    assertTrue(session().outcome().media().isEmpty());
    paths.answer(film());
    choose.fire();
    assertEquals("film/peg.mp4", session().outcome().media().get(0).path());
  }

  @Test
  void theFilmGoesWhereTheClockGoes() throws Exception {
    pane.take(film());
    pane.show(session());
    told.clear();
    desk.turn((clock, at) -> clock.at(60_000, at));
    pane.tick(desk.clockProperty().get());
    desk.turn((clock, at) -> clock.atSpeed(2, at).playing(true, at));
    now += 5_000;
    pane.tick(desk.clockProperty().get());
    pane.pause();
    assertEquals(List.of("60000 stands 1×", "70000 plays 2×", "70000 stands 1×"), told);
  }

  @Test
  void whileTheMatchIsLoggedAsItHappensNoFilmPlays() throws Exception {
    pane.take(film());
    pane.show(session());
    desk.turn((clock, at) -> clock.live(at));
    told.clear();
    pane.tick(desk.clockProperty().get());
    assertFalse(pane.view().isVisible());
    assertFalse(told.get(0).contains("plays"), told.get(0));
  }

  @Test
  void aFilmThatIsGoneOrCannotBePlayedIsToldAndLoggingGoesOn() throws Exception {
    Path film = film();
    pane.take(film);
    pane.show(session());
    trouble.accept("This machine cannot play that film.");
    assertTrue(words().contains("log all the same"), words());
    pane.tick(desk.clockProperty().get());
    pane.close();
    Files.delete(film);
    pane.show(session());
    assertTrue(words().startsWith("peg.mp4 is not at"), words());
    desk.press(new Pad(EventKind.BITE, 0));
    assertEquals(MATCH.events().size() + 1, session().events().size());
  }
}
