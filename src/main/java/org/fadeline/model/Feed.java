package org.fadeline.model;

import java.util.Map;
import java.util.Optional;
import java.util.function.Function;
import java.util.function.LongUnaryOperator;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;

/**
 * Bait introduced on a line.
 *
 * @param bait what, or null
 * @param amount how much, or null
 * @param method how: "hand", "catapult", "pot", "feeder", "ball" or the angler's own word, or null
 * @param pattern repetition, or null for a single feed
 */
public record Feed(
    @Nullable String bait,
    @Nullable Amount amount,
    @Nullable String method,
    @Nullable Pattern pattern) {
  /** A feed of which nothing is known. */
  public static final Feed UNKNOWN = new Feed(null, null, null, null);

  /** What an amount counts. */
  public enum Unit {
    /** Single baits, such as pellets. */
    PIECES("pieces"),
    /** Millilitres. */
    ML("ml"),
    /** Grams. */
    G("g"),
    /** Balls. */
    BALLS("balls"),
    /** Catapult pouchfuls. */
    POUCHFULS("pouchfuls");

    private static final Map<String, Unit> BY_WORD =
        Stream.of(values()).collect(Collectors.toMap(Unit::word, Function.identity()));

    private final String word;

    Unit(String word) {
      this.word = word;
    }

    /** Returns the word used in files. */
    public String word() {
      return word;
    }

    /** Returns the unit with the given word, or empty. */
    public static Optional<Unit> ofWord(String word) {
      return Optional.ofNullable(BY_WORD.get(word));
    }
  }

  /** Returns this feed with the end of its pattern, where it has one, put at another instant. */
  Feed retimed(LongUnaryOperator time) {
    if (pattern == null || pattern.until() == null) {
      return this;
    }
    Pattern moved = new Pattern(pattern.everySeconds(), time.applyAsLong(pattern.until()));
    return new Feed(bait, amount, method, moved);
  }

  /**
   * An amount of bait.
   *
   * @param value in (0, 1e6]
   * @param unit what is counted
   */
  public record Amount(double value, Unit unit) {
    /** Checks the range. */
    public Amount {
      Checks.between("amount", value, Double.MIN_VALUE, 1e6);
    }
  }

  /**
   * A repeated feed, such as six pellets every 40 s.
   *
   * @param everySeconds time between feeds, seconds, in (0, 86400]
   * @param until last instant of the pattern, epoch milliseconds, or null where not said
   */
  public record Pattern(double everySeconds, @Nullable Long until) {
    /** Checks the range. */
    public Pattern {
      Checks.between("every", everySeconds, Double.MIN_VALUE, 86_400);
      if (until != null) {
        Checks.instant(until);
      }
    }
  }
}
