package org.fadeline.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Duration;
import java.time.OffsetDateTime;
import java.util.Iterator;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.ObjectMapper;

/**
 * The review held against a second reading of the methods, written apart from the program in
 * another language with numpy and scipy (src/test/python/second_reading.py): to 1e-6 where there is
 * a closed form; to 0.03 in a probability and 3 min in a moment where either draws.
 */
class SecondReadingTest extends CommandHarness {
  private static final Path READING = Path.of("src/test/resources/second-reading");
  private static final ObjectMapper JSON = new ObjectMapper();
  private static final double EXACT = 1e-6;

  static List<String> matches() throws IOException {
    return JSON.readTree(READING.resolve("expected.json").toFile()).properties().stream()
        .map(Map.Entry::getKey)
        .toList();
  }

  @ParameterizedTest
  @MethodSource("matches")
  void bothReadingsAgree(String match) throws IOException {
    String file = READING.resolve(match + ".csv").toString();
    assertEquals(0, run("review", file, "--date", "2026-06-06", "--json", "-"), this::err);
    JsonNode review = JSON.readTree(out());
    OffsetDateTime allIn = time(review.at("/session/allIn"));
    JsonNode expected =
        JSON.readTree(Files.readString(READING.resolve("expected.json"))).get(match);
    for (JsonNode line : review.get("lines")) {
      String name = line.get("name").asString();
      JsonNode read = expected.get(name);
      assertEquals(read != null, line.get("fishedMinutes").asDouble() > 0, name + " fished");
      if (read == null) {
        continue;
      }
      spells(name, read.get("spells"), line.get("spells"), allIn);
      rate(name + " fish", read.get("fishRate"), line.get("fishRate"), "perHour");
      if (!read.get("weightRate").isNull()) {
        rate(name + " weight", read.get("weightRate"), line.get("weightRate"), "gPerHour");
      }
      firstBites(name, read.get("firstBites"), line.at("/firstBite/rows"));
      fades(name, read.get("fades"), line.get("fades"), allIn);
    }
  }

  private static void spells(String line, JsonNode read, JsonNode spells, OffsetDateTime allIn) {
    assertEquals(read.size(), spells.size(), line + " spells");
    for (int i = 0; i < read.size(); i++) {
      String what = line + " spell " + i;
      JsonNode spell = spells.get(i);
      assertEquals(read.get(i).get(0).asDouble(), seconds(allIn, spell.get("from")), what);
      assertEquals(read.get(i).get(1).asDouble(), seconds(allIn, spell.get("to")), what);
      near(what + " fished", read.get(i).get(2), spell.get("fishedMinutes"));
      near(what + " bait", read.get(i).get(3), spell.get("baitMinutes"));
      assertEquals(read.get(i).get(4).asInt(), spell.get("bites").asInt(), what + " bites");
    }
  }

  private static void rate(String what, JsonNode read, JsonNode rate, String value) {
    near(what, read.get(0), rate.get(value));
    near(what + " low", read.get(1), rate.get("low"));
    near(what + " high", read.get(2), rate.get("high"));
  }

  private static void firstBites(String line, JsonNode read, JsonNode rows) {
    assertEquals(read.size(), rows.size(), line + " stretches after feeding");
    Iterator<JsonNode> found = rows.iterator();
    for (JsonNode row : read) {
      JsonNode stretch = found.next();
      near(line + " entry", row.get(0), stretch.get("entry"));
      near(line + " exit", row.get(1), stretch.get("exit"));
      assertEquals(row.get(2).asBoolean(), stretch.get("bite").asBoolean(), line + " " + row);
    }
  }

  private static void fades(String line, JsonNode read, JsonNode fades, OffsetDateTime allIn) {
    assertEquals(read.size(), fades.size(), line + " spells long enough for a fade");
    for (int i = 0; i < read.size(); i++) {
      JsonNode fade = fades.get(i);
      String what = line + " fade of spell " + fade.get("spell");
      assertEquals(read.get(i).get(0).asInt(), fade.get("spell").asInt(), what);
      double probability = read.get(i).get(1).asDouble();
      assertEquals(probability, fade.get("probability").asDouble(), 0.03, what);
      near(what + " bunching", read.get(i).get(3), fade.get("bunching"));
      if (probability >= 0.5) {
        JsonNode points = read.get(i).get(2);
        minutes(what + " low", points.get(0), fade.get("low"), allIn);
        minutes(what + " at", points.get(1), fade.get("at"), allIn);
        minutes(what + " high", points.get(2), fade.get("high"), allIn);
      }
    }
  }

  private static void minutes(String what, JsonNode read, JsonNode at, OffsetDateTime allIn) {
    assertEquals(read.asDouble() / 60, seconds(allIn, at) / 60, 3, what + ", min since all in");
  }

  private static void near(String what, JsonNode read, JsonNode found) {
    double value = read.asDouble();
    assertEquals(value, found.asDouble(), EXACT * Math.max(1, Math.abs(value)), what);
  }

  private static double seconds(OffsetDateTime allIn, JsonNode at) {
    return Duration.between(allIn, time(at)).toMillis() / 1000.0;
  }

  private static OffsetDateTime time(JsonNode at) {
    return OffsetDateTime.parse(at.asString());
  }
}
