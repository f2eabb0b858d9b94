package org.fadeline.ui.replay;

import java.awt.geom.Point2D;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import javafx.animation.FadeTransition;
import javafx.scene.AccessibleRole;
import javafx.scene.Cursor;
import javafx.scene.control.MenuItem;
import javafx.scene.control.SeparatorMenuItem;
import javafx.scene.input.KeyEvent;
import javafx.scene.input.MouseButton;
import javafx.scene.input.MouseEvent;
import javafx.scene.layout.Pane;
import javafx.scene.shape.Circle;
import javafx.scene.shape.Rectangle;
import javafx.util.Duration;
import org.fadeline.figure.FigureStyle;
import org.fadeline.figure.Hit;
import org.fadeline.figure.PegFigure;
import org.fadeline.figure.PegLayout;
import org.fadeline.model.Line;
import org.fadeline.model.Session;
import org.fadeline.replay.ReplayFrame;
import org.fadeline.ui.control.NodeMenu;
import org.fadeline.ui.control.Say;
import org.fadeline.ui.control.command.OwnKeys;
import org.fadeline.ui.control.picture.FigureCanvas;
import org.fadeline.ui.control.picture.PictureMenu;
import org.fadeline.ui.control.picture.Placing;
import org.fadeline.ui.state.OpenSession;
import org.fadeline.ui.state.Workbench;
import org.fadeline.ui.state.WorkbenchState;
import org.jspecify.annotations.Nullable;

/**
 * The peg to scale in two layers: what does not change with the moment, and what does, which is
 * drawn again only when it would look different. A line can be dragged to where it lay.
 */
final class PegPane extends Pane implements OwnKeys {
  /** Freshness of feed and the sun move slowly: this often is often enough. */
  private static final long STEP_MILLIS = 15_000;

  private final Workbench bench;
  private final FigureCanvas base = new FigureCanvas();
  private final FigureCanvas moment = new FigureCanvas();
  private final Circle landed = new Circle(4);
  private final FadeTransition arrival = new FadeTransition(Duration.millis(150), landed);
  private final HoverReadout readout = new HoverReadout();
  private @Nullable Session session;
  private @Nullable FigureStyle style;
  private @Nullable PegLayout layout;
  private @Nullable Key shown;
  private @Nullable ReplayFrame frame;
  private @Nullable Line dragged;
  private final PegKeys keys = new PegKeys();
  private String words = "";
  private boolean motion = true;

  /** What the moment's picture depends on. */
  private record Key(
      @Nullable String fishing, List<Integer> fish, List<@Nullable Long> fed, long step) {}

  PegPane(Workbench bench) {
    this.bench = bench;
    setMinSize(0, 0);
    setId("peg");
    setFocusTraversable(true);
    setAccessibleRole(AccessibleRole.IMAGE_VIEW);
    setAccessibleRoleDescription("peg diagram");
    setAccessibleHelp(
        "Left and Right pick a line; Shift with Up and Down puts it further out or nearer,"
            + " Shift with Left and Right turns it");
    for (Pane layer : List.of(base, moment)) {
      layer.setMouseTransparent(true);
      layer.setManaged(false);
    }
    landed.getStyleClass().add("landed-ring");
    landed.setManaged(false);
    landed.setMouseTransparent(true);
    landed.setOpacity(0);
    arrival.setFromValue(1);
    arrival.setToValue(0);
    getChildren().addAll(base, moment, landed, readout);
    Rectangle clip = new Rectangle();
    clip.widthProperty().bind(widthProperty());
    clip.heightProperty().bind(heightProperty());
    setClip(clip);
    addEventHandler(KeyEvent.KEY_PRESSED, this::key);
    focusedProperty().addListener((p, before, after) -> showPicked());
    addEventHandler(MouseEvent.MOUSE_MOVED, this::hover);
    addEventHandler(MouseEvent.MOUSE_EXITED, e -> readout.setVisible(false));
    addEventHandler(MouseEvent.MOUSE_PRESSED, this::press);
    addEventHandler(MouseEvent.MOUSE_DRAGGED, this::drag);
    addEventHandler(MouseEvent.MOUSE_RELEASED, this::release);
  }

