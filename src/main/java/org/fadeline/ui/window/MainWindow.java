package org.fadeline.ui.window;

import atlantafx.base.theme.PrimerDark;
import atlantafx.base.theme.PrimerLight;
import java.nio.file.Path;
import java.util.List;
import java.util.Objects;
import javafx.application.Application;
import javafx.application.Platform;
import javafx.css.PseudoClass;
import javafx.scene.Scene;
import javafx.scene.input.DragEvent;
import javafx.scene.layout.BorderPane;
import javafx.scene.layout.StackPane;
import javafx.stage.Stage;
import org.fadeline.io.open.SampleSessions;
import org.fadeline.ui.control.Overlay;
import org.fadeline.ui.control.Screen;
import org.fadeline.ui.control.Watch;
import org.fadeline.ui.control.command.Command;
import org.fadeline.ui.control.command.KeyDesk;
import org.fadeline.ui.control.file.FileDrops;
import org.fadeline.ui.control.file.PathChooser;
import org.fadeline.ui.help.AboutSheet;
import org.fadeline.ui.help.HelpSheet;
import org.fadeline.ui.state.PreferenceFile;
import org.fadeline.ui.state.PreferenceStore;
import org.fadeline.ui.state.Preferences;
import org.fadeline.ui.state.Workbench;
import org.fadeline.ui.state.WorkbenchState;
import org.jspecify.annotations.Nullable;

/** The window: header with the screens' tabs, the screen shown, and what lies over it. */
public final class MainWindow {
  private static final String SHEET =
      Objects.requireNonNull(MainWindow.class.getResource("/org/fadeline/ui/fadeline.css"))
          .toExternalForm();

  /** Percent of the usual size from which on what can be narrower is. */
  private static final int LARGE_TEXT = 130;

  private static final int HUGE_TEXT = 170;

  private final Stage stage;
  private final WindowPlace place;
  private final Workbench bench;
  private final PreferenceStore preferences;
  private final List<Screen> screens;
  private final BorderPane frame = new BorderPane();
  private final StackPane root = new StackPane(frame);
  private final Scene scene = new Scene(root);
  private final Overlay overlay = new Overlay(980);
  private final MatchChooser chooser;
  private final KeyDesk keys;
  private final Header header;
  private @Nullable StartScreen start;
  private @Nullable Screen shown;

  /**
   * Puts the window together; {@link #show} shows it.
   *
   * @param screens in the order of their tabs
   * @param paths asks which file is meant
   */
  public MainWindow(
      Stage stage,
      Workbench bench,
      PreferenceStore preferences,
      List<Screen> screens,
      PathChooser paths) {
    this.stage = stage;
    place = new WindowPlace(stage, preferences);
    this.bench = bench;
    this.preferences = preferences;
    this.screens = List.copyOf(screens);
    chooser = new MatchChooser(root, bench, preferences, paths);
    WindowCommands commands = new WindowCommands(this, chooser, bench, preferences);
    keys = new KeyDesk(commands.all(this.screens), this::isCovered, this::takeFocus);
    header = new Header(bench, this.screens, commands, preferences);
    frame.getStyleClass().add("frame");
    root.getChildren()
        .addAll(
            new TroubleSheet(bench).view(),
            overlay.view(),
            new OpeningVeil(bench).view(),
            new News(bench).view());
    keys.listenTo(scene);
    scene.getStylesheets().add(SHEET);
    Watch.part(
        preferences.property(), p -> List.of(p.look(), p.textPercent()), styled -> restyle());
    Watch.part(preferences.property(), Preferences::units, bench::units);
    frame.setTop(header.view());
    Watch.part(
        bench.stateProperty(),
        s -> s.open() == null ? null : s.open().source(),
        source -> follow(source != null));
    // The match in hand opened once more from the first screen: nothing changes but this.
    Watch.part(
        bench.stateProperty(),
        s -> List.of(s.activity().opening() == null, s.activity().trouble() == null),
        settled -> follow(bench.state().open() != null));
    Watch.part(
        bench.stateProperty(),
        s -> s.open() == null ? null : s.open().source().path(),
        this::remember);
    Watch.part(bench.stateProperty(), WorkbenchState::figuresBarred, this::leaveWhereBarred);
    acceptDrops();
    PlayClock clock = new PlayClock(bench);
    stage.setScene(scene);
    stage.setMinWidth(960);
    stage.setMinHeight(620);
    Watch.part(bench.stateProperty(), this::windowTitle, stage::setTitle);
    stage.setOnHiding(e -> place.remember());
    stage.setOnHidden(
        e -> {
          clock.stop();
          this.screens.forEach(Screen::close);
        });
  }

  private boolean isCovered() {
    return overlay.isShown() || bench.state().activity().trouble() != null;
  }

  private void takeFocus() {
    if (shown != null) {
      shown.takeFocus();
    }
  }

  private String windowTitle(WorkbenchState s) {
    return s.open() == null ? "Fadeline" : Header.title(s.open()) + " – Fadeline";
  }

  /** Returns the scene, for tests and pictures. */
  public Scene scene() {
    return scene;
  }

  /** Returns the screens in the order of their tabs, for tests and pictures. */
  public List<Screen> screens() {
    return screens;
  }

  /** Shows the window where it stood last, on a visible screen. */
  public void show() {
    place.take();
    stage.show();
  }

