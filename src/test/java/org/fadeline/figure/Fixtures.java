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

  /** A cool day in May for a mixed bag. */
  public static Review springMatch() {
    return Reviewer.review(
        DemoMatch.generate(DemoWaters.waterB(), DemoWaters.planB(), 7), ReviewSettings.DEFAULT);
  }

  /** Silvers in December: many small fish. */
  public static Review winterMatch() {
    return Reviewer.review(
        DemoMatch.generate(DemoWaters.waterC(), DemoWaters.planC(), 3), ReviewSettings.DEFAULT);
  }
}
