package org.fadeline.ui.setup;

import java.util.List;
import java.util.Optional;
import java.util.function.Consumer;
import javafx.scene.AccessibleRole;
import javafx.scene.Cursor;
import javafx.scene.input.MouseEvent;
import javafx.scene.layout.Pane;
import org.fadeline.figure.FigureStyle;
import org.fadeline.figure.Hit;
import org.fadeline.figure.PegFigure;
import org.fadeline.figure.PegLayout;
import org.fadeline.model.Line;
import org.fadeline.model.Session;
import org.fadeline.replay.ReplayFrame;
import org.fadeline.ui.control.form.EntryBox;
import org.fadeline.ui.control.picture.FigureCanvas;
import org.fadeline.ui.control.picture.Placing;
import org.jspecify.annotations.Nullable;

/** The peg to scale before a fish is caught: lines are dragged, or put down where they lie. */
final class SwimPane extends Pane {
  private final FigureCanvas canvas = new FigureCanvas();
  private final EntryBox.Commit<Session> commit;
  private final Consumer<String> picks;
  private @Nullable Session session;
  private @Nullable FigureStyle style;
  private @Nullable PegLayout layout;
  private @Nullable ReplayFrame frame;
  private @Nullable String picked;
  private @Nullable String dragged;
  private boolean editable;

  /**
   * Makes the pane.
   *
   * @param picks is told which line was pressed
   */
  SwimPane(EntryBox.Commit<Session> commit, Consumer<String> picks) {
    this.commit = commit;
    this.picks = picks;
    setId("swim");
    setMinSize(0, 0);
    setAccessibleRole(AccessibleRole.IMAGE_VIEW);
    canvas.setMouseTransparent(true);
    canvas.setManaged(false);
    getChildren().add(canvas);
    addEventHandler(MouseEvent.MOUSE_MOVED, e -> setCursor(at(e).isPresent() ? Cursor.HAND : null));
    addEventHandler(MouseEvent.MOUSE_PRESSED, this::press);
    addEventHandler(MouseEvent.MOUSE_DRAGGED, this::drag);
    addEventHandler(MouseEvent.MOUSE_RELEASED, this::release);
  }

  void show(Session newSession, FigureStyle newStyle, boolean newEditable) {
    session = newSession;
    style = newStyle;
    editable = newEditable;
    layout = null;
    requestLayout();
  }

  void pick(@Nullable String id) {
    picked = id;
  }

  @Override
  protected void layoutChildren() {
    canvas.resizeRelocate(0, 0, getWidth(), getHeight());
    Session now = session;
    FigureStyle look = style;
    if (now == null || look == null || getWidth() < 40 || getHeight() < 40) {
      return;
    }
    if (layout == null || canvas.getWidth() != layoutWidth()) {
      draw(now, look);
    }
  }

  private double layoutWidth() {
    return Math.floor(getWidth());
  }

  private void draw(Session now, FigureStyle look) {
    // Before the first event: nothing was fed or caught yet.
    ReplayFrame start = ReplayFrame.at(now.withEvents(List.of()), now.match().allIn());
    PegFigure figure = new PegFigure(now, start, look);
    PegLayout fresh = figure.layoutForPlacing(Math.floor(getWidth()), Math.floor(getHeight()));
    frame = start;
    layout = fresh;
    canvas.show(
        (g, w, h) -> {
          fresh.paintBase(g);
          fresh.paintState(g, start);
        },
        "");
    setAccessibleText(figure.description());
  }

  private Optional<String> at(MouseEvent e) {
    PegLayout now = layout;
    ReplayFrame start = frame;
    return now == null || start == null
        ? Optional.empty()
        : now.at(e.getX(), e.getY(), start).map(Hit::lineId);
  }

  private void press(MouseEvent e) {
    // A field that was being typed in is done with, and Ctrl+Z means the step made here.
    requestFocus();
    dragged = at(e).orElseGet(this::unplaced);
    if (dragged != null && !dragged.equals(picked)) {
      picks.accept(dragged);
    }
  }

  /** Returns the picked line where it has no place yet: a press on the water then puts it there. */
  private @Nullable String unplaced() {
    Session now = session;
    return now == null || picked == null
        ? null
        : now.line(picked).filter(l -> l.place().distanceM() == null).map(Line::id).orElse(null);
  }

  private void drag(MouseEvent e) {
    Session now = session;
    FigureStyle look = style;
    PegLayout from = layout;
    String id = dragged;
    if (now == null || look == null || from == null || id == null || !editable || !isInside(e)) {
      return;
    }
    // The water keeps its scale while the line moves; only the picture follows.
    Session moved =
        SetupLines.replace(now, id, l -> l.withPlace(Placing.at(l, from, e.getX(), e.getY())));
    ReplayFrame start = ReplayFrame.at(moved.withEvents(List.of()), moved.match().allIn());
    PegLayout preview =
        new PegFigure(moved, start, look)
            .layoutForPlacing(Math.floor(getWidth()), Math.floor(getHeight()));
    canvas.show(
        (g, w, h) -> {
          preview.paintBase(g);
          preview.paintState(g, start);
        },
        "");
  }

  private void release(MouseEvent e) {
    String id = dragged;
    PegLayout from = layout;
    Session now = session;
    dragged = null;
    if (id == null || from == null || now == null || !editable || !isInside(e)) {
      return;
    }
    boolean placed = SetupLines.line(now, id).place().distanceM() != null;
    if (placed && e.isStillSincePress()) {
      return;
    }
    commit.change(
        "Place " + SetupLines.line(now, id).name(),
        s -> SetupLines.replace(s, id, l -> l.withPlace(Placing.at(l, from, e.getX(), e.getY()))));
  }

  private boolean isInside(MouseEvent e) {
    return e.getX() >= 0 && e.getY() >= 0 && e.getX() <= getWidth() && e.getY() <= getHeight();
  }
}
