package org.fadeline.ui.replay;

import java.awt.geom.Rectangle2D;
import java.util.List;
import java.util.Optional;
import javafx.scene.Cursor;
import javafx.scene.input.KeyEvent;
import javafx.scene.input.MouseButton;
import javafx.scene.input.MouseEvent;
import javafx.scene.input.ScrollEvent;
import org.fadeline.figure.Hit;
import org.fadeline.figure.TimelineLayout;
import org.fadeline.replay.Playhead.Range;
import org.fadeline.ui.state.Workbench;
import org.jspecify.annotations.Nullable;

/**
 * The pointer on the timeline: on the clock it scrubs, or with Shift sets the range to loop; on an
 * event it picks and drags, elsewhere it pans, or with Shift picks what lies in a rectangle; the
 * wheel zooms.
 */
final class TimelineGestures {
  /** The pointer trembles: only beyond this many pixels is a press a drag. */
  private static final double DRAG_FROM = 4;

  private final TimelinePane pane;
  private final Workbench bench;
  private final Host host;
  private @Nullable Drag drag;

  /** What the screen does with the gestures. */
  interface Host {
    /** Returns the part of the match shown. */
    Range shown();

    /** Shows another part. */
    void show(Range range);

    /** Returns everything that can be shown. */
    Range whole();

    /** Returns whether events may be moved. */
    boolean mayEdit();

    /** Tells the time an event would move to while it is dragged. */
    List<String> movedWords(String eventId, long millis);

    /** Moves the events picked in time. */
    void move(String eventId, long millis);

    /** Tells the range that is about to be looped, its two ends in either order. */
    String loopWords(long from, long to);
  }

  private enum Kind {
    SCRUB,
    LOOP,
    EVENT,
    PAN,
    RECTANGLE
  }

  private static final class Drag {
    final Kind kind;
    final double x;
    final double y;
    final @Nullable Hit hit;
    final Range shown;
    boolean moved;

    Drag(Kind kind, double x, double y, @Nullable Hit hit, Range shown) {
      this.kind = kind;
      this.x = x;
      this.y = y;
      this.hit = hit;
      this.shown = shown;
    }
  }

  TimelineGestures(TimelinePane pane, Workbench bench, Host host) {
    this.pane = pane;
    this.bench = bench;
    this.host = host;
    pane.dragging(() -> drag != null && drag.moved);
    pane.addEventHandler(MouseEvent.MOUSE_MOVED, e -> hover(e.getX(), e.getY()));
    pane.addEventHandler(MouseEvent.MOUSE_EXITED, e -> pane.hushReadout());
    pane.addEventHandler(MouseEvent.MOUSE_PRESSED, this::press);
    pane.addEventHandler(MouseEvent.MOUSE_DRAGGED, this::drag);
    pane.addEventHandler(MouseEvent.MOUSE_RELEASED, this::release);
    pane.addEventHandler(ScrollEvent.SCROLL, this::scroll);
    pane.addEventHandler(KeyEvent.KEY_PRESSED, this::giveUp);
  }

  private void hover(double x, double y) {
    TimelineLayout layout = pane.layoutProperty().get();
    if (layout == null) {
      return;
    }
    if (y < layout.plotArea().getMinY()) {
      pane.hushReadout();
      pane.setCursor(Cursor.H_RESIZE);
      return;
    }
    Optional<Hit> hit = pane.hover(x, y);
    pane.setCursor(hit.filter(Hit::isMark).isPresent() ? Cursor.HAND : Cursor.DEFAULT);
  }

  private void press(MouseEvent e) {
    TimelineLayout layout = pane.layoutProperty().get();
    if (layout == null || e.getButton() == MouseButton.MIDDLE) {
      return;
    }
    pane.requestFocus();
    if (e.getButton() != MouseButton.PRIMARY) {
      pickForMenu(e);
      return;
    }
    if (e.getY() < layout.plotArea().getMinY()) {
      if (e.isShiftDown()) {
        start(Kind.LOOP, e, null);
        return;
      }
      start(Kind.SCRUB, e, null);
      bench.transport().seek(layout.instantAt(e.getX()));
      return;
    }
    Hit hit = pane.hover(e.getX(), e.getY()).orElse(null);
    if (hit != null && hit.kind() == Hit.Kind.COLUMN && !isPicked(hit) && isPlain(e)) {
      // Where marks crowd the hand that pans is always on one: a click picks, a drag still pans.
      start(Kind.PAN, e, hit);
    } else if (hit != null && hit.isMark()) {
      pick(e, hit);
      start(Kind.EVENT, e, hit);
    } else {
      start(e.isShiftDown() ? Kind.RECTANGLE : Kind.PAN, e, null);
    }
  }

  /**
   * The mark that a menu is about to be of. Picked by the press itself: when, after a press, a menu
   * is asked for differs between platforms, and some never ask.
   */
  private void pickForMenu(MouseEvent e) {
    pane.hover(e.getX(), e.getY())
        .filter(hit -> hit.isMark() && !isPicked(hit))
        .ifPresent(hit -> bench.picking().pickAll(hit.events()));
  }

  private void start(Kind kind, MouseEvent e, @Nullable Hit hit) {
    drag = new Drag(kind, e.getX(), e.getY(), hit, host.shown());
  }

  private static boolean isPlain(MouseEvent e) {
    return !e.isShiftDown() && !e.isShortcutDown();
  }

  private boolean isPicked(Hit hit) {
    return bench.state().selection().events().containsAll(hit.events());
  }

