package org.fadeline.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import org.fadeline.demo.DemoMatch;
import org.fadeline.demo.DemoWaters;
import org.fadeline.io.SessionWriter;
import org.junit.jupiter.api.Test;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.json.JsonMapper;

/** {@code season} as a caller sees it. */
class SeasonCommandTest extends CommandHarness {
  private void copy(String sample) throws IOException {
    Files.copy(Path.of("sample-sessions", sample), folder.resolve(sample));
  }

  @Test
  void brokenFilesAreToldAndTheRestIsShown() throws IOException {
    copy("quillthorn-first-open.session.json");
    copy("quillthorn-second-open.session.json");
    copy("evening-moves-and-fish.session.json");
    Files.writeString(folder.resolve("torn.session.json"), "{");
    assertEquals(0, run("season", folder.toString(), "--json", "-"));
    assertTrue(err().contains("torn.session.json:1:"), err());
    JsonNode root = JsonMapper.builder().build().readTree(out());
    assertEquals("fadeline-season", root.get("format").asString());
    assertEquals(3, root.get("sessions").size());
    assertEquals("torn.session.json", root.get("broken").get(0).get("file").asString());
    int fish = 0;
    for (JsonNode session : root.get("sessions")) {
      fish += session.get("fish").asInt();
    }
    double inHours = 0;
    for (JsonNode line : root.get("lines")) {
      double sum = 0;
      for (JsonNode hour : line.get("hours")) {
        sum += hour.get("fish").get("amount").asDouble();
      }
      assertEquals(line.get("whole").get("fish").get("amount").asDouble(), sum, 1e-9);
      inHours += sum;
    }
    // Fish that open a spell without a cast are left out of rates.
    assertTrue(inHours <= fish && inHours > fish - 10, inHours + " of " + fish);
  }

  @Test
  void aFilterLeavesSessionsOutAndIsToldInTheJson() throws IOException {
    copy("quillthorn-first-open.session.json");
    copy("evening-moves-and-fish.session.json");
    assertEquals(0, run("season", folder.toString(), "--json", "-"), err());
    JsonNode all = JsonMapper.builder().build().readTree(out());
    assertEquals(2, all.get("sessions").size());
    String water = all.get("sessions").get(0).get("water").asString();
    assertEquals(
        0,
        run(
            "season",
            folder.toString(),
            "--json",
            "-",
            "--water",
            water,
            "--month",
            "1,2,3,4,5,6,7,8,9,10,11,12"),
        err());
    JsonNode one = JsonMapper.builder().build().readTree(out());
    assertEquals(1, one.get("sessions").size());
    assertEquals(12, one.get("parameters").get("filter").get("months").size());
    assertEquals(2, run("season", folder.toString(), "--month", "13"));
    assertTrue(err().contains("1 to 12"), err());
    assertEquals(2, run("season", folder.toString(), "--water-temp", "14..8"));
    assertTrue(err().contains("8..14"), err());
    assertEquals(2, run("season", folder.toString(), "--water-temp", "8..9..14"));
    assertEquals(2, run("season", folder.toString(), "--wind-from", "up"));
  }

  @Test
  void figuresAreWrittenOnceEach() throws IOException {
    copy("evening-moves-and-fish.session.json");
    Path figures = folder.resolve("figures");
    assertEquals(0, run("season", folder.toString(), "--figures", figures.toString()), err());
    assertTrue(out().contains("24 files of figures written"), out());
    assertTrue(Files.size(figures.resolve("season-line-by-hour.svg")) > 1000);
  }

  @Test
  void tablesAreWrittenUnderTheFilter() throws IOException {
    copy("quillthorn-first-open.session.json");
    copy("evening-moves-and-fish.session.json");
    Path tables = folder.resolve("tables");
    assertEquals(
        0,
        run("season", folder.toString(), "--tables", tables.toString(), "--line", "margin"),
        err());
    assertTrue(out().contains("9 tables written"), out());
    for (String row :
        Files.readAllLines(tables.resolve("season-line-by-hour.csv")).stream().skip(1).toList()) {
      assertTrue(row.startsWith("margin,"), row);
    }
    assertTrue(Files.exists(tables.resolve("season-feed-by-line.csv")));
  }

