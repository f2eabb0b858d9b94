package org.fadeline.figure;

import java.awt.BasicStroke;
import java.awt.Color;
import java.awt.Font;
import java.awt.geom.Ellipse2D;
import java.awt.geom.Line2D;
import java.awt.geom.Point2D;
import java.awt.geom.Rectangle2D;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.function.Predicate;
import org.fadeline.analysis.TimeSpan;
import org.fadeline.model.Line;
import org.fadeline.replay.ReplayFrame;
import org.jspecify.annotations.Nullable;

/** Draws what a moment adds to the peg diagram: pole or rod, feed, catch, names. */
final class PegState {
  /** A line this far out may be fished with a pole: the longest, of 16 m, told to half a metre. */
  private static final double POLE_LINE_WITHIN_M = PegFigure.LONGEST_POLE_M + 0.5;

  private static final Set<String> ROD_KINDS = Set.of("waggler", "feeder", "bomb");

  private final PegLayout layout;
  private final ReplayFrame frame;
  private final Pen pen;
  private final PegWeather weather;
  private final List<Rectangle2D> taken = new ArrayList<>();
  private final List<Line2D> leaders = new ArrayList<>();

  PegState(PegLayout layout, ReplayFrame frame, Pen pen, PegWeather weather) {
    this.layout = layout;
    this.frame = frame;
    this.pen = pen;
    this.weather = weather;
  }

  static boolean isPoleLine(Line line) {
    Double distance = line.place().distanceM();
    String kind = line.kind() == null ? "" : line.kind().toLowerCase(Locale.ROOT);
    return distance != null && distance <= POLE_LINE_WITHIN_M && !ROD_KINDS.contains(kind);
  }

  void paint() {
    List<Line> lines = layout.session.lines();
    Map<String, Point2D> marks = marks();
    for (Line line : lines) {
      mark(marks, line).ifPresent(at -> paintFeed(line, at));
    }
    for (Line line : lines) {
      if (line.id().equals(frame.fishing())) {
        layout.pointOf(line).ifPresent(at -> paintTackle(line, at));
      }
    }
    taken.add(weather.area());
    taken.addAll(layout.lengthNames());
    layout
        .session
        .occasion()
        .peg()
        .features()
        .forEach(feature -> layout.features().nameOf(feature).ifPresent(taken::add));
    for (Line line : lines) {
      mark(marks, line).ifPresent(at -> paintCatch(line, layout.hue(line), at));
    }
    for (Line line : lines) {
      mark(marks, line).ifPresent(at -> paintName(line, layout.hue(line), at));
    }
  }

  /** Returns where each line's mark stands, by id: no catch is hidden by another's. */
  private Map<String, Point2D> marks() {
    List<Line> placed =
        layout.session.lines().stream().filter(l -> layout.pointOf(l).isPresent()).toList();
    List<Point2D> spots = placed.stream().flatMap(l -> layout.pointOf(l).stream()).toList();
    List<Point2D> apart = PegSpots.apart(spots, placed.stream().map(l -> radius(l) + 2).toList());
    Map<String, Point2D> marks = new HashMap<>();
    for (int i = 0; i < placed.size(); i++) {
      marks.put(placed.get(i).id(), apart.get(i));
    }
    return marks;
  }

  private static Optional<Point2D> mark(Map<String, Point2D> marks, Line line) {
    return Optional.ofNullable(marks.get(line.id()));
  }

  private ReplayFrame.@Nullable LineState state(Line line) {
    return frame.line(line.id()).orElse(null);
  }

  private double radius(Line line) {
    ReplayFrame.LineState state = state(line);
    if (state == null || state.fish() == 0) {
      return 6.5;
    }
    double number = Type.width(pen.smallStrong, Integer.toString(state.fish())) / 2 + 5;
    return Math.max(number, Math.min(24, 8 + 2.2 * Math.sqrt(state.weightG() / 1000)));
  }

