package org.fadeline.model;

import org.jspecify.annotations.Nullable;

/**
 * The water.
 *
 * @param name its name, or null
 * @param latitude degrees north, in [-90, 90], or null
 * @param longitude degrees east, in [-180, 180], or null; given exactly when latitude is
 */
public record Venue(@Nullable String name, @Nullable Double latitude, @Nullable Double longitude) {
  /** A venue of which nothing is known. */
  public static final Venue UNKNOWN = new Venue(null, null, null);

  /** Checks the ranges, and that no half of a place is given. */
  public Venue {
    Checks.optionalBetween("latitude", latitude, -90, 90);
    Checks.optionalBetween("longitude", longitude, -180, 180);
    if ((latitude == null) != (longitude == null)) {
      throw new IllegalArgumentException("latitude and longitude belong together");
    }
  }
}
