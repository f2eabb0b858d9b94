package org.fadeline.figure;

import java.awt.Color;
import java.awt.Graphics2D;
import java.awt.geom.Ellipse2D;
import java.awt.geom.Path2D;
import java.awt.geom.Point2D;
import java.awt.geom.Rectangle2D;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.fadeline.model.Line;
import org.fadeline.model.Peg;
import org.fadeline.model.Session;
import org.fadeline.replay.ReplayFrame;
import org.jspecify.annotations.Nullable;

/**
 * The peg diagram laid out for one size: the base (bank, working lengths, features) changes only
 * with session and size, the state with every moment.
 */
public final class PegLayout {
  /** Working lengths of a pole, metres (common practice); beyond it, tens of metres. */
  private static final double[] LENGTHS = {
    5, 6.5, 8, 9.5, 11, 11.5, 13, 14.5, 16, 20, 30, 40, 50, 60, 70, 80, 90, 100, 120, 150, 200
  };

  final Session session;
  final FigureStyle style;
  final Words words;
  final double width;
  final double height;
  private final Point2D angler;
  private final double pixelsPerMetre;
  private final double bankTop;
  private final boolean weatherRight;

  PegLayout(Session session, FigureStyle style, double width, double height) {
    this.session = session;
    this.style = style;
    this.words = new Words(session, style.units());
    this.width = width;
    this.height = height;
    double scale = style.textScale();
    double rows = unplaced().isEmpty() ? 1 : 2;
    this.bankTop = height - (rows * 16 * scale + 22);
    this.angler = new Point2D.Double(width / 2, bankTop + 8);
    double fitted = fit(scale, 22 * scale);
    boolean leftTaken = isTaken(false, fitted, scale);
    boolean bothTaken = leftTaken && isTaken(true, fitted, scale);
    // With a line under either corner, the water starts below the words on the weather.
    this.pixelsPerMetre = bothTaken ? fit(scale, (isWeatherShort() ? 66 : 92) * scale) : fitted;
    this.weatherRight = leftTaken && !bothTaken;
  }

  /** Returns whether a line lies in one of the upper corners, where weather could stand. */
  private boolean isTaken(boolean right, double scaleOfWater, double scale) {
    for (Line line : session.lines()) {
      Double distance = line.place().distanceM();
      if (distance != null) {
        double angle = Math.toRadians(bearing(line));
        double x = angler.getX() + distance * Math.sin(angle) * scaleOfWater;
        double y = angler.getY() - distance * Math.cos(angle) * scaleOfWater;
        double inside = right ? width - x : x;
        boolean near =
            y < (isWeatherShort() ? 70 : 96) * scale
                && inside < (isWeatherShort() ? 70 : 225) * scale;
        if (near) {
          return true;
        }
      }
    }
    return false;
  }

  /** Returns whether only the rose is drawn, the text being too large for words beside it. */
  boolean isWeatherShort() {
    return style.textScale() > 1.6;
  }

  /** Returns whether the words on the weather stand in the right upper corner. */
  boolean isWeatherRight() {
    return weatherRight;
  }

  private double fit(double scale, double top) {
    double side = 40 * scale;
    double fit = Double.MAX_VALUE;
    List<double[]> far = new ArrayList<>();
    for (Line line : session.lines()) {
      Double distance = line.place().distanceM();
      if (distance != null) {
        far.add(new double[] {distance, bearing(line)});
      }
    }
    for (Peg.Feature feature : session.occasion().peg().features()) {
      Double across = feature.widthM();
      double depth = feature.distanceM() > 3 ? (across == null ? 1 : across) * 0.25 : 0;
      far.add(new double[] {feature.distanceM() + depth, feature.bearingDegrees()});
    }
    far.add(new double[] {6, 0});
    for (double[] place : far) {
      double out = place[0] * Math.cos(Math.toRadians(place[1]));
      double across = Math.abs(place[0] * Math.sin(Math.toRadians(place[1])));
      fit = Math.min(fit, (angler.getY() - top) / Math.max(1, out));
      fit = Math.min(fit, (width / 2 - side) / Math.max(0.5, across));
    }
    return Math.max(0.5, fit);
  }

  static double bearing(Line line) {
    Double bearing = line.place().bearingDegrees();
    return bearing == null ? 0 : bearing;
  }

  List<Line> unplaced() {
    return session.lines().stream().filter(l -> l.place().distanceM() == null).toList();
  }

  /** Returns where a spot lies, pixels. */
  public Point2D pointOf(double distanceM, double bearingDegrees) {
    double angle = Math.toRadians(bearingDegrees);
    return new Point2D.Double(
        angler.getX() + distanceM * Math.sin(angle) * pixelsPerMetre,
        angler.getY() - distanceM * Math.cos(angle) * pixelsPerMetre);
  }

