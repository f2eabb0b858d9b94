package org.fadeline.stats;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.List;
import net.jqwik.api.Arbitraries;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.Combinators;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.Provide;

/** What must hold of survival estimates whatever the rows. */
class SurvivalPropertiesTest {
  private static final String SEED = "20260102";

  /** A row with integer times, so that ties are common; cause 0 is censored, 1 and 2 events. */
  record Row(int entry, int length, int cause, int group) {}

  @Provide
  Arbitrary<List<Row>> rows() {
    return Combinators.combine(
            Arbitraries.integers().between(0, 12),
            Arbitraries.integers().between(0, 15),
            Arbitraries.integers().between(0, 2),
            Arbitraries.integers().between(1, 2))
        .as(Row::new)
        .list()
        .ofMaxSize(30);
  }

  /** Rows as arrays, each cut at {@code cut} where that falls inside it. */
  private static final class Cut {
    private final List<double[]> kept = new ArrayList<>();

    Cut(List<Row> rows, double cut, int group) {
      for (Row row : rows) {
        if (group == 0 || row.group() == group) {
          double exit = row.entry() + row.length();
          if (row.entry() < cut && cut < exit) {
            kept.add(new double[] {row.entry(), cut, 0});
            kept.add(new double[] {cut, exit, row.cause()});
          } else {
            kept.add(new double[] {row.entry(), exit, row.cause()});
          }
        }
      }
    }

    double[] column(int column) {
      return kept.stream().mapToDouble(r -> r[column]).toArray();
    }

    FollowUp followUp() {
      boolean[] event = new boolean[kept.size()];
      for (int i = 0; i < event.length; i++) {
        event[i] = kept.get(i)[2] == 1;
      }
      return FollowUp.of(column(0), column(1), event);
    }

    AalenJohansen incidence() {
      int[] cause = kept.stream().mapToInt(r -> (int) r[2]).toArray();
      return AalenJohansen.of(column(0), column(1), cause, 2, 0.95);
    }
  }

  @Property(seed = SEED, tries = 300)
  void cuttingRowsChangesNoCurve(@ForAll("rows") List<Row> rows, @ForAll double at) {
    double cut = Math.abs(at) % 27;
    assertEquals(
        KaplanMeier.of(new Cut(rows, -1, 0).followUp()).steps(),
        KaplanMeier.of(new Cut(rows, cut, 0).followUp()).steps());
    AalenJohansen whole = new Cut(rows, -1, 0).incidence();
    AalenJohansen split = new Cut(rows, cut, 0).incidence();
    assertEquals(whole.steps(1), split.steps(1));
    assertEquals(whole.steps(2), split.steps(2));
  }

  @Property(seed = SEED, tries = 300)
  void cuttingRowsChangesNoLogRank(@ForAll("rows") List<Row> rows, @ForAll double at) {
    double cut = Math.abs(at) % 27;
    assertEquals(logRank(rows, -1, 1, 2), logRank(rows, cut, 1, 2));
  }

  private static LogRank logRank(List<Row> rows, double cut, int first, int second) {
    return LogRank.of(new Cut(rows, cut, first).followUp(), new Cut(rows, cut, second).followUp());
  }

  @Property(seed = SEED, tries = 300)
  void logRankIsSymmetric(@ForAll("rows") List<Row> rows) {
    LogRank one = logRank(rows, -1, 1, 2);
    LogRank other = logRank(rows, -1, 2, 1);
    assertEquals(one.observed(), other.observedOther());
    assertEquals(one.expected(), other.expectedOther(), 1e-12);
    assertEquals(one.variance(), other.variance(), 1e-12);
    assertEquals(one.chiSquare() == null, other.chiSquare() == null);
    if (one.p() != null && other.p() != null) {
      assertEquals(one.p(), other.p(), 1e-10);
    }
    assertEquals(one.observed() + one.observedOther(), one.expected() + one.expectedOther(), 1e-9);
  }

  @Property(seed = SEED, tries = 300)
  void oneStratumIsThePlainTestAndTwoEqualOnesDoubleIt(@ForAll("rows") List<Row> rows) {
    LogRank plain = logRank(rows, -1, 1, 2);
    LogRank.Stratum stratum =
        new LogRank.Stratum(new Cut(rows, -1, 1).followUp(), new Cut(rows, -1, 2).followUp());
    LogRank twice = LogRank.stratified(List.of(stratum, stratum));
    assertEquals(2 * plain.expected(), twice.expected(), 1e-9);
    assertEquals(2 * plain.variance(), twice.variance(), 1e-9);
  }

  @Property(seed = SEED, tries = 300)
  void incidencesAndSurvivalSumToOne(@ForAll("rows") List<Row> rows) {
    AalenJohansen fit = new Cut(rows, -1, 0).incidence();
    for (int i = 0; i < fit.steps(1).size(); i++) {
      AalenJohansen.Step one = fit.steps(1).get(i);
      AalenJohansen.Step two = fit.steps(2).get(i);
      assertEquals(1, one.incidence() + two.incidence() + one.survival(), 1e-12);
      assertTrue(one.standardError() >= 0);
    }
  }

  @Property(seed = SEED, tries = 300)
  void withoutCompetitionIncidenceMirrorsTheCurve(@ForAll("rows") List<Row> rows) {
    Cut cut = new Cut(rows, -1, 0);
    int[] cause = cut.kept.stream().mapToInt(r -> r[2] == 1 ? 1 : 0).toArray();
    AalenJohansen fit = AalenJohansen.of(cut.column(0), cut.column(1), cause, 1, 0.95);
    List<KaplanMeier.Step> curve = KaplanMeier.of(cut.followUp()).steps();
    assertEquals(curve.size(), fit.steps(1).size());
    for (int i = 0; i < curve.size(); i++) {
      AalenJohansen.Step step = fit.steps(1).get(i);
      assertEquals(1 - curve.get(i).survival(), step.incidence(), 1e-12);
      Double error = curve.get(i).standardError();
      if (error != null) {
        assertEquals(error, step.standardError(), 1e-7);
      }
    }
  }

  @Property(seed = SEED, tries = 300)
  void curvesFallAndLimitsHoldThem(@ForAll("rows") List<Row> rows) {
    FollowUp followUp = new Cut(rows, -1, 0).followUp();
    for (SurvivalBand band : SurvivalBand.values()) {
      double before = 1;
      for (KaplanMeier.Step step : KaplanMeier.of(followUp).withBand(band, 0.9).steps()) {
        assertTrue(step.survival() < before || before == 0);
        assertTrue(step.limits() == null || step.limits().contains(step.survival()));
        assertEquals(step.atRisk(), followUp.atRisk(step.time()));
        before = step.survival();
      }
    }
  }

  @Property(seed = SEED, tries = 300)
  void aConditionalCurveIsARatioOfCurves(@ForAll("rows") List<Row> rows) {
    KaplanMeier whole = KaplanMeier.of(new Cut(rows, -1, 0).followUp());
    KaplanMeier given = whole.from(8);
    double before = whole.survivalAt(7.5);
    if (before > 0) {
      for (int t = 8; t < 30; t++) {
        assertEquals(whole.survivalAt(t) / before, given.survivalAt(t), 1e-12);
      }
    }
  }
}
