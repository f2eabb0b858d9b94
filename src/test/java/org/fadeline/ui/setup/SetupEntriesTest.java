package org.fadeline.ui.setup;

import static java.util.Objects.requireNonNull;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertNull;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.time.Instant;
import java.time.LocalDate;
import java.time.ZoneId;
import java.util.List;
import org.fadeline.model.Line;
import org.fadeline.model.Session;
import org.fadeline.model.Units;
import org.fadeline.model.WeatherNote;
import org.fadeline.ui.HandMade;
import org.fadeline.ui.control.form.Entry;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/** What typed texts make of a session, without a window. */
class SetupEntriesTest {
  private static final Units UNITS = Units.LB_OZ_AND_METRES;
  private static final Units FEET = UNITS.withLength(Units.Length.FT);

  private static Session with(Entry<Session> entry, String text) {
    return entry.takes().with(HandMade.session(), text, UNITS);
  }

  private static String told(Entry<Session> entry, String text) {
    return String.valueOf(
        assertThrows(IllegalArgumentException.class, () -> with(entry, text)).getMessage());
  }

  @Test
  void theDayMovesEverythingThatHasATime() {
    Session before = HandMade.session();
    Session after = with(TimeEntries.date(), "15 aug 2026");
    long week = 7 * 24 * 3_600_000L;
    assertEquals(LocalDate.of(2026, 8, 15), after.occasion().date());
    assertEquals(before.match().allIn() + week, after.match().allIn());
    assertEquals(before.match().allOut() + week, after.match().allOut());
    for (int i = 0; i < before.events().size(); i++) {
      assertEquals(before.events().get(i).at() + week, after.events().get(i).at());
    }
  }

  @Test
  void theClockStaysOverAClockChange() {
    // Clocks in Britain went back on 25 October 2026 (last Sunday of October).
    Session after = with(TimeEntries.date(), "2026-11-01");
    assertEquals(Instant.parse("2026-11-01T10:00:00Z").toEpochMilli(), after.match().allIn());
  }

  @Test
  void theCallsAreClockTimesOfTheDay() {
    Session after = with(TimeEntries.allIn(), "9:30");
    assertEquals(HandMade.ALL_IN - 1_800_000, after.match().allIn());
    assertEquals(HandMade.ALL_OUT, after.match().allOut());
    Session evening = with(TimeEntries.allIn(), "18:00");
    assertEquals(5 * 3_600_000L, evening.match().lengthMillis(), "the finish keeps its distance");
    Session night = with(TimeEntries.allOut(), "01:00");
    assertEquals(15 * 3_600_000L, night.match().lengthMillis(), "after midnight");
    assertTrue(told(TimeEntries.allIn(), "tennish").contains("10:00"));
    assertTrue(told(TimeEntries.date(), "31 June 2026").contains("no date"));
  }

  @Test
  void directionsAreCompassPointsOrDegrees() {
    Entry<Session> facing = OccasionEntries.peg().get(1);
    assertEquals(225.0, with(facing, "sw").occasion().peg().facingDegrees());
    assertEquals(20.0, with(facing, "20°").occasion().peg().facingDegrees());
    assertNull(with(facing, "").occasion().peg().facingDegrees());
    assertTrue(told(facing, "upwind").contains("SW"));
    assertTrue(told(facing, "400").contains("360"));
  }

  @Test
  void coordinatesBelongTogether() {
    Session after = with(OccasionEntries.coordinates(), "52.41, -1.73");
    assertEquals(52.41, after.occasion().venue().latitude());
    assertEquals(-1.73, after.occasion().venue().longitude());
    assertNull(with(OccasionEntries.coordinates(), "").occasion().venue().latitude());
    assertTrue(told(OccasionEntries.coordinates(), "52.41").contains("north and east"));
    assertTrue(told(OccasionEntries.coordinates(), "95, 0").contains("latitude"));
  }

  @ParameterizedTest
  @CsvSource({
    "20 left, -20",
    "15° right, 15",
    "-20, -20",
    "0, 0",
    "straight out, 0",
    "7.5 l, -7.5"
  })
  void bearingsAreSaidFromStraightOut(String text, double degrees) {
    assertEquals(degrees, BearingText.degrees(text));
    assertEquals(degrees, BearingText.degrees(BearingText.format(degrees)), "reads its own words");
  }

  @ParameterizedTest
  @ValueSource(strings = {"-20 left", "far", "20 up", "1000"})
  void aBearingThatCannotBeReadIsRefused(String text) {
    assertThrows(IllegalArgumentException.class, () -> BearingText.degrees(text));
  }

  @Test
  void distancesAreInTheUnitOfTheWindow() {
    Entry<Session> distance = LineEntries.place("short").get(0);
    Session metres = with(distance, "13");
    assertEquals(13.0, SetupLines.line(metres, "short").place().distanceM());
    Session feet = distance.takes().with(HandMade.session(), "43", FEET);
    // 43 international feet of 0.3048 m exactly.
    assertEquals(13.1064, requireNonNull(SetupLines.line(feet, "short").place().distanceM()), 1e-9);
    assertEquals("43 ft", distance.shows().text(feet, FEET));
    assertEquals("13 m", distance.shows().text(metres, UNITS));
    assertTrue(told(distance, "far out").contains("13 m"));
    assertTrue(told(distance, "500 m").contains("200"));
  }

