package org.fadeline.io.notes;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertInstanceOf;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.time.Instant;
import java.time.LocalDate;
import java.time.LocalTime;
import java.time.ZoneId;
import java.util.List;
import org.fadeline.io.Problem;
import org.fadeline.model.EventKind;
import org.fadeline.model.Feed;
import org.fadeline.model.Fish;
import org.fadeline.model.Line;
import org.fadeline.model.SessionEvent;
import org.fadeline.model.Units.Weight;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

class ShorthandTest {
  private static final double OUNCE = 453.59237 / 16;
  private static final List<Line> LINES =
      List.of(
          Line.named("short", "short"),
          Line.named("pole", "pole 11 m"),
          Line.named("left", "left edge"),
          Line.named("right", "right edge"),
          Line.named("caster", "caster 5 m"));
  private static final Shorthand.Frame FRAME =
      new Shorthand.Frame(
          LocalDate.of(2026, 6, 20),
          ZoneId.of("Europe/London"),
          LocalTime.of(10, 0),
          Weight.LB_OZ,
          Vocabulary.of(LINES));

  private static Shorthand.Read read(String text) {
    return Shorthand.read("sheet.txt", text, FRAME);
  }

  private static SessionEvent one(String line) {
    Shorthand.Read read = read(line);
    assertEquals(List.of(), read.report().problems(), line);
    assertEquals(1, read.events().size());
    return read.events().get(0).event();
  }

  @Test
  void readsAFeed() {
    SessionEvent.Fed fed =
        assertInstanceOf(SessionEvent.Fed.class, one("10:42 short fed 10 pellets"));
    assertEquals("short", fed.lineId());
    assertEquals(Instant.parse("2026-06-20T09:42:00Z").toEpochMilli(), fed.at());
    assertEquals(
        new Feed("pellets", new Feed.Amount(10, Feed.Unit.PIECES), null, null), fed.feed());
  }

  @ParameterizedTest
  @ValueSource(
      strings = {
        "10:51 short landed carp 8lb 4oz",
        "10:51 landed carp 8lb 4oz short",
        "10:51 carp 8lb 4oz landed short",
        "10:51 8-4 carp short landed",
        "10:51 short landed carp 8 4",
        "10:51 SHORT Landed Carp 8LB 4OZ",
        "10.51 short landed carp, eight pound four",
        "10:51:00 on short: landed carp of 8 lb 4 oz",
        "2026-06-20T10:51 short landed carp 8lb 4oz"
      })
  void readsAFishInFreeWordOrder(String line) {
    SessionEvent.Landed landed = assertInstanceOf(SessionEvent.Landed.class, one(line));
    assertEquals("short", landed.lineId());
    assertEquals(Instant.parse("2026-06-20T09:51:00Z").toEpochMilli(), landed.at());
    assertEquals(1, landed.fish().count());
    assertEquals("carp", landed.fish().species());
    assertEquals(132 * OUNCE, grams(landed.fish()), 1e-6);
  }

  private static double grams(Fish fish) {
    Double grams = fish.grams();
    return grams == null ? Double.NaN : grams;
  }

  @ParameterizedTest
  @CsvSource({
    "10:00 all in,all-in,",
    "15:00 all-out,all-out,",
    "10:05 cast pole,cast,pole",
    "10:06 11 m bite,bite,pole",
    "10:07 left lost carp,lost,left",
    "10:08 right margin foul 5lb,foul,right",
    "10:09 caster landed roach 2oz,landed,caster",
    "10:10 fed casters short,fed,short",
    "10:11 move short dead,move,short",
    "10:12 off tangle,off,",
    "10:13 stopped lightning,stopped,",
    "10:14 resumed,resumed,",
    "10:15 count 4 9lb,count,",
    "10:16 short change corn,change,short",
    "10:17 net 2,net,",
    "10:18 indication left,indication,left",
    "10:19 sign fizzing left,sign,left",
    "10:20 neighbour peg 16 landed carp 4lb,neighbour,",
    "10:21 weather rain,weather,",
    "10:22 note landed my sandwiches short of time,note,",
    "10:23 hooked short,hooked,short",
    "10:24 missed one short,bite,short"
  })
  void readsEveryEventWord(String text, String word, String line) {
    SessionEvent event = one(text);
    assertEquals(word, event.kind().word());
    if (event.kind() != EventKind.NOTE) {
      assertEquals(line, event.lineId());
    }
  }

