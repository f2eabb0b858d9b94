package org.fadeline.figure;

import org.fadeline.analysis.Review;
import org.fadeline.analysis.ReviewSettings;
import org.fadeline.analysis.Reviewer;
import org.fadeline.demo.DemoMatch;
import org.fadeline.demo.DemoWaters;

/** Matches to draw. */
public final class Fixtures {
  private Fixtures() {}

  /** A hot August day on carp: five lines, six spells and more. */
  public static Review carpMatch() {
    return Reviewer.review(
        DemoMatch.generate(DemoWaters.waterA(), DemoWaters.planA(), 106), ReviewSettings.DEFAULT);
  }
}
