package org.fadeline.stats;

import java.util.List;

/**
 * One exact draw from the posterior of a piecewise constant rate (Fearnhead 2006, Statistics and
 * Computing 16:203–213).
 *
 * @param segments in order, joined end to end, at least one where there are bins
 */
public record ChangePointDraw(List<ChangePointSegment> segments) {
  /** Copies the list. */
  public ChangePointDraw {
    segments = List.copyOf(segments);
  }

  /**
   * Rate in bin {@code bin}, counted from 0.
   *
   * @throws IndexOutOfBoundsException if there is no such bin
   */
  public double rateAt(int bin) {
    for (ChangePointSegment segment : segments) {
      if (bin >= segment.from() && bin < segment.to()) {
        return segment.rate();
      }
    }
    throw new IndexOutOfBoundsException("no bin " + bin);
  }
}