  @Test
  void netRulesNeedALimitFirst() {
    Entry<Session> limit = RuleEntries.nets().get(0);
    Entry<Session> tolerance = RuleEntries.nets().get(1);
    assertTrue(told(tolerance, "2 lb").contains("net limit first"));
    Session limited = with(limit, "50");
    Session both = tolerance.takes().with(limited, "2 lb", UNITS);
    // 50 lb is 22.6796185 kg (Weights and Measures Act 1985, Schedule 1).
    var net = requireNonNull(both.match().rules().netLimit());
    assertEquals(22_679.6185, net.grams(), 1e-9);
    assertEquals(2 * 453.59237, net.toleranceGrams(), 1e-9);
    assertNull(limit.takes().with(both, "", UNITS).match().rules().netLimit());
  }

  @Test
  void theWindNeedsADirectionBeforeAForce() {
    Session one =
        HandMade.session()
            .withOccasion(
                HandMade.session()
                    .occasion()
                    .withWeather(
                        List.of(new WeatherNote(HandMade.ALL_IN, null, null, null, null, null))));
    Entry<Session> from = OccasionEntries.weather(0).get(1);
    Entry<Session> force = OccasionEntries.weather(0).get(2);
    assertThrows(IllegalArgumentException.class, () -> force.takes().with(one, "3", UNITS));
    Session windy = force.takes().with(from.takes().with(one, "SW", UNITS), "3", UNITS);
    assertEquals(new WeatherNote.Wind(225, 3), windy.occasion().weather().get(0).wind());
    assertThrows(IllegalArgumentException.class, () -> force.takes().with(windy, "13", UNITS));
  }

  @Test
  void noTwoLinesAreCalledTheSame() {
    assertTrue(told(LineEntries.name("short"), "SHALLOW").contains("another line"));
    assertTrue(told(LineEntries.name("short"), " ").contains("needs a name"));
    assertEquals(
        "five metres",
        SetupLines.line(with(LineEntries.name("short"), "five metres"), "short").name());
  }

  /** 1.20 g is printed with the trade table of split shot; the floats are common practice. */
  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "19×No.8 + 3×No.12|1.25|1.20 g of shot, leaving 0.05 g of what the float takes.",
        "19×No.8 + 3×No.12|1.2|1.20 g of shot, just what the float takes.",
        "2xNo.9|0.1|0.10 g of shot, just what the float takes.",
        "6x8|0.4|0.36 g of shot, leaving 0.04 g of what the float takes.",
        "2xBB|0.4|0.80 g of shot, 0.40 g more than the float takes."
      })
  void theShotIsWeighedAgainstTheFloat(String shotting, double floatG, String words) {
    assertEquals(
        words, LineEntries.balance(Line.Rig.UNKNOWN.withFloatG(floatG).withShotting(shotting)));
  }

  @Test
  void aShottingInOwnWordsIsKeptAndNotWeighed() {
    assertTrue(
        LineEntries.balance(Line.Rig.UNKNOWN.withShotting("strung bulk"))
            .startsWith("Kept as written"));
    assertEquals("", LineEntries.balance(Line.Rig.UNKNOWN));
  }

  @Test
  void linesOfAnEarlierMatchComeWithPlacesRigsAndSharedSpots() {
    Session earlier = HandMade.session();
    earlier = SetupLines.replace(earlier, "shallow", l -> l.withSpot("short"));
    Session taken =
        SetupLines.taken(NewMatch.on(LocalDate.of(2026, 9, 5), ZoneId.of("UTC")), earlier);
    assertEquals(List.of("Shallow", "Short line"), names(taken));
    Line shallow = taken.lines().get(0);
    assertEquals(14.5, shallow.place().distanceM());
    assertEquals(taken.lines().get(1).id(), shallow.spot());
    assertEquals(taken, SetupLines.taken(taken, earlier), "none twice");
    assertTrue(taken.events().isEmpty());
  }

  private static List<String> names(Session session) {
    return session.lines().stream().map(Line::name).toList();
  }

  @Test
  void linesAreAddedMovedAndTakenOut() {
    Session two = SetupLines.added(SetupLines.added(HandMade.session()));
    assertEquals(List.of("Shallow", "Short line", "New line", "New line 2"), names(two));
    String last = two.lines().get(3).id();
    assertEquals(
        List.of("Shallow", "Short line", "New line 2", "New line"),
        names(SetupLines.moved(two, last, -1)));
    assertEquals(two, SetupLines.moved(two, last, 1), "the end of the list");
    Session shared = SetupLines.replace(two, last, l -> l.withSpot("short"));
    Line alone = SetupLines.line(SetupLines.removed(shared, "short"), last);
    assertEquals(alone.id(), alone.spot());
    assertFalse(SetupLines.removed(two, last).line(last).isPresent());
    assertTrue(SetupLines.eventsOn(two, "short") > 0);
  }

  @Test
  void aFileIsNamedAfterDayWaterAndPeg() {
    assertEquals("2026-08-08-invented-pool-14.session.json", NewMatch.fileName(HandMade.session()));
  }
}
