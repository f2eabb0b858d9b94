package org.fadeline.ui;

import java.awt.image.BufferedImage;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Objects;
import java.util.logging.Handler;
import java.util.logging.LogRecord;
import java.util.logging.Logger;
import javafx.application.Application;
import javafx.application.Platform;
import javafx.scene.control.Button;
import javafx.scene.image.PixelReader;
import javafx.scene.image.WritableImage;
import javafx.scene.robot.Robot;
import javafx.stage.Stage;
import javax.imageio.ImageIO;
import org.fadeline.analysis.Reviewer;
import org.fadeline.demo.LargeSessions;
import org.fadeline.io.SessionWriter;
import org.fadeline.model.Fish;
import org.fadeline.model.Session;
import org.fadeline.model.SessionEvent;
import org.fadeline.ui.control.Navigation;
import org.fadeline.ui.control.file.DialogPathChooser;
import org.fadeline.ui.control.picture.Fonts;
import org.fadeline.ui.imports.ImportScreen;
import org.fadeline.ui.review.ReviewScreen;
import org.fadeline.ui.season.SeasonScreen;
import org.fadeline.ui.state.PreferenceStore;
import org.fadeline.ui.state.Preferences;
import org.fadeline.ui.state.ThreadTaskService;
import org.fadeline.ui.state.Workbench;
import org.fadeline.ui.window.MainWindow;

/**
 * Visits every screen on a session in every theme and writes pictures of the window: for the
 * manual, and for judging the screens by eye. Needs a display.
 *
 * <p>Arguments: the session (or a number of events for a made one of that length), the folder for
 * the pictures, the sizes such as {@code 1280x800}, and optionally {@code --text=150} for another
 * text size, {@code --second=FILE} for the match to compare with, {@code --only=dark} for the
 * themes whose names hold that and {@code --pictures=REGEX} for the pictures of these names alone.
 * What is wrong by rule, text cut short or too faint, complaints of the toolkit, is written to
 * {@code faults.txt} in that folder.
 */
// JavaFX makes the object and calls start, which sets every field first of all.
@SuppressWarnings("NullAway.Init")
public final class ScreenshotTour extends Application {
  /** Held, or its handler goes with it. */
  private static final Logger TOOLKIT = Logger.getLogger("javafx");

  private static final double REPLAYED_SHARE = 0.56;

  private final List<String> faults = new ArrayList<>();
  private Steps steps;
  private MainWindow window;
  private Stage stage;
  private Workbench bench;
  private PreferenceStore preferences;
  private Path folder;
  private String doing = "the start";

  /** Starts the tour. */
  public static final class Start {
    private Start() {}

    /** Runs the tour with the arguments of {@link ScreenshotTour}. */
    public static void main(String[] args) {
      System.setProperty("java.awt.headless", "true");
      Application.launch(ScreenshotTour.class, args);
    }
  }

  @Override
  public void start(Stage newStage) throws IOException {
    stage = newStage;
    listen();
    Fonts.load();
    List<String> arguments = getParameters().getUnnamed();
    folder = Files.createDirectories(Path.of(arguments.get(1)));
    Path session = session(arguments.get(0));
    Map<String, String> named = getParameters().getNamed();
    int text = Integer.parseInt(named.getOrDefault("text", "100"));
    Preferences wanted = Preferences.DEFAULT.withTextPercent(text);
    String second = named.get("second");
    preferences =
        new PreferenceStore(second == null ? wanted : wanted.withRecent(second), changed -> {});
    ThreadTaskService tasks =
        new ThreadTaskService(Platform::runLater, fault -> faults.add(doing + ": " + fault));
    bench = new Workbench(new FileDesk(folder), Reviewer::review, tasks, FadelineApp::checkThread);
    Navigation navigation = new Navigation();
    window =
        new MainWindow(
            stage,
            bench,
            preferences,
            Screens.of(bench, preferences, navigation, new DialogPathChooser()),
            new DialogPathChooser());
    navigation.leadTo(window::showScreen);
    steps =
        new Steps(
            window.scene(),
            () ->
                tasks.runningProperty().get().isEmpty()
                    && bench.state().activity().opening() == null,
            faults::add);
    window.show();
    for (String size : arguments.subList(2, arguments.size())) {
      String[] sides = size.split("x", -1);
      step(
          "size " + size,
          () -> {
            // Nothing is to look as if it were pointed at.
            new Robot().mouseMove(0, stage.getY() + 1);
            stage.setWidth(Double.parseDouble(sides[0]));
            stage.setHeight(Double.parseDouble(sides[1]));
          });
      for (Preferences.Look look : Preferences.Look.values()) {
        String name = look.name().toLowerCase(Locale.ROOT).replace('_', '-') + "-" + size;
        if (name.contains(named.getOrDefault("only", ""))) {
          step("look " + look, () -> preferences.change(p -> p.withLook(look)));
          visit(session, name);
        }
      }
    }
    step("the end", this::end);
    steps.start();
  }

