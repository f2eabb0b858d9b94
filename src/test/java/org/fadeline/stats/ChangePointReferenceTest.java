package org.fadeline.stats;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.fail;

import java.io.IOException;
import java.io.InputStreamReader;
import java.io.Reader;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.Arrays;
import java.util.List;
import java.util.Objects;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.apache.commons.csv.CSVFormat;
import org.apache.commons.csv.CSVRecord;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.Arguments;
import org.junit.jupiter.params.provider.MethodSource;

/**
 * Change points, run lengths and single changes against the worked examples of
 * reference/expected.csv: coal-mining disasters (Jarrett 1979; Carlin, Gelfand and Smith 1992;
 * Green 1995; Adams and MacKay 2007) and a 12-bin example checked against all 2048 segmentations.
 * Sources and how each value was computed stand in that file, row by row.
 */
class ChangePointReferenceTest {
  private static final double HAZARD_ANNUAL = 1.0 / 50;

  static List<CSVRecord> rows(String file) {
    CSVFormat format = CSVFormat.DEFAULT.builder().setHeader().setSkipHeaderRecord(true).get();
    try (Reader reader =
        new InputStreamReader(
            Objects.requireNonNull(
                ChangePointReferenceTest.class.getResourceAsStream("/reference/" + file)),
            StandardCharsets.UTF_8)) {
      return format.parse(reader).getRecords();
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  static double[] column(String file, String name) {
    return rows(file).stream().mapToDouble(r -> Double.parseDouble(r.get(name))).toArray();
  }

  private static Stream<Arguments> expected(String dataset, String contains) {
    return rows("expected.csv").stream()
        .filter(r -> r.get("dataset").equals(dataset) && r.get("quantity").contains(contains))
        .map(
            r ->
                Arguments.of(
                    r.get("quantity"), r.get("expected"), Double.parseDouble(r.get("tolerance"))));
  }

  static Stream<Arguments> annual() {
    return expected("coal_annual.csv", "h=1/50");
  }

  static Stream<Arguments> annualSingle() {
    return Stream.concat(
        expected("coal_annual.csv", "single change"), expected("coal_annual.csv", "same: "));
  }

  static Stream<Arguments> small() {
    return expected("cp_small.csv", "");
  }

  private static ChangePointBins annualBins() {
    return ChangePointBins.of(column("coal_annual.csv", "count"), 1);
  }

  private static int year(String text, String after) {
    Matcher m = Pattern.compile(after + "(\\d{4})").matcher(text);
    return m.find() ? Integer.parseInt(m.group(1)) : fail("no year in " + text);
  }

  private static int number(String text, String pattern) {
    Matcher m = Pattern.compile(pattern).matcher(text);
    return m.find() ? Integer.parseInt(m.group(1)) : fail("no number in " + text);
  }

  private static void check(String expected, double actual, double tolerance, String what) {
    assertEquals(Double.parseDouble(expected), actual, tolerance, what);
  }

  private static String starts(ChangePointPosterior fit, int first) {
    return fit.likeliestSegments().stream()
        .map(s -> String.valueOf(s.from() + first))
        .collect(Collectors.joining(" "));
  }

  @ParameterizedTest
  @MethodSource("annual")
  void annualDisasters(String quantity, String expected, double tolerance) {
    ChangePointPrior prior = new ChangePointPrior(1, 1, HAZARD_ANNUAL, 1);
    ChangePointPosterior fit = ChangePointPosterior.of(annualBins(), prior);
    if (quantity.contains("online")) {
      RunLengthPosterior online = RunLengthPosterior.of(annualBins(), prior);
      if (quantity.contains("log sum")) {
        double sum = 0;
        for (int t = 1; t <= online.size(); t++) {
          sum += online.logPredictive(t);
        }
        check(expected, sum, tolerance, quantity);
      } else {
        int end = year(quantity, "end of ") - 1850;
        check(expected, online.startedBetween(end, 36, 42), tolerance, quantity);
      }
    } else if (quantity.contains("log evidence")) {
      check(expected, fit.logEvidence(), tolerance, quantity);
    } else if (quantity.contains("Pr(k=")) {
      int k = number(quantity, "k=(\\d+)");
      check(expected, fit.changeCountProbabilities(20)[k], tolerance, quantity);
    } else if (quantity.contains("Pr(change between")) {
      int boundary = year(quantity, "and ") - 1851;
      check(expected, fit.changeProbability(boundary), tolerance, quantity);
    } else if (quantity.contains("posterior mean rate")) {
      check(expected, fit.meanRates()[year(quantity, "rate ") - 1851], tolerance, quantity);
    } else if (quantity.contains("MAP")) {
      assertEquals(expected, starts(fit, 1851));
    } else {
      fail("no check for " + quantity);
    }
  }

  /** A single change with a uniform place is the recursion with exactly two segments. */
  @ParameterizedTest
  @MethodSource("annualSingle")
  void annualSingleChange(String quantity, String expected, double tolerance) {
    double[] counts = column("coal_annual.csv", "count");
    double[] weights = new double[counts.length];
    Arrays.fill(weights, 1, counts.length, 1.0);
    ChangePointSingle fit = ChangePointSingle.of(ChangePointBins.of(counts, 1), 0.5, 1, weights);
    if (quantity.contains("mode")) {
      assertEquals(Integer.parseInt(expected), 1850 + fit.mode());
    } else if (quantity.contains("Pr(change after")) {
      int year = year(quantity, "after ");
      check(expected, fit.probabilities()[year - 1850], tolerance, quantity);
    } else if (quantity.contains("E[rate before]")) {
      int gap = expected.indexOf(' ');
      check(expected.substring(0, gap), fit.before(), tolerance, quantity);
      check(expected.substring(gap + 1), fit.after(), tolerance, quantity);
    } else {
      fail("no check for " + quantity);
    }
  }

  @ParameterizedTest
  @MethodSource("small")
  void twelveBins(String quantity, String expected, double tolerance) {
    ChangePointBins bins =
        ChangePointBins.of(column("cp_small.csv", "count"), column("cp_small.csv", "exposure_h"));
    int minimum = number(quantity, "dmin=(\\d+)");
    ChangePointPrior prior = new ChangePointPrior(1, 1.0 / 6, 0.05, minimum);
    ChangePointPosterior fit = ChangePointPosterior.of(bins, prior);
    if (quantity.contains("online")) {
      RunLengthPosterior online = RunLengthPosterior.of(bins, prior);
      if (quantity.contains("predictive")) {
        int t = number(quantity, "y_(\\d+)");
        check(expected, Math.exp(online.logPredictive(t)), tolerance, quantity);
      } else {
        double[] runs = online.runLengthProbabilities(number(quantity, "after bin (\\d+)"));
        double upTo3 = Arrays.stream(runs, 0, Math.min(4, runs.length)).sum();
        check(expected, upTo3, tolerance, quantity);
      }
    } else if (quantity.contains("log evidence")) {
      check(expected, fit.logEvidence(), tolerance, quantity);
    } else if (quantity.contains("Pr(k=")) {
      int k = number(quantity, "k=(\\d+)");
      check(expected, fit.changeCountProbabilities(11)[k], tolerance, quantity);
    } else if (quantity.contains("Pr(change at boundary")) {
      int i = number(quantity, "boundary (\\d+)");
      check(expected, fit.changeProbability(i), tolerance, quantity);
    } else if (quantity.contains("is the last change")) {
      int i = number(quantity, "boundary (\\d+)");
      check(expected, fit.lastDropProbability(i, 0.5), tolerance, quantity);
    } else if (quantity.contains("is a change and")) {
      int i = number(quantity, "boundary (\\d+)");
      check(expected, fit.dropProbability(i, 0.5), tolerance, quantity);
    } else if (quantity.contains("posterior mean rate")) {
      int bin = number(quantity, "bin (\\d+)");
      check(expected, fit.meanRates()[bin - 1], tolerance, quantity);
    } else if (quantity.contains("MAP")) {
      assertEquals(expected, starts(fit, 1));
    } else {
      fail("no check for " + quantity);
    }
  }

  /**
   * 5793 weekly counts (Adams and MacKay 2007, section 3.3). The rows of this data set lost their
   * labels and carry their value at the end of the quantity; those that can be told apart by it are
   * checked: log evidence, expected changes, likeliest boundary, its probability, Pr(no change).
   */
  @Test
  void weeklyDisasters() {
    double[] counts = new double[5793];
    double[] weeks = column("coal_weeks_nonzero.csv", "week");
    double[] nonzero = column("coal_weeks_nonzero.csv", "count");
    for (int i = 0; i < weeks.length; i++) {
      counts[(int) weeks[i]] = nonzero[i];
    }
    ChangePointPosterior fit =
        ChangePointPosterior.of(
            ChangePointBins.of(counts, 1), new ChangePointPrior(1, 1, 0.001, 1));
    double[] values =
        rows("expected.csv").stream()
            .filter(r -> r.get("dataset").equals("coal_weeks_nonzero.csv"))
            .map(r -> r.get("quantity"))
            .map(q -> q.substring(q.lastIndexOf(' ') + 1))
            .mapToDouble(q -> q.endsWith(")") ? Double.NaN : Double.parseDouble(q))
            .toArray();
    double[] p = fit.changeProbabilities();
    int likeliest = 0;
    for (int i = 1; i < p.length; i++) {
      likeliest = p[i] > p[likeliest] ? i : likeliest;
    }
    assertEquals(values[0], fit.logEvidence(), 1e-7);
    assertEquals(values[1], fit.expectedChanges(), 1e-7);
    assertEquals(values[4], likeliest);
    assertEquals(values[5], p[likeliest], 1e-7);
    assertEquals(values[6], fit.changeCountProbabilities(3)[0], 1e-7 * values[6]);
  }

  private static final double DAYS = 40_907;

  static Stream<Arguments> events() {
    return expected("coal_events.csv", "");
  }

  private static double[] eventCounts(double binDays) {
    double[] counts = new double[(int) Math.round(DAYS / binDays)];
    for (double day : column("coal_events.csv", "day_since_1851_01_01")) {
      counts[(int) (day / binDays + 1e-6)]++;
    }
    return counts;
  }

  /** One change on a grid of 0.05 day: flat, or Green's density τ(L − τ). */
  private static ChangePointSingle singleEventChange(boolean green) {
    double[] counts = eventCounts(0.05);
    double[] weights = new double[counts.length];
    Arrays.setAll(weights, i -> green ? i * 0.05 * (DAYS - i * 0.05) : 1);
    return ChangePointSingle.of(
        ChangePointBins.of(counts, 0.05), green ? 1 : 0.5, green ? 200 : 0, weights);
  }

  /**
   * Evidence of k = 0 … 9 changes under Green's prior of even-numbered order statistics, relative
   * to one constant rate, on a grid of 2000 bins.
   */
  private static double[] greenEvidence() {
    int n = 2000;
    double bin = DAYS / n;
    double[] counts = eventCounts(bin);
    ChangePointBins bins = ChangePointBins.of(counts, bin);
    ChangePointRecursion recursion =
        new ChangePointRecursion(
            bins,
            new ChangePointPrior(1, 200, 0, 1),
            ChangePointRecursion.constantHazards(n, 0),
            false);
    double rate = 191 / DAYS;
    double[][] before = new double[10][n + 1];
    for (int e = 1; e <= n; e++) {
      for (int s = 0; s < e; s++) {
        double gap = (e - s) * bin;
        double w =
            gap
                * Math.exp(
                    recursion.logSegment(s, e)
                        - bins.countBetween(s, e) * Math.log(rate)
                        + rate * gap);
        if (s == 0) {
          before[0][e] = w;
        } else {
          for (int k = 1; k < 10; k++) {
            before[k][e] += before[k - 1][s] * w * bin;
          }
        }
      }
    }
    double[] evidence = new double[10];
    double factor = 1 / DAYS;
    for (int k = 0; k < 10; k++) {
      evidence[k] = factor * before[k][n];
      factor *= (2 * k + 2) * (2 * k + 3) / (DAYS * DAYS);
    }
    return evidence;
  }

  @ParameterizedTest
  @MethodSource("events")
  void disastersByDay(String quantity, String expected, double tolerance) {
    if (quantity.contains("number of events")) {
      assertEquals(Integer.parseInt(expected), rows("coal_events.csv").size());
    } else if (quantity.contains("intervals in days")) {
      double[] days = column("coal_events.csv", "day_since_1851_01_01");
      check(expected, days[days.length - 1] - days[0], tolerance, quantity);
    } else if (quantity.contains("Pr(k=") || quantity.contains("Bayes factor")) {
      double[] evidence = greenEvidence();
      if (quantity.contains("Bayes factor")) {
        check(expected, Math.log(evidence[1] / evidence[0]), tolerance, quantity);
        return;
      }
      double[] prior = new double[10];
      prior[0] = 1;
      double sum = evidence[0];
      for (int k = 1; k < 10; k++) {
        prior[k] = prior[k - 1] * 3 / k;
        sum += prior[k] * evidence[k];
      }
      int k = number(quantity, "k=(\\d)");
      check(expected, prior[k] * evidence[k] / sum, tolerance, quantity);
    } else {
      // The rows of Green's single change come last and are told apart by their expected values.
      double value = Double.parseDouble(expected);
      boolean green = GREEN_SINGLE.contains(expected);
      ChangePointSingle fit = singleEventChange(green);
      double p =
          quantity.contains("median")
              ? 0.5
              : quantity.contains("mode") ? Double.NaN : percent(quantity);
      double day = 0.05 * (Double.isNaN(p) ? fit.mode() : fit.quantile(p));
      assertEquals(value, day, tolerance, quantity);
    }
  }

  private static final List<String> GREEN_SINGLE =
      List.of("14439.775", "13201.475", "13289.725", "16492.825", "16671.725");

  private static double percent(String quantity) {
    Matcher m = Pattern.compile("([\\d.]+)% quantile").matcher(quantity);
    return m.find() ? Double.parseDouble(m.group(1)) / 100 : fail("no quantile in " + quantity);
  }
}
