package org.fadeline.ui.compare;

import java.awt.geom.Rectangle2D;
import java.util.List;
import java.util.Objects;
import java.util.function.DoubleConsumer;
import java.util.function.LongConsumer;
import javafx.event.EventHandler;
import javafx.scene.AccessibleRole;
import javafx.scene.Cursor;
import javafx.scene.input.MouseEvent;
import javafx.scene.layout.Pane;
import javafx.scene.shape.Line;
import javafx.scene.shape.Rectangle;
import org.fadeline.figure.Knowledge;
import org.fadeline.figure.TimelineFigure;
import org.fadeline.figure.TimelineLayout;
import org.fadeline.ui.control.picture.FigureCanvas;
import org.fadeline.ui.control.picture.FutureCover;
import org.fadeline.ui.state.TaskService;
import org.jspecify.annotations.Nullable;

/**
 * One of the two timelines: what does not move is drawn on canvases when it would look different;
 * the playhead and the cover of what was not known yet are nodes above.
 */
final class TimelineStrip extends Pane {
  private final FigureCanvas base = new FigureCanvas();
  private final FigureCanvas figures = new FigureCanvas();
  private final FutureCover cover = new FutureCover();
  private final Line playhead = new Line();
  private @Nullable TimelineFigure figure;
  private @Nullable TimelineLayout layout;
  private @Nullable Version shown;
  private @Nullable TaskService drawing;
  private long knownUntil = Long.MIN_VALUE;
  private List<List<String>> figuresShown = List.of();
  private long at;
  private long told;
  private boolean hindsight = true;
  private double pressedX;

  /** What the picture below the playhead depends on. */
  private record Version(TimelineLayout.BaseVersion base, int fades) {}

  TimelineStrip(String id) {
    setId(id);
    setMinSize(0, 90);
    setAccessibleRole(AccessibleRole.IMAGE_VIEW);
    for (Pane layer : List.of(base, figures)) {
      layer.setMouseTransparent(true);
      layer.setManaged(false);
    }
    playhead.getStyleClass().add("playhead-line");
    playhead.setManaged(false);
    playhead.setMouseTransparent(true);
    getChildren().addAll(base, cover, figures, playhead);
    Rectangle clip = new Rectangle();
    clip.widthProperty().bind(widthProperty());
    clip.heightProperty().bind(heightProperty());
    setClip(clip);
  }

  /**
   * Shows another timeline, or none while it may not be told yet.
   *
   * @param newDrawing draws it off the window's thread where it is too large for a frame, or null
   */
  void show(@Nullable TimelineFigure newFigure, @Nullable TaskService newDrawing) {
    figure = newFigure;
    drawing = newDrawing;
    layout = null;
    requestLayout();
  }

  /** Takes the playhead to the instant pressed or dragged to. */
  void onSeek(LongConsumer seek) {
    EventHandler<MouseEvent> go =
        e -> {
          TimelineLayout now = layout;
          if (now != null) {
            seek.accept(now.instantAt(e.getX()));
          }
        };
    setOnMousePressed(go);
    setOnMouseDragged(go);
  }

  /**
   * Lets the timeline be dragged along the axis.
   *
   * @param moving is told how many minutes it would be moved while it is dragged
   * @param moved is told when it is let go
   */
  void onShift(DoubleConsumer moving, DoubleConsumer moved) {
    setCursor(Cursor.H_RESIZE);
    setOnMousePressed(e -> pressedX = e.getX());
    setOnMouseDragged(
        e -> {
          base.setTranslateX(e.getX() - pressedX);
          moving.accept(minutes(e.getX() - pressedX));
        });
    setOnMouseReleased(
        e -> {
          base.setTranslateX(0);
          double minutes = minutes(e.getX() - pressedX);
          if (Math.abs(e.getX() - pressedX) >= 3) {
            moved.accept(minutes);
          }
        });
  }

  private double minutes(double pixels) {
    TimelineLayout now = layout;
    return now == null ? 0 : Math.rint((now.instantAt(pixels) - now.instantAt(0)) / 60_000.0);
  }

  @Override
  protected void layoutChildren() {
    double w = Math.floor(getWidth());
    double h = Math.floor(getHeight());
    TimelineFigure now = figure;
    if (now == null || w < 60 || h < 40) {
      base.show(null, "");
      figures.show(null, "");
    } else if (layout == null || base.getWidth() != w || base.getHeight() != h) {
      layout = now.layout(w, h);
      shown = null;
      figuresShown = List.of();
    }
    for (Pane layer : List.of(base, figures, cover)) {
      layer.resizeRelocate(0, 0, w, h);
    }
    follow(at, hindsight, false);
  }

  /**
   * Stands at an instant of its session.
   *
   * @param newHindsight whether everything is shown, or what was known then
   * @param playing whether the playhead moves by itself
   */
  void follow(long newAt, boolean newHindsight, boolean playing) {
    at = newAt;
    hindsight = newHindsight;
    TimelineLayout now = layout;
    TimelineFigure drawn = figure;
    if (now == null || drawn == null) {
      playhead.setVisible(false);
      cover.setVisible(false);
      return;
    }
    Knowledge knowledge = hindsight ? Knowledge.hindsight() : Knowledge.asKnownAt(at);
    Version version = new Version(now.baseVersion(knowledge), now.fadesVersion(knowledge));
    long minute = hindsight ? 0 : Math.floorDiv(at, 60_000L);
    // The words are long; while it plays they are made when it is drawn, not for every frame.
    if (!Objects.equals(version, shown) || (!playing && minute != told)) {
      told = minute;
      setAccessibleText(drawn.with(knowledge).description());
    }
    if (!Objects.equals(version, shown)) {
      shown = version;
      paintBelow(now, knowledge);
    }
    List<List<String>> told = now.figures(knowledge);
    if (!told.equals(figuresShown)) {
      figuresShown = told;
      figures.show((g, w, h) -> now.paintFigures(g, knowledge), "");
    }
    double x = now.xOf(at);
    Rectangle2D area = now.plotArea();
    playhead.setVisible(x >= area.getMinX() - 0.5 && x <= area.getMaxX() + 0.5);
    playhead.setStartX(x);
    playhead.setEndX(x);
    playhead.setStartY(area.getMinY() - 4);
    playhead.setEndY(area.getMaxY());
    cover.follow(now, knowledge);
  }

  private void paintBelow(TimelineLayout now, Knowledge knowledge) {
    FigureCanvas.Painter painter =
        (g, w, h) -> {
          now.paintBase(g, knowledge);
          now.paintFades(g, knowledge);
        };
    long until = hindsight ? Long.MAX_VALUE : at;
    TaskService ahead = drawing;
    if (ahead == null) {
      base.show(painter, "");
    } else {
      // A picture that knows more than is known now must not stay for a moment.
      base.showAhead(painter, "", new FigureCanvas.Ahead(ahead, until >= knownUntil));
    }
    knownUntil = until;
  }
}
