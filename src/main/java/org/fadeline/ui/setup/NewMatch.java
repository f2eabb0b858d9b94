package org.fadeline.ui.setup;

import java.time.LocalDate;
import java.time.LocalTime;
import java.time.ZoneId;
import java.util.List;
import java.util.Locale;
import java.util.UUID;
import org.fadeline.io.SessionNames;
import org.fadeline.model.Document;
import org.fadeline.model.Match;
import org.fadeline.model.MatchRules;
import org.fadeline.model.Occasion;
import org.fadeline.model.Outcome;
import org.fadeline.model.Peg;
import org.fadeline.model.Session;
import org.fadeline.model.Venue;

/** A match before anything is known of it but the day. */
final class NewMatch {
  private static final int HOURS = 5;
  private static final LocalTime ALL_IN = LocalTime.of(10, 0);

  private NewMatch() {}

  /** Returns a match of five hours from ten o'clock, as is usual (common practice). */
  static Session on(LocalDate day, ZoneId zone) {
    long allIn = day.atTime(ALL_IN).atZone(zone).toInstant().toEpochMilli();
    return new Session(
        Document.of(UUID.randomUUID().toString(), 0),
        new Occasion("", day, zone, Venue.UNKNOWN, Peg.UNKNOWN, List.of()),
        new Match(allIn, allIn + HOURS * 3_600_000L, MatchRules.UNSTATED),
        List.of(),
        List.of(),
        Outcome.UNKNOWN);
  }

  /** Returns a name for its file: the day, the water and the peg. */
  static String fileName(Session session) {
    Occasion o = session.occasion();
    StringBuilder name = new StringBuilder(o.date().toString());
    for (String part : new String[] {o.venue().name(), o.peg().number()}) {
      String plain = part == null ? "" : part.replaceAll("[^\\p{L}\\p{N}]+", "-");
      if (!plain.isEmpty()) {
        name.append('-').append(plain.toLowerCase(Locale.ROOT));
      }
    }
    return name + SessionNames.ENDING;
  }
}