  private void pick(MouseEvent e, Hit hit) {
    if (e.isShiftDown()) {
      bench.picking().extend(hit.events());
    } else if (e.isShortcutDown()) {
      bench.picking().toggle(hit.events());
    } else if (!isPicked(hit)) {
      // A press on one of several picked keeps them all, so that they can be dragged together.
      bench.picking().pickAll(hit.events());
    }
  }

  private void drag(MouseEvent e) {
    TimelineLayout layout = pane.layoutProperty().get();
    Drag now = drag;
    if (layout == null || now == null) {
      return;
    }
    now.moved |= Math.hypot(e.getX() - now.x, e.getY() - now.y) > DRAG_FROM;
    if (now.kind == Kind.SCRUB) {
      bench.transport().seek(layout.instantAt(e.getX()));
      return;
    }
    if (!now.moved) {
      return;
    }
    switch (now.kind) {
      case EVENT -> {
        Hit hit = now.hit;
        if (hit != null) {
          long by = movedBy(layout, now, e.getX());
          List<String> words =
              host.mayEdit() ? host.movedWords(hit.id(), by) : List.of("This record is read-only");
          pane.tell(hit.title(), words, e.getX(), e.getY());
        }
      }
      case PAN -> {
        pan(layout, now, e.getX());
        pane.hushReadout();
        pane.setCursor(Cursor.CLOSED_HAND);
      }
      case RECTANGLE -> pane.band(now.x, now.y, e.getX(), e.getY());
      case LOOP -> {
        Range range = looped(layout, now, e.getX());
        Rectangle2D area = layout.plotArea();
        double from = layout.xOf(range.from());
        double to = layout.xOf(range.to());
        pane.tell("Loop", List.of(host.loopWords(range.from(), range.to())), e.getX(), e.getY());
        pane.band(from, area.getMinY(), to, area.getMaxY());
      }
      case SCRUB -> {}
    }
  }

  /** The range dragged over, as far as it is shown, its ends to the second. */
  private Range looped(TimelineLayout layout, Drag from, double x) {
    Range shown = host.shown();
    return Range.between(
        shown.clamp(toSecond(layout.instantAt(from.x))),
        shown.clamp(toSecond(layout.instantAt(x))));
  }

  /** To the second: a pointer is no finer. */
  private static long toSecond(long millis) {
    return Math.round(millis / 1000.0) * 1000;
  }

  private void pan(TimelineLayout layout, Drag from, double x) {
    double perPixel = from.shown.millis() / layout.plotArea().getWidth();
    host.show(Zoom.pan(from.shown, host.whole(), Math.round((from.x - x) * perPixel)));
  }

  private static long movedBy(TimelineLayout layout, Drag drag, double x) {
    return toSecond(layout.instantAt(x) - layout.instantAt(drag.x));
  }

  private void release(MouseEvent e) {
    TimelineLayout layout = pane.layoutProperty().get();
    Drag now = drag;
    drag = null;
    pane.noBand();
    if (layout == null || now == null) {
      return;
    }
    pane.setCursor(Cursor.DEFAULT);
    switch (now.kind) {
      case EVENT -> {
        pane.hushReadout();
        Hit hit = now.hit;
        if (now.moved && hit != null && host.mayEdit()) {
          host.move(hit.id(), movedBy(layout, now, e.getX()));
        } else if (!now.moved && hit != null && isPlain(e)) {
          bench.picking().pickAll(hit.events());
        }
      }
      case PAN -> {
        if (now.moved) {
          // The last few pixels may come with the release alone.
          pan(layout, now, e.getX());
        } else if (now.hit != null) {
          bench.picking().pickAll(now.hit.events());
        } else {
          bench.picking().none();
          bench.transport().seek(layout.instantAt(e.getX()));
        }
      }
      case RECTANGLE -> {
        // A click that only just missed a mark does not lose those picked.
        if (now.moved) {
          bench.picking().pickAll(pane.eventsIn(now.x, now.y, e.getX(), e.getY()));
        }
      }
      case LOOP -> {
        pane.hushReadout();
        Range range = looped(layout, now, e.getX());
        if (now.moved && range.millis() >= ReplayCommands.SHORTEST_LOOP) {
          bench.transport().loop(range);
        } else {
          bench.transport().seek(layout.instantAt(e.getX()));
        }
      }
      case SCRUB -> {}
    }
  }

  /** Esc leaves a drag that is under way undone. */
  private void giveUp(KeyEvent key) {
    Drag now = drag;
    if (now == null || !pane.uses(key)) {
      return;
    }
    drag = null;
    pane.noBand();
    pane.hushReadout();
    pane.setCursor(Cursor.DEFAULT);
    if (now.kind == Kind.PAN) {
      host.show(now.shown);
    }
    key.consume();
  }

  private void scroll(ScrollEvent e) {
    TimelineLayout layout = pane.layoutProperty().get();
    if (layout == null || (e.getDeltaX() == 0 && e.getDeltaY() == 0)) {
      return;
    }
    Range shown = host.shown();
    boolean sideways = e.isShiftDown() || Math.abs(e.getDeltaX()) > Math.abs(e.getDeltaY());
    if (sideways) {
      double delta = e.getDeltaX() == 0 ? e.getDeltaY() : e.getDeltaX();
      double perPixel = shown.millis() / layout.plotArea().getWidth();
      host.show(Zoom.pan(shown, host.whole(), Math.round(-delta * perPixel)));
    } else {
      double factor = Math.pow(1.0025, -e.getDeltaY());
      host.show(Zoom.about(shown, host.whole(), layout.instantAt(e.getX()), factor));
    }
    e.consume();
  }
}
