package org.fadeline.report;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNotEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Path;
import org.fadeline.analysis.ReviewSettings;
import org.fadeline.analysis.Reviewer;
import org.fadeline.analysis.compare.Alignment;
import org.fadeline.analysis.compare.Comparer;
import org.fadeline.analysis.compare.Comparison;
import org.fadeline.analysis.compare.ComparisonSetup;
import org.fadeline.model.Session;
import org.fadeline.model.Units;
import org.junit.jupiter.api.Test;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.json.JsonMapper;

/** The comparison as JSON and as text. */
class CompareJsonTest {
  private static final String SCHEMA = "comparison.schema.json";
  private static final Path FIRST = Path.of("sample-sessions/quillthorn-first-open.session.json");
  private static final Path SECOND = Path.of("sample-sessions/quillthorn-second-open.session.json");
  private static final Path EVENING =
      Path.of("sample-sessions/evening-moves-and-fish.session.json");
  private static final Path TYPED = Path.of("sample-sessions/mixed-day-typed.csv");

  private static Comparison compare(Path one, Path other) {
    Session first = ReviewSchemaTest.read(one);
    Session second = ReviewSchemaTest.read(other);
    return Comparer.compare(
        Reviewer.review(first, ReviewSettings.DEFAULT),
        Reviewer.review(second, ReviewSettings.DEFAULT),
        ComparisonSetup.usual(first, second).withAlignment(Alignment.byFirstFed(first, second)),
        Units.LB_OZ_AND_METRES);
  }

  @Test
  void keepsToTheSchemaWhateverTheRecords() throws IOException {
    JsonSchemas.assertValid(SCHEMA, CompareJson.toJson(compare(FIRST, SECOND)));
    JsonSchemas.assertValid(SCHEMA, CompareJson.toJson(compare(FIRST, EVENING)));
    JsonSchemas.assertValid(SCHEMA, CompareJson.toJson(compare(TYPED, EVENING)));
  }

  @Test
  void theSchemaRefusesWhatIsNotAComparison() throws IOException {
    String json = CompareJson.toJson(compare(TYPED, EVENING));
    for (String[] fault :
        new String[][] {
          {"fadeline-comparison", "fadeline-review"},
          {"\"sigmaDay\" : 0.5", "\"sigmaDay\" : null"},
          {"\"onlySecond\"", "\"onlyOther\""}
        }) {
      String broken = json.replace(fault[0], fault[1]);
      assertNotEquals(json, broken, fault[0]);
      JsonSchemas.assertInvalid(SCHEMA, broken);
    }
  }

  @Test
  void theRatioIsThatOfTheRatesBesideIt() {
    JsonNode root =
        JsonMapper.builder().build().readTree(CompareJson.toJson(compare(FIRST, SECOND)));
    int checked = 0;
    for (JsonNode pair : root.get("pairs")) {
      for (String rate : new String[] {"fishRate", "biteRate", "weightRate"}) {
        JsonNode node = pair.get(rate);
        String unit = rate.equals("weightRate") ? "gPerHour" : "perHour";
        double one = node.get("first").get("rate").get(unit).asDouble();
        double other = node.get("second").get("rate").get(unit).asDouble();
        assertEquals(one / other, node.get("ratio").asDouble(), 1e-9 * one / other);
        checked++;
      }
    }
    assertEquals(15, checked);
  }

  @Test
  void textStatesTheAlignmentAndThatDaysDiffer() {
    String text = CompareText.toText(compare(FIRST, SECOND), Units.KG_AND_METRES);
    assertTrue(text.contains("time since the first feed"), text);
    assertTrue(text.contains("Two days differ in more than"), text);
    assertTrue(text.contains("not learned: so no p-value"), text);
    String mixed = CompareText.toText(compare(FIRST, EVENING), Units.KG_AND_METRES);
    assertTrue(mixed.contains("Bites are compared only where both records hold casts"), mixed);
  }
}
