package org.fadeline.ui.state;

import org.fadeline.analysis.KnownThen;
import org.fadeline.analysis.Review;
import org.jspecify.annotations.Nullable;

/**
 * A review and how far it is. While a new one is worked out the old one stays, so that nothing on
 * screen blinks; {@code pending} says that it is out of date.
 *
 * @param latest the latest review finished, or null
 * @param known what could be told at each moment of the match, or null before it is worked out
 * @param pending whether a newer one is being worked out
 * @param failure what went wrong with the latest request, or null
 */
public record ReviewStatus(
    @Nullable Review latest, @Nullable KnownThen known, boolean pending, @Nullable String failure) {
  /** No review. */
  public static final ReviewStatus NONE = new ReviewStatus(null, null, false, null);

  /** A first review under way. */
  public static final ReviewStatus FIRST_PENDING = new ReviewStatus(null, null, true, null);

  ReviewStatus underWay() {
    return new ReviewStatus(latest, known, true, null);
  }

  ReviewStatus withLatest(Review review) {
    return new ReviewStatus(review, known, false, null);
  }

  ReviewStatus withKnown(KnownThen newKnown) {
    return new ReviewStatus(latest, newKnown, pending, failure);
  }

  ReviewStatus withoutKnown(String why) {
    return new ReviewStatus(latest, null, pending, why);
  }

  static ReviewStatus failed(String failure) {
    return new ReviewStatus(null, null, false, failure);
  }
}
