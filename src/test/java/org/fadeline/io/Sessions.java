package org.fadeline.io;

import java.time.Instant;
import java.time.LocalDate;
import java.time.LocalDateTime;
import java.time.ZoneId;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import net.jqwik.api.Arbitraries;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.Combinators;
import org.fadeline.model.Document;
import org.fadeline.model.EventKind;
import org.fadeline.model.Feed;
import org.fadeline.model.Fish;
import org.fadeline.model.Line;
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
import org.jspecify.annotations.Nullable;

/** Sessions for tests: one small one, and arbitrary ones. */
public final class Sessions {
  static final ZoneId LONDON = ZoneId.of("Europe/London");

  private Sessions() {}

  public static long at(String clock) {
    return LocalDateTime.parse("2026-08-15T" + clock).atZone(LONDON).toInstant().toEpochMilli();
  }

  public static Stamp stamp(String id, String clock, @Nullable String line) {
    return new Stamp(id, at(clock), line, null);
  }

  /** A short match with every kind of field filled at least once. */
  public static Session small() {
    Line shortLine =
        new Line(
            "short",
            "Short pole",
            "short line",
            "short",
            new Line.Place(6.5, "top kit + 2", -10.0, 1.8),
            new Line.Rig(0.4, "6x8", 0.15, 0.12, "16", "expander"));
    Line shallow =
        new Line("shallow", "shallow", "shallow", "short", Line.Place.UNKNOWN, Line.Rig.UNKNOWN);
    List<SessionEvent> events =
        List.of(
            new SessionEvent.AllIn(new Stamp("e1", at("10:00:00"), null, null)),
            new SessionEvent.Fed(
                stamp("e2", "10:00:20", "short"),
                new Feed(
                    "4 mm pellet",
                    new Feed.Amount(120, Feed.Unit.ML),
                    "pot",
                    new Feed.Pattern(40, at("11:00:00")))),
            new SessionEvent.Cast(stamp("e3", "10:01:00", "short")),
            new SessionEvent.Hooked(stamp("e4", "10:03:10.250", "short")),
            new SessionEvent.Landed(
                stamp("e5", "10:05:00", "short"), new Fish(1, "carp", 2300.5, false)),
            new SessionEvent.Lost(stamp("e6", "10:09:00", "short"), "carp"),
            new SessionEvent.Foul(
                new Stamp("e7", at("10:12:00"), "short", "in the tail"),
                new Fish(1, null, null, false)),
            new SessionEvent.Move(stamp("e8", "10:30:00", "short"), "resting"),
            new SessionEvent.Net(stamp("e9", "11:00:00", null), 2),
            new SessionEvent.Neighbour(
                stamp("e10", "11:30:00", null), "14", new Fish(3, "F1", 1500.0, true)),
            new SessionEvent.Change(stamp("e11", "12:00:00", "shallow"), "caster"),
            new SessionEvent.Count(
                stamp("e12", "13:00:00", null), new Fish(5, null, 4000.0, false)));
    return new Session(
        new Document("4f6b1c1e-0000-4000-8000-000000000001", 7, Map.of()),
        new Occasion(
            "Summer league, round 3",
            LocalDate.of(2026, 8, 15),
            LONDON,
            new Venue("Withy Pool", 52.5, -1.25),
            new Peg("12", 200.0, 0.5, List.of(new Peg.Feature("reeds", 4, -60, 2.5))),
            List.of(
                new WeatherNote(
                    at("10:00:00"), new WeatherNote.Wind(225, 3), 4.0, 21.5, 18.0, "warm"))),
        new Match(
            at("10:00:00"),
            at("15:00:00"),
            new MatchRules(
                10,
                true,
                false,
                new MatchRules.NetLimit(27_215.5, 900, "counts as nothing"),
                "ok")),
        List.of(shortLine, shallow),
        events,
        new Outcome(
            List.of(new Outcome.NetWeight(1, 20_000, "carp"), new Outcome.NetWeight(2, 850, null)),
            new Outcome.Result(
                2, "B", 1, 24, List.of(new Outcome.NeighbourWeight("11", 15_422.14))),
            List.of(new Outcome.Media("film/one.mp4", -60_000, 1.0)),
            List.of(new Outcome.Imported("notes.vtt", -90_000))));
  }

