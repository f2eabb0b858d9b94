package org.fadeline.ui;

import java.awt.image.BufferedImage;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Objects;
import javafx.animation.PauseTransition;
import javafx.application.Application;
import javafx.application.Platform;
import javafx.scene.image.PixelReader;
import javafx.scene.image.WritableImage;
import javafx.stage.Stage;
import javafx.util.Duration;
import javax.imageio.ImageIO;
import org.fadeline.analysis.Reviewer;
import org.fadeline.io.SessionWriter;
import org.fadeline.model.Fish;
import org.fadeline.model.Session;
import org.fadeline.model.SessionEvent;
import org.fadeline.ui.control.Fonts;
import org.fadeline.ui.control.Navigation;
import org.fadeline.ui.imports.ImportScreen;
import org.fadeline.ui.season.SeasonScreen;
import org.fadeline.ui.state.PreferenceStore;
import org.fadeline.ui.state.Preferences;
import org.fadeline.ui.state.ThreadTaskService;
import org.fadeline.ui.state.Workbench;

/**
 * Visits every screen on a session in every theme and writes pictures of the window: for the
 * manual, and for judging the screens by eye. Needs a display.
 *
 * <p>Arguments: the session, the folder for the pictures, the sizes such as {@code 1280x800}, and
 * optionally {@code --text=150} for another text size and {@code --second=FILE} for the match to
 * compare with.
 */
// JavaFX makes the object and calls start, which sets every field first of all.
@SuppressWarnings("NullAway.Init")
public final class ScreenshotTour extends Application {
  private static final double SETTLED_MILLIS = 650;

  private final List<Runnable> steps = new ArrayList<>();
  private MainWindow window;
  private Stage stage;
  private static final String THEIR_TABLE =
      """
      Clock;What;Swim;lb;oz;Remarks
      10:00;all-in;;;;
      10:05;landed;Short;3;4,5;first of the day
      10:09;flew away;Short;;;
      10:20;landed;Far bank;1;0;
      25:20;bite;Far bank;;;
      15:00;all-out;;;;
      """;

  private static final String NOTES =
      """
      WEBVTT

      00:10.000 --> 00:12.000
      landed a carp on the short line, three pounds

      05:00.000 --> 05:03.000
      lost one on the short line

      06:00.000 --> 06:03.000
      fed ten pellets shallow

      09:00.000 --> 09:03.000
      lovely weather this
      """;

  private Workbench bench;
  private PreferenceStore preferences;
  private Path folder;

  /** Starts the tour. */
  public static final class Start {
    private Start() {}

    /** Runs the tour with the arguments of {@link ScreenshotTour}. */
    public static void main(String[] args) {
      java.util.logging.Logger.getLogger("javafx").setLevel(java.util.logging.Level.SEVERE);
      System.setProperty("java.awt.headless", "true");
      Application.launch(ScreenshotTour.class, args);
    }
  }

  @Override
  public void start(Stage newStage) {
    stage = newStage;
    Fonts.load();
    List<String> arguments = getParameters().getUnnamed();
    Path session = Path.of(arguments.get(0));
    folder = Path.of(arguments.get(1));
    int text = Integer.parseInt(getParameters().getNamed().getOrDefault("text", "100"));
    Preferences wanted = Preferences.DEFAULT.withTextPercent(text);
    String second = getParameters().getNamed().get("second");
    preferences =
        new PreferenceStore(second == null ? wanted : wanted.withRecent(second), changed -> {});
    bench =
        new Workbench(
            new FileDesk(folder),
            Reviewer::review,
            new ThreadTaskService(Platform::runLater, Throwable::printStackTrace),
            FadelineApp::checkThread);
    Navigation navigation = new Navigation();
    window = new MainWindow(stage, bench, preferences, Screens.of(bench, preferences, navigation));
    navigation.leadTo(window::showScreen);
    window.show();
    for (String size : arguments.subList(2, arguments.size())) {
      String[] sides = size.split("x", -1);
      steps.add(
          () -> {
            stage.setWidth(Double.parseDouble(sides[0]));
            stage.setHeight(Double.parseDouble(sides[1]));
          });
      visit(session, size);
    }
    steps.add(Platform::exit);
    next();
  }

  private void visit(Path session, String size) {
    for (Preferences.Look look : Preferences.Look.values()) {
      String name = look.name().toLowerCase(Locale.ROOT).replace('_', '-') + "-" + size;
      steps.add(
          () -> {
            preferences.change(p -> p.withLook(look));
            bench.closeSession();
          });
      steps.add(() -> picture("start-" + name));
      steps.add(() -> window.showScreen("Set up"));
      steps.add(() -> picture("begin-" + name));
      steps.add(() -> bench.open(session));
      steps.add(
          () -> {
            bench.hindsight(false);
            window.showScreen(0);
            seekShare(0.56);
          });
      steps.add(() -> picture("replay-then-" + name));
      steps.add(() -> bench.hindsight(true));
      steps.add(() -> picture("replay-hindsight-" + name));
      steps.add(() -> window.showScreen(1));
      steps.add(() -> picture("review-" + name));
      for (String page :
          List.of(
              "Lines",
              "First bites",
              "After feeding",
              "Quarter-hours",
              "Fish",
              "One page",
              "The record",
              "Settings")) {
        steps.add(() -> run(page));
        steps.add(
            () ->
                picture("review-" + page.toLowerCase(Locale.ROOT).replace(' ', '-') + "-" + name));
      }
      steps.add(() -> run("Evidence"));
      for (String screen : List.of("Log", "Set up", "Weigh-in")) {
        steps.add(() -> window.showScreen(screen));
        steps.add(() -> picture(screen.toLowerCase(Locale.ROOT).replace(' ', '-') + "-" + name));
      }
      visitCompare(name);
      visitTalk(name);
      steps.add(() -> importing("their-2026-08-15.csv", THEIR_TABLE));
      steps.add(() -> picture("import-table-" + name));
      steps.add(() -> importing("notes.vtt", NOTES));
      steps.add(() -> picture("import-notes-" + name));
      steps.add(this::secondRecord);
      steps.add(() -> picture("import-second-" + name));
      visitSeason(session, name);
      steps.add(window::keys);
      steps.add(() -> picture("keys-" + name));
      steps.add(window::keys);
    }
  }

