package org.fadeline.ui.replay;

import java.awt.Graphics2D;
import java.awt.geom.Rectangle2D;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.function.BooleanSupplier;
import javafx.beans.property.ReadOnlyObjectProperty;
import javafx.beans.property.ReadOnlyObjectWrapper;
import javafx.scene.AccessibleRole;
import javafx.scene.Node;
import javafx.scene.input.KeyCode;
import javafx.scene.input.KeyEvent;
import javafx.scene.layout.Pane;
import javafx.scene.shape.Line;
import javafx.scene.shape.Polygon;
import javafx.scene.shape.Rectangle;
import org.fadeline.figure.Hit;
import org.fadeline.figure.Knowledge;
import org.fadeline.figure.TimelineFigure;
import org.fadeline.figure.TimelineLayout;
import org.fadeline.replay.Playhead.Range;
import org.fadeline.ui.control.command.OwnKeys;
import org.fadeline.ui.control.picture.FigureCanvas;
import org.fadeline.ui.control.picture.FutureCover;
import org.fadeline.ui.state.WorkbenchState;
import org.jspecify.annotations.Nullable;

/**
 * The timeline in layers: what does not move is drawn on canvases when session, zoom, size or theme
 * change; playhead, cover of the future, hover and loop are nodes above, and cost a frame almost
 * nothing.
 */
final class TimelinePane extends Pane implements OwnKeys {
  /** Half the width of the playhead's cap, pixels. */
  private static final double CAP = 6;

  /** How far its tip reaches below the clock, pixels. */
  private static final double TIP = 4;

  private final FigureCanvas base = new FigureCanvas();
  private final FigureCanvas fades = new FigureCanvas();
  private final FigureCanvas picked = new FigureCanvas();
  private final FutureCover cover = new FutureCover();
  private final LaneHeaders headers = new LaneHeaders();
  private final Rectangle loop = new Rectangle();
  private final Rectangle band = new Rectangle();
  private final Line playhead = new Line();
  private final Polygon handle = new Polygon();
  private final Line mark = new Line();
  private final HoverReadout readout = new HoverReadout();
  private final ReadOnlyObjectWrapper<@Nullable TimelineLayout> layout =
      new ReadOnlyObjectWrapper<>(null);
  private @Nullable TimelineFigure figure;
  private WorkbenchState state = WorkbenchState.EMPTY;
  private TimelineLayout.@Nullable BaseVersion baseVersion;
  private int fadesVersion;
  private Set<String> pickedShown = Set.of();
  private @Nullable Told told;
  private @Nullable Hovered hovered;
  private BooleanSupplier dragging = () -> false;

  /** From which minute the words for the screen reader are told. */
  private record Told(boolean hindsight, long minute) {}

  /** What the pointer rests on, shown beside it. */
  private record Hovered(double x, double y, Hit hit) {}

  TimelinePane() {
    setMinSize(0, 0);
    setId("timeline");
    setFocusTraversable(true);
    setAccessibleRole(AccessibleRole.IMAGE_VIEW);
    for (Pane layer : List.of(base, fades, picked, headers)) {
      layer.setMouseTransparent(true);
      // Each is a layout root: what moves inside it does not lay out the window again.
      layer.setManaged(false);
    }
    loop.getStyleClass().add("loop-band");
    band.getStyleClass().add("pick-band");
    band.setVisible(false);
    playhead.getStyleClass().add("playhead-line");
    handle.getStyleClass().add("playhead");
    mark.getStyleClass().add("mark-line");
    for (Node node : List.of(loop, band, playhead, mark, handle)) {
      node.setMouseTransparent(true);
      node.setManaged(false);
    }
    getChildren()
        .addAll(base, fades, loop, cover, picked, mark, playhead, headers, band, handle, readout);
    Rectangle clip = new Rectangle();
    clip.widthProperty().bind(widthProperty());
    clip.heightProperty().bind(heightProperty());
    setClip(clip);
  }

  /** Sets what tells whether a drag is under way, which Esc then gives up. */
  void dragging(BooleanSupplier underWay) {
    dragging = underWay;
  }

  @Override
  public boolean uses(KeyEvent key) {
    return key.getCode() == KeyCode.ESCAPE && dragging.getAsBoolean();
  }

  /** Shows another figure (session, zoom, style, lanes), or none yet. */
  void show(@Nullable TimelineFigure newFigure) {
    figure = newFigure;
    layout.set(null);
    requestLayout();
  }

  ReadOnlyObjectProperty<@Nullable TimelineLayout> layoutProperty() {
    return layout.getReadOnlyProperty();
  }

  /** Returns how often each of the layers that do not move was drawn: base, fades. */
  List<Long> staticDraws() {
    return List.of(base.draws(), fades.draws());
  }

  @Override
  protected void layoutChildren() {
    double w = Math.floor(getWidth());
    double h = Math.floor(getHeight());
    TimelineFigure now = figure;
    TimelineLayout old = layout.get();
    if (now == null || w < 60 || h < 40) {
      base.show(null, "");
      fades.show(null, "");
    } else if (old == null || base.getWidth() != w || base.getHeight() != h) {
      layout.set(now.layout(w, h));
      baseVersion = null;
    }
    for (Pane layer : List.of(base, fades, cover, picked, headers)) {
      layer.resizeRelocate(0, 0, w, h);
    }
    if (layout.get() != null && layout.get() != old) {
      headers.build(layout.get());
    }
    follow(state);
  }

