package org.fadeline.export;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Set;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.fadeline.analysis.Review;
import org.fadeline.analysis.season.Season;
import org.fadeline.analysis.season.SeasonBuilder;
import org.fadeline.analysis.season.SeasonFilter;
import org.fadeline.analysis.season.SessionSummary;
import org.fadeline.figure.DayAxis;
import org.fadeline.model.Match;
import org.fadeline.model.MatchRules;
import org.fadeline.model.Occasion;
import org.fadeline.model.Outcome;
import org.fadeline.model.Peg;
import org.fadeline.model.Session;
import org.fadeline.model.SessionEvent;
import org.fadeline.model.Stamp;
import org.fadeline.model.Venue;
import org.fadeline.model.WeatherNote;
import org.fadeline.model.talk.Discretion;
import org.fadeline.model.talk.Slide;
import org.fadeline.model.talk.Talk;
import org.jspecify.annotations.Nullable;

/**
 * A talk without what it is to leave out. The sessions themselves lose their names, places and free
 * words before any picture is made, so that no figure can show them; the slides' own words have
 * them replaced.
 *
 * @param talk the talk as it may be shown
 * @param material the sessions as they may be shown
 * @param leftOut what was left out, a phrase each
 */
public record Unnamed(Talk talk, TalkMaterial material, List<String> leftOut) {
  private static final String TITLE = "A match";

  /** Copies the list. */
  public Unnamed {
    leftOut = List.copyOf(leftOut);
  }

  /** Returns a talk without what its discretion leaves out; as it is where that is nothing. */
  public static Unnamed of(Talk talk, TalkMaterial material) {
    Discretion discretion = talk.discretion();
    Map<String, String> replaced = new LinkedHashMap<>();
    Set<String> leftOut = new LinkedHashSet<>();
    TalkMaterial shown = material;
    if (discretion.unnamed()) {
      for (Review review : material.reviews().values()) {
        note(review.session(), replaced, leftOut);
      }
      for (Season season : material.seasons().values()) {
        note(season, replaced, leftOut);
      }
      shown = material.with(Unnamed::of, Unnamed::of);
    }
    for (String name : discretion.names()) {
      if (!name.isBlank()) {
        replaced.put(name.strip(), "somebody");
        leftOut.add("the name " + quoted(name.strip()));
      }
    }
    return new Unnamed(replaced.isEmpty() ? talk : of(talk, replaced), shown, List.copyOf(leftOut));
  }

  private static void note(Season season, Map<String, String> replaced, Set<String> leftOut) {
    for (SessionSummary session : season.sessions()) {
      String water = session.about().water();
      if (water != null && !water.isBlank()) {
        replaced.put(water.strip(), "the water");
      }
      if (!session.about().title().isBlank()) {
        replaced.putIfAbsent(session.about().title().strip(), "a match");
      }
      replaced.put(session.about().date().toString(), "one day");
      replaced.put(DayAxis.say(session.about().date()), "one day");
    }
    leftOut.add(
        "the titles, waters and dates of the season's "
            + season.sessions().size()
            + " matches; days are counted from the first");
  }

  /** Returns a season without titles, names of waters and dates. */
  static Season of(Season season) {
    if (season.sessions().isEmpty()) {
      return season;
    }
    LocalDate first = season.sessions().get(0).about().date();
    Map<String, String> waters = new LinkedHashMap<>();
    List<SessionSummary> shown = new ArrayList<>();
    for (SessionSummary session : season.sessions()) {
      SessionSummary.About was = session.about();
      String water =
          was.water() == null
              ? null
              : waters.computeIfAbsent(
                  was.water().strip().toLowerCase(Locale.ROOT),
                  w -> "water " + (waters.size() + 1));
      shown.add(
          new SessionSummary(
              new SessionSummary.About(
                  // Sorts as the sessions do.
                  String.format(Locale.ROOT, "%06d", shown.size()),
                  TITLE,
                  DayAxis.COUNTED_FROM.plusDays(was.date().toEpochDay() - first.toEpochDay()),
                  was.dated(),
                  water,
                  was.matchMinutes(),
                  was.day()),
              session.result(),
              session.lines()));
    }
    // They are those looked at already; of their lines, still the kinds asked for.
    SeasonFilter lines = new SeasonFilter(Set.of(), Set.of(), season.filter().groups(), null, null);
    Season again = SeasonBuilder.build(shown, lines);
    return new Season(
        again.sessions(),
        season.filter(),
        again.lines(),
        again.firstBites(),
        again.fades(),
        again.feed(),
        again.standing(),
        again.learned());
  }

  private static Review of(Review review) {
    return new Review(
        of(review.session()),
        review.settings(),
        review.summary(),
        review.lines(),
        review.stays(),
        review.course());
  }

  /**
   * Returns a record without title, water, place, peg number, rules in the organiser's words,
   * placing, footage and every free word: notes, reasons, other pegs.
   */
  public static Session of(Session session) {
    Occasion occasion = session.occasion();
    Peg peg = occasion.peg();
    MatchRules rules = session.match().rules();
    MatchRules.NetLimit limit = rules.netLimit();
    return session
        .withOccasion(
            new Occasion(
                TITLE,
                occasion.date(),
                occasion.zone(),
                Venue.UNKNOWN,
                new Peg(null, peg.facingDegrees(), peg.bankHeightM(), peg.features()),
                occasion.weather().stream().map(Unnamed::of).toList()))
        .withMatch(
            new Match(
                session.match().allIn(),
                session.match().allOut(),
                new MatchRules(
                    rules.playingAtWhistleMinutes(),
                    rules.foulHookedCounts(),
                    rules.liveFiguresAllowed(),
                    limit == null
                        ? null
                        : new MatchRules.NetLimit(limit.grams(), limit.toleranceGrams(), null),
                    null)))
        .withEvents(session.events().stream().map(Unnamed::of).toList())
        .withOutcome(new Outcome(session.outcome().weighIn(), null, List.of()));
  }

