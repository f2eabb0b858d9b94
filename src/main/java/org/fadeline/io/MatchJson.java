package org.fadeline.io;

import java.time.ZoneId;
import org.fadeline.model.Match;
import org.fadeline.model.MatchRules;
import org.jspecify.annotations.Nullable;

/** The match of a session, its calls and rules, as a JSON object, both ways. */
public final class MatchJson {
  private MatchJson() {}

  /** Returns the match with its unknown fields, times with the zone's offsets. */
  public static Json.Obj write(Match match, ZoneId zone, UnknownFields unknown) {
    MatchRules rules = match.rules();
    Json.Obj out =
        Json.Obj.make()
            .put("allIn", ClockTimes.withOffset(match.allIn(), zone))
            .put("allOut", ClockTimes.withOffset(match.allOut(), zone))
            .put("playingAtWhistleMinutes", rules.playingAtWhistleMinutes())
            .put("foulHookedCounts", rules.foulHookedCounts())
            .put("liveFiguresAllowed", rules.liveFiguresAllowed());
    MatchRules.NetLimit limit = rules.netLimit();
    if (limit != null) {
      out.put(
          "netLimit",
          unknown.addTo(
              Json.Obj.make()
                  .put("weightG", limit.grams())
                  .put("toleranceG", limit.toleranceGrams())
                  .put("exceeding", limit.exceeding()),
              "/match/netLimit"));
    }
    out.put("organiserRules", rules.organiserRules());
    return unknown.addTo(out, "/match");
  }

  /** Reads the field {@code match} of an object, or returns null after adding its problems. */
  public static @Nullable Match read(JsonFields root, ZoneId zone) {
    JsonFields fields = root.object("match");
    if (fields == null) {
      if (root.isMissing("match")) {
        root.error("match", "the field \"match\" is missing", "write it with allIn and allOut");
      }
      return null;
    }
    Long allIn = fields.requiredInstant("allIn", zone);
    Long allOut = fields.requiredInstant("allOut", zone);
    MatchRules rules = rules(fields);
    fields.keepRest("/match");
    if (allIn == null || allOut == null) {
      return null;
    }
    if (allOut <= allIn) {
      fields.error("allOut", "all out does not come after all in", "correct one of the two");
      return null;
    }
    return new Match(allIn, allOut, rules);
  }

  private static MatchRules rules(JsonFields fields) {
    fields.notNull("playingAtWhistleMinutes");
    Double minutes = fields.number("playingAtWhistleMinutes", 0, 60);
    MatchRules.NetLimit limit = null;
    JsonFields net = fields.object("netLimit");
    if (net != null) {
      Double grams = net.number("weightG", Double.MIN_VALUE, EventJson.MOST_GRAMS);
      Double tolerance = net.number("toleranceG", 0, EventJson.MOST_GRAMS);
      if (net.isMissing("weightG")) {
        net.error("weightG", "the net limit has no weight", "write it in grams");
      }
      String exceeding = net.text("exceeding");
      if (grams != null) {
        limit = new MatchRules.NetLimit(grams, tolerance == null ? 0 : tolerance, exceeding);
      }
      net.keepRest("/match/netLimit");
    }
    return new MatchRules(
        minutes == null ? 0 : minutes,
        fields.flag("foulHookedCounts", false),
        fields.flag("liveFiguresAllowed", false),
        limit,
        fields.text("organiserRules"));
  }
}
