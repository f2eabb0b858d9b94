package org.fadeline.report;

import static java.util.Objects.requireNonNull;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Path;
import java.util.List;
import org.fadeline.analysis.Rate;
import org.fadeline.analysis.ReviewSettings;
import org.fadeline.analysis.Reviewer;
import org.fadeline.analysis.SentenceText;
import org.fadeline.analysis.StayOrGo;
import org.fadeline.analysis.compare.Comparer;
import org.fadeline.analysis.compare.Comparison;
import org.fadeline.analysis.compare.Comparison.PairedLines;
import org.fadeline.analysis.compare.Comparison.Side;
import org.fadeline.analysis.compare.ComparisonSetup;
import org.fadeline.analysis.compare.RatePair;
import org.fadeline.model.Session;
import org.fadeline.model.Units;
import org.junit.jupiter.api.Test;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.ObjectMapper;

/** What the window shows of two sessions is in the text and in the JSON too. */
class CompareTextTest {
  private static final Comparison COMPARISON = compare();
  private static final String TEXT =
      CompareText.toText(COMPARISON, Units.LB_OZ_AND_METRES).replaceAll("\\s+", " ");

  private static Comparison compare() {
    Session first =
        ReviewSchemaTest.read(Path.of("sample-sessions/quillthorn-first-open.session.json"));
    Session second =
        ReviewSchemaTest.read(Path.of("sample-sessions/quillthorn-second-open.session.json"));
    return Comparer.compare(
        Reviewer.review(first, ReviewSettings.DEFAULT),
        Reviewer.review(second, ReviewSettings.DEFAULT),
        ComparisonSetup.usual(first, second),
        Units.LB_OZ_AND_METRES);
  }

  @Test
  void everyStayAndPlaceIsTold() {
    int stays = 0;
    for (PairedLines pair : COMPARISON.lines().pairs()) {
      for (Side side : List.of(pair.first(), pair.second())) {
        for (StayOrGo stay : side.stays()) {
          String told = stay.wording().text().replaceAll("\\s+", " ");
          assertTrue(TEXT.contains(told), told);
          stays++;
        }
        Double distance = side.line().line().place().distanceM();
        if (distance != null) {
          assertTrue(TEXT.contains(Units.LB_OZ_AND_METRES.distance(distance)), "" + distance);
        }
      }
    }
    assertTrue(stays > 3, "stays: " + stays);
  }

  /** Every rate with its limits, and what was fed, as in the JSON and on the screen. */
  @Test
  void everyRateHasItsLimitsAndEveryFeedItsBaits() {
    SentenceText words = new SentenceText(COMPARISON.first().session(), Units.LB_OZ_AND_METRES);
    int told = 0;
    for (PairedLines pair : COMPARISON.lines().pairs()) {
      for (RatePair.Side side :
          List.of(
              pair.rates().fish().first(),
              pair.rates().fish().second(),
              requireNonNull(pair.rates().bites()).first())) {
        Rate rate = requireNonNull(side.rate());
        String expected = SentenceText.rate(rate).replace(" an hour", "");
        assertTrue(expected.matches("[0-9.]+ \\([0-9.]+–[0-9.]+\\)"), expected);
        assertTrue(TEXT.contains(expected), expected);
        told++;
      }
      Rate weight = requireNonNull(pair.rates().weight().second().rate());
      String expected = words.weightRate(weight).replace(" an hour", "");
      assertTrue(expected.contains("–"), expected);
      assertTrue(TEXT.contains(expected), expected);
      for (Side side : List.of(pair.first(), pair.second())) {
        side.feed().baits().forEach(bait -> assertTrue(TEXT.contains(bait), bait));
      }
    }
    assertTrue(told >= 15);
  }

  @Test
  void theRunningCatchEndsAtTheCatchOfTheMatches() {
    int first = COMPARISON.first().summary().caught().landed();
    int second = COMPARISON.second().summary().caught().landed();
    assertTrue(TEXT.contains("Running catch, first less second"), TEXT);
    assertTrue(TEXT.contains(String.format("%+d fish", first - second)), TEXT);
    var end = COMPARISON.running().at(Double.MAX_VALUE);
    assertEquals(first - second, end.fishDifference());
    var before = COMPARISON.running().at(-Double.MAX_VALUE);
    assertEquals(null, before.first());
  }

  @Test
  void theJsonHoldsPlacesCurvesSpellsFadesAndStays() {
    JsonNode root = new ObjectMapper().readTree(CompareJson.toJson(COMPARISON));
    int rows = 0;
    int fades = 0;
    for (JsonNode pair : root.get("pairs")) {
      for (String which : List.of("first", "second")) {
        JsonNode side = pair.get(which);
        assertTrue(side.get("distanceM").isNumber(), side::toString);
        assertTrue(side.get("spells").isArray() && side.get("stayOrGo").isArray());
        assertTrue(side.get("firstBite").get("curve").isArray());
        rows += side.get("firstBite").get("episodes").asInt();
        fades += side.get("fades").size();
      }
      assertTrue(pair.get("fishRate").has("lowDays") && pair.has("logRank"));
    }
    assertTrue(rows > 0 && fades > 0, rows + " feeds fished over, " + fades + " fades");
    assertTrue(root.get("running").get("points").size() > 10);
  }
}