  /** Returns where a line lies, pixels, or empty where its place was not logged. */
  public Optional<Point2D> pointOf(Line line) {
    Double distance = line.place().distanceM();
    return distance == null ? Optional.empty() : Optional.of(pointOf(distance, bearing(line)));
  }

  /** Returns the distance of a point from the angler, metres. */
  public double distanceAt(double x, double y) {
    return angler.distance(x, y) / pixelsPerMetre;
  }

  /** Returns the bearing of a point from straight out, degrees, left negative. */
  public double bearingAt(double x, double y) {
    return Math.toDegrees(Math.atan2(x - angler.getX(), angler.getY() - y));
  }

  /** Returns the scale of the diagram. */
  public double pixelsPerMetre() {
    return pixelsPerMetre;
  }

  Point2D angler() {
    return angler;
  }

  double bankTop() {
    return bankTop;
  }

  /** Draws what does not change during the match. */
  public void paintBase(Graphics2D g) {
    Pen pen = new Pen(g, style);
    pen.fill(pen.theme.water(), 0, 0, width, height);
    paintLengths(pen);
    paintBank(pen);
    for (Peg.Feature feature : session.occasion().peg().features()) {
      paintFeature(pen, feature);
    }
    paintAngler(pen);
  }

  /** Draws a moment over the base: what was fished, fed and caught by then, wind and sun. */
  public void paintState(Graphics2D g, ReplayFrame frame) {
    Pen pen = new Pen(g, style);
    PegWeather weather = new PegWeather(this, frame);
    weather.paint(pen);
    new PegState(this, frame, pen, weather).paint();
  }

  private void paintBank(Pen pen) {
    Path2D bank = new Path2D.Double();
    bank.moveTo(0, bankTop + 3);
    bank.curveTo(width * 0.3, bankTop - 3, width * 0.7, bankTop - 3, width, bankTop + 3);
    bank.lineTo(width, height);
    bank.lineTo(0, height);
    bank.closePath();
    pen.fill(pen.theme.bank(), bank);
    pen.stroke(Theme.mix(pen.theme.secondInk(), 0.5, pen.theme.bank()), 1, new float[0], bank);
  }

  private void paintAngler(Pen pen) {
    double x = angler.getX();
    double y = angler.getY();
    pen.fill(pen.theme.ink(), new Rectangle2D.Double(x - 10, y - 5, 20, 12));
    String number = session.occasion().peg().number();
    pen.text(
        number == null ? "you" : "peg " + number,
        x,
        y + 10 + pen.smallRow() * 0.8,
        pen.small,
        pen.theme.ink(),
        Pen.Align.MIDDLE);
    List<Line> unplaced = unplaced();
    if (!unplaced.isEmpty()) {
      String names = String.join(", ", unplaced.stream().map(Line::name).toList());
      pen.text(
          Pen.shortened(pen.small, width - 20, "place not logged: " + names),
          10,
          height - 6,
          pen.small,
          pen.theme.ink());
    }
  }

  private void paintLengths(Pen pen) {
    double lastLabel = 0;
    double labelRoom = Type.width(pen.small, words.units().distance(14.5)) + 7;
    double reach = reachM();
    Color rule = Theme.mix(pen.theme.secondInk(), 0.42, pen.theme.water());
    for (double length : LENGTHS) {
      double radius = length * pixelsPerMetre;
      if (length > reach + 0.01 || radius - lastLabel < labelRoom) {
        continue;
      }
      Path2D arc = arc(radius);
      pen.stroke(rule, 1, new float[0], arc);
      paintLength(pen, words.units().distance(length), radius);
      lastLabel = radius;
    }
  }

  /** Returns how far out the page's top lies, metres. */
  private double reachM() {
    return angler.getY() / pixelsPerMetre;
  }

  /** Half a circle round the angler, the parts inside the picture. */
  private Path2D arc(double radius) {
    Path2D path = new Path2D.Double();
    boolean drawing = false;
    for (int degrees = -90; degrees <= 90; degrees++) {
      double angle = Math.toRadians(degrees);
      double x = angler.getX() + radius * Math.sin(angle);
      double y = angler.getY() - radius * Math.cos(angle);
      boolean inside = x >= 0 && x <= width && y >= 0;
      if (inside && drawing) {
        path.lineTo(x, y);
      } else if (inside) {
        path.moveTo(x, y);
      }
      drawing = inside;
    }
    return path;
  }

