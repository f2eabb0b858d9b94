package org.fadeline.ui.replay;

import java.awt.image.BufferedImage;
import java.util.ArrayList;
import java.util.List;
import javafx.application.Platform;
import javafx.geometry.Pos;
import javafx.scene.Node;
import javafx.scene.control.Label;
import javafx.scene.control.ProgressIndicator;
import javafx.scene.layout.BorderPane;
import javafx.scene.layout.HBox;
import javafx.scene.layout.Priority;
import javafx.scene.layout.Region;
import javafx.scene.layout.StackPane;
import javafx.scene.layout.VBox;
import org.fadeline.analysis.KnownThen;
import org.fadeline.analysis.Review;
import org.fadeline.figure.FigureStyle;
import org.fadeline.figure.TimelineFigure;
import org.fadeline.figure.TimelineView;
import org.fadeline.model.EventKind;
import org.fadeline.model.Line;
import org.fadeline.model.Session;
import org.fadeline.replay.Playhead.Range;
import org.fadeline.ui.control.NodeMenu;
import org.fadeline.ui.control.Screen;
import org.fadeline.ui.control.ScreenFacts;
import org.fadeline.ui.control.Watch;
import org.fadeline.ui.control.command.Command;
import org.fadeline.ui.control.file.PathChooser;
import org.fadeline.ui.control.picture.Looks;
import org.fadeline.ui.control.picture.PictureMenu;
import org.fadeline.ui.state.Activity;
import org.fadeline.ui.state.OpenSession;
import org.fadeline.ui.state.PreferenceStore;
import org.fadeline.ui.state.TaskService;
import org.fadeline.ui.state.Workbench;
import org.fadeline.ui.state.WorkbenchState;
import org.jspecify.annotations.Nullable;

/** The match as it went: timeline, peg, figures at the playhead, turning points, transport. */
public final class ReplayScreen implements Screen {
  /** What the window must know of it. */
  public static final ScreenFacts FACTS = new ScreenFacts("Replay", true, true, null);

  /** Height of a lane beside which the key is shown too, pixels at the usual text size. */
  private static final double ROOM_OF_LANE = 88;

  /** Height of clock and key together, pixels at the usual text size. */
  private static final double ROOM_OF_REST = 95;

  /** So many events are laid out within a frame; more are, off the window's thread. */
  private static final int AT_ONCE = 2000;

  private static final String LAYING_OUT = "timeline";

  private static final String NOTHING_LOGGED =
      "Nothing is logged in this match yet: write it on Log, or bring a record in with Import";

  private final Workbench bench;
  private final PreferenceStore preferences;
  private final BorderPane view = new BorderPane();
  private final TimelinePane timeline = new TimelinePane();
  private final LaneCards cards = new LaneCards();
  private final ReplayHead head;
  private final TurningList turns;
  private final TransportBar transport;
  private final Inspector inspector;
  private final PegPane peg;
  private final ReplayCommands commands;
  private final PictureMenu pictures;
  private final Label waiting = new Label();
  private final VBox waitingBox = new VBox(10, new ProgressIndicator(), waiting);
  private @Nullable TimelineFigure figure;
  private @Nullable Review drawn;
  private Range shown = new Range(0, 0);
  private OpenSession.@Nullable Source shownOf;
  private boolean visible;
  private boolean keyShown;

