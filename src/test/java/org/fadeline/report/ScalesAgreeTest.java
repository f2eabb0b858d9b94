package org.fadeline.report;

import static java.util.Objects.requireNonNull;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import org.fadeline.analysis.Review;
import org.fadeline.analysis.ReviewSettings;
import org.fadeline.analysis.Reviewer;
import org.fadeline.analysis.season.SessionSummaries;
import org.fadeline.figure.CatchWeightsFigure;
import org.fadeline.figure.FigureStyle;
import org.fadeline.figure.Theme;
import org.fadeline.model.Fish;
import org.fadeline.model.Outcome;
import org.fadeline.model.Outcome.NetWeight;
import org.fadeline.model.Session;
import org.fadeline.model.SessionEvent;
import org.fadeline.model.Stamp;
import org.fadeline.model.Units;
import org.fadeline.ui.HandMade;
import org.junit.jupiter.api.Test;

/**
 * The scales weigh foul-hooked fish too, counted or not: wherever log and scales are held against
 * each other, they speak of the same fish.
 */
class ScalesAgreeTest {
  private static Stamp stamp(String id, double minute) {
    return new Stamp(id, HandMade.minute(minute), "short", null);
  }

  /** Logged 2000 g and, foul-hooked, 1000 g; 3000 g at the scales. */
  private static Session session() {
    return HandMade.of(
            List.of(
                new SessionEvent.Cast(stamp("a", 1)),
                new SessionEvent.Landed(stamp("b", 5), new Fish(1, "carp", 2000.0, false)),
                new SessionEvent.Cast(stamp("c", 6)),
                new SessionEvent.Foul(stamp("d", 9), new Fish(1, "carp", 1000.0, false))))
        .withOutcome(Outcome.UNKNOWN.withWeighIn(List.of(new NetWeight(1, 3000, "carp"))));
  }

  private static Review review() {
    return Reviewer.review(session(), ReviewSettings.DEFAULT, Units.LB_OZ_AND_METRES);
  }

  @Test
  void theReviewInWords() {
    assertEquals(
        2000, review().summary().caught().weightG(), "the foul-hooked fish is not counted");
    String text = ReviewText.toText(review(), Units.LB_OZ_AND_METRES);
    assertTrue(
        text.contains(
            "At the scales 6 lb 10 oz against 6 lb 10 oz logged, foul-hooked fish included: 1.00 times."),
        text);
  }

  @Test
  void theFigureOfTheFish() {
    String words =
        new CatchWeightsFigure(review(), FigureStyle.of(Theme.LIGHT, Units.LB_OZ_AND_METRES))
            .description();
    assertTrue(words.endsWith("All nets: logged 6 lb 10 oz, scales 6 lb 10 oz: level."), words);
  }

  @Test
  void theSeason() {
    double factor =
        requireNonNull(
            SessionSummaries.quick(session()).result().weights().scalesFactor(), "factor");
    assertEquals(1, factor, 1e-12);
  }
}