  /** Names a working length where its arc meets the bank, or where it leaves the picture. */
  private void paintLength(Pen pen, String label, double radius) {
    double labelWidth = Type.width(pen.small, label);
    double x = angler.getX() + radius;
    if (x + labelWidth / 2 < width - 4) {
      pen.text(
          label,
          x,
          bankTop + 5 + pen.smallRow() * 0.8,
          pen.small,
          pen.theme.ink(),
          Pen.Align.MIDDLE);
      return;
    }
    double across = width - 8 - labelWidth / 2 - angler.getX();
    double y = angler.getY() - Math.sqrt(Math.max(0, radius * radius - across * across));
    if (y > 14 && y < bankTop - 14) {
      pen.fill(pen.theme.water(), width - 11 - labelWidth, y - 7, labelWidth + 6, 14);
      pen.text(
          label,
          width - 8,
          y + Type.ascent(pen.small) * 0.46,
          pen.small,
          pen.theme.ink(),
          Pen.Align.RIGHT);
    }
  }

  private void paintFeature(Pen pen, Peg.Feature feature) {
    Point2D at = pointOf(feature.distanceM(), feature.bearingDegrees());
    double half = halfWidth(feature);
    Ellipse2D shape =
        new Ellipse2D.Double(at.getX() - half, at.getY() - half * 0.45, 2 * half, half * 0.9);
    pen.fill(Theme.mix(pen.theme.bank(), 0.8, pen.theme.water()), shape);
    pen.stroke(pen.theme.secondInk(), 1, new float[] {3, 2}, shape);
    featureName(feature)
        .ifPresent(
            box ->
                pen.text(
                    feature.name(),
                    box.getX(),
                    box.getY() + Type.ascent(pen.small) + 2,
                    pen.small,
                    pen.theme.ink()));
  }

  /** Returns where a feature is named: where neither a line nor the weather stands. */
  Optional<Rectangle2D> featureName(Peg.Feature feature) {
    Point2D at = pointOf(feature.distanceM(), feature.bearingDegrees());
    double half = halfWidth(feature);
    double size = 11 * style.textScale();
    double w = Type.width(Type.regular(size), feature.name());
    double row = Math.ceil(size * 1.35);
    double down = half * 0.45;
    double[][] corners = {
      {at.getX() - w / 2, at.getY() - row / 2},
      {at.getX() - w / 2, at.getY() + down + 2},
      {at.getX() - w / 2, at.getY() - down - row - 2},
      {at.getX() + half + 3, at.getY() - row},
      {at.getX() - half - 3 - w, at.getY() - row},
    };
    for (double[] corner : corners) {
      Rectangle2D box = new Rectangle2D.Double(corner[0], corner[1], w, row);
      boolean inside =
          box.getX() >= 3
              && box.getMaxX() <= width - 3
              && box.getY() >= 2
              && box.getMaxY() <= bankTop - 4
              && (box.getY() > 70 * Math.max(1, style.textScale())
                  || (weatherRight ? box.getMaxX() < width * 0.5 : box.getX() > width * 0.5));
      if (inside && isClearOfLines(box)) {
        return Optional.of(box);
      }
    }
    return Optional.empty();
  }

  private double halfWidth(Peg.Feature feature) {
    Double across = feature.widthM();
    return Math.max(5, (across == null ? 1 : across) * pixelsPerMetre / 2);
  }

  private boolean isClearOfLines(Rectangle2D box) {
    for (Line line : session.lines()) {
      Point2D at = pointOf(line).orElse(null);
      if (at != null
          && at.getX() > box.getX() - 22
          && at.getX() < box.getMaxX() + 22
          && at.getY() > box.getY() - 22
          && at.getY() < box.getMaxY() + 22) {
        return false;
      }
    }
    return true;
  }

  /**
   * Returns what lies at a point, with its values at the frame's moment.
   *
   * @param x pixels
   * @param y pixels
   */
  public Optional<Hit> at(double x, double y, ReplayFrame frame) {
    Line nearest = null;
    double least = 22;
    for (Line line : session.lines()) {
      Point2D at = pointOf(line).orElse(null);
      if (at != null && at.distance(x, y) < least) {
        least = at.distance(x, y);
        nearest = line;
      }
    }
    return Optional.ofNullable(nearest).map(line -> hit(line, frame));
  }

  private Hit hit(Line line, ReplayFrame frame) {
    List<String> rows = new ArrayList<>();
    ReplayFrame.LineState state = frame.line(line.id()).orElse(null);
    if (state != null) {
      rows.add(
          Words.fish(state.fish())
              + (state.weightG() > 0 ? ", " + words.weight(state.weightG()) : "")
              + " so far");
      rows.add(ago("fed", state.lastFed(), frame.at(), "not fed"));
      rows.add(ago("last bite", state.lastBite(), frame.at(), "no bite yet"));
    }
    return new Hit(Hit.Kind.LINE, line.id(), line.id(), frame.at(), words.line(line), rows);
  }

  static String ago(String what, @Nullable Long when, long now, String never) {
    if (when == null) {
      return never;
    }
    long minutes = (now - when) / 60_000;
    return minutes < 1 ? what + " just now" : what + " " + minutes + " min ago";
  }
}
