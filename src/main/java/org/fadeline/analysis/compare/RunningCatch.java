package org.fadeline.analysis.compare;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.TreeSet;
import java.util.function.LongToDoubleFunction;
import org.fadeline.analysis.Effort;
import org.fadeline.analysis.Effort.FishMark;
import org.fadeline.model.Fish;
import org.fadeline.model.Match;
import org.fadeline.model.Session;
import org.fadeline.model.SessionEvent;
import org.fadeline.model.UnloggedFish;
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
    List<Point> before = upTo(minutes);
    Point last = before.isEmpty() ? new Point(minutes, null, null) : before.get(before.size() - 1);
    return new Point(minutes, last.first(), last.second());
  }

  static RunningCatch of(Effort first, Effort second, Alignment alignment) {
    return of(
        new Track(
            first.session().match(), alignment::firstMinutes, landed(first), Weights.AFTERWARDS),
        new Track(
            second.session().match(),
            alignment::secondMinutes,
            landed(second),
            Weights.AFTERWARDS));
  }

  /**
   * Returns both catches as they were told while they grew: no point rests on a later event. The
   * weight is told up to the first fish that has none.
   */
  public static RunningCatch asKnownThen(Session first, Session second, Alignment alignment) {
    return of(
        new Track(first.match(), alignment::firstMinutes, logged(first), Weights.SO_FAR),
        new Track(second.match(), alignment::secondMinutes, logged(second), Weights.SO_FAR));
  }

  private static RunningCatch of(Track one, Track other) {
    TreeSet<Double> places = new TreeSet<>(one.places);
    places.addAll(other.places);
    List<Point> points = new ArrayList<>();
    for (double minutes : places) {
      points.add(new Point(minutes, one.at(minutes), other.at(minutes)));
    }
    return new RunningCatch(points, one.withoutWeight, other.withoutWeight);
  }

  /** Returns the points at or before a place of the axis, minutes. */
  public List<Point> upTo(double minutes) {
    int low = 0;
    int high = points.size();
    while (low < high) {
      int middle = (low + high) >>> 1;
      if (points.get(middle).minutes() <= minutes) {
        low = middle + 1;
      } else {
        high = middle;
      }
    }
    return points.subList(0, low);
  }

  private static List<Landing> landed(Effort effort) {
    return effort.lines().stream()
        .flatMap(l -> l.fish().stream())
        .sorted(Comparator.comparingLong(FishMark::at))
        .map(f -> new Landing(f.at(), 1, f.grams()))
        .toList();
  }

  private static List<Landing> logged(Session session) {
    boolean foulCounts = session.match().rules().foulHookedCounts();
    UnloggedFish unlogged = new UnloggedFish(session.match().rules());
    List<Landing> landings = new ArrayList<>();
    for (SessionEvent event : session.events()) {
      unlogged.see(event);
      Fish fish =
          switch (event.kind()) {
            case LANDED -> event.fishOrNull();
            case FOUL -> foulCounts ? event.fishOrNull() : null;
            case COUNT -> unlogged.of((SessionEvent.Count) event);
            default -> null;
          };
      if (fish != null) {
        landings.add(new Landing(event.at(), fish.count(), fish.grams()));
      }
    }
    return landings;
  }

  /** Fish of one instant, and their weight in grams where it is known. */
  private record Landing(long at, int fish, @Nullable Double grams) {}

  /** How far a catch tells a weight. */
  private enum Weights {
    /** Where any fish of the whole match has one. */
    AFTERWARDS,
    /** As long as every fish so far has one. */
    SO_FAR
  }

  /** One session's fish on the axis, walked forward. */
  private static final class Track {
    private final List<Landing> landings;
    private final LongToDoubleFunction place;
    private final Weights weights;
    private final int withoutWeight;
    private final int all;
    private final double start;
    private final List<Double> places = new ArrayList<>();
    private int next;
    private int fish;
    private double grams;
    private boolean missing;

    Track(Match match, LongToDoubleFunction place, List<Landing> landings, Weights weights) {
      this.place = place;
      this.landings = landings;
      this.weights = weights;
      this.withoutWeight =
          landings.stream().filter(f -> f.grams() == null).mapToInt(Landing::fish).sum();
      this.all = landings.stream().mapToInt(Landing::fish).sum();
      this.start = place.applyAsDouble(match.allIn());
      places.add(start);
      landings.forEach(f -> places.add(place.applyAsDouble(f.at())));
      places.add(place.applyAsDouble(match.allOut()));
    }

    @Nullable SoFar at(double minutes) {
      if (minutes < start) {
        return null;
      }
      for (;
          next < landings.size() && place.applyAsDouble(landings.get(next).at()) <= minutes;
          next++) {
        Landing landing = landings.get(next);
        fish += landing.fish();
        missing |= landing.grams() == null;
        grams += landing.grams() == null ? 0 : landing.grams();
      }
      boolean told = weights == Weights.SO_FAR ? !missing : all == 0 || withoutWeight < all;
      return new SoFar(fish, told ? grams : null);
    }
  }
}