  /** The session to show: a file, or a number of events for one as large. */
  private Path session(String asked) throws IOException {
    if (!asked.matches("\\d+")) {
      return Path.of(asked);
    }
    Path made = Files.createDirectories(folder.resolve("season")).resolve("long.session.json");
    return Files.writeString(
        made, SessionWriter.toJson(LargeSessions.of(Integer.parseInt(asked), 1)));
  }

  /** A silent start is required: what JavaFX complains of is a fault. */
  private void listen() {
    TOOLKIT.setUseParentHandlers(false);
    TOOLKIT.addHandler(
        new Handler() {
          @Override
          public void publish(LogRecord complaint) {
            String line = doing + ": " + complaint.getMessage();
            if (!line.contains("Unsupported JavaFX configuration")) {
              faults.add(line);
            }
          }

          @Override
          public void flush() {
            // Kept in memory.
          }

          @Override
          public void close() {
            // Nothing to close.
          }
        });
    Thread.setDefaultUncaughtExceptionHandler((thread, fault) -> faults.add(doing + ": " + fault));
  }

  private void step(String name, Runnable action) {
    steps.add(
        name,
        () -> {
          doing = name;
          action.run();
        });
  }

  private void shot(String name) {
    if (name.matches(getParameters().getNamed().getOrDefault("pictures", ".*"))) {
      step("picture " + name, () -> picture(name));
    }
  }

