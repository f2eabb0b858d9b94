package org.fadeline.analysis;

import java.util.Collections;
import java.util.Locale;
import java.util.Map;
import java.util.TreeMap;
import org.jspecify.annotations.Nullable;

/**
 * Time a fish takes from the hook to the bait back in the water, by kind of line, for lines whose
 * casts are not logged: without it that time passes for fishing, which flattens a fade.
 *
 * @param secondsByKind seconds a fish, each in (0, 900], by kind of line; kinds go by their letters
 *     in lower case. A kind that is not named has none
 */
public record HandlingTimes(Map<String, Double> secondsByKind) {
  /** Nothing is taken off where casts are not logged. */
  public static final HandlingTimes NONE = new HandlingTimes(Map.of());

  private static final double MOST_SECONDS = 900;

  /**
   * Checks the range and copies the map.
   *
   * @throws IllegalArgumentException if a kind is blank or its seconds are out of range
   */
  public HandlingTimes {
    Map<String, Double> kinds = new TreeMap<>();
    secondsByKind.forEach(
        (kind, seconds) -> {
          if (kind.isBlank() || !(seconds > 0 && seconds <= MOST_SECONDS)) {
            throw new IllegalArgumentException(
                "handling of a fish on a kind of line must be above 0 and at most 900 s: "
                    + kind
                    + " "
                    + seconds);
          }
          kinds.put(key(kind), seconds);
        });
    secondsByKind = Collections.unmodifiableMap(kinds);
  }

  private static String key(String kind) {
    return kind.strip().toLowerCase(Locale.ROOT);
  }

  /** Returns the milliseconds a fish takes on a kind of line; 0 for an unknown kind. */
  public double millis(@Nullable String kind) {
    return kind == null ? 0 : 1000 * secondsByKind.getOrDefault(key(kind), 0.0);
  }
}
