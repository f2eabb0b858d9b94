package org.fadeline.figure;

import java.awt.geom.Path2D;
import java.awt.geom.Rectangle2D;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import org.fadeline.model.CompassText;
import org.fadeline.model.Line;
import org.fadeline.model.Venue;
import org.fadeline.model.WeatherNote;
import org.fadeline.replay.ReplayFrame;
import org.jspecify.annotations.Nullable;

/** North, wind and sun of a moment, as far as the record says where the peg faces and lies. */
final class PegWeather {
  /** Height of a pole's tip above the water while fishing, metres (common practice). */
  static final double TIP_HEIGHT_M = 2;

  /** The Beaufort scale in words, from force 0 to 12 (World Meteorological Organization). */
  private static final String[] FORCES = {
    "calm",
    "light air",
    "light breeze",
    "gentle breeze",
    "moderate breeze",
    "fresh breeze",
    "strong breeze",
    "near gale",
    "gale",
    "strong gale",
    "storm",
    "violent storm",
    "hurricane"
  };

  private final PegLayout layout;
  private final ReplayFrame frame;

  PegWeather(PegLayout layout, ReplayFrame frame) {
    this.layout = layout;
    this.frame = frame;
  }

  /** Returns the space that rose and words take. */
  Rectangle2D area() {
    double rows = rows().size() * 15 * layout.style.textScale();
    return new Rectangle2D.Double(
        left(), 0, blockWidth(), Math.max(facing() == null ? 0 : 64 * roseScale(), rows + 16));
  }

  private double blockWidth() {
    double width = facing() == null ? 10 : 66 * roseScale();
    for (String row : rows()) {
      width =
          Math.max(
              width, textLeft() + Type.width(Type.regular(11 * layout.style.textScale()), row) + 8);
    }
    return width;
  }

  private double textLeft() {
    return facing() == null ? 12 : 66 * roseScale();
  }

  /** The rose grows with the words beside it, so that its letter can be read as they can. */
  private double roseScale() {
    return Math.max(1, layout.style.textScale());
  }

  private double left() {
    return layout.isWeatherRight() ? Math.max(0, layout.width - blockWidth() - 6) : 0;
  }

  private @Nullable Double facing() {
    return layout.session.occasion().peg().facingDegrees();
  }

  /** Returns the last weather note by the moment, part by part. */
  private Optional<WeatherNote.Wind> wind() {
    WeatherNote.Wind wind = null;
    for (WeatherNote note : layout.session.occasion().weather()) {
      if (note.at() <= frame.at() && note.wind() != null) {
        wind = note.wind();
      }
    }
    return Optional.ofNullable(wind);
  }

  private @Nullable Double temperature(boolean water) {
    Double found = null;
    for (WeatherNote note : layout.session.occasion().weather()) {
      Double value = water ? note.waterC() : note.airC();
      if (note.at() <= frame.at() && value != null) {
        found = value;
      }
    }
    return found;
  }

  Optional<SunPosition> sun() {
    Venue venue = layout.session.occasion().venue();
    Double latitude = venue.latitude();
    Double longitude = venue.longitude();
    if (latitude == null || longitude == null) {
      return Optional.empty();
    }
    SunPosition sun = SunPosition.at(layout.session.clock(frame.at()), latitude, longitude);
    return sun.elevationDegrees() > 0 ? Optional.of(sun) : Optional.empty();
  }

  /**
   * Returns where the shadow of the pole's tip falls, seen from below the tip: metres right and
   * metres out; empty where sun or facing is not known or the sun is low.
   */
  Optional<double[]> shadowOffset() {
    Double facing = facing();
    SunPosition sun = sun().orElse(null);
    if (facing == null || sun == null || sun.elevationDegrees() < 5) {
      return Optional.empty();
    }
    double length = sun.shadowM(TIP_HEIGHT_M);
    double direction = Math.toRadians(sun.azimuthDegrees() + 180 - facing);
    return Optional.of(new double[] {length * Math.sin(direction), length * Math.cos(direction)});
  }

