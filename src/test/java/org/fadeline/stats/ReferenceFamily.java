package org.fadeline.stats;

import java.util.List;
import org.fadeline.stats.ReferenceData.Expected;

/**
 * Which test answers for which rows of expected.csv. A test takes its rows from here and nowhere
 * else, but for the exceptions named, so that a row claimed is a row checked.
 */
enum ReferenceFamily {
  POISSON_LIMITS("PoissonIntervalReferenceTest"),
  RATE_RATIO("RateRatioReferenceTest"),
  SURVIVAL("KaplanMeierReferenceTest"),
  LOG_RANK("LogRankReferenceTest"),
  PREDICTIVE("PredictiveCountReferenceTest"),
  MARGINAL_VALUE("MarginalValueReferenceTest"),
  /** Finds its rows itself, by data set. */
  CHANGE_POINT("ChangePointReferenceTest"),
  /** Change points in continuous time, which this package does not offer: no test answers yet. */
  UNANSWERED("");

  final String testClass;

  ReferenceFamily(String testClass) {
    this.testClass = testClass;
  }

  /** The family that answers for a row; an error where none does. */
  static ReferenceFamily of(Expected row) {
    if (row.quantity().startsWith("logrank")) {
      return LOG_RANK;
    }
    return switch (row.dataset()) {
      case "single_rates.csv", "poisson_limits_table.csv" -> POISSON_LIMITS;
      case "rate_pairs.csv" -> RATE_RATIO;
      case "freireich_6mp.csv",
          "aml_miller.csv",
          "moore_left_truncation.csv",
          "channing_house.csv",
          "first_bite_small.csv" ->
          SURVIVAL;
      case "airline_bda.csv" -> PREDICTIVE;
      case "mvt_exponential_gain.csv" -> MARGINAL_VALUE;
      case "coal_events.csv" -> UNANSWERED;
      case "coal_annual.csv", "coal_weeks_nonzero.csv", "cp_small.csv" -> CHANGE_POINT;
      case "(none)" -> row.quantity().startsWith("asthma") ? PREDICTIVE : MARGINAL_VALUE;
      default -> throw new AssertionError("no test answers for " + row);
    };
  }

  List<Expected> rows() {
    return ReferenceData.expected().stream().filter(row -> of(row) == this).toList();
  }
}
