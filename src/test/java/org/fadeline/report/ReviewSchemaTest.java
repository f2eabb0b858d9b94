package org.fadeline.report;

import static org.junit.jupiter.api.Assertions.assertNotEquals;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.time.ZoneId;
import java.util.List;
import java.util.Map;
import java.util.stream.Stream;
import org.fadeline.analysis.EstimateError;
import org.fadeline.analysis.LearnedPriors;
import org.fadeline.analysis.ReviewSettings;
import org.fadeline.analysis.Reviewer;
import org.fadeline.io.ReadOptions;
import org.fadeline.io.open.SessionFiles;
import org.fadeline.model.Session;
import org.fadeline.stats.GammaPosterior;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** The review of every sample keeps to docs/schema/review.schema.json. */
class ReviewSchemaTest {
  private static final String SCHEMA = "review.schema.json";

  static List<Path> samples() throws IOException {
    try (Stream<Path> files = Files.list(Path.of("sample-sessions"))) {
      return files.filter(f -> f.toString().matches(".*\\.(json|csv)")).sorted().toList();
    }
  }

  static Session read(Path file) {
    ReadOptions options = ReadOptions.of(LocalDate.of(2026, 6, 20), ZoneId.of("Europe/London"));
    return SessionFiles.read(file, options).session().orElseThrow();
  }

  private static String json(Path file) {
    return ReviewJson.toJson(Reviewer.review(read(file), ReviewSettings.DEFAULT));
  }

  @ParameterizedTest
  @MethodSource("samples")
  void keepsToTheSchema(Path file) throws IOException {
    JsonSchemas.assertValid(SCHEMA, json(file));
  }

  @Test
  void whatOtherSessionsTaughtKeepsToTheSchemaToo() throws IOException {
    Session session = read(Path.of("sample-sessions/quillthorn-second-open.session.json"));
    LearnedPriors learned =
        new LearnedPriors(
            4,
            0.4,
            Map.of(
                "edge",
                new LearnedPriors.Kind(
                    4, 1.2, new LearnedPriors.Given(20, 3.5), new GammaPosterior(2, 0.35)),
                "bomb",
                new LearnedPriors.Kind(1, 1, new LearnedPriors.Given(0, 0.5), null)),
            null,
            EstimateError.learned(List.of(0.95, 1.02)));
    String json =
        ReviewJson.toJson(Reviewer.review(session, ReviewSettings.DEFAULT.withLearned(learned)));
    JsonSchemas.assertValid(SCHEMA, json);
    JsonSchemas.assertInvalid(SCHEMA, json.replace("\"sessions\" : 4", "\"sessions\" : 0"));
  }

  @Test
  void theSchemaRefusesWhatIsNotAReview() throws IOException {
    String json = json(Path.of("sample-sessions/evening-moves-and-fish.session.json"));
    for (String[] fault :
        new String[][] {
          {"fadeline-review", "fadeline-session"},
          {"\"moves-and-fish\"", "\"half\""},
          {"\"unassignedMinutes\" : 0", "\"unassignedMinutes\" : \"none\""},
          {"\"lessons\"", "\"lesson\""},
          {"\"allIn\" : \"2", "\"allIn\" : \"x2"}
        }) {
      String broken = json.replace(fault[0], fault[1]);
      assertNotEquals(json, broken, fault[0]);
      JsonSchemas.assertInvalid(SCHEMA, broken);
    }
  }
}
