package org.fadeline.stats;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNotNull;

import java.util.List;
import java.util.Objects;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.apache.commons.csv.CSVRecord;
import org.fadeline.stats.ReferenceData.Expected;
import org.jspecify.annotations.Nullable;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/**
 * Survival curves of Freireich 1963, Miller 1981, Moore 2016, Hyde 1980 and a small own example.
 */
class KaplanMeierReferenceTest {
  private static final Pattern AT =
      Pattern.compile("(?:S\\(|at t=|at risk at )(\\d+)|given alive at (\\d+)");

  static List<Expected> rows() {
    return ReferenceFamily.SURVIVAL.rows();
  }

  @ParameterizedTest
  @MethodSource("rows")
  void agrees(Expected row) {
    if (row.quantity().endsWith("deaths") || row.quantity().startsWith("rows")) {
      assertEquals(row.expected(), counted(row.quantity()));
      return;
    }
    assertEquals(row.number(), measured(row), row.tolerance());
  }

  private static double measured(Expected row) {
    String quantity = row.quantity();
    KaplanMeier curve = KaplanMeier.of(followUp(row.dataset(), quantity));
    int given = quantity.indexOf("alive at ");
    if (given >= 0) {
      String start = quantity.substring(given + 9).replaceAll("\\D", "");
      curve = curve.from(Double.parseDouble(start));
    }
    if (quantity.contains("median")) {
      return orNaN(median(curve, quantity));
    }
    Matcher at = AT.matcher(quantity);
    assertEquals(true, at.find(), quantity);
    double time = Double.parseDouble(at.group(1));
    if (quantity.contains("at risk")) {
      return curve.atRisk(time);
    }
    if (quantity.contains("Greenwood SE")) {
      KaplanMeier.Step step = curve.stepAt(time);
      assertNotNull(step);
      return orNaN(step.standardError());
    }
    return curve.survivalAt(time);
  }

  private static @Nullable Double median(KaplanMeier curve, String quantity) {
    SurvivalBand band =
        quantity.contains("log-log")
            ? SurvivalBand.LOG_LOG
            : quantity.contains("plain") ? SurvivalBand.PLAIN : SurvivalBand.LOG;
    KaplanMeier.Median median = curve.withBand(band, 0.95).median();
    return quantity.contains("lower")
        ? median.low()
        : quantity.contains("upper") ? median.high() : median.time();
  }

  private static double orNaN(@Nullable Double value) {
    return Objects.requireNonNullElse(value, Double.NaN);
  }

  static FollowUp followUp(String dataset, String quantity) {
    List<CSVRecord> rows = ReferenceData.rows(dataset);
    return switch (dataset) {
      case "freireich_6mp.csv" ->
          fromZero(rows, "group", quantity.contains("placebo") ? "placebo" : "6MP");
      case "aml_miller.csv" ->
          fromZero(
              rows, "group", quantity.endsWith("Nonmaintained") ? "Nonmaintained" : "Maintained");
      case "moore_left_truncation.csv" -> delayed(rows, "entry", "exit", "status");
      case "first_bite_small.csv" -> delayed(rows, "entry_min", "exit_min", "bite");
      case "channing_house.csv" -> channing(quantity.startsWith("female") ? "female" : "male");
      default -> throw new AssertionError(dataset);
    };
  }

  static FollowUp channing(String sex) {
    return delayed(
        ReferenceData.where(ReferenceData.rows("channing_house.csv"), "sex", sex),
        "entry_months",
        "exit_months",
        "death");
  }

  static FollowUp fromZero(List<CSVRecord> rows, String column, String group) {
    List<CSVRecord> own = ReferenceData.where(rows, column, group);
    assertEquals(true, own.size() > 1, group);
    return FollowUp.fromZero(
        ReferenceData.column(own, "time"), ReferenceData.marks(own, "status", "1"));
  }

  private static FollowUp delayed(List<CSVRecord> rows, String entry, String exit, String event) {
    return FollowUp.of(
        ReferenceData.column(rows, entry),
        ReferenceData.column(rows, exit),
        ReferenceData.marks(rows, event, "1"));
  }

  /** What the file holds, counted from the rows and from what was taken in of them. */
  private static String counted(String quantity) {
    List<CSVRecord> rows = ReferenceData.rows("channing_house.csv");
    int kept = channing("male").rows() + channing("female").rows();
    if (quantity.equals("rows")) {
      return Integer.toString(rows.size());
    }
    if (quantity.startsWith("rows with entry = exit")) {
      return Integer.toString(rows.size() - kept);
    }
    String sex = quantity.startsWith("men") ? "male" : "female";
    return ReferenceData.where(rows, "sex", sex).size() + "/" + channing(sex).events();
  }
}
