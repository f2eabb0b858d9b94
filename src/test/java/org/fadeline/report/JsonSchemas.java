package org.fadeline.report;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;

import com.networknt.schema.InputFormat;
import com.networknt.schema.SchemaRegistry;
import com.networknt.schema.SpecificationVersion;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;

/** Holds what the program writes against the documented schemas (JSON Schema 2020-12). */
final class JsonSchemas {
  private JsonSchemas() {}

  static List<String> problems(String schema, String json) throws IOException {
    String text = Files.readString(Path.of("docs/schema", schema));
    return SchemaRegistry.withDefaultDialect(SpecificationVersion.DRAFT_2020_12)
        .getSchema(text, InputFormat.JSON)
        .validate(
            json,
            InputFormat.JSON,
            context -> context.executionConfig(config -> config.formatAssertionsEnabled(true)))
        .stream()
        .map(Object::toString)
        .toList();
  }

  static void assertValid(String schema, String json) throws IOException {
    assertEquals(List.of(), problems(schema, json));
  }

  static void assertInvalid(String schema, String json) throws IOException {
    assertFalse(problems(schema, json).isEmpty(), json);
  }
}
