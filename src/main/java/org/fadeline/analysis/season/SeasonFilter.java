package org.fadeline.analysis.season;

import java.util.Locale;
import java.util.Set;
import java.util.stream.Collectors;
import org.fadeline.analysis.season.SessionSummary.About;
import org.fadeline.analysis.season.SessionSummary.Day;
import org.fadeline.analysis.season.SessionSummary.LineSummary;
import org.jspecify.annotations.Nullable;

/**
 * Which sessions, and which of their lines, a season is looked at over. A session whose record does
 * not tell what is asked for is left out.
 *
 * <p>Names are told apart without blanks around them and in lower case, as the record keeps them.
 *
 * @param waters names of waters; empty for all
 * @param months months of the year, 1 to 12; empty for all
 * @param groups kinds of line (names of lines without a kind); empty for all
 * @param temperature water temperature, degrees Celsius, or null for all
 * @param wind the wind, or null for all
 */
public record SeasonFilter(
    Set<String> waters,
    Set<Integer> months,
    Set<String> groups,
    @Nullable Span temperature,
    @Nullable WindWanted wind) {
  /** Everything. */
  public static final SeasonFilter ALL = new SeasonFilter(Set.of(), Set.of(), Set.of(), null, null);

  /** Copies the sets. */
  public SeasonFilter {
    waters = tidied(waters);
    months = Set.copyOf(months);
    groups = tidied(groups);
  }

  private static Set<String> tidied(Set<String> names) {
    return names.stream().map(SeasonFilter::tidied).collect(Collectors.toUnmodifiableSet());
  }

  /** Returns a name as names are told apart. */
  static String tidied(String name) {
    return name.strip().toLowerCase(Locale.ROOT);
  }

  /**
   * A closed range.
   *
   * @param low least, included
   * @param high most, included
   */
  public record Span(double low, double high) {
    /** Checks the order. */
    public Span {
      if (!(low <= high)) {
        throw new IllegalArgumentException("low must be at most high: " + low + ", " + high);
      }
    }

    boolean holds(@Nullable Double value) {
      return value != null && value >= low && value <= high;
    }
  }

  /**
   * A wind.
   *
   * @param force mean Beaufort force, or null for any
   * @param fromDegrees compass direction it blows from, in [0, 360], within 45° of it, or null for
   *     any
   */
  public record WindWanted(@Nullable Span force, @Nullable Double fromDegrees) {
    private static final double WITHIN_DEGREES = 45;

    /** Returns the wind asked for, or null where none is. */
    public static @Nullable WindWanted of(@Nullable Span force, @Nullable Double fromDegrees) {
      return force == null && fromDegrees == null ? null : new WindWanted(force, fromDegrees);
    }

    boolean holds(Day day) {
      if (force != null && !force.holds(day.windForce())) {
        return false;
      }
      if (fromDegrees == null) {
        return true;
      }
      Double from = day.windFromDegrees();
      if (from == null) {
        return false;
      }
      double apart = Math.abs(from - fromDegrees) % 360;
      return Math.min(apart, 360 - apart) <= WITHIN_DEGREES;
    }
  }

  /** Returns whether a session is looked at, whatever its lines. */
  boolean holdsDay(About about) {
    String water = about.water();
    return (waters.isEmpty() || (water != null && waters.contains(tidied(water))))
        && (months.isEmpty() || (about.dated() && months.contains(about.date().getMonthValue())))
        && (temperature == null || temperature.holds(about.day().waterC()))
        && (wind == null || wind.holds(about.day()));
  }

  /** Returns whether a line of a session is looked at. */
  public boolean holds(LineSummary line) {
    return groups.isEmpty() || holdsGroup(line.group());
  }

  /** Returns whether lines of a kind are looked at. */
  boolean holdsGroup(String group) {
    return groups.isEmpty() || groups.contains(group);
  }
}
