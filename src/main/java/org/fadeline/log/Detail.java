package org.fadeline.log;

import java.time.Instant;
import java.time.LocalDateTime;
import java.time.ZoneId;
import java.util.List;
import java.util.Objects;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.fadeline.io.ClockTimes;
import org.fadeline.io.Problem;
import org.fadeline.io.Refused;
import org.fadeline.io.notes.Shorthand;
import org.fadeline.io.notes.Vocabulary;
import org.fadeline.model.Feed;
import org.fadeline.model.Fish;
import org.fadeline.model.Line;
import org.fadeline.model.SessionEvent;
import org.fadeline.model.Stamp;
import org.fadeline.model.Units;
import org.fadeline.model.WeightText;
import org.jspecify.annotations.Nullable;

/**
 * What the angler types of an event already logged, in the words and amounts anglers use: "8 4", "3
 * carp 5lb 2oz weighed", "200 ml pellets pot", "6 pellets every 40s until 11:30", "dead", "peg 12
 * skimmer 2lb". What is not said stays as it was.
 */
public final class Detail {
  private static final Pattern UNTIL =
      Pattern.compile("\\buntil\\s+(\\d{1,2}[:.]\\d{2}(?::\\d{2})?)\\b", Pattern.CASE_INSENSITIVE);
  private static final Pattern SECONDS = Pattern.compile("(\\d)\\s*s\\b");
  private static final Pattern NUMBERS = Pattern.compile("[\\d\\s.,/½¼¾-]+");

  private final List<Line> lines;
  private final ZoneId zone;
  private final Units.Weight weight;

  /**
   * Makes a reader.
   *
   * @param lines of the session, for their names
   * @param zone of the water, for clock times
   * @param weight what plain numbers mean
   */
  public Detail(List<Line> lines, ZoneId zone, Units.Weight weight) {
    this.lines = List.copyOf(lines);
    this.zone = zone;
    this.weight = weight;
  }

  /**
   * Returns an event with what a text says of it.
   *
   * @throws IllegalArgumentException if the text cannot be taken so; the message says what can
   */
  public SessionEvent apply(SessionEvent event, String text) {
    String said = text.strip();
    if (said.isEmpty()) {
      return event;
    }
    return switch (event.kind()) {
      case LANDED, FOUL, NEIGHBOUR -> fish(event, said, plainWeight(said));
      case COUNT -> fish(event, said, null);
      case LOST, FED, CHANGE, NET -> read(event, said);
      case MOVE -> new SessionEvent.Move(event.stamp(), said);
      case OFF -> new SessionEvent.Off(event.stamp(), said);
      case STOPPED -> new SessionEvent.Stopped(event.stamp(), said);
      case CAST, BITE, HOOKED, RESUMED, INDICATION, SIGN, WEATHER, NOTE, ALL_IN, ALL_OUT ->
          event.withStamp(noted(event.stamp(), said));
    };
  }

  private static Stamp noted(Stamp stamp, @Nullable String note) {
    return new Stamp(
        stamp.id(),
        stamp.at(),
        stamp.lineId(),
        note == null || note.isBlank() ? stamp.note() : note);
  }

  /** Returns the weight that a text is and nothing else, or null. */
  private @Nullable Double plainWeight(String said) {
    try {
      return WeightText.grams(said, weight);
    } catch (IllegalArgumentException notAWeight) {
      if (NUMBERS.matcher(said).matches()) {
        throw notAWeight;
      }
      return null;
    }
  }

  private SessionEvent fish(SessionEvent event, String said, @Nullable Double grams) {
    Fish before = Objects.requireNonNullElse(event.fishOrNull(), Fish.ONE);
    if (grams != null) {
      Fish weighed = new Fish(before.count(), before.species(), grams, before.weighed());
      return event.withFish(weighed);
    }
    SessionEvent read = shorthand(event, said);
    Fish told = Objects.requireNonNullElse(read.fishOrNull(), Fish.ONE);
    boolean counted = told.count() > 1 || said.matches("1\\b.*");
    Fish after =
        new Fish(
            counted ? told.count() : before.count(),
            told.species() == null ? before.species() : told.species(),
            told.grams() == null ? before.grams() : told.grams(),
            told.weighed() || before.weighed());
    if (event instanceof SessionEvent.Neighbour was) {
      String peg = read instanceof SessionEvent.Neighbour neighbour ? neighbour.peg() : null;
      return new SessionEvent.Neighbour(was.stamp(), peg == null ? was.peg() : peg, after);
    }
    return event.withFish(after).withStamp(noted(event.stamp(), read.note()));
  }

  private SessionEvent read(SessionEvent event, String said) {
    Matcher until = UNTIL.matcher(said);
    Long end = until.find() ? endOf(event.at(), until.group(1)) : null;
    String rest = end == null ? said : until.replaceFirst("").strip();
    SessionEvent read = shorthand(event, SECONDS.matcher(rest).replaceAll("$1 sec"));
    if (event instanceof SessionEvent.Fed before && read instanceof SessionEvent.Fed told) {
      return new SessionEvent.Fed(
          noted(event.stamp(), read.note()), merged(before.feed(), told.feed(), end));
    }
    Stamp stamp = noted(event.stamp(), read.note());
    if (event instanceof SessionEvent.Net && read instanceof SessionEvent.Net told) {
      if (told.net() == null) {
        throw new IllegalArgumentException("“" + said + "” names no net; type its number");
      }
      return new SessionEvent.Net(stamp, told.net());
    }
    return read.withStamp(stamp);
  }

  private static Feed merged(Feed before, Feed told, @Nullable Long end) {
    Feed.Pattern pattern = told.pattern() == null ? before.pattern() : told.pattern();
    if (end != null) {
      if (pattern == null) {
        throw new IllegalArgumentException(
            "“until” needs how often, such as 6 pellets every 40s until 11:30");
      }
      pattern = new Feed.Pattern(pattern.everySeconds(), end);
    }
    return new Feed(
        told.bait() == null ? before.bait() : told.bait(),
        told.amount() == null ? before.amount() : told.amount(),
        told.method() == null ? before.method() : told.method(),
        pattern);
  }

  /** The first time after the feed that the clock shows this. */
  private long endOf(long at, String clock) {
    try {
      LocalDateTime fed = LocalDateTime.ofInstant(Instant.ofEpochMilli(at), zone);
      LocalDateTime end = fed.toLocalDate().atTime(ClockTimes.clock(clock.replace('.', ':')));
      return ClockTimes.resolve(end.isBefore(fed) ? end.plusDays(1) : end, zone);
    } catch (Refused refused) {
      throw new IllegalArgumentException(refused.what() + "; " + refused.whatToDo());
    }
  }

  /** Reads a text as the shorthand reads a line of the event's kind. */
  private SessionEvent shorthand(SessionEvent event, String said) {
    Instant at = Instant.ofEpochMilli(event.at());
    Shorthand.Read read =
        Shorthand.read(
            "detail",
            "12:00 " + event.kind().word() + " " + said,
            new Shorthand.Frame(
                at.atZone(zone).toLocalDate(), zone, null, weight, Vocabulary.of(lines)));
    if (read.events().size() != 1) {
      throw new IllegalArgumentException(
          read.report().problems().stream()
              .findFirst()
              .map(Detail::words)
              .orElse("“" + said + "” was not understood"));
    }
    return read.events().get(0).event();
  }

  private static String words(Problem problem) {
    return problem.what() + "; " + problem.whatToDo();
  }
}