  private void end() {
    try {
      Files.write(folder.resolve("faults.txt"), faults.stream().distinct().toList());
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
    Platform.exit();
  }

  private void visit(Path session, String name) {
    step("close", bench::closeSession);
    step("matches", window::showStart);
    shot("start-" + name);
    screen("Set up", "begin-" + name);
    step("open", () -> bench.open(session));
    visitReplay(name);
    visitReview(name);
    screen("Log", "log-" + name);
    step("keys of the pads", () -> run("Keys of the pads"));
    shot("log-keys-" + name);
    step("no keys of the pads", this::putAway);
    screen("Set up", "set-up-" + name);
    screen("Weigh-in", "weigh-in-" + name);
    visitCompare(name);
    visitTalk(name);
    visitImport(name);
    visitSeason(session, name);
    visitSheets(name);
  }

  private void screen(String title, String picture) {
    step(title, () -> window.showScreen(title));
    shot(picture);
  }

  private void pages(String screen, String name, String... titles) {
    for (String title : titles) {
      step(screen + " " + title, () -> run(title));
      shot(screen + "-" + title.toLowerCase(Locale.ROOT).replace(' ', '-') + "-" + name);
    }
  }

  private void visitReplay(String name) {
    step("as known then", () -> bench.hindsight(false));
    step("seek", () -> seekShare(REPLAYED_SHARE));
    screen("Replay", "replay-then-" + name);
    step("hindsight", () -> bench.hindsight(true));
    shot("replay-hindsight-" + name);
    step("pick", () -> run("Pick the next event"));
    shot("replay-picked-" + name);
    step("pick all", () -> run("Pick every event shown"));
    shot("replay-many-picked-" + name);
    step("pick none", () -> run("Pick nothing"));
    step("closer", () -> run("Closer"));
    step("closer still", () -> run("Closer"));
    step("second cursor", () -> run("Second cursor here, or none"));
    step("seek on", () -> seekShare(REPLAYED_SHARE + 0.05));
    shot("replay-close-" + name);
    step("no second cursor", () -> run("Second cursor here, or none"));
    step("whole", () -> run("The whole match"));
  }

  private void visitReview(String name) {
    screen("Review", "review-" + name);
    List<String> pages = ReviewScreen.PAGES;
    pages("review", name, pages.subList(1, pages.size()).toArray(String[]::new));
    step("the first page", () -> run(pages.get(0)));
  }

  private void visitImport(String name) {
    screen("Import", "import-" + name);
    step("notes", () -> importing("notes.vtt", TourFiles.NOTES));
    shot("import-notes-" + name);
    // After notes, for a table given beside a second record is taken as one.
    step("a table", () -> importing("their-2026-08-15.csv", TourFiles.TABLE));
    shot("import-table-" + name);
    step("a second record", this::secondRecord);
    shot("import-second-" + name);
  }

  private void visitSheets(String name) {
    step("list of keys", window::keys);
    shot("keys-" + name);
    step("no list of keys", this::putAway);
    step("help", window::help);
    shot("help-" + name);
    step("no help", this::putAway);
    step("about", window::about);
    shot("about-" + name);
    step("no about", this::putAway);
    step("a broken file", () -> bench.open(file("broken.session.json", TourFiles.BROKEN)));
    shot("trouble-" + name);
    step("trouble read", bench::dismissTrouble);
  }

  private void visitSeason(Path session, String name) {
    screen("Season", "season-empty-" + name);
    step(
        "a season",
        () ->
            window.screens().stream()
                .filter(SeasonScreen.class::isInstance)
                .map(SeasonScreen.class::cast)
                .forEach(
                    screen ->
                        screen.open(Objects.requireNonNull(session.toAbsolutePath().getParent()))));
    pages(
        "season",
        name,
        "Results",
        "Line by hour",
        "First bites",
        "Fades",
        "Feed",
        "Learned",
        "Left out");
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
    screen("Talk", "talk-empty-" + name);
    step("draft", () -> run("Draft the talk from the review"));
    shot("talk-" + name);
    step("next slide", () -> run("Next slide"));
    shot("talk-picture-" + name);
    step("writing", () -> run("Write the talk"));
    shot("talk-write-" + name);
  }

  private void importing(String name, String text) {
    window.showScreen("Import");
    window.screens().stream()
        .filter(ImportScreen.class::isInstance)
        .map(ImportScreen.class::cast)
        .forEach(screen -> screen.take(file(name, text)));
  }

  private Path file(String name, String text) {
    try {
      return Files.writeString(folder.resolve(name), text);
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  /** Visits the comparison with the first match it offers, which is one opened before. */
  private void visitCompare(String name) {
    screen("Compare", "compare-invitation-" + name);
    step(
        "the second match",
        () ->
            window.scene().getRoot().lookupAll(".row-button").stream()
                .filter(b -> b.localToScene(b.getBoundsInLocal()).getWidth() > 0)
                .findFirst()
                .ifPresent(b -> ((Button) b).fire()));
    pages(
        "compare",
        name,
        "Timelines",
        "Pegs",
        "Catch",
        "Rates",
        "First bites",
        "Line by line",
        "Pairing");
  }

  /** Closes what lies over the window. */
  private void putAway() {
    window.scene().getRoot().lookupAll(".button").stream()
        .map(Button.class::cast)
        .filter(b -> b.isCancelButton() && ScreenJudge.isSeen(b))
        .reduce((before, last) -> last)
        .ifPresent(Button::fire);
  }

  /** Does the command of a title. */
  private void run(String title) {
    window.commands().stream()
        .filter(c -> c.title().equals(title))
        .findFirst()
        .ifPresentOrElse(c -> c.action().run(), () -> faults.add("no command " + title));
  }

  private void seekShare(double share) {
    var range = bench.state().playhead().range();
    bench.transport().seek(range.from() + Math.round(share * range.millis()));
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
    ScreenJudge.judge(window.scene()).forEach(fault -> faults.add(name + ": " + fault));
    try {
      ImageIO.write(copy, "png", folder.resolve(name + ".png").toFile());
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }
}
