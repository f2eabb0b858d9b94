package org.fadeline.trial;

import org.fadeline.demo.AsPeopleLog;
import org.fadeline.model.Session;

/** Ways in which a match is logged (common practice). */
enum Kept {
  FULL("everything, as from film"),
  NO_CASTS("no casts"),
  NO_MISSED("no missed bites"),
  MOVES_AND_FISH("moves and fish"),
  FISH_ONLY("fish only"),
  CLICKER_15("clicker read every 15 min"),
  ROUNDED_1("times to 1 min"),
  ROUNDED_5("times to 5 min"),
  FISH_ROUNDED_5("moves and fish to 5 min"),
  FORGETTING("a tenth forgotten"),
  BUSY("misses forgotten when busy");

  private final String words;

  Kept(String words) {
    this.words = words;
  }

  String words() {
    return words;
  }

  Session of(Session session, long seed) {
    return switch (this) {
      case FULL -> session;
      case NO_CASTS -> AsPeopleLog.noCasts(session);
      case NO_MISSED -> AsPeopleLog.noMissedBites(session);
      case MOVES_AND_FISH -> AsPeopleLog.movesAndFish(session);
      case FISH_ONLY -> AsPeopleLog.fishOnly(session);
      case CLICKER_15 -> AsPeopleLog.clickerCounts(session, 15);
      case ROUNDED_1 -> AsPeopleLog.roundedTo(session, 1);
      case ROUNDED_5 -> AsPeopleLog.roundedTo(session, 5);
      case FISH_ROUNDED_5 -> AsPeopleLog.roundedTo(AsPeopleLog.movesAndFish(session), 5);
      case FORGETTING -> AsPeopleLog.forgetting(session, 0.1, seed);
      case BUSY -> AsPeopleLog.missesForgottenWhenBusy(session, seed);
    };
  }
}