  /** Makes the screen. */
  public ReplayScreen(Workbench bench, PreferenceStore preferences, PathChooser paths) {
    this.bench = bench;
    this.preferences = preferences;
    commands = new ReplayCommands(bench, this);
    head = new ReplayHead(bench, this::takeFocus);
    turns = new TurningList(bench);
    peg = new PegPane(bench);
    inspector = new Inspector(bench, preferences, timeline::requestFocus);
    transport = new TransportBar(bench, preferences, commands::toggleLoop, this::takeFocus);
    timeline.layoutProperty().addListener((p, before, after) -> cards.follow(after));
    timeline
        .heightProperty()
        .addListener(
            (p, before, after) -> {
              if (keyShown != hasRoomForKey()) {
                Platform.runLater(this::redraw);
              }
            });
    new TimelineGestures(timeline, bench, new ReplayHost(bench, this));
    pictures =
        new PictureMenu(bench, preferences, paths, () -> ReplayPictures.timeline(bench, shown));
    new ReplayMenus(timeline, bench, commands.all(), pictures);
    PictureMenu ofPeg = new PictureMenu(bench, preferences, paths, () -> ReplayPictures.peg(bench));
    NodeMenu.on(peg, asked -> peg.menu(asked, ofPeg), peg::menuPlace);
    StackPane swim = new StackPane(peg);
    swim.getStyleClass().add("panel");
    swim.setStyle("-fx-padding: 0.5em;");
    swim.minHeightProperty().bind(view.heightProperty().multiply(0.2));
    swim.prefHeightProperty().bind(view.heightProperty().multiply(0.44));
    VBox side = new VBox(10, swim, turns.view());
    VBox.setVgrow(turns.view(), Priority.ALWAYS);
    side.setMinWidth(220);
    side.prefWidthProperty().bind(view.widthProperty().multiply(0.24));
    side.setMaxWidth(380);
    cards.setPrefWidth(232);
    cards.setMinWidth(190);
    HBox lanes = new HBox(timeline, cards);
    HBox.setHgrow(timeline, Priority.ALWAYS);
    waitingBox.setAlignment(Pos.CENTER);
    waitingBox.setMouseTransparent(true);
    StackPane stack = new StackPane(lanes, waitingBox);
    stack.getStyleClass().add("panel");
    stack.setStyle("-fx-padding: 0.5em 0 0.3em 0;");
    HBox.setHgrow(stack, Priority.ALWAYS);
    HBox middle = new HBox(10, side, stack);
    middle.setStyle("-fx-padding: 0.2em 0.9em 0.8em 0.9em;");
    view.setTop(head.view());
    view.setCenter(middle);
    view.setBottom(new VBox(inspector.view(), transport.view()));
    Watch.part(bench.stateProperty(), WorkbenchState::open, this::opened);
    Watch.part(bench.stateProperty(), WorkbenchState::review, review -> reviewed());
    Watch.part(bench.stateProperty(), s -> s.choices().hiddenLines(), hidden -> redraw());
    Watch.part(
        preferences.property(),
        p -> List.of(p.units(), p.look(), p.textPercent(), p.motion()),
        p -> restyle());
    Watch.part(bench.stateProperty(), s -> s, this::follow);
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
    List<Command> all = new ArrayList<>(commands.all());
    all.addAll(pictures.commands());
    return all;
  }

  @Override
  public void shown(boolean nowShown) {
    visible = nowShown;
    if (visible) {
      follow(bench.state());
    }
  }

  @Override
  public void takeFocus() {
    timeline.requestFocus();
  }

  /** Returns the timeline, for tests and benchmarks. */
  Region timeline() {
    return timeline;
  }

  /** Returns how often each layer that does not move was drawn: base, fades, peg. */
  List<Long> staticDraws() {
    List<Long> all = new ArrayList<>(timeline.staticDraws());
    all.add(peg.staticDraws());
    return all;
  }

  private void opened(@Nullable OpenSession open) {
    if (open != null) {
      Range range = whole();
      boolean another = !open.source().equals(shownOf);
      shownOf = open.source();
      if (another && figure != null && !figure.review().session().equals(open.session())) {
        figure = null;
        drawn = null;
      }
      if (another || !range.holds(shown.from()) || !range.holds(shown.to())) {
        shown = range;
        redraw();
      }
      showPeg();
    }
  }

  private void reviewed() {
    tell(bench.state());
    head.show(Readout.of(bench.state(), preferences.get().units()).orElse(Readout.NOTHING));
  }

  /** Takes another review to draw where the one drawn no longer tells what may be told. */
  // Reviews are large, and one that only equals another does no harm drawn again.
  @SuppressWarnings("ReferenceEquality")
  private void tell(WorkbenchState s) {
    Review now = toDraw(s);
    if (now == drawn) {
      return;
    }
    drawn = now;
    TimelineFigure before = figure;
    bench.tasks().cancel(LAYING_OUT);
    if (now == null) {
      take(null);
    } else if (before != null && before.review().session().equals(now.session())) {
      // Of another moment of the same match much is the same, and is not worked out again.
      take(before.as(now));
    } else if (now.session().events().size() <= AT_ONCE) {
      take(new TimelineFigure(now, style()));
    } else {
      layOut(now);
    }
  }

