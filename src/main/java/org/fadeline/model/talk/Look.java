package org.fadeline.model.talk;

import java.util.Locale;
import org.fadeline.model.Units;

/**
 * How a talk looks.
 *
 * @param ground what its slides stand on
 * @param units of weights and distances
 * @param shape of the slides
 */
public record Look(Ground ground, Units units, Shape shape) {
  /** Light, in the units of British matches, 16:9. */
  public static final Look USUAL = new Look(Ground.LIGHT, Units.LB_OZ_AND_METRES, Shape.WIDE);

  /** What slides stand on. */
  public enum Ground {
    /** White with heavy ink, for a projector. */
    LIGHT,
    /** Deep green-grey, for a dark room. */
    DARK,
    /** White paper, hardly any tint. */
    PRINT;

    /** Returns the word used in files. */
    public String word() {
      return name().toLowerCase(Locale.ROOT);
    }
  }

  /** Shape of the slides; every slide is 540 points high. */
  public enum Shape {
    /** 16:9. */
    WIDE("16:9", 960),
    /** 4:3. */
    STANDARD("4:3", 720);

    private final String word;
    private final int width;

    Shape(String word, int width) {
      this.word = word;
      this.width = width;
    }

    /** Returns the word used in files. */
    public String word() {
      return word;
    }

    /** Returns the width, points. */
    public int width() {
      return width;
    }
  }

  /** Returns this look on another ground. */
  public Look withGround(Ground newGround) {
    return new Look(newGround, units, shape);
  }

  /** Returns this look in other units. */
  public Look withUnits(Units newUnits) {
    return new Look(ground, newUnits, shape);
  }

  /** Returns this look in another shape. */
  public Look withShape(Shape newShape) {
    return new Look(ground, units, newShape);
  }
}
