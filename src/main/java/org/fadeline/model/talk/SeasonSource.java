package org.fadeline.model.talk;

import java.nio.file.Path;
import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * A folder of sessions that a talk shows as one season.
 *
 * @param id short name of it within the talk
 * @param folder the folder
 * @param sift which of its sessions and lines are looked at
 */
public record SeasonSource(String id, Path folder, Sift sift) {
  /**
   * Which sessions and lines of a season are looked at.
   *
   * @param waters names of waters; empty for all
   * @param months months of the year, 1 to 12; empty for all
   * @param lines kinds of line, or names of lines without a kind; empty for all
   * @param weather what the day was like
   */
  public record Sift(
      List<String> waters, List<Integer> months, List<String> lines, Weather weather) {
    /** Everything. */
    public static final Sift ALL =
        new Sift(List.of(), List.of(), List.of(), new Weather(null, null, null));

    /** Copies the lists, in order, so that the same choice is equal. */
    public Sift {
      waters = waters.stream().sorted().toList();
      months = months.stream().sorted().toList();
      lines = lines.stream().sorted().toList();
    }
  }

  /**
   * Weather asked for.
   *
   * @param waterC water temperature, degrees Celsius, or null for any
   * @param windForce mean Beaufort force, or null for any
   * @param windFrom compass degrees it blows from, in [0, 360], or null for any
   */
  public record Weather(
      @Nullable Range waterC, @Nullable Range windForce, @Nullable Double windFrom) {}

  /**
   * A closed range.
   *
   * @param low least, included
   * @param high most, included, at least {@code low}
   */
  public record Range(double low, double high) {
    /** Checks the order. */
    public Range {
      if (!(low <= high)) {
        throw new IllegalArgumentException("low must be at most high: " + low + ", " + high);
      }
    }
  }
}
