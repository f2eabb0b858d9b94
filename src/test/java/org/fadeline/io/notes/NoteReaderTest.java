package org.fadeline.io.notes;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertInstanceOf;
import static org.junit.jupiter.api.Assertions.assertTimeoutPreemptively;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.time.Duration;
import java.util.List;
import java.util.Random;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.StringLength;
import org.fadeline.model.Feed;
import org.fadeline.model.Fish;
import org.fadeline.model.Line;
import org.fadeline.model.SessionEvent;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

class NoteReaderTest {
  private static final double POUND = 453.59237;
  private static final NoteReader READER =
      new NoteReader(
          Vocabulary.of(
              List.of(
                  Line.named("short", "short"),
                  Line.named("pole", "pole 11 m"),
                  Line.named("left", "left edge"),
                  Line.named("right", "right edge"))));

  /** Pounds of 453.59237 g and sixteenths of them (Weights and Measures Act 1985, Schedule 1). */
  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "landed a carp, eight pound four|8.25",
        "landed a carp, 8lb 4oz|8.25",
        "landed a carp 8lb4oz|8.25",
        "landed a carp, 8-4|8.25",
        "landed a carp eight pounds and four ounces|8.25",
        "landed a pound and a half skimmer|1.5",
        "landed a two and a half pound carp|2.5",
        "landed half a pound of roach|0.5",
        "landed a four ounce roach|0.25",
        "landed a roach, three quarters of a pound|0.75",
        "landed a four pounder|4",
        "landed two four pounders|8",
        "landed two carp, both about two pound|4",
        "landed two carp for seven pound|7",
        "landed one, four to five pound|4.5",
        "landed one, four pound, no, five pound|5",
        "landed one of twenty two pound eight|22.5"
      })
  void weightsInPounds(String note, double pounds) {
    assertEquals(pounds * POUND, grams(note), 1e-6);
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "landed one of three point seven kilos|3700",
        "landed a carp 3.7kg|3700",
        "landed one, two kilo five hundred|2500",
        "landed a kilo and a half bream|1500",
        "landed a perch, 300 grams|300"
      })
  void weightsInKilograms(String note, double grams) {
    assertEquals(grams, grams(note), 1e-6);
  }

  private static double grams(String note) {
    List<ProposedEvent> events = READER.read(note, 0, "p");
    assertEquals(1, events.size(), note);
    Fish fish = events.get(0).event().fishOrNull();
    Double grams = fish == null ? null : fish.grams();
    return grams == null ? Double.NaN : grams;
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "landed one at eleven metres|pole",
        "landed one on the 11 m line|pole",
        "landed one on the eleven metre pole|pole",
        "landed one on the pole|pole",
        "landed one from the left hand margin|left",
        "landed one down the edge to the right|right",
        "landed one short|short",
        "landed one on the edge|",
        "landed one, been a long time coming|",
        "landed one on the waggler|waggler"
      })
  void linesAsAnglersSayThem(String note, String line) {
    SessionEvent event = READER.read(note, 0, "p").get(0).event();
    assertEquals(line, event.lineId());
  }

  @Test
  void whatCouldBeSeveralLinesAndDoubtLowerTheConfidence() {
    double sure = READER.read("landed one on the left edge", 0, "p").get(0).confidence();
    assertTrue(READER.read("landed one on the edge", 0, "p").get(0).confidence() < sure);
    assertTrue(
        READER.read("landed one on the left edge I think", 0, "p").get(0).confidence() < sure);
  }

  @Test
  void idsAreUniqueAndTheNoteIsKept() {
    List<ProposedEvent> events = READER.read(" missed two bites, landed one ", 5, "n7-");
    assertEquals(
        List.of("n7-1", "n7-2", "n7-3"), events.stream().map(e -> e.event().id()).toList());
    assertTrue(events.stream().allMatch(e -> e.event().at() == 5));
    assertEquals("missed two bites, landed one", events.get(0).event().note());
  }

  @Property(tries = 300)
  boolean anyTextIsReadWithoutFault(@ForAll @StringLength(max = 200) String note) {
    return READER.read(note, 0, "p").stream()
        .allMatch(e -> e.confidence() > 0 && e.confidence() < 1);
  }

  /** Words of the trade in any order, as long as a cue may be: bounded time, no fault. */
  @Test
  void longRunsOfTradeWordsEndSoon() {
    String[] words =
        ("landed a an another one two carp skimmer pound four of the on short left edge fed in "
                + "pellets pot bite missed going to moved off net cast lost it , . then and about "
                + "every seconds forty out back it 's clicker up hooked swirl float went under no")
            .split(" ", -1);
    Random random = new Random(11);
    for (int i = 0; i < 40; i++) {
      StringBuilder note = new StringBuilder();
      int kinds = i < 20 ? words.length : 1 + random.nextInt(3);
      int from = random.nextInt(words.length);
      while (note.length() < CueText.LONGEST) {
        note.append(words[(from + random.nextInt(kinds)) % words.length]).append(' ');
      }
      assertTimeoutPreemptively(
          Duration.ofSeconds(10), () -> READER.read(note.toString(), 0, "p").size());
    }
  }

  @ParameterizedTest
  @ValueSource(
      strings = {
        "fed 6 pellets every 40s",
        "fed 6 pellets every 40 s",
        "fed 6 pellets every 40sec"
      })
  void readsAJoinedUnitOfTime(String note) {
    var events = new NoteReader(Vocabulary.of(List.of())).read(note, 0, "t");
    var fed = assertInstanceOf(SessionEvent.Fed.class, events.get(0).event());
    assertEquals(new Feed.Pattern(40, null), fed.feed().pattern());
  }
}