  private List<String> rows() {
    List<String> rows = new ArrayList<>();
    if (layout.isWeatherShort() && facing() != null) {
      return rows;
    }
    wind()
        .ifPresent(
            wind -> {
              Integer force = wind.force();
              rows.add(
                  (force == null ? "wind" : FORCES[force])
                      + " from "
                      + CompassText.nearestPoint(wind.fromDegrees()));
            });
    Double air = temperature(false);
    Double water = temperature(true);
    if (air != null || water != null) {
      rows.add(
          (air == null ? "" : FigureText.number(air) + " °C")
              + (air != null && water != null ? ", " : "")
              + (water == null ? "" : "water " + FigureText.number(water) + " °C"));
    }
    sun().ifPresent(sun -> rows.add(sunRow(sun)));
    return rows;
  }

  private String sunRow(SunPosition sun) {
    String row = String.format(Locale.ROOT, "sun %.0f° up", sun.elevationDegrees());
    return layout
        .session
        .line(frame.fishing() == null ? "" : frame.fishing())
        .filter(PegState::isPoleLine)
        .flatMap(line -> shadowOffset().map(offset -> row + ", " + shadowWords(offset, line)))
        .orElse(row);
  }

  private String shadowWords(double[] offset, Line line) {
    double bearing = Math.toRadians(PegLayout.bearing(line));
    double across = offset[0] * Math.cos(bearing) - offset[1] * Math.sin(bearing);
    if (Math.abs(across) < 0.15) {
      return "pole's shadow along the pole";
    }
    return "pole's shadow "
        + layout.words.units().distance(Math.abs(across))
        + (across < 0 ? " left" : " right");
  }

  void paint(Pen pen) {
    Double facing = facing();
    double x = left() + textLeft();
    double rows = rows().size() * 15 * layout.style.textScale();
    pen.fill(
        Pen.alpha(pen.theme.water(), 0.82),
        x - 3,
        8,
        rows > 0 ? blockWidth() - textLeft() : 0,
        rows + 8);
    if (facing != null) {
      paintRose(pen, left() + 36 * roseScale(), 36 * roseScale(), facing);
    }
    double y = 12 + Type.ascent(pen.small);
    for (String row : rows()) {
      pen.text(row, x, y, pen.small, pen.theme.ink());
      y += 15 * layout.style.textScale();
    }
  }

  private void paintRose(Pen pen, double x, double y, double facing) {
    double k = roseScale();
    double radius = 22 * k;
    pen.disc(pen.theme.panel(), x, y, radius);
    pen.ring(Theme.mix(pen.theme.secondInk(), 0.6, pen.theme.water()), x, y, radius, k);
    double north = Math.toRadians(-facing);
    double nx = x + Math.sin(north) * (radius - 9 * k);
    double ny = y - Math.cos(north) * (radius - 9 * k);
    pen.line(
        pen.theme.ink(),
        1.6 * k,
        x + Math.sin(north) * radius,
        y - Math.cos(north) * radius,
        x + Math.sin(north) * (radius + 6 * k),
        y - Math.cos(north) * (radius + 6 * k));
    pen.text(
        "N",
        nx,
        ny + Type.ascent(pen.smallStrong) / 2,
        pen.smallStrong,
        pen.theme.ink(),
        Pen.Align.MIDDLE);
    wind()
        .ifPresent(
            wind -> {
              double to = Math.toRadians(wind.fromDegrees() + 180 - facing);
              arrow(pen, x, y, to, radius - 7 * k);
            });
    sun()
        .ifPresent(
            sun -> {
              double at = Math.toRadians(sun.azimuthDegrees() - facing);
              double sx = x + Math.sin(at) * radius;
              double sy = y - Math.cos(at) * radius;
              pen.disc(pen.theme.line(1), sx, sy, 4.5 * k);
              pen.ring(pen.theme.panel(), sx, sy, 5 * k, 1.2 * k);
            });
  }

  private void arrow(Pen pen, double x, double y, double to, double length) {
    double head = 6 * roseScale();
    double half = 4 * roseScale();
    double dx = Math.sin(to);
    double dy = -Math.cos(to);
    Path2D path = new Path2D.Double();
    path.moveTo(x - dx * length, y - dy * length);
    path.lineTo(x + dx * length, y + dy * length);
    path.moveTo(x + dx * length - dx * head - dy * half, y + dy * length - dy * head + dx * half);
    path.lineTo(x + dx * length, y + dy * length);
    path.lineTo(x + dx * length - dx * head + dy * half, y + dy * length - dy * head - dx * half);
    pen.stroke(pen.theme.accent(), 1.8 * roseScale(), path);
  }
}