  /** Rings that fade with the minutes since the feed: half gone in a quarter of an hour. */
  private void paintFeed(Line line, Point2D at) {
    ReplayFrame.LineState state = state(line);
    if (state == null || state.lastFed() == null) {
      return;
    }
    double minutes = (frame.at() - state.lastFed()) / TimeSpan.MILLIS_PER_MINUTE;
    double fresh = Math.pow(0.5, minutes / 15);
    Color hue = pen.theme.line(layout.hue(line));
    double radius = radius(line);
    pen.disc(Pen.alpha(hue, 0.30 * fresh), at.getX(), at.getY(), radius + 13);
    pen.disc(Pen.alpha(hue, 0.35 * fresh), at.getX(), at.getY(), radius + 7);
  }

  private void paintTackle(Line line, Point2D at) {
    Point2D hands = layout.angler();
    Color ink = pen.theme.ink();
    if (isPoleLine(line)) {
      weather
          .shadowOffset()
          .ifPresent(
              offset -> {
                double scale = layout.pixelsPerMetre();
                // The hands' end is about half as high as the tip.
                Line2D shadow =
                    new Line2D.Double(
                        hands.getX() + offset[0] * scale / 2,
                        hands.getY() - offset[1] * scale / 2,
                        at.getX() + offset[0] * scale,
                        at.getY() - offset[1] * scale);
                pen.g.setColor(Pen.alpha(ink, 0.22));
                pen.g.setStroke(new BasicStroke(5, BasicStroke.CAP_ROUND, BasicStroke.JOIN_ROUND));
                pen.g.draw(shadow);
              });
      pen.line(ink, 2.6, hands.getX(), hands.getY(), at.getX(), at.getY());
      return;
    }
    double length = 3.6 * layout.pixelsPerMetre();
    double whole = Math.max(1, hands.distance(at));
    double share = Math.min(0.6, length / whole);
    double tipX = hands.getX() + (at.getX() - hands.getX()) * share;
    double tipY = hands.getY() + (at.getY() - hands.getY()) * share;
    pen.line(ink, 2.6, hands.getX(), hands.getY(), tipX, tipY);
    pen.line(ink, 1, tipX, tipY, at.getX(), at.getY());
  }

  private void paintCatch(Line line, int index, Point2D at) {
    Color hue = pen.theme.line(index);
    double radius = radius(line);
    double x = at.getX();
    double y = at.getY();
    boolean fished = line.id().equals(frame.fishing());
    ReplayFrame.LineState state = state(line);
    pen.disc(pen.theme.water(), x, y, radius + 2);
    if (state == null || state.fish() == 0) {
      pen.disc(pen.theme.panel(), x, y, radius);
      pen.ring(hue, x, y, radius - 1, 2.6);
    } else {
      boolean outlined = layout.look.outlined();
      if (outlined) {
        pen.disc(pen.theme.panel(), x, y, radius);
        Ellipse2D rim =
            new Ellipse2D.Double(x - radius + 1, y - radius + 1, 2 * radius - 2, 2 * radius - 2);
        pen.stroke(hue, 2.6, SessionStroke.SECOND.dash(), rim);
      } else {
        pen.disc(hue, x, y, radius);
      }
      pen.text(
          Integer.toString(state.fish()),
          x,
          y + Type.drop(pen.smallStrong),
          pen.smallStrong,
          outlined ? pen.theme.ink() : pen.theme.on(hue),
          Pen.Align.MIDDLE);
    }
    if (fished) {
      pen.ring(hue, x, y, radius + 4, 2);
    }
    taken.add(
        new Rectangle2D.Double(x - radius - 4, y - radius - 4, 2 * radius + 8, 2 * radius + 8));
  }

