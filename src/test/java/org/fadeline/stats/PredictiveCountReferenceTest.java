package org.fadeline.stats;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.Arrays;
import java.util.List;
import org.apache.commons.csv.CSVRecord;
import org.fadeline.stats.ReferenceData.Expected;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** Gelman et al., Bayesian Data Analysis: asthma example and airline accidents; R's qnbinom. */
class PredictiveCountReferenceTest {
  private static final GammaPosterior ASTHMA = new GammaPosterior(3, 5);

  static List<Expected> rows() {
    return ReferenceFamily.PREDICTIVE.rows();
  }

  @ParameterizedTest
  @MethodSource("rows")
  void agrees(Expected row) {
    if (row.quantity().startsWith("with passenger miles")) {
      assertEquals(row.expected(), byMiles());
      return;
    }
    double[] accidents = ReferenceData.column(ReferenceData.rows("airline_bda.csv"), "accidents");
    NegativeBinomialPredictive next =
        new GammaPosterior(0, 0)
            .updated(Arrays.stream(accidents).sum(), accidents.length)
            .predictive(1);
    GammaPosterior tenYears = ASTHMA.updated(30, 20);
    double got =
        switch (row.quantity()) {
          case "prior Gamma(0,0): NB predictive 2.5% quantile" -> next.quantile(0.025);
          case "NB predictive 97.5% quantile" -> next.quantile(0.975);
          case "NB predictive mean" -> next.mean();
          case "NB predictive variance" -> next.variance();
          case "asthma: posterior mean, Gamma(6,7)" -> ASTHMA.updated(3, 2).mean();
          case "asthma: Pr(theta>1)" -> ASTHMA.updated(3, 2).probabilityAbove(1);
          case "asthma ten years: posterior mean" -> tenYears.mean();
          case "asthma ten years: Pr(theta>1)" -> tenYears.probabilityAbove(1);
          case "asthma: NB predictive Pr(0 deaths in next 2.0)" ->
              ASTHMA.updated(3, 2).predictive(2).probability(0);
          default -> throw new AssertionError(row.quantity());
        };
    assertEquals(row.number(), got, row.tolerance());
  }

  /** Passenger miles are deaths over the death rate, which is per 10⁸ miles. */
  private static String byMiles() {
    double count = 0;
    double miles = 0;
    for (CSVRecord year : ReferenceData.rows("airline_bda.csv")) {
      count += ReferenceData.number(year, "accidents");
      miles +=
          1e8
              * ReferenceData.number(year, "deaths")
              / ReferenceData.number(year, "death_rate_per_1e8");
    }
    NegativeBinomialPredictive next =
        new GammaPosterior(0, 0).updated(count, miles).predictive(8e11);
    return next.quantile(0.025) + " " + next.quantile(0.975);
  }

  @Test
  void agreesWithR() {
    for (CSVRecord row : ReferenceData.rows("r/negative_binomial.csv")) {
      NegativeBinomialPredictive count =
          NegativeBinomialPredictive.of(
              ReferenceData.number(row, "shape"),
              ReferenceData.number(row, "rate"),
              ReferenceData.number(row, "exposure"));
      long k = (long) ReferenceData.number(row, "k");
      assertEquals(k, count.quantile(ReferenceData.number(row, "p")), row.toString());
      assertClose(ReferenceData.number(row, "probability"), count.probability(k), row);
      assertClose(ReferenceData.number(row, "cumulative"), count.cumulative(k), row);
      assertClose(ReferenceData.number(row, "survival"), count.survival(k), row);
    }
  }

  private static void assertClose(double expected, double got, CSVRecord row) {
    assertEquals(expected, got, 1e-11 * expected, row.toString());
  }

  /** The worked example of docs/methods.md: 12 in 2 h 05, 1.75 h to go, prior Gamma(1, 1/6 h). */
  @Test
  void paceExample() {
    NegativeBinomialPredictive rest =
        new GammaPosterior(1, 1 / 6.0).updated(12, 125 / 60.0).predictive(1.75);
    assertEquals(10, rest.quantile(0.5));
    assertEquals(4, rest.quantile(0.05));
    assertEquals(18, rest.quantile(0.95));
  }

  /** Unchanged rate, 3 in 20 minutes, then none for w: (B/(B + w))^A with A = 4, B = ½ h. */
  @Test
  void blankExample() {
    GammaPosterior rate = new GammaPosterior(1, 1 / 6.0).updated(3, 1 / 3.0);
    assertEquals(0.20, rate.predictive(0.25).probability(0), 0.005);
    assertEquals(0.06, rate.predictive(0.5).probability(0), 0.005);
    assertEquals(0.03, rate.predictive(0.75).probability(0), 0.005);
    assertEquals(0.01, rate.predictive(1).probability(0), 0.005);
  }
}
