package org.fadeline.report;

import java.time.format.DateTimeFormatter;
import org.fadeline.analysis.Rate;
import org.fadeline.model.Session;
import org.fadeline.stats.GammaPosterior;
import org.jspecify.annotations.Nullable;
import tools.jackson.core.util.DefaultIndenter;
import tools.jackson.core.util.DefaultPrettyPrinter;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.ObjectWriter;
import tools.jackson.databind.json.JsonMapper;
import tools.jackson.databind.node.ArrayNode;
import tools.jackson.databind.node.JsonNodeFactory;
import tools.jackson.databind.node.ObjectNode;

/** Builds JSON in which an undefined number is null, never NaN, and times carry their offset. */
final class JsonOut {
  private static final JsonNodeFactory NODES = JsonNodeFactory.instance;
  private static final JsonMapper MAPPER = JsonMapper.builder().build();

  private JsonOut() {}

  static ObjectNode object() {
    return NODES.objectNode();
  }

  static ArrayNode array() {
    return NODES.arrayNode();
  }

  /** Returns a gamma distribution of a rate per hour, or null. */
  static JsonNode gamma(@Nullable GammaPosterior pool) {
    if (pool == null) {
      return NODES.nullNode();
    }
    ObjectNode node = object();
    number(node, "shape", pool.shape());
    number(node, "rateHours", pool.rate());
    number(node, "perHour", pool.mean());
    return node;
  }

  /** Puts a number; null, NaN and infinity become null. */
  static void number(ObjectNode node, String name, @Nullable Double value) {
    if (value == null || !Double.isFinite(value)) {
      node.putNull(name);
    } else if (value == Math.rint(value) && Math.abs(value) < 1e15) {
      node.put(name, (long) (double) value);
    } else {
      node.put(name, value);
    }
  }

  /** Puts an instant as ISO 8601 with the session's offset, or null. */
  static void time(ObjectNode node, String name, Session session, @Nullable Long at) {
    if (at == null) {
      node.putNull(name);
    } else {
      node.put(name, DateTimeFormatter.ISO_OFFSET_DATE_TIME.format(session.clock(at)));
    }
  }

  /** Returns a rate with its limits, or null. */
  static JsonNode rate(@Nullable Rate rate, String name) {
    if (rate == null) {
      return NODES.nullNode();
    }
    ObjectNode node = object();
    number(node, name, rate.perHour());
    number(node, "low", rate.low());
    number(node, "high", rate.high());
    number(node, "level", rate.level());
    return node;
  }

  /** Returns the text, indented by two spaces, with line feeds on every system. */
  static String text(ObjectNode root) {
    DefaultIndenter indenter = new DefaultIndenter("  ", "\n");
    DefaultPrettyPrinter printer =
        new DefaultPrettyPrinter().withObjectIndenter(indenter).withArrayIndenter(indenter);
    ObjectWriter writer = MAPPER.writer().with(printer);
    return writer.writeValueAsString(root) + "\n";
  }
}
