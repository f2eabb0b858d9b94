package org.fadeline.report;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Set;
import org.fadeline.analysis.FeedPut;
import org.fadeline.analysis.Grade;
import org.fadeline.analysis.Review.WeightFrom;
import org.fadeline.analysis.season.Season;
import org.fadeline.analysis.season.SeasonBuilder;
import org.fadeline.analysis.season.SeasonFilter;
import org.fadeline.analysis.season.SessionSummary;
import org.fadeline.index.SeasonFolder;
import org.fadeline.model.Units;
import org.junit.jupiter.api.Test;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.json.JsonMapper;

/** The sessions that stand out and feed by line are told in JSON and text; sums done by hand. */
class SeasonTellsTest {
  private static final int[] FISH = {16, 16, 16, 25, 25, 25, 25, 36, 36, 36, 196};

  /** Sessions of one hour, 100 g a fish; the first six are fed twice, the others five times. */
  private static List<SessionSummary> sessions(int howMany) {
    List<SessionSummary> all = new ArrayList<>();
    for (int i = 0; i < howMany; i++) {
      int feeds = i < 6 ? 2 : 5;
      all.add(
          new SessionSummary(
              new SessionSummary.About(
                  "id" + i,
                  "Match",
                  LocalDate.of(2026, 5, i + 1),
                  true,
                  "Alder",
                  300,
                  SessionSummary.Day.UNKNOWN),
              new SessionSummary.Result(
                  Grade.FULL,
                  FISH[i],
                  100.0 * FISH[i],
                  new SessionSummary.Weights(WeightFrom.ESTIMATED, 0, null),
                  List.of(),
                  null),
              List.of(
                  new SessionSummary.LineSummary(
                      "short",
                      "short",
                      List.of(new SessionSummary.Hour(0, 60, FISH[i], 100.0 * FISH[i])),
                      List.of(),
                      new FeedPut(feeds, feeds, 0, Map.of(), Set.of()),
                      null))));
    }
    return all;
  }

  private static String json(Season season) throws IOException {
    SeasonFolder files = new SeasonFolder(List.of(), List.of(), List.of());
    String json = SeasonJson.toJson(season, files, Path.of("."));
    JsonSchemas.assertValid("season.schema.json", json);
    return json;
  }

  @Test
  void jsonTellsBoth() throws IOException {
    JsonNode root =
        JsonMapper.shared().readTree(json(SeasonBuilder.build(sessions(11), SeasonFilter.ALL)));
    JsonNode fish =
        root.get("standingOut")
            .valueStream()
            .filter(n -> "fish".equals(n.get("measure").asString()))
            .findFirst()
            .orElseThrow();
    assertEquals(10, fish.get("session").asInt());
    assertEquals(196, fish.get("value").asDouble());
    assertEquals(20.5, fish.get("lowerQuartile").asDouble());
    assertEquals(36, fish.get("upperQuartile").asDouble());
    assertEquals(11, fish.get("sessions").asInt());
    JsonNode feed = root.get("feedByLine").get(0);
    assertEquals("short", feed.get("line").asString());
    assertEquals(11, feed.get("sessions").size());
    assertEquals(0, feed.get("fedNotFished").asInt());
    assertEquals(2, feed.get("fewer").get("feedsTo").asInt());
    assertEquals(123 / 6.0, feed.get("fewer").get("fish").get("perHour").asDouble(), 1e-6);
    assertEquals(5, feed.get("more").get("feedsFrom").asInt());
    assertEquals(32_900 / 5.0, feed.get("more").get("weight").get("gPerHour").asDouble(), 1e-6);
  }

  @Test
  void textTellsBoth() {
    String text =
        SeasonText.toText(SeasonBuilder.build(sessions(11), SeasonFilter.ALL), Units.KG_AND_METRES);
    assertTrue(text.contains("Matches that stand out from the rest"), text);
    assertTrue(
        text.lines().anyMatch(l -> l.matches(" *11 May 2026 +Alder +fish an hour +196 .*36")),
        text);
    assertTrue(text.contains("Feed given and what came"), text);
    assertTrue(text.lines().anyMatch(l -> l.matches(" *short +2 +6 .*")), text);
    assertTrue(text.lines().anyMatch(l -> l.matches(" *5 +5 +6\\.58.*")), text);
  }

  @Test
  void tooFewSessionsNameNone() throws IOException {
    Season few = SeasonBuilder.build(sessions(9), SeasonFilter.ALL);
    assertEquals(0, JsonMapper.shared().readTree(json(few)).get("standingOut").size());
    assertFalse(SeasonText.toText(few, Units.KG_AND_METRES).contains("stand out"));
  }
}
