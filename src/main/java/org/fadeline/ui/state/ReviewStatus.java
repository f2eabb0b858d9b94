package org.fadeline.ui.state;

import org.fadeline.analysis.Review;
import org.jspecify.annotations.Nullable;

/**
 * A review and how far it is. While a new one is worked out the old one stays, so that nothing on
 * screen blinks; {@code pending} says that it is out of date.
 *
 * @param latest the latest review finished, or null
 * @param pending whether a newer one is being worked out
 * @param failure what went wrong with the latest request, or null
 */
public record ReviewStatus(@Nullable Review latest, boolean pending, @Nullable String failure) {
  /** No review. */
  public static final ReviewStatus NONE = new ReviewStatus(null, false, null);

  /** A first review under way. */
  public static final ReviewStatus FIRST_PENDING = new ReviewStatus(null, true, null);
}