  @Test
  void readsCountsNetsReasonsAndPatterns() {
    SessionEvent.Count count = assertInstanceOf(SessionEvent.Count.class, one("10:15 count 4 9lb"));
    assertEquals(4, count.fish().count());
    assertEquals(144 * OUNCE, grams(count.fish()), 1e-6);
    assertEquals(2, assertInstanceOf(SessionEvent.Net.class, one("11:00 net 2")).net());
    assertEquals(
        "dead", assertInstanceOf(SessionEvent.Move.class, one("11:00 short move dead")).reason());
    SessionEvent.Fed fed =
        assertInstanceOf(
            SessionEvent.Fed.class, one("11:00 left fed 6 6mm pellets every 40 seconds"));
    assertEquals("6 mm pellets", fed.feed().bait());
    assertEquals(new Feed.Pattern(40, null), fed.feed().pattern());
    assertEquals("right", read("11:00 move left to right").events().get(0).towards());
  }

  @Test
  void plainNumbersFollowTheUnitAskedFor() {
    Shorthand.Frame kilos =
        new Shorthand.Frame(FRAME.date(), FRAME.zone(), null, Weight.KG, FRAME.vocabulary());
    SessionEvent event =
        Shorthand.read("s", "10:51 short landed carp 3.7", kilos).events().get(0).event();
    assertEquals(3700, grams(((SessionEvent.Landed) event).fish()), 1e-9);
  }

  @Test
  void aClockTimeLongBeforeAllInIsAfterMidnight() {
    Shorthand.Frame night =
        new Shorthand.Frame(FRAME.date(), FRAME.zone(), null, Weight.LB_OZ, FRAME.vocabulary());
    List<ProposedEvent> events =
        Shorthand.read("s", "22:00 all-in\n23:50 short bite\n00:10 short bite\n", night).events();
    assertEquals(Instant.parse("2026-06-20T23:10:00Z").toEpochMilli(), events.get(2).event().at());
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "short landed carp|does not start with a time|1|time",
        "25:10 short landed carp|is no time of the day|1|time",
        "10:5x short landed carp|is not a time|1|time",
        "10:51|a time alone|6|event",
        "10:51 blah blah|names no event|7|event",
        "10:51 short hooked lost|several events|20|event",
        "10:51 short edgeless edge landed carp|could be several lines|22|line",
        "10:51 short landed carp 8.4|is no plain weight|25|weight_g",
        "2026-13-40T10:51 short bite|no date and time|1|time"
      })
  void saysWhatIsWrongAndWhereAndKeepsTheRest(String line, String what, int column, String field) {
    for (String before : List.of("", "   ", "\t")) {
      Shorthand.Read read = read("10:40 short bite\n" + before + line + "\n10:59 short bite\n");
      assertEquals(2, read.events().size());
      assertEquals(1, read.report().errors());
      Problem problem = read.report().problems().get(0);
      assertEquals(2, problem.row());
      assertTrue(problem.what().contains(what), problem.what());
      assertEquals(before.length() + column, problem.column(), problem.toString());
      assertEquals(field, problem.field());
    }
  }

  @Test
  void anUnknownLineIsKeptAsANoteWithAWarning() {
    Shorthand.Read read = read("10:40 island landed carp 4lb");
    assertEquals(1, read.report().warnings());
    Problem problem = read.report().problems().get(0);
    assertEquals("sheet.txt:1:7: warning: line: ", problem.toString().substring(0, 30));
    assertEquals("island", read.events().get(0).event().note());
  }

  @Test
  void passesOverEmptyLinesAndRemarks() {
    assertEquals(1, read("# my sheet\n\n  10:40 short bite  \r\n").events().size());
  }

  @ParameterizedTest
  @ValueSource(strings = {"dead", "resting", "plan", "weather", "neighbour"})
  void aMoveCarriesEachOfTheUsualReasons(String reason) {
    assertTrue(SessionEvent.Move.USUAL_REASONS.contains(reason));
    SessionEvent.Move move =
        assertInstanceOf(SessionEvent.Move.class, one("10:55 short move " + reason));
    assertEquals(reason, move.reason());
    assertEquals("short", move.lineId());
  }
}
