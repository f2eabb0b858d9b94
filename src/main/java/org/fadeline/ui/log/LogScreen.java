package org.fadeline.ui.log;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import javafx.animation.AnimationTimer;
import javafx.css.PseudoClass;
import javafx.geometry.Pos;
import javafx.scene.Node;
import javafx.scene.control.Button;
import javafx.scene.control.Label;
import javafx.scene.control.ScrollPane;
import javafx.scene.control.TextField;
import javafx.scene.layout.BorderPane;
import javafx.scene.layout.HBox;
import javafx.scene.layout.Priority;
import javafx.scene.layout.Region;
import javafx.scene.layout.StackPane;
import javafx.scene.layout.VBox;
import org.fadeline.log.Pad;
import org.fadeline.log.PadKeys;
import org.fadeline.model.Session;
import org.fadeline.ui.control.Nodes;
import org.fadeline.ui.control.Overlay;
import org.fadeline.ui.control.Say;
import org.fadeline.ui.control.Screen;
import org.fadeline.ui.control.ScreenFacts;
import org.fadeline.ui.control.Watch;
import org.fadeline.ui.control.command.Command;
import org.fadeline.ui.control.command.Undoing;
import org.fadeline.ui.control.file.PathChooser;
import org.fadeline.ui.state.OpenSession;
import org.fadeline.ui.state.PreferenceStore;
import org.fadeline.ui.state.Preferences;
import org.fadeline.ui.state.Workbench;
import org.jspecify.annotations.Nullable;

/**
 * Makes the record: a pad and a key for each thing that happens on each line, logged first and told
 * more of afterwards. While the match is on it records and judges nothing.
 */
public final class LogScreen implements Screen {
  /** What the window must know of it. */
  public static final ScreenFacts FACTS = new ScreenFacts("Log", true, false, null);

  private static final PseudoClass ERROR = PseudoClass.getPseudoClass("error");
  private static final String GROUP = "Log";
  private static final long TICK_NANOS = 100_000_000L;

  private final Workbench bench;
  private final PreferenceStore preferences;
  private final LogDesk desk;
  private final ClockPane clock;
  private final PadGrid pads;
  private final LastEvents last;
  private final FootagePane film;
  private final Label subject = new Label();
  private final TextField detail = new TextField();
  private final Label wrong = new Label();
  private final Overlay overlay = new Overlay(980);
  private final StackPane view;
  private final AnimationTimer ticking = new Ticking();
  private String sessionId = "";
  private boolean visible;

  /** Makes the screen. */
  public LogScreen(Workbench bench, PreferenceStore preferences, PathChooser paths) {
    this.bench = bench;
    this.preferences = preferences;
    desk = new LogDesk(bench, System::currentTimeMillis);
    clock = new ClockPane(desk, this::takeFocus);
    pads = new PadGrid(this::press);
    last = new LastEvents(desk);
    film = new FootagePane(desk, MediaFootage::open, paths);
    ScrollPane grid = Nodes.scrollFilled(pads.view());
    VBox middle = new VBox(10, clock.view(), grid, saying());
    VBox.setVgrow(grid, Priority.ALWAYS);
    HBox.setHgrow(middle, Priority.ALWAYS);
    middle.setMinWidth(0);
    VBox right = new VBox(10, film.view(), last.view());
    VBox.setVgrow(last.view(), Priority.ALWAYS);
    HBox all = new HBox(10, middle, right);
    all.setStyle("-fx-padding: 0.9em;");
    view = new StackPane(new BorderPane(all), overlay.view());
    view.setFocusTraversable(true);
    Watch.part(bench.stateProperty(), s -> s.open(), open -> changed());
    Watch.part(preferences.property(), p -> List.of(p.units(), p.kept()), p -> changed());
    Watch.part(desk.clockProperty(), c -> c, clock::show);
    desk.inHandProperty().addListener((property, before, now) -> changed());
  }

  private VBox saying() {
    subject.getStyleClass().add("strong");
    subject.setWrapText(true);
    subject.setMinHeight(Region.USE_PREF_SIZE);
    detail.setId("log-detail");
    detail.setPromptText("8 4 · 3 carp 5lb 2oz · 200 ml pellets pot · 6 pellets every 40s · dead");
    detail.setAccessibleText("More about the event in hand, in your words");
    detail.setOnAction(e -> say());
    wrong.setWrapText(true);
    wrong.getStyleClass().add("warning-text");
    wrong.setId("log-detail-error");
    Button keys = new Button("Keys of the pads…");
    keys.setFocusTraversable(false);
    keys.setOnAction(e -> changeKeys());
    HBox line = new HBox(10, detail, keys);
    line.setAlignment(Pos.CENTER_LEFT);
    HBox.setHgrow(detail, Priority.ALWAYS);
    VBox box = new VBox(6, subject, line, wrong);
    box.getStyleClass().add("panel");
    box.setStyle("-fx-padding: 0.7em 1.2em 0.8em 1.2em;");
    return box;
  }

  private void say() {
    String problem = desk.say(detail.getText());
    tell(problem);
    if (problem == null) {
      detail.clear();
      takeFocus();
    }
  }

  /** Logs what a pad says; the keys are the pads' again, also where words were being typed. */
  private void press(Pad pad) {
    desk.press(pad);
    takeFocus();
  }

