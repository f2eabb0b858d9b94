package org.fadeline.analysis.season;

import static org.fadeline.analysis.season.Summaries.line;
import static org.fadeline.analysis.season.Summaries.session;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNotNull;
import static org.junit.jupiter.api.Assertions.assertNull;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import org.fadeline.analysis.season.SessionSummary.Behind;
import org.fadeline.analysis.season.SessionSummary.BunchingFound;
import org.fadeline.analysis.season.SessionSummary.Hour;
import org.fadeline.stats.FadeRecord;
import org.fadeline.stats.GammaPosterior;
import org.junit.jupiter.api.Test;

/** What a season teaches: exact where there is a closed form, recovered where truth is known. */
class LearnerTest {
  private static Learned learn(List<SessionSummary> sessions) {
    return SeasonBuilder.build(sessions, SeasonFilter.ALL).learned();
  }

  private static SessionSummary evidence(int day, List<Double> logs) {
    Behind behind = new Behind(List.of(), logs, new BunchingFound(0, 0));
    return session("2026-06-0" + day, "Pond", Summaries.behind("pole", behind));
  }

  /** Without sessions the prior stands: Gamma(2, 8 h), mean 0.25. */
  @Test
  void withNothingLearnedThePriorStands() {
    Learned nothing = learn(List.of());
    assertEquals(0.25, nothing.hazard().perHour(), 1e-4);
    GammaPosterior prior = new GammaPosterior(2, 8);
    assertEquals(prior.quantile(0.05), nothing.hazard().interval().low(), 1e-3);
    assertEquals(prior.quantile(0.95), nothing.hazard().interval().high(), 5e-3);
    assertNull(nothing.days());
    List<Double> flat = Learned.HAZARDS.stream().map(h -> -123.0).toList();
    assertEquals(0.25, learn(List.of(evidence(1, flat))).hazard().perHour(), 1e-4);
  }

  /**
   * Changes that are seen outright: the likelihood is Poisson, the posterior Gamma(2 + k, 8 + T).
   */
  @Test
  void seenChangesGiveTheConjugatePosterior() {
    List<SessionSummary> sessions = new ArrayList<>();
    for (int i = 1; i <= 6; i++) {
      // Two changes in five hours, six times.
      sessions.add(
          evidence(i, Learned.HAZARDS.stream().map(h -> 2 * Math.log(h) - 5 * h).toList()));
    }
    GammaPosterior exact = new GammaPosterior(2 + 12, 8 + 30);
    Learned learned = learn(sessions);
    assertEquals(exact.mean(), learned.hazard().perHour(), 0.015);
    assertEquals(exact.quantile(0.05), learned.hazard().interval().low(), 0.02);
    assertEquals(exact.quantile(0.95), learned.hazard().interval().high(), 0.03);
    assertEquals(6, learned.hazard().records());
  }

  /** Records made with many changes must teach a higher rate of change than steady ones. */
  @Test
  void recordsThatChangeOftenTeachAHigherRate() {
    double steady = taught(new Random(11), 1);
    double restless = taught(new Random(11), 8);
    assertTrue(steady < 0.25, "steady " + steady);
    assertTrue(restless > 2 * steady, "restless " + restless + ", steady " + steady);
  }

  /**
   * Teaches from 8 records of 160 bait minutes in so many equal pieces, 36 and 3 an hour by turns.
   */
  private static double taught(Random random, int pieces) {
    List<SessionSummary> sessions = new ArrayList<>();
    for (int i = 1; i <= 8; i++) {
      List<Double> times = new ArrayList<>();
      for (int minute = 0; minute < 160; minute++) {
        boolean high = minute * pieces / 160 % 2 == 0;
        if (random.nextDouble() < (high ? 36 : 3) / 60.0) {
          times.add(minute + 0.5);
        }
      }
      FadeRecord record =
          FadeRecord.ofTimes(
              times.stream().mapToDouble(Double::doubleValue).toArray(), new double[] {160});
      sessions.add(evidence(i, Learner.hazardEvidence(record, 1)));
    }
    return learn(sessions).hazard().perHour();
  }

  /** φ over sessions: (10 + 6 + 24) / (10 + 4 + 6) = 2. */
  @Test
  void bunchingAddsUpOverSessions() {
    Behind one = new Behind(List.of(), List.of(), new BunchingFound(6, 4));
    Behind other = new Behind(List.of(), List.of(), new BunchingFound(24, 6));
    Learned learned =
        learn(
            List.of(
                session("2026-06-01", "Pond", Summaries.behind("pole", one)),
                session("2026-06-02", "Pond", Summaries.behind("pole", other))));
    assertEquals(2, learned.groups().get(0).bunching(), 1e-12);
  }

  /**
   * Fish 2, 4, 12 in an hour each: mean 6, Pearson's χ² (16 + 4 + 36)/6 = 9.3333, leverage 6·(3 −
   * 1) = 12, spread (9.3333 − 2)/12 = 0.6111, shape 1/0.6111 = 1.63636.
   */
  @Test
  void aPoolHasTheSpreadOfItsSessions() {
    Learned learned = learn(List.of(day(1, 2), day(2, 4), day(3, 12)));
    GammaPosterior pool = learned.groups().get(0).pool();
    assertNotNull(pool);
    assertEquals(6, pool.mean(), 1e-12);
    assertEquals(1 / (22 / 36.0), pool.shape(), 1e-9);
    // Sessions all alike: never more than a shape of 4.
    GammaPosterior alike = learn(List.of(day(1, 6), day(2, 6), day(3, 6))).groups().get(0).pool();
    assertNotNull(alike);
    assertEquals(4, alike.shape(), 1e-12);
    assertNull(learn(List.of(day(1, 6), day(2, 6))).groups().get(0).pool());
  }

  private static SessionSummary day(int day, int fish) {
    return session("2026-06-0" + day, "Pond", line("pole", new Hour(0, 60, fish, fish * 500.0)));
  }

  /**
   * Log rates drawn with a spread of 0.6 between days must give it back on average: 20 seasons of
   * 100 sessions (one season scatters by about 0.06, so their mean by 0.013).
   */
  @Test
  void theSpreadBetweenDaysIsFoundAgain() {
    double sum = 0;
    for (int season = 0; season < 20; season++) {
      Learned.DaysLearned days = learn(drawn(new Random(season), 100)).days();
      assertNotNull(days);
      sum += days.raw();
    }
    assertEquals(0.6, sum / 20, 0.05);
  }

  @Test
  void withFewSessionsTheUsualSpreadCountsAsFive() {
    List<SessionSummary> sessions = drawn(new Random(42), 6);
    Learned.DaysLearned few = learn(sessions).days();
    assertNotNull(few);
    double weighted = Math.sqrt((5 * 0.25 + 5 * few.raw() * few.raw()) / 10);
    assertEquals(weighted, few.sigma(), 1e-12);
    assertNull(learn(sessions.subList(0, 5)).days());
  }

  private static List<SessionSummary> drawn(Random random, int count) {
    List<SessionSummary> sessions = new ArrayList<>();
    for (int i = 0; i < count; i++) {
      double rate = 20 * Math.exp(0.6 * random.nextGaussian());
      int fish = 0;
      for (double t = -Math.log(random.nextDouble()); t < 2 * rate; fish++) {
        t -= Math.log(random.nextDouble());
      }
      String date = LocalDate.of(2024, 1, 1).plusDays(i).toString();
      sessions.add(session(date, "Pond", line("pole", new Hour(0, 120, fish, fish * 500.0))));
    }
    return sessions;
  }
}
