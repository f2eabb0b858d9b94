package org.fadeline.model;

import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * The drawn peg.
 *
 * @param number as painted on it, or null
 * @param facingDegrees compass direction straight out from the bank, in [0, 360], or null
 * @param bankHeightM height of the bank above the water in metres, in [0, 20], or null
 * @param features what stands in or beside the swim
 */
public record Peg(
    @Nullable String number,
    @Nullable Double facingDegrees,
    @Nullable Double bankHeightM,
    List<Feature> features) {
  /** A peg of which nothing is known. */
  public static final Peg UNKNOWN = new Peg(null, null, null, List.of());

  /** Checks the ranges. */
  public Peg {
    Checks.optionalBetween("facing", facingDegrees, 0, 360);
    Checks.optionalBetween("bank height", bankHeightM, 0, 20);
    features = List.copyOf(features);
  }

  /**
   * An island, reed bed or other mark seen from the peg.
   *
   * @param name plain words, such as "reeds"
   * @param distanceM metres from the angler, in [0, 500]
   * @param bearingDegrees from straight out, left negative, in [-180, 180]
   * @param widthM metres across, in [0, 500], or null
   */
  public record Feature(
      String name, double distanceM, double bearingDegrees, @Nullable Double widthM) {
    /** Checks the ranges. */
    public Feature {
      Checks.between("distance", distanceM, 0, 500);
      Checks.between("bearing", bearingDegrees, -180, 180);
      Checks.optionalBetween("width", widthM, 0, 500);
    }
  }

  /** Returns this peg with another number. */
  public Peg withNumber(@Nullable String newNumber) {
    return new Peg(newNumber, facingDegrees, bankHeightM, features);
  }

  /** Returns this peg with another direction. */
  public Peg withFacingDegrees(@Nullable Double newFacingDegrees) {
    return new Peg(number, newFacingDegrees, bankHeightM, features);
  }

  /** Returns this peg with another bank height. */
  public Peg withBankHeightM(@Nullable Double newBankHeightM) {
    return new Peg(number, facingDegrees, newBankHeightM, features);
  }

  /** Returns this peg with another list of features. */
  public Peg withFeatures(List<Feature> newFeatures) {
    return new Peg(number, facingDegrees, bankHeightM, newFeatures);
  }
}