  /** Text with what breaks careless writers: signs, quotes, separators, line ends, marks. */
  static Arbitrary<String> text() {
    Arbitrary<String> nasty =
        Arbitraries.of(
            "",
            " ",
            " x",
            "x ",
            "'",
            "''",
            "'=1+1",
            "''=1",
            "=1+1",
            "+44",
            "-3",
            "@here",
            "\t",
            "\r",
            "\n",
            "\r\n",
            "a\nb",
            "a\r\nb",
            "a,b",
            "a;b",
            "say \"no\"",
            "\"",
            "\u0000",
            "\u0000a",
            "null",
            "1e5",
            "é",
            "鯉",
            "😀",
            "\u202Eabc",
            "\u200B",
            "#",
            "{}",
            "/",
            "~",
            "~1",
            "\\",
            "\uFEFF",
            "＝1");
    Arbitrary<String> letters =
        Arbitraries.strings()
            .withChars("abcXYZ 019,;:'\"=+-@/\\~#\t\n\ré鯉")
            .ofMinLength(0)
            .ofMaxLength(12);
    return Arbitraries.oneOf(nasty, letters);
  }

  static Arbitrary<String> nullableText() {
    return text().injectNull(0.4);
  }

  static Arbitrary<Double> numberOrNull(double low, double high) {
    return Arbitraries.oneOf(
            Arbitraries.doubles().between(low, high).ofScale(6),
            Arbitraries.integers().between((int) Math.ceil(low), (int) high).map(i -> (double) i))
        .map(d -> d + 0.0)
        .injectNull(0.3);
  }

  private static Arbitrary<Long> instants(long from, long to) {
    return Arbitraries.oneOf(
        Arbitraries.longs().between(from, to),
        Arbitraries.longs().between(from / 60_000, to / 60_000).map(m -> m * 60_000));
  }

  private static Arbitrary<Fish> fish(int fewest) {
    return Combinators.combine(
            Arbitraries.integers().between(fewest, 100_000),
            nullableText(),
            numberOrNull(0, 1e6),
            Arbitraries.of(true, false))
        .as(Fish::new);
  }

  private static Arbitrary<Feed> feeds(long at) {
    Arbitrary<Feed.Amount> amount =
        Combinators.combine(
                Arbitraries.oneOf(
                    Arbitraries.doubles().between(0.001, 1e6).ofScale(3),
                    Arbitraries.of(Double.MIN_VALUE, 1e-7, 1.0 / 3, 1e6)),
                Arbitraries.of(Feed.Unit.values()))
            .as(Feed.Amount::new);
    Arbitrary<Feed.Pattern> pattern =
        Combinators.combine(
                Arbitraries.doubles().between(0.5, 86_400).ofScale(2),
                Arbitraries.longs().between(at, at + 7_200_000).injectNull(0.3))
            .as(Feed.Pattern::new);
    return Combinators.combine(
            nullableText(), amount.injectNull(0.3), nullableText(), pattern.injectNull(0.5))
        .as(Feed::new);
  }

  private static Arbitrary<SessionEvent> event(EventKind kind, Stamp stamp) {
    Arbitrary<String> text = nullableText();
    return switch (kind) {
      case CAST -> Arbitraries.just(new SessionEvent.Cast(stamp));
      case BITE -> Arbitraries.just(new SessionEvent.Bite(stamp));
      case HOOKED -> Arbitraries.just(new SessionEvent.Hooked(stamp));
      case LANDED -> fish(1).map(f -> new SessionEvent.Landed(stamp, f));
      case LOST -> text.map(t -> new SessionEvent.Lost(stamp, t));
      case FOUL -> fish(1).map(f -> new SessionEvent.Foul(stamp, f));
      case MOVE -> text.map(t -> new SessionEvent.Move(stamp, t));
      case OFF -> text.map(t -> new SessionEvent.Off(stamp, t));
      case STOPPED -> text.map(t -> new SessionEvent.Stopped(stamp, t));
      case RESUMED -> Arbitraries.just(new SessionEvent.Resumed(stamp));
      case FED -> feeds(stamp.at()).map(f -> new SessionEvent.Fed(stamp, f));
      case COUNT -> fish(0).map(f -> new SessionEvent.Count(stamp, f));
      case CHANGE -> text.map(t -> new SessionEvent.Change(stamp, t));
      case NET ->
          Arbitraries.integers()
              .between(1, 40)
              .injectNull(0.3)
              .map(n -> new SessionEvent.Net(stamp, n));
      case INDICATION -> Arbitraries.just(new SessionEvent.Indication(stamp));
      case SIGN -> Arbitraries.just(new SessionEvent.Sign(stamp));
      case NEIGHBOUR ->
          Combinators.combine(text, fish(0))
              .as((peg, f) -> new SessionEvent.Neighbour(stamp, peg, f));
      case WEATHER -> Arbitraries.just(new SessionEvent.Weather(stamp));
      case NOTE -> Arbitraries.just(new SessionEvent.Note(stamp));
      case ALL_IN -> Arbitraries.just(new SessionEvent.AllIn(stamp));
      case ALL_OUT -> Arbitraries.just(new SessionEvent.AllOut(stamp));
    };
  }

