package org.fadeline.analysis.merge;

import java.time.format.DateTimeFormatter;
import java.util.Locale;
import org.fadeline.model.Fish;
import org.fadeline.model.Line;
import org.fadeline.model.Session;
import org.fadeline.model.SessionEvent;
import org.fadeline.model.Units;
import org.fadeline.model.WeightText;

/** An event in one line of words. */
public final class EventText {
  private static final DateTimeFormatter CLOCK = DateTimeFormatter.ofPattern("HH:mm:ss", Locale.UK);

  private EventText() {}

  /** Returns an event as "10:51:20 short landed carp 8 lb 4 oz". */
  public static String of(SessionEvent event, Session session, Units units) {
    StringBuilder text = new StringBuilder(session.clock(event.at()).format(CLOCK));
    String id = event.lineId();
    if (id != null) {
      text.append(' ').append(session.line(id).map(Line::name).orElse(id));
    }
    text.append(' ').append(event.kind().word());
    Fish fish = event.fishOrNull();
    if (fish != null) {
      text.append(fish.count() == 1 ? "" : " " + fish.count());
      text.append(fish.species() == null ? "" : " " + fish.species());
      text.append(
          fish.grams() == null ? "" : " " + WeightText.formatFine(fish.grams(), units.weight()));
    }
    if (event instanceof SessionEvent.Move move && move.reason() != null) {
      text.append(' ').append(move.reason());
    }
    if (event.note() != null) {
      text.append(" (").append(event.note()).append(')');
    }
    return text.toString();
  }
}
