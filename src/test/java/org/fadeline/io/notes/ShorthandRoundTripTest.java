package org.fadeline.io.notes;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertInstanceOf;

import java.time.LocalDate;
import java.time.LocalTime;
import java.time.ZoneId;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Locale;
import java.util.Random;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.IntRange;
import org.fadeline.io.Problem;
import org.fadeline.model.Feed;
import org.fadeline.model.Fish;
import org.fadeline.model.Line;
import org.fadeline.model.SessionEvent;
import org.fadeline.model.Units.Weight;

/** Any feed or fish written in shorthand is read back, in whatever order its words stand. */
class ShorthandRoundTripTest {
  private static final double OUNCE = 453.59237 / 16;
  private static final List<String> NAMES = List.of("short", "shallow", "left edge", "pole 11 m");
  private static final List<String> SPECIES = List.of("carp", "skimmer", "roach", "perch", "F1");
  private static final List<String> BAITS = List.of("pellets", "maggots", "casters", "corn");
  private static final ZoneId ZONE = ZoneId.of("Europe/London");

  private static Shorthand.Read read(String text) {
    List<Line> lines =
        NAMES.stream().map(name -> Line.named(name.replace(' ', '-'), name)).toList();
    return Shorthand.read(
        "sheet.txt",
        text,
        new Shorthand.Frame(
            LocalDate.of(2026, 6, 20),
            ZONE,
            LocalTime.of(10, 0),
            Weight.LB_OZ,
            Vocabulary.of(lines)));
  }

  private static SessionEvent one(LocalTime time, List<String> words, long order) {
    List<String> mixed = new ArrayList<>(words);
    Collections.shuffle(mixed, new Random(order));
    String line = time + " " + String.join(", ", mixed);
    Shorthand.Read read = read(line);
    assertEquals(List.of(), read.report().problems(), line);
    assertEquals(1, read.events().size(), line);
    SessionEvent event = read.events().get(0).event();
    long at = LocalDate.of(2026, 6, 20).atTime(time).atZone(ZONE).toInstant().toEpochMilli();
    assertEquals(at, event.at());
    return event;
  }

  @Property(tries = 500)
  void aFishIsReadBack(
      @ForAll @IntRange(min = 0, max = 299) int minute,
      @ForAll @IntRange(min = 0, max = 3) int name,
      @ForAll @IntRange(min = 0, max = 4) int species,
      @ForAll @IntRange(min = 1, max = 40) int pounds,
      @ForAll @IntRange(min = 1, max = 15) int ounces,
      @ForAll long order) {
    String weight = String.format(Locale.ROOT, "%dlb %doz", pounds, ounces);
    SessionEvent event =
        one(
            LocalTime.of(10, 0).plusMinutes(minute),
            List.of(NAMES.get(name), "landed", SPECIES.get(species), weight),
            order);
    Fish fish = assertInstanceOf(SessionEvent.Landed.class, event).fish();
    assertEquals(NAMES.get(name).replace(' ', '-'), event.lineId());
    assertEquals(1, fish.count());
    assertEquals(SPECIES.get(species), fish.species());
    Double grams = fish.grams();
    assertEquals((pounds * 16 + ounces) * OUNCE, grams == null ? Double.NaN : grams, 1e-6);
  }

  @Property(tries = 500)
  void aFeedIsReadBack(
      @ForAll @IntRange(min = 0, max = 299) int minute,
      @ForAll @IntRange(min = 0, max = 3) int name,
      @ForAll @IntRange(min = 0, max = 3) int bait,
      @ForAll @IntRange(min = 1, max = 200) int count,
      @ForAll @IntRange(min = 5, max = 600) int every,
      @ForAll long order) {
    SessionEvent event =
        one(
            LocalTime.of(10, 0).plusMinutes(minute),
            List.of(NAMES.get(name), "fed", count + " " + BAITS.get(bait), "every " + every + "s"),
            order);
    Feed feed = assertInstanceOf(SessionEvent.Fed.class, event).feed();
    assertEquals(NAMES.get(name).replace(' ', '-'), event.lineId());
    assertEquals(
        new Feed(
            BAITS.get(bait),
            new Feed.Amount(count, Feed.Unit.PIECES),
            null,
            new Feed.Pattern(every, null)),
        feed);
  }

  @Property(tries = 50)
  void aBadLineIsNamedByItsRow(@ForAll @IntRange(min = 0, max = 60) int before) {
    Shorthand.Read read = read("10:40 short bite\n".repeat(before) + "10:41 short hooked lost");
    assertEquals(before, read.events().size());
    Problem problem = read.report().problems().get(0);
    assertEquals(before + 1, problem.row());
    assertEquals("sheet.txt", problem.file());
  }
}
