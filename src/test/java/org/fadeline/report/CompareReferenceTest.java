package org.fadeline.report;

import static java.util.Objects.requireNonNull;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import org.apache.commons.csv.CSVRecord;
import org.fadeline.analysis.FirstBite;
import org.fadeline.analysis.ReviewSettings;
import org.fadeline.analysis.Reviewer;
import org.fadeline.analysis.compare.Comparer;
import org.fadeline.analysis.compare.Comparison;
import org.fadeline.analysis.compare.Comparison.PairedLines;
import org.fadeline.analysis.compare.ComparisonSetup;
import org.fadeline.model.Session;
import org.fadeline.model.Units;
import org.fadeline.stats.ReferenceData;
import org.junit.jupiter.api.Test;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.json.JsonMapper;

/**
 * What {@code compare} writes of two pairs of samples, against R: {@code binom.test} and {@code
 * poisson.test} for the ratios and their limits, the score test of {@code coxph} of the package
 * survival for the first bites. The script is src/test/r/compare.R.
 */
class CompareReferenceTest {
  private static final String FOLDER = "src/test/resources/reference/r/";

  /** Two matches on one water, and two on different ones. */
  private static final List<List<String>> SAMPLES =
      List.of(
          List.of("quillthorn-first-open", "quillthorn-second-open"),
          List.of("quillthorn-second-open", "brackwith-spring"));

  private static Comparison compare(List<String> names) {
    Session first = read(names.get(0));
    Session second = read(names.get(1));
    return Comparer.compare(
        Reviewer.review(first, ReviewSettings.DEFAULT),
        Reviewer.review(second, ReviewSettings.DEFAULT),
        ComparisonSetup.usual(first, second),
        Units.LB_OZ_AND_METRES);
  }

  private static Session read(String name) {
    return ReviewSchemaTest.read(Path.of("sample-sessions/" + name + ".session.json"));
  }

  /** The rates of one kind by the name of their pair, as they stand in the JSON. */
  private static Map<String, JsonNode> rates(List<String> names) {
    JsonNode root = JsonMapper.builder().build().readTree(CompareJson.toJson(compare(names)));
    Map<String, JsonNode> found = new TreeMap<>();
    String lead = names.get(0) + " ";
    for (String rate : new String[] {"fishRate", "biteRate"}) {
      found.put(lead + "all," + rate, root.get("whole").get(rate));
      for (JsonNode pair : root.get("pairs")) {
        found.put(lead + pair.get("name").asString() + "," + rate, pair.get(rate));
      }
    }
    found.values().removeIf(JsonNode::isNull);
    found.values().removeIf(n -> n.get("ratio").isNull());
    return found;
  }

  private static List<String> counts(List<String> names) {
    List<String> rows = new ArrayList<>();
    rates(names)
        .forEach(
            (key, node) ->
                rows.add(key + "," + told(node.get("first")) + "," + told(node.get("second"))));
    return rows;
  }

  private static String told(JsonNode side) {
    return side.get("amount").asInt() + "," + side.get("minutes").asDouble() / 60;
  }

  private static List<String> stretches(List<String> names) {
    List<String> rows = new ArrayList<>();
    for (PairedLines pair : compare(names).lines().pairs()) {
      add(rows, names.get(0), pair, pair.first().line().firstBite(), 1);
      add(rows, names.get(0), pair, pair.second().line().firstBite(), 2);
    }
    return rows;
  }

  private static void add(
      List<String> rows, String lead, PairedLines pair, FirstBite first, int session) {
    for (FirstBite.Stretch row : first.rows()) {
      String told = session + "," + row.entry() + "," + row.exit() + "," + (row.bite() ? 1 : 0);
      rows.add(lead + " all," + pair.pair().name() + "," + told);
      rows.add(lead + " " + pair.pair().name() + "," + pair.pair().name() + "," + told);
    }
  }

  private static List<String> all(boolean ofCounts) {
    List<String> rows = new ArrayList<>();
    rows.add(
        ofCounts
            ? "pair,rate,first,first_hours,second,second_hours"
            : "pair,stratum,session,entry,exit,bite");
    SAMPLES.forEach(names -> rows.addAll(ofCounts ? counts(names) : stretches(names)));
    return rows;
  }

  /** Writes what R is given; R then writes what is expected. */
  public static void main(String[] args) throws IOException {
    Files.write(Path.of(FOLDER + "compare_counts.csv"), all(true));
    Files.write(Path.of(FOLDER + "compare_rows.csv"), all(false));
  }

  @Test
  void rWasGivenWhatIsComparedToday() throws IOException {
    assertEquals(Files.readAllLines(Path.of(FOLDER + "compare_counts.csv")), all(true));
    assertEquals(Files.readAllLines(Path.of(FOLDER + "compare_rows.csv")), all(false));
  }

  @Test
  void ratiosAndBothLimitsAreThoseOfR() {
    Map<String, JsonNode> ours = new TreeMap<>();
    SAMPLES.forEach(names -> ours.putAll(rates(names)));
    List<CSVRecord> expected = ReferenceData.rows("r/compare_rates.csv");
    assertEquals(ours.size(), expected.size());
    assertTrue(expected.size() >= 18, "pairs and wholes of both: " + expected.size());
    for (CSVRecord row : expected) {
      JsonNode node = requireNonNull(ours.get(row.get("pair") + "," + row.get("rate")));
      same(row, "ratio", node, "ratio");
      same(row, "low", node, "low");
      same(row, "high", node, "high");
      same(row, "low_days", node, "lowDays");
      same(row, "high_days", node, "highDays");
    }
  }

  private static void same(CSVRecord row, String column, JsonNode node, String name) {
    double expected = ReferenceData.number(row, column);
    double found = node.get(name).isNull() ? Double.POSITIVE_INFINITY : node.get(name).asDouble();
    assertEquals(expected, found, Math.abs(expected) * 1e-6, row.get("pair") + " " + column);
  }

  @Test
  void firstBitesAreTestedAsInR() {
    Map<String, JsonNode> ours = new TreeMap<>();
    for (List<String> names : SAMPLES) {
      JsonNode root = JsonMapper.builder().build().readTree(CompareJson.toJson(compare(names)));
      ours.put(names.get(0) + " all", root.get("whole").get("firstBites"));
      for (JsonNode pair : root.get("pairs")) {
        ours.put(names.get(0) + " " + pair.get("name").asString(), pair.get("logRank"));
      }
    }
    int told = 0;
    for (CSVRecord row : ReferenceData.rows("r/compare_log_rank.csv")) {
      JsonNode node = requireNonNull(ours.get(row.get("pair")));
      assertEquals(ReferenceData.number(row, "observed"), node.get("firstObserved").asDouble());
      if (node.get("chiSquare").isNull()) {
        // Nobody of both was at risk at any bite: R's test has nothing to go by either.
        double chi = ReferenceData.number(row, "chisq");
        assertTrue(Double.isNaN(chi) || chi == 0, row.get("pair") + " " + chi);
        continue;
      }
      double chi = ReferenceData.number(row, "chisq");
      assertEquals(chi, node.get("chiSquare").asDouble(), 1e-6 * Math.max(1, chi), row.get("pair"));
      double p = ReferenceData.number(row, "p");
      assertEquals(p, node.get("p").asDouble(), 1e-6, row.get("pair"));
      told++;
    }
    assertTrue(told >= 6, "tests that could be made: " + told);
  }
}