  /** A CSV of clock times tells no date: the one assumed must not go unsaid, kept or not. */
  @Test
  void whatWasAssumedOfAFileIsTold() throws IOException {
    Files.writeString(
        folder.resolve("typed.csv"), "time,event,line\n10:00,cast,short\n10:20,landed,short\n");
    String index = folder.resolve("kept").toString();
    for (int run = 0; run < 2; run++) {
      assertEquals(0, run("season", folder.toString(), "--json", "-", "--index", index));
      assertTrue(err().contains(folder + "/typed.csv:"), err());
      assertTrue(err().contains("date"), err());
      JsonNode session = JsonMapper.builder().build().readTree(out()).get("sessions").get(0);
      assertFalse(session.get("warnings").isEmpty());
    }
    // Another date asked for: what was kept under the old one is not taken.
    assertEquals(
        0,
        run("season", folder.toString(), "--json", "-", "--index", index, "--date", "2026-06-20"));
    JsonNode session = JsonMapper.builder().build().readTree(out()).get("sessions").get(0);
    assertEquals("2026-06-20", session.get("date").asString());
  }

  @Test
  void wordsAJsonFileAndAnIndexTogether() throws IOException {
    copy("evening-moves-and-fish.session.json");
    Path json = folder.resolve("out/season.json");
    Path index = folder.resolve("out/season.index");
    String[] args = {
      "season", folder.toString(), "--json", json.toString(), "--index", index.toString()
    };
    assertEquals(0, run(args), err());
    assertTrue(out().contains("1 match."), out());
    assertFalse(out().contains("Exception"));
    String first = Files.readString(json);
    assertTrue(Files.size(index) > 500);
    assertEquals(0, run(args), err());
    assertEquals(first, Files.readString(json));
  }

  @Test
  void anEmptyFolderIsDoneAndAMissingOneIsAFault() throws IOException {
    assertEquals(0, run("season", folder.toString()));
    assertEquals("No match here.\n", out());
    assertEquals(1, run("season", folder.resolve("none").toString()));
    assertTrue(err().contains("no such folder"), err());
    assertEquals(2, run("season"));
  }

  @Test
  void aReviewLearnsFromTheOtherSessionsWhereAsked() throws IOException {
    copy("quillthorn-first-open.session.json");
    copy("quillthorn-second-open.session.json");
    String file = folder.resolve("quillthorn-first-open.session.json").toString();
    assertEquals(0, run("review", file, "--json", "-"));
    assertTrue(
        JsonMapper.builder().build().readTree(out()).get("parameters").get("learned").isNull());
    assertEquals(0, run("review", file, "--season", folder.toString(), "--json", "-"));
    JsonNode review = JsonMapper.builder().build().readTree(out());
    assertEquals(1, review.get("parameters").get("learned").get("sessions").asInt());
    assertEquals(0, run("review", file, "--season", folder.toString()));
    assertTrue(out().contains("1 other match taught"), out());
  }

  @Test
  void aReviewWithNothingToLearnFromSaysSo() throws IOException {
    copy("quillthorn-first-open.session.json");
    String file = folder.resolve("quillthorn-first-open.session.json").toString();
    assertEquals(1, run("review", file, "--season", folder.toString()));
    assertTrue(err().contains("no other session to learn from"), err());
    assertEquals(1, run("review", file, "--season", folder + "/none"));
    assertTrue(err().contains("no such folder"), err());
  }

  @Test
  void aComparisonLearnsHowMuchDaysDifferWhereAsked() throws IOException {
    for (int seed = 1; seed <= 9; seed++) {
      Files.writeString(
          folder.resolve("day" + seed + ".session.json"),
          SessionWriter.toJson(DemoMatch.generate(DemoWaters.waterA(), DemoWaters.planA(), seed)));
    }
    String first = folder.resolve("day1.session.json").toString();
    String second = folder.resolve("day2.session.json").toString();
    assertEquals(0, run("compare", first, second, "--json", "-"));
    JsonNode usual = JsonMapper.builder().build().readTree(out());
    assertTrue(usual.get("whole").get("fishRate").get("p").isNull());
    assertEquals(0, run("compare", first, second, "--season", folder.toString(), "--json", "-"));
    JsonNode learned = JsonMapper.builder().build().readTree(out());
    assertTrue(learned.get("whole").get("fishRate").get("p").isNumber(), out());
    assertEquals(
        7, learned.get("parameters").get("firstReview").get("learned").get("sessions").asInt());
  }
}
