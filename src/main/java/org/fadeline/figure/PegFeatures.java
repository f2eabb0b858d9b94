package org.fadeline.figure;

import java.awt.geom.Ellipse2D;
import java.awt.geom.Point2D;
import java.awt.geom.Rectangle2D;
import java.util.Optional;
import org.fadeline.model.Line;
import org.fadeline.model.Peg;

/** The features of a swim on the peg diagram, each named where there is room. */
final class PegFeatures {
  /** Where the words on the weather end, pixels down and across. */
  private static final double BELOW_WEATHER = 70;

  private static final double WEATHER_WIDTH = 265;

  private final PegLayout layout;

  PegFeatures(PegLayout layout) {
    this.layout = layout;
  }

  void paint(Pen pen) {
    for (Peg.Feature feature : layout.session.occasion().peg().features()) {
      paint(pen, feature);
    }
  }

  private void paint(Pen pen, Peg.Feature feature) {
    Point2D at = layout.pointOf(feature.distanceM(), feature.bearingDegrees());
    double half = halfWidth(feature);
    Ellipse2D shape =
        new Ellipse2D.Double(at.getX() - half, at.getY() - half * 0.45, 2 * half, half * 0.9);
    pen.fill(Theme.mix(pen.theme.bank(), 0.8, pen.theme.water()), shape);
    pen.stroke(pen.theme.secondInk(), 1, new float[] {3, 2}, shape);
    nameOf(feature).ifPresent(box -> paintName(pen, feature, box));
  }

  private void paintName(Pen pen, Peg.Feature feature, Rectangle2D box) {
    if (isOffPage(layout.pointOf(feature.distanceM(), feature.bearingDegrees()))) {
      // What is seen of its edge, and of a working length, does not run through its name.
      pen.fill(pen.theme.water(), box.getX() - 2, box.getY(), box.getWidth() + 4, box.getHeight());
    }
    pen.text(
        featureText(feature),
        box.getX(),
        box.getY() + Type.ascent(pen.small) + 2,
        pen.small,
        pen.theme.ink());
  }

  /** Returns where a feature is named: where neither a line nor the weather stands. */
  Optional<Rectangle2D> nameOf(Peg.Feature feature) {
    Point2D at = layout.pointOf(feature.distanceM(), feature.bearingDegrees());
    double half = halfWidth(feature);
    double size = 11 * layout.style.textScale();
    double w = Type.width(Type.regular(size), featureText(feature));
    double row = Math.ceil(size * 1.35);
    double down = half * 0.45;
    if (isOffPage(at)) {
      double edge = Math.max(4, Math.min(layout.width - 4 - w, at.getX() - w / 2));
      double corner = layout.isWeatherRight() ? 4 : layout.width - 4 - w;
      double below = belowWeather() + 2;
      return firstFree(
          new double[][] {{edge, 3}, {corner, 3}, {edge, below}, {corner, below}}, w, row);
    }
    double[][] corners = {
      {at.getX() - w / 2, at.getY() - row / 2},
      {at.getX() - w / 2, at.getY() + down + 2},
      {at.getX() - w / 2, at.getY() - down - row - 2},
      {at.getX() + half + 3, at.getY() - row},
      {at.getX() - half - 3 - w, at.getY() - row},
    };
    return firstFree(corners, w, row);
  }

  private double belowWeather() {
    return belowWeather(layout);
  }

  /** Returns where the words on the weather end, pixels from the top. */
  static double belowWeather(PegLayout layout) {
    return BELOW_WEATHER * Math.max(1, layout.style.textScale());
  }

  private boolean isBesideWeather(Rectangle2D box) {
    double room =
        layout.isWeatherShort() ? belowWeather() : WEATHER_WIDTH * layout.style.textScale();
    return layout.isWeatherRight() ? box.getMaxX() < layout.width - room : box.getX() > room;
  }

  private boolean isOffPage(Point2D at) {
    return at.getY() < 0 || at.getX() < 0 || at.getX() > layout.width;
  }

  /** Returns a feature's name, with its distance where it lies off the page. */
  private String featureText(Peg.Feature feature) {
    boolean off = isOffPage(layout.pointOf(feature.distanceM(), feature.bearingDegrees()));
    return off
        ? feature.name() + " " + layout.words.units().distance(feature.distanceM()) + " out"
        : feature.name();
  }

  private Optional<Rectangle2D> firstFree(double[][] corners, double w, double row) {
    for (double[] corner : corners) {
      Rectangle2D box = new Rectangle2D.Double(corner[0], corner[1], w, row);
      boolean inside =
          box.getX() >= 3
              && box.getMaxX() <= layout.width - 3
              && box.getY() >= 2
              && box.getMaxY() <= layout.bankTop() - 4
              && (box.getY() > belowWeather() || isBesideWeather(box));
      boolean named = layout.lengthNames().stream().anyMatch(name -> name.intersects(box));
      if (inside && !named && isClearOfLines(box)) {
        return Optional.of(box);
      }
    }
    return Optional.empty();
  }

  private double halfWidth(Peg.Feature feature) {
    Double across = feature.widthM();
    return Math.max(5, (across == null ? 1 : across) * layout.pixelsPerMetre() / 2);
  }

  private boolean isClearOfLines(Rectangle2D box) {
    for (Line line : layout.session.lines()) {
      Point2D at = layout.pointOf(line).orElse(null);
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
}
