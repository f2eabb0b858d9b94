package org.fadeline.model;

import java.util.Locale;
import java.util.Optional;

/**
 * The units an angler reads and types; the record itself is always grams and metres.
 *
 * @param weight for fish and nets
 * @param length for distances and depths
 */
public record Units(Weight weight, Length length) {
  /** Pounds and ounces, metres: what is used on British matches. */
  public static final Units LB_OZ_AND_METRES = new Units(Weight.LB_OZ, Length.M);

  /** Kilograms and metres. */
  public static final Units KG_AND_METRES = new Units(Weight.KG, Length.M);

  /** One international foot in metres, exactly. */
  public static final double METRES_PER_FOOT = 0.3048;

  /** Returns these units with another unit of weight. */
  public Units withWeight(Weight newWeight) {
    return new Units(newWeight, length);
  }

  /** Returns these units with another unit of length. */
  public Units withLength(Length newLength) {
    return new Units(weight, newLength);
  }

  /** Returns a distance given in metres as text: whole feet, or metres to a tenth at most. */
  public String distance(double metres) {
    if (length == Length.FT) {
      return String.format(Locale.ROOT, "%d ft", Math.round(metres / METRES_PER_FOOT));
    }
    double rounded = Math.rint(metres * 10) / 10;
    return rounded == Math.rint(rounded)
        ? String.format(Locale.ROOT, "%.0f m", rounded)
        : String.format(Locale.ROOT, "%.1f m", rounded);
  }

  /** Units of weight. */
  public enum Weight {
    /** Pounds and ounces, with drams for the very small. */
    LB_OZ("lb-oz"),
    /** Kilograms to ten grams. */
    KG("kg");

    private final String word;

    Weight(String word) {
      this.word = word;
    }

    /** Returns the word used on the command line and in settings. */
    public String word() {
      return word;
    }

    /** Returns the unit with the given word, or empty. */
    public static Optional<Weight> ofWord(String word) {
      for (Weight unit : values()) {
        if (unit.word.equals(word)) {
          return Optional.of(unit);
        }
      }
      return Optional.empty();
    }
  }

  /** Units of length. */
  public enum Length {
    /** Metres. */
    M("m"),
    /** International feet. */
    FT("ft");

    private final String word;

    Length(String word) {
      this.word = word;
    }

    /** Returns the word used on the command line and in settings. */
    public String word() {
      return word;
    }

    /** Returns the unit with the given word, or empty. */
    public static Optional<Length> ofWord(String word) {
      for (Length unit : values()) {
        if (unit.word.equals(word)) {
          return Optional.of(unit);
        }
      }
      return Optional.empty();
    }
  }
}