  /** Gives every control of the program the style of a look. */
  public static void styleControls(Preferences preferences) {
    Application.setUserAgentStylesheet(
        preferences.look() == Preferences.Look.LIGHT
            ? new PrimerLight().getUserAgentStylesheet()
            : new PrimerDark().getUserAgentStylesheet());
  }

  private void restyle() {
    Preferences now = preferences.get();
    styleControls(now);
    scene.getStylesheets().setAll(ThemeSheet.address(now), SHEET);
    root.pseudoClassStateChanged(
        PseudoClass.getPseudoClass("high-contrast"), now.look() == Preferences.Look.HIGH_CONTRAST);
    root.pseudoClassStateChanged(
        PseudoClass.getPseudoClass("large-text"), now.textPercent() >= LARGE_TEXT);
    root.pseudoClassStateChanged(
        PseudoClass.getPseudoClass("huge-text"), now.textPercent() >= HUGE_TEXT);
  }

  /** Goes to a match that was opened from the first screen, and back where it was closed. */
  private void follow(boolean isOpen) {
    if (isOpen && shown == null) {
      show(firstAllowed());
    } else if (!isOpen && (shown == null || shown.facts().needsSession()) && !isAboutToOpen()) {
      showStart();
    }
  }

  /** Whether the window was started on a match that is still being read. */
  private boolean isAboutToOpen() {
    return start == null && shown == null && bench.state().activity().opening() != null;
  }

  /** Makes and styles the screen of the match that is being read, so that it need not wait then. */
  public void expectMatch() {
    frame.setCenter(screens.get(0).view());
    root.applyCss();
  }

  /** Gives the window the program's icon, which a start need not wait for. */
  public void showIcon() {
    stage.getIcons().setAll(AppIcon.images());
  }

  /** The first screen that may be shown of the match in hand. */
  private Screen firstAllowed() {
    boolean barred = bench.state().figuresBarred();
    return screens.stream()
        .filter(s -> !(barred && s.facts().judges()))
        .findFirst()
        .orElseGet(() -> screens.get(0));
  }

  /** Leaves a screen that judges a match which is being logged as it happens. */
  private void leaveWhereBarred(boolean barred) {
    if (barred && shown != null && shown.facts().judges()) {
      show(firstAllowed());
    }
  }

  /** Shows the first screen: matches to open, and what else can be begun. */
  public void showStart() {
    if (shown != null) {
      shown.shown(false);
    }
    shown = null;
    StartScreen first = start();
    frame.setCenter(first.view());
    keys.screenCommands(List::of);
    header.mark(null);
    first.openButton().requestFocus();
  }

  /** The first screen, made when it is first shown: a window begun on a match does without. */
  private StartScreen start() {
    StartScreen made = start;
    if (made == null) {
      StartScreen fresh = new StartScreen(preferences, bench::open, chooser::open);
      fresh.offer(screens, this::show, () -> HelpSheet.show(overlay, ""));
      Platform.runLater(() -> fresh.showSamples(SampleSessions.find()));
      start = fresh;
      made = fresh;
    }
    return made;
  }

  /**
   * Shows a screen; does nothing where it needs a match and none is open, or where the match is
   * being logged as it happens and must not be judged meanwhile.
   */
  void show(Screen screen) {
    boolean nothingToShow = screen.facts().needsSession() && bench.state().open() == null;
    if (nothingToShow || (screen.facts().judges() && bench.state().figuresBarred())) {
      return;
    }
    if (shown != null && shown != screen) {
      shown.shown(false);
    }
    shown = screen;
    frame.setCenter(screen.view());
    keys.screenCommands(screen::commands);
    header.mark(screen);
    screen.shown(true);
    screen.takeFocus();
  }

  /** Shows the screen of a title; an unknown one does nothing. */
  public void showScreen(String title) {
    screens.stream().filter(s -> s.title().equals(title)).findFirst().ifPresent(this::show);
  }

  /** Shows the list of keys, or puts away what lies over the window. */
  public void keys() {
    if (overlay.isShown()) {
      overlay.hide();
    } else {
      KeyListSheet.show(overlay, keys.commands());
    }
  }

  /** Opens the manual at the page about the screen shown. */
  public void help() {
    HelpSheet.show(overlay, shown == null ? "Matches" : shown.title());
  }

  /** Says what the program is and is made of. */
  public void about() {
    AboutSheet.show(overlay, PreferenceFile.logFolder());
  }

  private void remember(@Nullable Path path) {
    if (path != null) {
      preferences.change(p -> p.withRecent(path.toAbsolutePath().toString()));
    }
  }

  /** A file dropped where no screen takes it is opened as a match. */
  private void acceptDrops() {
    FileDrops.on(root, file -> true, bench::open);
    root.addEventHandler(DragEvent.DRAG_OVER, e -> dropReady(e.isAccepted()));
    root.addEventHandler(DragEvent.DRAG_DROPPED, e -> dropReady(false));
    scene.setOnDragExited(e -> dropReady(false));
  }

  private void dropReady(boolean ready) {
    frame.getStyleClass().remove("drop-ready");
    if (ready) {
      frame.getStyleClass().add("drop-ready");
    }
  }

  /** Returns the commands in force now. */
  public List<Command> commands() {
    return keys.commands();
  }
}