  /** Off the window's thread; what was shown of the match stays until then. */
  private void layOut(Review told) {
    FigureStyle style = style();
    bench
        .tasks()
        .submit(
            LAYING_OUT,
            "Laying out the timeline",
            progress -> drawnOnce(new TimelineFigure(told, style)),
            new TaskService.Answer<>(
                made -> take(made.with(style())),
                failure ->
                    bench.report(
                        Activity.Trouble.unforeseen(
                            "The timeline could not be laid out", failure, ""))));
  }

  /**
   * Draws a timeline where nobody sees it: Java has then met what draws thousands of events before
   * the window's thread does.
   */
  private static TimelineFigure drawnOnce(TimelineFigure figure) {
    BufferedImage nowhere = new BufferedImage(1000, 500, BufferedImage.TYPE_INT_ARGB_PRE);
    figure.paint(nowhere.createGraphics(), nowhere.getWidth(), nowhere.getHeight());
    return figure;
  }

  private void take(@Nullable TimelineFigure made) {
    figure = made;
    redraw();
  }

  private static @Nullable Review toDraw(WorkbenchState s) {
    KnownThen known = s.review().known();
    if (s.open() == null || s.choices().hindsight()) {
      return s.review().latest();
    }
    return known == null ? null : known.drawnAt(s.playhead().at());
  }

  private FigureStyle style() {
    return Looks.onScreen(preferences.get());
  }

  private void restyle() {
    if (figure != null) {
      figure = figure.with(style());
    }
    showPeg();
    redraw();
    follow(bench.state());
  }

  private void showPeg() {
    OpenSession open = bench.state().open();
    peg.show(open == null ? null : open.session(), style(), preferences.get().motion());
  }

  private void redraw() {
    WorkbenchState s = bench.state();
    TimelineFigure now = figure;
    if (now == null || s.open() == null || shown.millis() < 1000) {
      timeline.show(null);
      return;
    }
    List<String> lanes =
        now.review().session().lines().stream()
            .map(Line::id)
            .filter(id -> !s.choices().hiddenLines().contains(id))
            .toList();
    keyShown = hasRoomForKey();
    TimelineView part =
        now.view().withRange(shown.from(), shown.to()).withLanes(lanes).withKey(keyShown);
    timeline.show(now.with(part));
  }

  /** What the marks mean is said below the lanes wherever these stay tall enough to be read. */
  private boolean hasRoomForKey() {
    OpenSession open = bench.state().open();
    int lanes =
        open == null
            ? 0
            : open.session().lines().size() - bench.state().choices().hiddenLines().size();
    double em = preferences.get().textPercent() / 100.0;
    return timeline.getHeight() >= (lanes * ROOM_OF_LANE + ROOM_OF_REST) * em;
  }

  private void follow(WorkbenchState s) {
    boolean waits = s.open() != null && toDraw(s) == null;
    String failure = s.review().failure();
    boolean nothing = s.open() != null && !waits && isEmpty(s.open().session());
    waitingBox.setVisible(waits || nothing);
    waiting.setText(
        nothing ? NOTHING_LOGGED : failure == null ? "Working out the review" : failure);
    waitingBox.getChildren().get(0).setVisible(waits && failure == null);
    if (!visible || s.open() == null) {
      return;
    }
    if (s.playhead().motion().playing()) {
      show(Zoom.showing(shown, whole(), s.playhead().at()));
    }
    tell(s);
    timeline.follow(s);
    peg.follow(s);
    Readout readout = Readout.of(s, preferences.get().units()).orElse(Readout.NOTHING);
    head.show(readout);
    cards.show(readout.cards());
    turns.show(s);
  }

  private static boolean isEmpty(Session session) {
    return session.events().stream().allMatch(e -> e.kind().group() == EventKind.Group.FRAME);
  }

  Range shown() {
    return shown;
  }

  Range whole() {
    return bench.state().playhead().range();
  }

  void show(Range range) {
    if (!range.equals(shown)) {
      shown = range;
      redraw();
    }
  }

  void focusInspector() {
    inspector.takeFocus();
  }

  void focusTypedTime() {
    transport.time().requestFocus();
  }
}