  private Knowledge knowledge() {
    return state.choices().hindsight()
        ? Knowledge.hindsight()
        : Knowledge.asKnownAt(state.playhead().at());
  }

  /** Follows the state: moves what moves, and draws again only what would look different. */
  void follow(WorkbenchState newState) {
    state = newState;
    TimelineLayout now = layout.get();
    TimelineFigure drawn = figure;
    if (now == null || drawn == null) {
      return;
    }
    Knowledge knowledge = knowledge();
    TimelineLayout.BaseVersion newBase = now.baseVersion(knowledge);
    int newFades = now.fadesVersion(knowledge);
    boolean fresh = baseVersion == null;
    if (fresh || !newBase.equals(baseVersion)) {
      base.show((g, w, h) -> now.paintBase(g, knowledge), "");
    }
    // The words are long; while it plays they are made when the layer is, not for every frame.
    Long until = knowledge.at();
    Told nowTold = new Told(until == null, until == null ? 0 : until / 60_000);
    boolean playing = state.playhead().motion().playing();
    if (fresh || !newBase.equals(baseVersion) || (!playing && !nowTold.equals(told))) {
      told = nowTold;
      setAccessibleText(drawn.with(knowledge).description());
    }
    if (fresh || newFades != fadesVersion) {
      fades.show((g, w, h) -> now.paintFades(g, knowledge), "");
    }
    showPicked(now, fresh);
    baseVersion = newBase;
    fadesVersion = newFades;
    double x = now.xOf(state.playhead().at());
    movePlayhead(now, x);
    cover.follow(now, knowledge);
    headers.show(now, knowledge);
    showLoop(now);
    if (hovered != null) {
      // The playhead moves under a pointer that rests: what is said beside it moves along.
      hover(hovered.x, hovered.y);
    }
  }

  private void showPicked(TimelineLayout now, boolean fresh) {
    Set<String> ids = state.selection().events();
    if (fresh || !ids.equals(pickedShown)) {
      pickedShown = ids;
      FigureCanvas.Painter painter =
          (Graphics2D g, double w, double h) -> now.paintSelection(g, ids);
      picked.show(ids.isEmpty() ? null : painter, "");
    }
  }

  private void movePlayhead(TimelineLayout now, double x) {
    Rectangle2D area = now.plotArea();
    boolean inside = x >= area.getMinX() - 0.5 && x <= area.getMaxX() + 0.5;
    playhead.setVisible(inside);
    handle.setVisible(inside);
    playhead.setStartX(x);
    playhead.setEndX(x);
    playhead.setStartY(area.getMinY() - 4);
    playhead.setEndY(area.getMaxY());
    handle.setLayoutX(x);
    // Below the clock's figures: the time it stands on stays readable.
    double cap = area.getMinY() - now.axisBaseline() - 1;
    handle.getPoints().setAll(-CAP, 0.0, CAP, 0.0, 0.0, cap + TIP);
    handle.setLayoutY(now.axisBaseline() + 1);
    Long at = state.selection().mark();
    mark.setVisible(at != null);
    if (at != null) {
      double m = now.xOf(at);
      mark.setVisible(m >= area.getMinX() - 0.5 && m <= area.getMaxX() + 0.5);
      mark.setStartX(m);
      mark.setEndX(m);
      mark.setStartY(area.getMinY() - 4);
      mark.setEndY(area.getMaxY());
    }
  }

  private void showLoop(TimelineLayout now) {
    Range range = state.playhead().motion().loop();
    loop.setVisible(range != null);
    if (range != null) {
      Rectangle2D area = now.plotArea();
      double from = Math.max(area.getMinX(), now.xOf(range.from()));
      double to = Math.min(area.getMaxX(), now.xOf(range.to()));
      loop.setX(from);
      loop.setWidth(Math.max(0, to - from));
      loop.setY(area.getMinY());
      loop.setHeight(area.getHeight());
    }
  }

  /** Returns what lies at a point as far as it is known, and shows its values beside it. */
  Optional<Hit> hover(double x, double y) {
    TimelineLayout now = layout.get();
    Optional<Hit> hit = now == null ? Optional.empty() : now.at(x, y, knowledge());
    Hovered before = hovered;
    hovered = hit.map(found -> new Hovered(x, y, found)).orElse(null);
    if (hovered == null || !hovered.equals(before)) {
      readout.show(hit.orElse(null), x, y, getWidth(), getHeight());
    }
    return hit;
  }

  /** Returns the events in a rectangle, as far as they are known. */
  List<String> eventsIn(double x0, double y0, double x1, double y1) {
    TimelineLayout now = layout.get();
    Rectangle2D area =
        new Rectangle2D.Double(
            Math.min(x0, x1), Math.min(y0, y1), Math.abs(x1 - x0), Math.abs(y1 - y0));
    return now == null ? List.of() : now.eventsIn(area, knowledge());
  }

  /** Shows words beside the pointer, such as the time of an event being dragged. */
  void tell(String title, List<String> rows, double x, double y) {
    hovered = null;
    readout.show(title, rows, x, y, getWidth(), getHeight());
  }

  void hushReadout() {
    hovered = null;
    readout.setVisible(false);
  }

  /** Shows the rectangle in which events are about to be picked. */
  void band(double x0, double y0, double x1, double y1) {
    band.setX(Math.min(x0, x1));
    band.setY(Math.min(y0, y1));
    band.setWidth(Math.abs(x1 - x0));
    band.setHeight(Math.abs(y1 - y0));
    band.setVisible(true);
  }

  void noBand() {
    band.setVisible(false);
  }
}