  /** Shows another session or style. */
  void show(@Nullable Session newSession, FigureStyle newStyle, boolean newMotion) {
    session = newSession;
    style = newStyle;
    motion = newMotion;
    layout = null;
    requestLayout();
  }

  @Override
  protected void layoutChildren() {
    double w = Math.floor(getWidth());
    double h = Math.floor(getHeight());
    Session now = session;
    FigureStyle look = style;
    if (now == null || look == null || w < 40 || h < 40) {
      base.show(null, "");
      moment.show(null, "");
      return;
    }
    if (layout == null || base.getWidth() != w || base.getHeight() != h) {
      PegLayout fresh = new PegFigure(now, start(now), look).layout(w, h);
      layout = fresh;
      shown = null;
      base.show((g, x, y) -> fresh.paintBase(g), "");
    }
    base.resizeRelocate(0, 0, w, h);
    moment.resizeRelocate(0, 0, w, h);
    follow(bench.state());
  }

  /** Before anything happened; of a long match the record of all moments is made only once. */
  private ReplayFrame start(Session of) {
    OpenSession open = bench.state().open();
    return open != null && open.session().equals(of)
        ? open.track().frameAt(0)
        : ReplayFrame.at(of, 0);
  }

  void follow(WorkbenchState state) {
    OpenSession open = state.open();
    PegLayout now = layout;
    FigureStyle look = style;
    if (open == null || now == null || look == null || !open.session().equals(session)) {
      return;
    }
    ReplayFrame at = open.track().frameAt(state.playhead().at());
    Key key =
        new Key(
            at.fishing(),
            at.lines().stream().map(ReplayFrame.LineState::fish).toList(),
            fed(at),
            Math.floorDiv(at.at(), STEP_MILLIS));
    Key before = shown;
    frame = at;
    if (key.equals(before)) {
      return;
    }
    shown = key;
    moment.show((g, w, h) -> now.paintState(g, at), "");
    words = new PegFigure(open.session(), at, look).description();
    tellPicked();
    if (before != null && motion && state.playhead().motion().playing()) {
      arrive(open.session(), before, key);
    }
  }

  private static List<@Nullable Long> fed(ReplayFrame at) {
    List<@Nullable Long> fed = new ArrayList<>();
    at.lines().forEach(line -> fed.add(line.lastFed()));
    return fed;
  }

  private void arrive(Session of, Key before, Key now) {
    for (int i = 0; i < now.fish.size() && i < before.fish.size(); i++) {
      if (now.fish.get(i) > before.fish.get(i)) {
        PegLayout drawn = layout;
        Optional<Point2D> point =
            drawn == null ? Optional.empty() : drawn.pointOf(of.lines().get(i));
        if (point.isPresent()) {
          landed.setCenterX(point.get().getX());
          landed.setCenterY(point.get().getY());
          landed.setRadius(22);
          arrival.playFromStart();
        }
      }
    }
  }

  private Optional<Hit> hitAt(MouseEvent e) {
    PegLayout now = layout;
    ReplayFrame at = frame;
    return now == null || at == null ? Optional.empty() : now.at(e.getX(), e.getY(), at);
  }

  private void hover(MouseEvent e) {
    Optional<Hit> hit = hitAt(e);
    setCursor(hit.isPresent() ? Cursor.HAND : Cursor.DEFAULT);
    readout.show(hit.orElse(null), e.getX(), e.getY(), getWidth(), getHeight());
  }

  @Override
  public boolean uses(KeyEvent key) {
    return PegKeys.uses(key);
  }

  private void key(KeyEvent e) {
    Session now = session;
    if (now == null || !PegKeys.uses(e)) {
      return;
    }
    e.consume();
    if (!e.isShiftDown()) {
      keys.pickNext(now, e.getCode());
    } else if (bench.editing().allowed()) {
      keys.picked(now).ifPresent(line -> place(line, PegKeys.nudged(line, e.getCode())));
    } else {
      bench.tell("This record is read-only");
    }
    showPicked();
  }

