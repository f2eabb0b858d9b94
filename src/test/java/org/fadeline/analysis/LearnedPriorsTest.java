package org.fadeline.analysis;

import static java.util.Objects.requireNonNull;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertNotEquals;
import static org.junit.jupiter.api.Assertions.assertNull;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import org.fadeline.analysis.StayOrGo.OtherLine;
import org.fadeline.analysis.StayOrGo.Source;
import org.fadeline.analysis.season.Learned;
import org.fadeline.analysis.season.SessionSummaries;
import org.fadeline.analysis.season.SessionSummary;
import org.fadeline.demo.DemoMatch;
import org.fadeline.demo.DemoWaters;
import org.fadeline.model.EventKind;
import org.fadeline.model.Line;
import org.fadeline.model.Session;
import org.fadeline.stats.GammaPosterior;
import org.junit.jupiter.api.Test;

/** What other sessions taught is used where chosen, and only there. */
class LearnedPriorsTest {
  private static final Session MATCH =
      DemoMatch.generate(DemoWaters.waterA(), DemoWaters.planA(), 122);
  private static final GammaPosterior POOL = new GammaPosterior(3, 0.5);

  /** The match with a line that was set up and never fished. */
  private static Session withSpareLine() {
    List<Line> lines = new ArrayList<>(MATCH.lines());
    lines.add(new Line("spare", "spare", "margin", "spare", Line.Place.UNKNOWN, Line.Rig.UNKNOWN));
    return MATCH.withLines(lines);
  }

  private static LearnedPriors learned(double hazard, String kind, double bunching) {
    return new LearnedPriors(
        7,
        hazard,
        Map.of(kind, new LearnedPriors.Kind(6, bunching, new LearnedPriors.Given(42, 7.5), POOL)),
        0.4,
        null);
  }

  @Test
  void aLineThatWasNotFishedHasTheEvidenceOfOtherSessions() {
    Session match = withSpareLine();
    Review plain = Reviewer.review(match, ReviewSettings.DEFAULT);
    assertTrue(
        plain.stays().stream()
            .flatMap(s -> s.others().stream())
            .noneMatch(o -> o.lineId().equals("spare")));
    Review review =
        Reviewer.review(match, ReviewSettings.DEFAULT.withLearned(learned(0.25, "margin", 1)));
    for (StayOrGo stay : review.stays()) {
      List<OtherLine> spare =
          stay.others().stream().filter(o -> o.lineId().equals("spare")).toList();
      assertEquals(1, spare.size());
      assertEquals(Source.SEASON, spare.get(0).source());
      assertEquals(42, spare.get(0).evidence().fish());
      assertEquals(450, spare.get(0).evidence().fishedMinutes(), 1e-9);
      Rate rate = spare.get(0).evidence().rate();
      assertEquals(6, rate.perHour(), 1e-12);
      // R: qgamma(c(0.025, 0.975), 3, 0.5)
      assertEquals(1.237344, rate.low(), 1e-6);
      assertEquals(14.449375, rate.high(), 1e-6);
      assertNull(spare.get(0).gain(), "the season alone is no ground for a gain");
    }
    long fromSeason =
        review.stays().stream()
            .flatMap(s -> s.others().stream())
            .filter(o -> o.source() == Source.SEASON && !o.lineId().equals("spare"))
            .count();
    assertEquals(0, fromSeason, "where this match tells of a line, it alone does");
  }

  @Test
  void theRateOfChangeAndTheBunchingReachTheFades() {
    String kind = LearnedPriors.kindOf(MATCH.lines().get(0).kind(), MATCH.lines().get(0).name());
    Review plain = Reviewer.review(MATCH, ReviewSettings.DEFAULT);
    Review hazard = Reviewer.review(MATCH, ReviewSettings.DEFAULT.withLearned(learned(1, kind, 1)));
    Review bunched =
        Reviewer.review(MATCH, ReviewSettings.DEFAULT.withLearned(learned(0.25, kind, 3)));
    assertEquals(1, hazard.settings().changeHazard());
    assertNotEquals(probabilities(plain), probabilities(hazard));
    LineReview before = plain.lines().get(0);
    LineReview after = bunched.lines().get(0);
    for (int i = 0; i < before.fades().size(); i++) {
      assertTrue(
          after.fades().get(i).strength().bunching() > before.fades().get(i).strength().bunching());
    }
    assertEquals(
        plain.lines().get(1).fades(), bunched.lines().get(1).fades(), "another kind of line");
  }

  private static List<Double> probabilities(Review review) {
    return review.lines().stream().flatMap(l -> l.fades().stream()).map(Fade::probability).toList();
  }

  @Test
  void theReviewSaysWhatItRestsOn() {
    Review review =
        Reviewer.review(MATCH, ReviewSettings.DEFAULT.withLearned(learned(0.31, "margin", 1)));
    String said = review.course().warnings().get(0).text();
    assertTrue(said.contains("7 other matches"), said);
    assertTrue(said.contains("0.31 times a bait hour"), said);
    assertTrue(said.endsWith("margin."), said);
    assertFalse(
        Reviewer.review(MATCH, ReviewSettings.DEFAULT).course().warnings().stream()
            .anyMatch(w -> w.text().contains("other match")));
  }

  @Test
  void theSessionReviewedTeachesItselfNothing() {
    Review own = Reviewer.review(MATCH, ReviewSettings.DEFAULT);
    assertTrue(Learned.priors(List.of(MATCH), List.of(SessionSummaries.whole(own))).isEmpty());
    Session other = DemoMatch.generate(DemoWaters.waterA(), DemoWaters.planA(), 123);
    LearnedPriors learned =
        Learned.priors(
                List.of(MATCH),
                List.of(
                    SessionSummaries.whole(own),
                    SessionSummaries.whole(Reviewer.review(other, ReviewSettings.DEFAULT))))
            .orElseThrow();
    assertEquals(1, learned.sessions());
    int fish = learned.kinds().values().stream().mapToInt(k -> k.given().fish()).sum();
    long landed = other.events().stream().filter(e -> e.kind() == EventKind.LANDED).count();
    assertTrue(fish <= landed && fish > landed - 12, fish + " of " + landed);
  }

  /** What was weighed on the day itself or later could not be known in the match. */
  @Test
  void onlyMatchesBeforeTeachHowFarEstimatesRunOff() {
    Session other = DemoMatch.generate(DemoWaters.waterA(), DemoWaters.planA(), 123);
    SessionSummary summary = SessionSummaries.whole(Reviewer.review(other, ReviewSettings.DEFAULT));
    LocalDate day = MATCH.occasion().date();
    for (int days : new int[] {-40, -1, 0, 1}) {
      LearnedPriors learned =
          Learned.priors(List.of(MATCH), List.of(dated(summary, day.plusDays(days)))).orElseThrow();
      ReviewSettings settings = ReviewSettings.DEFAULT.withLearned(learned);
      assertEquals(days < 0 ? 1 : 0, settings.estimates().matches(), days + " days");
      if (days < 0) {
        double factor = Math.log(requireNonNull(summary.result().weights().scalesFactor()));
        double told = settings.estimates().factor().logMean();
        assertTrue(Math.abs(told) < Math.abs(factor) && told * factor > 0);
      }
    }
  }

  private static SessionSummary dated(SessionSummary summary, LocalDate date) {
    SessionSummary.About about = summary.about();
    return new SessionSummary(
        new SessionSummary.About(
            about.id(),
            about.title(),
            date,
            true,
            about.water(),
            about.matchMinutes(),
            about.day()),
        summary.result(),
        summary.lines());
  }
}