  private void tell(@Nullable String problem) {
    detail.pseudoClassStateChanged(ERROR, problem != null);
    wrong.setText(problem == null ? "" : Say.capital(problem) + ". The event itself is logged.");
    Nodes.show(wrong, problem != null);
  }

  private PadKeys keys() {
    return PadKeys.of(preferences.get().kept());
  }

  private void changeKeys() {
    OpenSession open = bench.state().open();
    if (open == null) {
      return;
    }
    Map<String, String> others = new HashMap<>();
    for (Command command : ownCommands()) {
      command.keys().forEach(key -> others.put(key.getName(), command.title()));
    }
    PadKeysSheet.show(
        overlay,
        open.session().lines(),
        keys(),
        others,
        changed -> preferences.change(p -> p.withKept(changed.into(p.kept()))));
  }

  /** What nobody looks at is put together once somebody does. */
  private void changed() {
    if (visible || bench.state().open() == null) {
      show();
    }
  }

  private void show() {
    OpenSession open = bench.state().open();
    if (open == null) {
      sessionId = "";
      film.close();
      return;
    }
    Session session = open.session();
    if (!session.document().id().equals(sessionId)) {
      sessionId = session.document().id();
      desk.takeUp(session);
      clock.takeUp(session);
    }
    Preferences now = preferences.get();
    pads.show(session.lines(), keys(), now.units());
    pads.view().setDisable(!bench.editing().allowed());
    last.show(session, now.units());
    film.show(session);
    subject.setText(
        desk.inHand()
            .map(
                e ->
                    LastEvents.words(session, e, now.units())
                        + ". Say more (Enter), or go on logging:")
            .orElse("Press a pad or its key. Then more can be said of it here:"));
    detail.setDisable(desk.inHand().isEmpty());
    tell(null);
    clock.tick();
  }

  @Override
  public ScreenFacts facts() {
    return FACTS;
  }

  @Override
  public Node view() {
    return view;
  }

  @Override
  public List<Command> commands() {
    if (overlay.isShown()) {
      // The sheet of keys waits for any key, also one that does something here.
      return List.of();
    }
    List<Command> commands = new ArrayList<>(ownCommands());
    OpenSession open = bench.state().open();
    int lines = open == null ? 0 : open.session().lines().size();
    PadGrid.keyed(lines, keys(), (pad, key) -> commands.add(pressing(pad, key)));
    return commands;
  }

  private Command pressing(Pad pad, String key) {
    OpenSession open = Objects.requireNonNull(bench.state().open());
    String of =
        pad.line() == Pad.AROUND ? "The match" : open.session().lines().get(pad.line()).name();
    // A cold or gloved hand holds a key too long: that is still one event.
    return Command.of("Pads: " + of, Say.capital(PadGrid.word(pad.kind())), () -> press(pad), key)
        .once();
  }

  /** The commands of the screen that are no pads. */
  private List<Command> ownCommands() {
    List<Command> all = new ArrayList<>(recordingAndEvents());
    all.addAll(Undoing.of(GROUP, bench));
    return all;
  }

  private List<Command> recordingAndEvents() {
    return List.of(
        Command.of(GROUP, "Say more of the event in hand", detail::requestFocus, "Enter"),
        Command.of(GROUP, "Play or pause the recording", clock::togglePlay, "Space"),
        Command.of(GROUP, "Recording 10 s back", () -> clock.jump(-10_000), "Left"),
        Command.of(GROUP, "Recording 10 s on", () -> clock.jump(10_000), "Right"),
        Command.of(GROUP, "Recording faster", () -> clock.faster(2), "Shift+Right"),
        Command.of(GROUP, "Recording slower", () -> clock.faster(0.5), "Shift+Left"),
        Command.of(GROUP, "Event in hand 10 s earlier", () -> desk.nudge(-10_000), "Alt+Left"),
        Command.of(GROUP, "Event in hand 10 s later", () -> desk.nudge(10_000), "Alt+Right"),
        Command.of(GROUP, "Event in hand to the next line", desk::nextLine, "Alt+Down"),
        Command.of(GROUP, "Take the event in hand out", desk::remove, "Delete"),
        Command.of(GROUP, "Take the event before in hand", () -> walk(1), "Down"),
        Command.of(GROUP, "Take the event after in hand", () -> walk(-1), "Up"),
        Command.of(GROUP, "Keys of the pads", this::changeKeys));
  }

  private void walk(int step) {
    List<String> ids = desk.latest().stream().map(e -> e.id()).toList();
    if (!ids.isEmpty()) {
      int at = ids.indexOf(desk.inHandProperty().get());
      int next = at < 0 ? 0 : Math.max(0, Math.min(ids.size() - 1, at + step));
      desk.choose(ids.get(next));
    }
  }

  @Override
  public void takeFocus() {
    view.requestFocus();
  }

  @Override
  public void shown(boolean nowShown) {
    visible = nowShown;
    if (visible) {
      show();
      ticking.start();
    } else {
      ticking.stop();
      film.pause();
    }
  }

  /** Moves the clock's hands ten times a second. */
  private final class Ticking extends AnimationTimer {
    private long before;

    @Override
    public void handle(long now) {
      if (now - before >= TICK_NANOS) {
        before = now;
        clock.tick();
        film.tick(desk.clockProperty().get());
      }
    }
  }
}