  private void visitSeason(Path session, String name) {
    steps.add(() -> window.showScreen("Season"));
    steps.add(() -> picture("season-empty-" + name));
    steps.add(
        () ->
            window.screens().stream()
                .filter(SeasonScreen.class::isInstance)
                .map(SeasonScreen.class::cast)
                .forEach(
                    screen ->
                        screen.open(Objects.requireNonNull(session.toAbsolutePath().getParent()))));
    for (String page :
        List.of("Results", "Line by hour", "First bites", "Fades", "Feed", "Learned", "Left out")) {
      steps.add(() -> run(page));
      steps.add(
          () -> picture("season-" + page.toLowerCase(Locale.ROOT).replace(' ', '-') + "-" + name));
    }
  }

  /** The match in hand as a friend might have logged it: half a minute on, one fish heavier. */
  private void secondRecord() {
    Session own = Objects.requireNonNull(bench.state().open()).session();
    List<SessionEvent> told = new ArrayList<>();
    boolean heavier = false;
    for (SessionEvent event : own.events()) {
      SessionEvent later = event.retimed(at -> at + 30_000);
      if (!heavier && later instanceof SessionEvent.Landed landed) {
        heavier = true;
        later = new SessionEvent.Landed(landed.stamp(), new Fish(1, "carp", 3_000.0, false));
      }
      told.add(later);
    }
    importing("friend.session.json", SessionWriter.toJson(own.withEvents(told)));
  }

  private void visitTalk(String name) {
    steps.add(
        () -> {
          window.showScreen("Talk");
          run("Draft the talk from the review");
        });
    steps.add(() -> picture("talk-" + name));
    steps.add(() -> run("Next slide"));
    steps.add(() -> picture("talk-picture-" + name));
  }

  private void importing(String name, String text) {
    window.showScreen("Import");
    try {
      Path file = Files.writeString(folder.resolve(name), text);
      window.screens().stream()
          .filter(ImportScreen.class::isInstance)
          .map(ImportScreen.class::cast)
          .forEach(screen -> screen.take(file));
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  /** Visits the comparison with the first match it offers, which is one opened before. */
  private void visitCompare(String name) {
    steps.add(() -> window.showScreen("Compare"));
    steps.add(() -> picture("compare-invitation-" + name));
    steps.add(
        () ->
            window.scene().getRoot().lookupAll(".row-button").stream()
                .filter(b -> b.localToScene(b.getBoundsInLocal()).getWidth() > 0)
                .findFirst()
                .ifPresent(b -> ((javafx.scene.control.Button) b).fire()));
    for (String page :
        List.of("Timelines", "Pegs", "Catch", "Rates", "First bites", "Line by line", "Pairing")) {
      steps.add(() -> run(page));
      steps.add(
          () -> picture("compare-" + page.toLowerCase(Locale.ROOT).replace(' ', '-') + "-" + name));
    }
  }

  /** Does the command of a title. */
  private void run(String title) {
    window.commands().stream()
        .filter(c -> c.title().equals(title))
        .findFirst()
        .ifPresent(c -> c.action().run());
  }

  private void seekShare(double share) {
    var range = bench.state().playhead().range();
    bench.transport().seek(range.from() + Math.round(share * range.millis()));
  }

  /** Each step gets a few frames to settle in. */
  private void next() {
    if (steps.isEmpty()) {
      return;
    }
    Runnable step = steps.remove(0);
    PauseTransition wait = new PauseTransition(Duration.millis(SETTLED_MILLIS));
    wait.setOnFinished(
        e -> {
          step.run();
          next();
        });
    wait.play();
  }

  private void picture(String name) {
    WritableImage image = window.scene().snapshot(null);
    int width = (int) image.getWidth();
    int height = (int) image.getHeight();
    BufferedImage copy = new BufferedImage(width, height, BufferedImage.TYPE_INT_RGB);
    PixelReader pixels = image.getPixelReader();
    for (int y = 0; y < height; y++) {
      for (int x = 0; x < width; x++) {
        copy.setRGB(x, y, pixels.getArgb(x, y));
      }
    }
    try {
      Files.createDirectories(folder);
      ImageIO.write(copy, "png", folder.resolve(name + ".png").toFile());
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }
}
