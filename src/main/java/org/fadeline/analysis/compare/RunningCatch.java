package org.fadeline.analysis.compare;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.TreeSet;
import java.util.function.LongToDoubleFunction;
import org.fadeline.analysis.Effort;
import org.fadeline.analysis.Effort.FishMark;
import org.fadeline.model.Match;
import org.jspecify.annotations.Nullable;

/**
 * The catch of both sessions as it grew, on the common axis.
 *
 * @param points at each catch of either, at each all in and at each all out, in order
 * @param firstWithoutWeight fish of the first session that have no weight: its weight is at least
 *     what is shown
 * @param secondWithoutWeight the same of the second session
 */
public record RunningCatch(List<Point> points, int firstWithoutWeight, int secondWithoutWeight) {
  /** Copies the list. */
  public RunningCatch {
    points = List.copyOf(points);
  }

  /**
   * Both catches at one place on the axis, fish of that instant included.
   *
   * @param minutes place on the axis
   * @param first the first session so far, or null before its all in
   * @param second the second session so far, or null before its all in
   */
  public record Point(double minutes, @Nullable SoFar first, @Nullable SoFar second) {
    /** Returns first less second in fish; null unless both have begun. */
    public @Nullable Integer fishDifference() {
      return first == null || second == null ? null : (Integer) (first.fish - second.fish);
    }

    /** Returns first less second in grams; null unless both have begun and carry weights. */
    public @Nullable Double gramsDifference() {
      return first == null || second == null || first.grams == null || second.grams == null
          ? null
          : (Double) (first.grams - second.grams);
    }
  }

  /**
   * The catch so far; after all out, the whole catch.
   *
   * @param fish landed that count
   * @param grams their weight, or null where the session gives no weight at all
   */
  public record SoFar(int fish, @Nullable Double grams) {}

  /**
   * Returns both catches at a place on the axis, in minutes; neither has begun before the first.
   */
  public Point at(double minutes) {
    Point last = new Point(minutes, null, null);
    for (Point point : points) {
      if (point.minutes() > minutes) {
        break;
      }
      last = new Point(minutes, point.first(), point.second());
    }
    return last;
  }

  static RunningCatch of(Effort first, Effort second, Alignment alignment) {
    Track one = new Track(first, alignment::firstMinutes);
    Track other = new Track(second, alignment::secondMinutes);
    TreeSet<Double> places = new TreeSet<>(one.places);
    places.addAll(other.places);
    List<Point> points = new ArrayList<>();
    for (double minutes : places) {
      points.add(new Point(minutes, one.at(minutes), other.at(minutes)));
    }
    return new RunningCatch(points, one.withoutWeight, other.withoutWeight);
  }

  /** One session's fish on the axis, walked forward. */
  private static final class Track {
    private final List<FishMark> fish;
    private final LongToDoubleFunction place;
    private final int withoutWeight;
    private final double start;
    private final List<Double> places = new ArrayList<>();
    private int next;
    private double grams;

    Track(Effort effort, LongToDoubleFunction place) {
      this.place = place;
      this.fish =
          effort.lines().stream()
              .flatMap(l -> l.fish().stream())
              .sorted(Comparator.comparingLong(FishMark::at))
              .toList();
      this.withoutWeight = (int) fish.stream().filter(f -> f.grams() == null).count();
      Match match = effort.session().match();
      this.start = place.applyAsDouble(match.allIn());
      places.add(start);
      fish.forEach(f -> places.add(place.applyAsDouble(f.at())));
      places.add(place.applyAsDouble(match.allOut()));
    }

    @Nullable SoFar at(double minutes) {
      if (minutes < start) {
        return null;
      }
      for (; next < fish.size() && place.applyAsDouble(fish.get(next).at()) <= minutes; next++) {
        Double weight = fish.get(next).grams();
        grams += weight == null ? 0 : weight;
      }
      boolean weighed = fish.isEmpty() || withoutWeight < fish.size();
      return new SoFar(next, weighed ? grams : null);
    }
  }
}
