package org.fadeline.report;

import static org.junit.jupiter.api.Assertions.assertNotEquals;

import java.io.IOException;
import java.nio.file.Path;
import java.time.LocalDate;
import java.time.ZoneId;
import java.util.Set;
import org.fadeline.analysis.ReviewSettings;
import org.fadeline.analysis.season.SeasonBuilder;
import org.fadeline.analysis.season.SeasonFilter;
import org.fadeline.index.SeasonFolder;
import org.fadeline.index.SeasonIndex;
import org.fadeline.io.ReadOptions;
import org.junit.jupiter.api.Test;

/** The season of the samples keeps to docs/schema/season.schema.json. */
class SeasonJsonTest {
  private static final String SCHEMA = "season.schema.json";
  private static final Path FOLDER = Path.of("sample-sessions");

  private static SeasonFolder read(SeasonIndex.Depth depth) throws IOException {
    ReadOptions options = ReadOptions.of(LocalDate.of(2026, 6, 20), ZoneId.of("Europe/London"));
    return new SeasonIndex(FOLDER, options, ReviewSettings.DEFAULT)
        .read(depth, SeasonIndex.Watcher.NONE);
  }

  @Test
  void keepsToTheSchema() throws IOException {
    SeasonFolder found = read(SeasonIndex.Depth.WITH_FADES);
    String json =
        SeasonJson.toJson(SeasonBuilder.build(found.summaries(), SeasonFilter.ALL), found, FOLDER);
    JsonSchemas.assertValid(SCHEMA, json);
    String broken = json.replace("\"changeHazard\"", "\"hazard\"");
    assertNotEquals(json, broken);
    JsonSchemas.assertInvalid(SCHEMA, broken);
    JsonSchemas.assertInvalid(SCHEMA, json.replace("\"hour\" : 0", "\"hour\" : -1"));
  }

  @Test
  void withoutFadesAndFilteredToo() throws IOException {
    SeasonFolder found = read(SeasonIndex.Depth.WITHOUT_FADES);
    SeasonFilter filter =
        new SeasonFilter(
            Set.of(),
            Set.of(8),
            Set.of("shallow"),
            new SeasonFilter.Span(0, 40),
            new SeasonFilter.WindWanted(new SeasonFilter.Span(0, 12), null));
    JsonSchemas.assertValid(
        SCHEMA, SeasonJson.toJson(SeasonBuilder.build(found.summaries(), filter), found, FOLDER));
  }
}