  private void paintName(Line line, int index, Point2D at) {
    ReplayFrame.LineState state = state(line);
    String under =
        state == null ? "" : PegLayout.ago("fed", state.lastFed(), frame.at(), "not fed");
    boolean fished = line.id().equals(frame.fishing());
    Font font = fished ? pen.strong : pen.body;
    double badge = pen.smallStrong.getSize2D() * 1.45 + 5;
    double width = badge + Math.max(Type.width(font, line.name()), Type.width(pen.small, under));
    double height = pen.bodyRow() + pen.smallRow();
    double gap = radius(line) + 7;
    String name = line.name();
    Rectangle2D place = place(at, gap, width, height);
    if (place == null) {
      under = "";
      place = place(at, gap, badge + Type.width(font, name), pen.bodyRow());
    }
    if (place == null) {
      // Its letter says which line it is; the lane of the same letter has the name.
      name = "";
      place = place(at, gap - 3, badge - 4, badge - 4);
    }
    if (place == null) {
      // Better a letter tied across something than a line without one.
      place = place(at, gap - 3, badge - 4, badge - 4, this::isFree);
    }
    if (place == null) {
      return;
    }
    taken.add(place);
    paintLeader(at, place, gap);
    double row = place.getY() + pen.bodyRow() / 2;
    pen.fill(
        Pen.alpha(pen.theme.water(), 0.8),
        place.getX() - 2,
        place.getY(),
        place.getWidth() + 4,
        place.getHeight());
    pen.badge(index, place.getX(), name.isEmpty() ? place.getCenterY() : row);
    pen.text(name, place.getX() + badge, row + Type.drop(font), font, pen.theme.ink());
    pen.text(
        under,
        place.getX() + badge,
        place.getY() + pen.bodyRow() + Type.ascent(pen.small),
        pen.small,
        pen.theme.secondInk());
  }

  /** Ties a name that had to stand further off to its spot. */
  private void paintLeader(Point2D at, Rectangle2D place, double gap) {
    Line2D leader = leader(at, place, gap);
    if (leader != null) {
      leaders.add(leader);
      pen.line(
          pen.theme.secondInk(), 1, leader.getX1(), leader.getY1(), leader.getX2(), leader.getY2());
    }
  }

  /** The line from a mark to its name, or null where the name stands beside it. */
  private static @Nullable Line2D leader(Point2D at, Rectangle2D place, double gap) {
    double x = Math.max(place.getMinX(), Math.min(place.getMaxX(), at.getX()));
    double y = Math.max(place.getMinY(), Math.min(place.getMaxY(), at.getY()));
    double whole = at.distance(x, y);
    if (whole <= gap + 4) {
      return null;
    }
    double share = (gap - 3) / whole;
    return new Line2D.Double(
        at.getX() + (x - at.getX()) * share, at.getY() + (y - at.getY()) * share, x, y);
  }

  /** Whether a name lies over nothing in a box. */
  private boolean isFree(Rectangle2D box) {
    return taken.stream().noneMatch(t -> t.intersects(box));
  }

  /** Whether it also is tied to its spot across nothing, and no other's tie crosses it. */
  private boolean isClear(Point2D at, Rectangle2D box, double gap) {
    Line2D leader = leader(at, box, gap);
    return isFree(box)
        && leaders.stream().noneMatch(l -> l.intersects(box))
        && (leader == null
            || taken.stream().noneMatch(t -> !t.contains(at) && leader.intersects(t)));
  }

  /**
   * Returns a clear place beside a spot, else a little further off, or null where there is none.
   */
  private @Nullable Rectangle2D place(Point2D at, double gap, double width, double height) {
    return place(at, gap, width, height, box -> isClear(at, box, gap));
  }

  private @Nullable Rectangle2D place(
      Point2D at, double gap, double width, double height, Predicate<Rectangle2D> allowed) {
    for (double further : new double[] {0, 14, 28, 44}) {
      for (Rectangle2D box : boxes(at, gap + further, width, height)) {
        boolean inside =
            box.getX() >= 4
                && box.getMaxX() <= layout.width - 4
                && box.getY() >= 4
                && box.getMaxY() <= layout.bankTop() + 2;
        if (inside && allowed.test(box)) {
          return box;
        }
      }
    }
    return null;
  }

  private List<Rectangle2D> boxes(Point2D at, double gap, double width, double height) {
    double x = at.getX();
    double y = at.getY();
    boolean rightFirst = x >= layout.width / 2;
    double right = x + gap;
    double left = x - gap - width;
    double[][] corners = {
      {rightFirst ? right : left, y - height / 2},
      {rightFirst ? left : right, y - height / 2},
      {x - width / 2, y - gap - height},
      {x - width / 2, y + gap},
      {right, y - height},
      {left, y - height},
      {right, y},
      {left, y},
      {right, y - gap - height / 2},
      {left, y - gap - height / 2},
      {x, y - gap - height},
      {x - width, y - gap - height},
    };
    List<Rectangle2D> boxes = new ArrayList<>();
    for (double[] corner : corners) {
      boxes.add(new Rectangle2D.Double(corner[0], corner[1], width, height));
    }
    return boxes;
  }
}
