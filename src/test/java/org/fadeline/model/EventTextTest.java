package org.fadeline.model;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.stream.Stream;
import org.fadeline.ui.HandMade;
import org.jspecify.annotations.Nullable;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.Arguments;
import org.junit.jupiter.params.provider.MethodSource;

/** The words for what an event holds. */
class EventTextTest {
  private static final Stamp AT = new Stamp("e", HandMade.minute(51.5), "short", "slack line");

  private static SessionEvent fed(
      @Nullable String bait,
      Feed.@Nullable Amount amount,
      @Nullable String method,
      Feed.@Nullable Pattern pattern) {
    return new SessionEvent.Fed(AT, new Feed(bait, amount, method, pattern));
  }

  static Stream<Arguments> events() {
    return Stream.of(
        Arguments.of("", new SessionEvent.Cast(AT)),
        Arguments.of("", new SessionEvent.Landed(AT, Fish.ONE)),
        Arguments.of(
            "carp 8 lb 4 oz", new SessionEvent.Landed(AT, new Fish(1, "carp", 3742.0, false))),
        Arguments.of("3 fish 1 lb", new SessionEvent.Count(AT, new Fish(3, null, 453.6, false))),
        Arguments.of("bream", new SessionEvent.Lost(AT, "bream")),
        Arguments.of("worm", new SessionEvent.Change(AT, "worm")),
        Arguments.of("net 2", new SessionEvent.Net(AT, 2)),
        Arguments.of(
            "2 roach, peg 12",
            new SessionEvent.Neighbour(AT, "12", new Fish(2, "roach", null, false))),
        Arguments.of("resting", new SessionEvent.Move(AT, "resting")),
        Arguments.of("tangle", new SessionEvent.Off(AT, "tangle")),
        Arguments.of(
            "6 pellets, catapult, every 40 s",
            fed(
                "pellets",
                new Feed.Amount(6, Feed.Unit.PIECES),
                "catapult",
                new Feed.Pattern(40, null))),
        Arguments.of(
            "37.5 ml of casters, pot",
            fed("casters", new Feed.Amount(37.5, Feed.Unit.ML), "pot", null)),
        Arguments.of("2 balls", fed(null, new Feed.Amount(2, Feed.Unit.BALLS), null, null)),
        Arguments.of("maggots", fed("maggots", null, null, null)),
        Arguments.of("", new SessionEvent.Fed(AT, Feed.UNKNOWN)));
  }

  @ParameterizedTest
  @MethodSource("events")
  void whatItHolds(String words, SessionEvent event) {
    assertEquals(words, EventText.details(event, Units.LB_OZ_AND_METRES));
  }

  @Test
  void aWholeLine() {
    assertEquals(
        "10:51:30 Short line lost bream (slack line)",
        EventText.of(
            new SessionEvent.Lost(AT, "bream"), HandMade.session(), Units.LB_OZ_AND_METRES));
  }
}