  private static WeatherNote of(WeatherNote note) {
    return new WeatherNote(
        note.at(), note.wind(), note.cloudOktas(), note.airC(), note.waterC(), null);
  }

  private static SessionEvent of(SessionEvent event) {
    Stamp stamp = new Stamp(event.id(), event.at(), event.lineId(), null);
    if (event instanceof SessionEvent.Move) {
      return new SessionEvent.Move(stamp, null);
    }
    if (event instanceof SessionEvent.Off) {
      return new SessionEvent.Off(stamp, null);
    }
    if (event instanceof SessionEvent.Stopped) {
      return new SessionEvent.Stopped(stamp, null);
    }
    if (event instanceof SessionEvent.Neighbour neighbour) {
      return new SessionEvent.Neighbour(stamp, null, neighbour.fish());
    }
    return event.withStamp(stamp);
  }

  /** Notes what a record names: what stands for it in the slides' words, and what to call it. */
  private static void note(Session session, Map<String, String> replaced, Set<String> leftOut) {
    Occasion occasion = session.occasion();
    put(occasion.title(), "a match", "the title ", replaced, leftOut);
    put(occasion.venue().name(), "the water", "the water's name ", replaced, leftOut);
    if (occasion.venue().latitude() != null) {
      leftOut.add("where the water lies, and with it the sun over the peg");
    }
    String number = occasion.peg().number();
    if (number != null && !number.isBlank()) {
      replaced.put("peg " + number.strip(), "the peg");
      leftOut.add("the number of peg " + number.strip());
    }
    replaced.put(occasion.date().toString(), "one day");
    replaced.put(DayAxis.say(occasion.date()), "one day");
    leftOut.add("the date " + occasion.date());
    long notes = session.events().stream().filter(Unnamed::hasWords).count();
    notes += occasion.weather().stream().filter(w -> w.note() != null).count();
    if (notes > 0) {
      leftOut.add(
          notes + (notes == 1 ? " note or reason" : " notes and reasons") + " of the record");
    }
    if (session.match().rules().organiserRules() != null) {
      leftOut.add("the organiser's rules");
    }
    if (session.outcome().result() != null) {
      leftOut.add("the placing and other pegs' weights");
    }
    if (!session.outcome().media().isEmpty()) {
      leftOut.add("the names of footage files");
    }
  }

  private static boolean hasWords(SessionEvent event) {
    return event.note() != null || !of(event).equals(withoutNote(event));
  }

  private static SessionEvent withoutNote(SessionEvent event) {
    return event.withStamp(new Stamp(event.id(), event.at(), event.lineId(), null));
  }

  private static void put(
      @Nullable String name,
      String instead,
      String called,
      Map<String, String> replaced,
      Set<String> leftOut) {
    if (name != null && !name.isBlank()) {
      replaced.put(name.strip(), instead);
      leftOut.add(called + quoted(name.strip()));
    }
  }

  private static String quoted(String name) {
    return "“" + name + "”";
  }

  private static Talk of(Talk talk, Map<String, String> replaced) {
    // The longest first: a title often holds the name of its water.
    List<Map.Entry<String, String>> entries = new ArrayList<>(replaced.entrySet());
    entries.sort((a, b) -> Integer.compare(b.getKey().length(), a.getKey().length()));
    List<Slide> slides = new ArrayList<>();
    for (Slide slide : talk.slides()) {
      slides.add(
          slide
              .withTitle(replaced(slide.title(), entries))
              .withWords(slide.words().stream().map(w -> replaced(w, entries)).toList())
              .withNotes(replaced(slide.notes(), entries)));
    }
    return talk.withTitle(replaced(talk.title(), entries)).withSlides(slides);
  }

  private static String replaced(String text, List<Map.Entry<String, String>> entries) {
    String now = text;
    for (Map.Entry<String, String> entry : entries) {
      Pattern whole =
          Pattern.compile(
              "(?<![\\p{L}\\p{N}])" + Pattern.quote(entry.getKey()) + "(?![\\p{L}\\p{N}])",
              Pattern.CASE_INSENSITIVE | Pattern.UNICODE_CASE);
      Matcher matcher = whole.matcher(now);
      StringBuilder out = new StringBuilder();
      while (matcher.find()) {
        String instead = entry.getValue();
        String cased = startsSentence(now, matcher.start()) ? capital(instead) : instead;
        matcher.appendReplacement(out, Matcher.quoteReplacement(cased));
      }
      now = matcher.appendTail(out).toString();
    }
    return now;
  }

  private static boolean startsSentence(String text, int at) {
    String before = text.substring(0, at).stripTrailing();
    return before.isEmpty() || ".!?".indexOf(before.charAt(before.length() - 1)) >= 0;
  }

  private static String capital(String text) {
    return text.substring(0, 1).toUpperCase(Locale.ROOT) + text.substring(1);
  }
}