  /** Tells of the line picked by keys beside it, while the peg has the focus. */
  private void showPicked() {
    tellPicked();
    Session now = bench.state().open() == null ? null : bench.state().open().session();
    PegLayout drawn = layout;
    FigureStyle look = style;
    Line line = now == null ? null : keys.picked(now).orElse(null);
    Point2D at = line == null || drawn == null ? null : drawn.pointOf(line).orElse(null);
    if (!isFocused() || line == null || at == null || look == null) {
      readout.setVisible(false);
      return;
    }
    readout.show(
        Say.capital(line.name()),
        List.of(Placing.words(line.place(), look.units())),
        at.getX(),
        at.getY(),
        getWidth(),
        getHeight());
  }

  private void tellPicked() {
    OpenSession open = bench.state().open();
    FigureStyle look = style;
    String line =
        open == null || look == null || !isFocused()
            ? ""
            : keys.picked(open.session())
                .map(l -> Say.capital(l.name()) + ", " + Placing.words(l.place(), look.units()))
                .map(said -> said + ". ")
                .orElse("");
    setAccessibleText(line + words);
  }

  /** Returns the entries of the peg's menu: of the line under the pointer or picked by keys. */
  List<MenuItem> menu(NodeMenu.Asked asked, PictureMenu pictures) {
    List<MenuItem> items = new ArrayList<>();
    OpenSession open = bench.state().open();
    PegLayout drawn = layout;
    ReplayFrame at = frame;
    if (open != null && drawn != null && at != null) {
      Optional<Line> line =
          asked.pointer()
              ? drawn
                  .at(asked.x(), asked.y(), at)
                  .flatMap(hit -> open.session().line(String.valueOf(hit.lineId())))
              : keys.picked(open.session());
      line.ifPresent(
          l -> {
            boolean hidden = bench.state().choices().hiddenLines().contains(l.id());
            items.add(
                NodeMenu.item(
                    (hidden ? "Show " : "Hide ") + l.name() + " on the timeline",
                    () -> bench.showLine(l.id(), hidden)));
            items.add(new SeparatorMenuItem());
          });
    }
    items.addAll(pictures.items(this));
    return items;
  }

  /** Returns where the menu opens by keys: at the line picked, else in the middle. */
  javafx.geometry.Point2D menuPlace() {
    Session now = session;
    PegLayout drawn = layout;
    Point2D at =
        now == null || drawn == null ? null : keys.picked(now).flatMap(drawn::pointOf).orElse(null);
    return at == null
        ? new javafx.geometry.Point2D(getWidth() / 2, getHeight() / 2)
        : new javafx.geometry.Point2D(at.getX(), at.getY());
  }

  private void press(MouseEvent e) {
    requestFocus();
    Session now = session;
    dragged =
        now == null || e.getButton() != MouseButton.PRIMARY || !bench.editing().allowed()
            ? null
            : hitAt(e).flatMap(hit -> now.line(String.valueOf(hit.lineId()))).orElse(null);
  }

  private void drag(MouseEvent e) {
    Line line = dragged;
    PegLayout now = layout;
    FigureStyle look = style;
    if (line != null && now != null && look != null && inside(e)) {
      Line.Place place = Placing.at(line, now, e.getX(), e.getY());
      readout.show(
          Say.capital(line.name()),
          List.of(Placing.words(place, look.units())),
          e.getX(),
          e.getY(),
          getWidth(),
          getHeight());
    }
  }

  private boolean inside(MouseEvent e) {
    return e.getX() >= 0 && e.getY() >= 0 && e.getX() <= getWidth() && e.getY() <= getHeight();
  }

  private void release(MouseEvent e) {
    Line line = dragged;
    PegLayout now = layout;
    dragged = null;
    readout.setVisible(false);
    if (line == null || now == null || !inside(e) || e.isStillSincePress()) {
      return;
    }
    place(line, Placing.at(line, now, e.getX(), e.getY()));
  }

  private void place(Line line, Line.Place place) {
    Line moved = line.withPlace(place);
    bench
        .editing()
        .edit(
            "Place " + line.name(),
            s -> {
              List<Line> lines = new ArrayList<>(s.lines());
              lines.replaceAll(l -> l.id().equals(line.id()) ? moved : l);
              return s.withLines(lines);
            });
  }

  /** Returns how often the layer that does not change with the moment was drawn. */
  long staticDraws() {
    return base.draws();
  }
}
