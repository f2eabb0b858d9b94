package org.fadeline.trial;

import java.util.function.BiFunction;
import org.fadeline.demo.AsPeopleLog;
import org.fadeline.model.Session;

/** Ways in which a match is logged (common practice). */
enum Kept {
  FULL("everything, as from film", (s, seed) -> s),
  NO_CASTS("no casts", (s, seed) -> AsPeopleLog.noCasts(s)),
  NO_MISSED("no missed bites", (s, seed) -> AsPeopleLog.noMissedBites(s)),
  MOVES_AND_FISH("moves and fish", (s, seed) -> AsPeopleLog.movesAndFish(s)),
  FISH_ONLY("fish only", (s, seed) -> AsPeopleLog.fishOnly(s)),
  CLICKER_15("clicker read every 15 min", (s, seed) -> AsPeopleLog.clickerCounts(s, 15)),
  ROUNDED_1("times to 1 min", (s, seed) -> AsPeopleLog.roundedTo(s, 1)),
  ROUNDED_5("times to 5 min", (s, seed) -> AsPeopleLog.roundedTo(s, 5)),
  FISH_ROUNDED_5(
      "moves and fish to 5 min",
      (s, seed) -> AsPeopleLog.roundedTo(AsPeopleLog.movesAndFish(s), 5)),
  FORGETTING("a tenth forgotten", (s, seed) -> AsPeopleLog.forgetting(s, 0.1, seed)),
  BUSY("misses forgotten when busy", AsPeopleLog::missesForgottenWhenBusy);

  private final String words;
  private final BiFunction<Session, Long, Session> keeping;

  Kept(String words, BiFunction<Session, Long, Session> keeping) {
    this.words = words;
    this.keeping = keeping;
  }

  String words() {
    return words;
  }

  Session of(Session session, long seed) {
    return keeping.apply(session, seed);
  }
}
