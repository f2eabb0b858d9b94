package org.fadeline.io;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.networknt.schema.Error;
import com.networknt.schema.InputFormat;
import com.networknt.schema.Schema;
import com.networknt.schema.SchemaRegistry;
import com.networknt.schema.SpecificationVersion;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.Provide;
import org.fadeline.model.EventKind;
import org.fadeline.model.Outcome;
import org.fadeline.model.Session;
import org.junit.jupiter.api.Test;

/** What is written fits the published schemas, checked by a JSON Schema validator (2020-12). */
class SchemaTest {
  private static final Schema SESSION = schema("session.schema.json");
  private static final Schema MAPPING = schema("csv-mapping.schema.json");
  private static final Path GOLDEN =
      Path.of("src/test/resources/org/fadeline/io/golden/version-1.session.json");

  private static Schema schema(String name) {
    try {
      return SchemaRegistry.withDefaultDialect(SpecificationVersion.DRAFT_2020_12)
          .getSchema(Files.readString(Path.of("docs/schema", name)), InputFormat.JSON);
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  private static List<Error> errors(Schema schema, String json) {
    return schema.validate(json, InputFormat.JSON);
  }

  @Provide
  Arbitrary<Session> sessions() {
    return Sessions.any();
  }

  @Property(tries = 100)
  void everySessionWrittenFits(@ForAll("sessions") Session session) {
    assertEquals(List.of(), errors(SESSION, SessionWriter.toJson(session)));
  }

  @Test
  void fullAndHandMadeSessionsFit() {
    assertEquals(List.of(), errors(SESSION, SessionWriter.toJson(Sessions.small())));
    assertEquals(List.of(), errors(SESSION, BadInput.GOOD_JSON));
  }

  @Test
  void aMappingFits() {
    CsvMapping mapping =
        new CsvMapping(
            Map.of("time", "Zeit"),
            Map.of("fisch", EventKind.LANDED),
            CsvMapping.DateOrder.DAY_MONTH_YEAR,
            ';',
            true);
    assertEquals(List.of(), errors(MAPPING, mapping.toJson()));
    assertEquals(List.of(), errors(MAPPING, CsvMapping.NONE.toJson()));
  }

  /** The schema and the reader were written apart; where one refuses a type, so does the other. */
  @Test
  void whatTheReaderRefusesByTypeOrRangeTheSchemaRefusesToo() {
    int compared = 0;
    for (BadInput bad : BadInput.json()) {
      boolean byType =
          List.of(
                  "text for a number",
                  "number for a text",
                  "null for a number",
                  "1e400",
                  "fraction",
                  "integer overflow",
                  "version 0",
                  "missing version",
                  "missing format",
                  "unknown kind",
                  "path out of the folder",
                  "null root",
                  "array root",
                  "scalar root")
              .contains(bad.kind());
      if (byType) {
        String json = new String(bad.bytes(), StandardCharsets.UTF_8);
        assertFalse(errors(SESSION, json).isEmpty(), bad.kind());
        compared++;
      }
    }
    assertEquals(14, compared, "a kind was named otherwise");
  }

  /** A file of version 1 as it was first written: it must read for ever. */
  @Test
  void theGoldenFileOfVersionOneReads() throws IOException {
    String json = Files.readString(GOLDEN);
    ReadResult result = SessionReader.read(GOLDEN);
    assertEquals(List.of(), result.report().problems());
    Outcome now = Sessions.small().outcome();
    Session first =
        Sessions.small().withOutcome(new Outcome(now.weighIn(), now.result(), now.media()));
    assertEquals(first, result.session().orElseThrow());
    assertEquals(json, SessionWriter.toJson(first));
    assertTrue(errors(SESSION, json).isEmpty());
  }
}
