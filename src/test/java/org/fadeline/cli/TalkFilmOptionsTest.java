package org.fadeline.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.time.LocalTime;
import org.fadeline.model.Match;
import org.fadeline.model.MatchRules;
import org.fadeline.model.Session;
import org.fadeline.ui.HandMade;
import org.junit.jupiter.api.Test;

/** A clock time names an instant of the match. */
class TalkFilmOptionsTest {
  private static final long HOUR = 3_600_000;

  @Test
  void afterMidnightIsTheNextDayInAMatchByNight() {
    Session day = HandMade.session();
    long allIn =
        day.clock(day.match().allIn()).with(LocalTime.of(20, 0)).toInstant().toEpochMilli();
    Session night = day.withMatch(new Match(allIn, allIn + 5 * HOUR, MatchRules.UNSTATED));
    assertEquals(allIn + HOUR, TalkFilmOptions.at(night, LocalTime.of(21, 0)));
    assertEquals(allIn + 9 * HOUR / 2, TalkFilmOptions.at(night, LocalTime.of(0, 30)));
    assertEquals(allIn - HOUR, TalkFilmOptions.at(night, LocalTime.of(19, 0)));
  }
}