  /** An event whose water kinds always name a line of the given. */
  static Arbitrary<SessionEvent> events(String id, List<String> lineIds, long from, long to) {
    return Combinators.combine(
            Arbitraries.of(EventKind.values()),
            instants(from, to),
            Arbitraries.of(lineIds),
            Arbitraries.of(true, false),
            nullableText())
        .flatAs(
            (kind, at, line, named, note) -> {
              boolean needsLine = kind.group() == EventKind.Group.WATER;
              return event(kind, new Stamp(id, at, needsLine || named ? line : null, note));
            });
  }

  private static Arbitrary<Line> line(String id) {
    Arbitrary<Line.Place> places =
        Combinators.combine(
                numberOrNull(0, 200), nullableText(), numberOrNull(-180, 180), numberOrNull(0, 100))
            .as(Line.Place::new);
    Arbitrary<Line.Rig> rigs =
        Combinators.combine(
                numberOrNull(0, 100),
                nullableText(),
                numberOrNull(0, 2),
                numberOrNull(0, 2),
                nullableText(),
                nullableText())
            .as(Line.Rig::new);
    return Combinators.combine(text(), nullableText(), Arbitraries.of(id, "feed"), places, rigs)
        .as((name, kind, spot, place, rig) -> new Line(id, name, kind, spot, place, rig));
  }

  /** Arbitrary sessions, over midnight and clock changes too. */
  public static Arbitrary<Session> any() {
    Arbitrary<ZoneId> zones =
        Arbitraries.of(
            LONDON,
            ZoneId.of("Australia/Lord_Howe"),
            ZoneId.of("Asia/Kathmandu"),
            ZoneId.of("UTC"));
    // Around clock changes of 2026 in London and on Lord Howe Island, and at a plain day.
    Arbitrary<Long> starts =
        Arbitraries.of(
                "2026-03-28T22:00:00Z",
                "2026-10-24T21:00:00Z",
                "2026-04-04T10:00:00Z",
                "2026-08-15T09:00:00Z",
                "2027-01-01T00:00:00Z")
            .map(s -> Instant.parse(s).toEpochMilli());
    return Combinators.combine(zones, starts, Arbitraries.integers().between(1, 5), text())
        .flatAs((zone, start, lineCount, title) -> session(zone, start, lineCount, title));
  }

  private static Arbitrary<Session> session(ZoneId zone, long allIn, int lineCount, String title) {
    long allOut = allIn + 5 * 3_600_000L;
    List<String> ids = List.of("short", "L 2", "left/edge", "~x", "Ö").subList(0, lineCount);
    Arbitrary<List<Line>> lines =
        Combinators.combine(ids.stream().map(Sessions::line).toList()).as(l -> l);
    Arbitrary<List<SessionEvent>> events =
        Arbitraries.integers()
            .between(0, 30)
            .flatMap(
                n -> {
                  List<Arbitrary<SessionEvent>> each = new ArrayList<>();
                  for (int i = 0; i < n; i++) {
                    each.add(
                        events(
                            "e" + (i * 7 % 31) + (i % 3 == 0 ? "/x" : ""),
                            ids,
                            allIn - 3_600_000,
                            allOut + 3_600_000));
                  }
                  return each.isEmpty()
                      ? Arbitraries.just(List.of())
                      : Combinators.combine(each).as(l -> l);
                });
    Occasion occasion =
        new Occasion(
            title,
            Instant.ofEpochMilli(allIn).atZone(zone).toLocalDate(),
            zone,
            Venue.UNKNOWN,
            Peg.UNKNOWN,
            List.of());
    return Combinators.combine(lines, events, Arbitraries.longs().between(0, 1L << 50))
        .as(
            (l, e, sequence) ->
                new Session(
                    Document.of("doc", sequence),
                    occasion,
                    new Match(allIn, allOut, MatchRules.UNSTATED),
                    l,
                    e,
                    Outcome.UNKNOWN));
  }
}
