package org.fadeline.figure;

import java.awt.Graphics2D;
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
  /** A feature further out than the farthest line by more than this factor lies off the page. */
  private static final double FARTHEST_FEATURE = 1.25;

  /** A picture lower than this has no room above the lines for words, pixels. */
  private static final double LOW = 330;

  final Session session;
  final FigureStyle style;
  final PegLook look;
  final FigureText words;
  final double width;
  final double height;
  private final Point2D angler;
  private final double pixelsPerMetre;
  private @Nullable PegLengths lengths;
  private final double bankTop;
  private final boolean weatherShort;
  private final boolean weatherRight;

  PegLayout(Session session, FigureStyle style, PegLook look, double width, double height) {
    this.session = session;
    this.style = style;
    this.look = look;
    this.words = new FigureText(session, style.units());
    this.width = width;
    this.height = height;
    double scale = style.textScale();
    double rows = unplaced().isEmpty() ? 1 : 2;
    this.bankTop = height - (rows * 16 * scale + 22);
    this.angler = new Point2D.Double(width / 2, bankTop + 8);
    double fitted = fit(scale, 28 * scale);
    boolean cramped = scale > 1.6 || height < 190 * scale || width < 230 * scale;
    // On a low picture the lines need the room more than the words do.
    this.weatherShort =
        cramped
            || (height < LOW * scale
                && isTaken(false, fitted, false)
                && isTaken(true, fitted, false));
    boolean leftTaken = isTaken(false, fitted, weatherShort);
    boolean bothTaken = leftTaken && isTaken(true, fitted, weatherShort);
    // With a line under either corner, the water starts below the words on the weather.
    double own = bothTaken ? fit(scale, (weatherShort ? 66 : 92) * scale) : fitted;
    this.pixelsPerMetre = Math.min(own, look.mostPixelsPerMetre());
    this.weatherRight = leftTaken && !bothTaken;
  }

  /** Returns whether a line lies in one of the upper corners, where weather could stand. */
  private boolean isTaken(boolean right, double scaleOfWater, boolean withoutWords) {
    double scale = style.textScale();
    for (Line line : session.lines()) {
      Double distance = line.place().distanceM();
      if (distance != null) {
        double angle = Math.toRadians(bearing(line));
        double x = angler.getX() + distance * Math.sin(angle) * scaleOfWater;
        double y = angler.getY() - distance * Math.cos(angle) * scaleOfWater;
        double inside = right ? width - x : x;
        boolean near =
            y < (withoutWords ? 70 : 96) * scale && inside < (withoutWords ? 70 : 225) * scale;
        if (near) {
          return true;
        }
      }
    }
    return false;
  }

  /** Returns whether only the rose is drawn, there being no room for words beside it. */
  boolean isWeatherShort() {
    return weatherShort;
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
    far.add(new double[] {6, 0});
    // The lines are what the diagram is for: a feature far beyond them does not crowd them.
    double most = FARTHEST_FEATURE * far.stream().mapToDouble(place -> place[0]).max().orElse(6);
    for (Peg.Feature feature : session.occasion().peg().features()) {
      Double across = feature.widthM();
      double depth = feature.distanceM() > 3 ? (across == null ? 1 : across) * 0.25 : 0;
      double reach = feature.distanceM() + depth;
      if (reach <= most) {
        far.add(new double[] {reach, feature.bearingDegrees()});
      }
    }
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

  /** Returns the place of a line among the hues. */
  int hue(Line line) {
    return look.hues().getOrDefault(line.id(), session.lines().indexOf(line));
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

  /** Returns the features of the swim as they lie here. */
  PegFeatures features() {
    return new PegFeatures(this);
  }

  /** Returns where working lengths are named on the water. */
  List<Rectangle2D> lengthNames() {
    return lengths().namesOnWater();
  }

  /** Measured once: the names of features ask for them with every moment drawn. */
  private PegLengths lengths() {
    PegLengths known = lengths;
    if (known == null) {
      known = new PegLengths(this);
      lengths = known;
    }
    return known;
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
    lengths().paint(pen);
    paintBank(pen);
    lengths().paintNames(pen);
    features().paint(pen);
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
    pen.stroke(Theme.mix(pen.theme.secondInk(), 0.5, pen.theme.bank()), 1, bank);
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
          FigureText.fish(state.fish())
              + (state.weightG() > 0 ? ", " + words.weight(state.weightG()) : "")
              + " so far");
      rows.add(ago("fed", state.lastFed(), frame.at(), "not fed"));
      rows.add(ago("last bite", state.lastBite(), frame.at(), "no bite yet"));
    }
    return new Hit(
        Hit.Kind.LINE, line.id(), List.of(), line.id(), frame.at(), words.line(line), rows);
  }

  static String ago(String what, @Nullable Long when, long now, String never) {
    if (when == null) {
      return never;
    }
    long minutes = (now - when) / 60_000;
    return minutes < 1 ? what + " just now" : what + " " + minutes + " min ago";
  }
}
