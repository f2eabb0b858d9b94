package org.fadeline.analysis.season;

import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import java.util.function.Function;
import org.fadeline.analysis.Effort;
import org.fadeline.analysis.Effort.FishMark;
import org.fadeline.analysis.Effort.LineEffort;
import org.fadeline.analysis.Fade;
import org.fadeline.analysis.FadeTrack;
import org.fadeline.analysis.FeedPut;
import org.fadeline.analysis.FirstBite;
import org.fadeline.analysis.FirstBites;
import org.fadeline.analysis.Grade;
import org.fadeline.analysis.NetScale;
import org.fadeline.analysis.RecordGrade;
import org.fadeline.analysis.Review;
import org.fadeline.analysis.Reviewer;
import org.fadeline.analysis.Spell;
import org.fadeline.analysis.StayOrGo;
import org.fadeline.analysis.TimeSpan;
import org.fadeline.analysis.season.SessionSummary.About;
import org.fadeline.analysis.season.SessionSummary.Behind;
import org.fadeline.analysis.season.SessionSummary.BunchingFound;
import org.fadeline.analysis.season.SessionSummary.Day;
import org.fadeline.analysis.season.SessionSummary.FadeFound;
import org.fadeline.analysis.season.SessionSummary.FirstBiteRow;
import org.fadeline.analysis.season.SessionSummary.Hour;
import org.fadeline.analysis.season.SessionSummary.LineSummary;
import org.fadeline.analysis.season.SessionSummary.PastPlain;
import org.fadeline.analysis.season.SessionSummary.Placing;
import org.fadeline.analysis.season.SessionSummary.Result;
import org.fadeline.analysis.season.SessionSummary.Weights;
import org.fadeline.model.Outcome;
import org.fadeline.model.Session;
import org.fadeline.model.SessionEvent;
import org.fadeline.model.WeatherNote;
import org.fadeline.stats.Bunching;
import org.jspecify.annotations.Nullable;

/** Sums sessions up for a season: everything but fades at once, fades from the whole review. */
public final class SessionSummaries {
  private static final long MILLIS_PER_HOUR = 3_600_000;

  private SessionSummaries() {}

  /** Sums a session up without its fades: a few milliseconds. */
  public static SessionSummary quick(Session session) {
    return quick(session, Effort.of(session));
  }

  private static SessionSummary quick(Session session, Effort effort) {
    FirstBites firstBites = new FirstBites(effort);
    List<LineSummary> lines = new ArrayList<>();
    for (LineEffort line : effort.lines()) {
      lines.add(
          new LineSummary(
              line.line().name(),
              line.line().kind(),
              hours(session, line),
              rows(session, line, firstBites.of(line)),
              FeedPut.on(session, line.line().id()),
              null));
    }
    return new SessionSummary(about(session), result(session, effort), lines);
  }

  /** Sums a session up with its fades. */
  public static SessionSummary whole(Review review) {
    Effort effort = Effort.of(review.session(), review.settings().handling());
    SessionSummary quick = quick(review.session(), effort);
    List<LineSummary> lines = new ArrayList<>();
    for (int i = 0; i < quick.lines().size(); i++) {
      lines.add(quick.lines().get(i).with(behind(review, effort.lines().get(i))));
    }
    return new SessionSummary(quick.about(), quick.result(), lines);
  }

  private static About about(Session session) {
    return new About(
        session.document().id(),
        session.occasion().title(),
        session.occasion().date(),
        true,
        session.occasion().venue().name(),
        session.match().lengthMillis() / TimeSpan.MILLIS_PER_MINUTE,
        day(session.occasion().weather()));
  }

  private static Day day(List<WeatherNote> notes) {
    double east = 0;
    double north = 0;
    int winds = 0;
    for (WeatherNote note : notes) {
      WeatherNote.Wind wind = note.wind();
      if (wind != null) {
        east += Math.sin(Math.toRadians(wind.fromDegrees()));
        north += Math.cos(Math.toRadians(wind.fromDegrees()));
        winds++;
      }
    }
    // Winds from all round have no mean direction.
    boolean directed = Math.hypot(east, north) > 1e-6 * winds && winds > 0;
    Double from = directed ? (Math.toDegrees(Math.atan2(east, north)) + 360) % 360 : null;
    return new Day(
        mean(notes, WeatherNote::waterC),
        mean(notes, WeatherNote::airC),
        from,
        mean(notes, SessionSummaries::force));
  }

  private static @Nullable Double force(WeatherNote note) {
    WeatherNote.Wind wind = note.wind();
    Integer force = wind == null ? null : wind.force();
    return force == null ? null : (Double) (double) force;
  }

  private static @Nullable Double mean(
      List<WeatherNote> notes, Function<WeatherNote, @Nullable Double> value) {
    double sum = 0;
    int count = 0;
    for (WeatherNote note : notes) {
      Double one = value.apply(note);
      if (one != null) {
        sum += one;
        count++;
      }
    }
    return count == 0 ? null : (Double) (sum / count);
  }

  private static Result result(Session session, Effort effort) {
    int fish = 0;
    int missing = 0;
    double grams = 0;
    for (LineEffort line : effort.lines()) {
      for (FishMark mark : line.fish()) {
        Double weight = mark.grams();
        fish++;
        missing += weight == null ? 1 : 0;
        grams += weight == null ? 0 : weight;
      }
    }
    Outcome.Result placed = session.outcome().result();
    return new Result(
        RecordGrade.of(session),
        fish,
        grams,
        new Weights(
            Reviewer.weightFrom(session), missing, NetScale.total(NetScale.of(session)).factor()),
        session.outcome().weighIn().stream().map(Outcome.NetWeight::grams).toList(),
        placed == null ? null : new Placing(placed.position(), placed.of()));
  }

  /** A fish counts in the hour it was landed in; one after all out in the last. */
  private static List<Hour> hours(Session session, LineEffort line) {
    long allIn = session.match().allIn();
    long allOut = session.match().allOut();
    int count = (int) ((allOut - allIn + MILLIS_PER_HOUR - 1) / MILLIS_PER_HOUR);
    List<Hour> hours = new ArrayList<>();
    for (int h = 0; h < count; h++) {
      long from = allIn + h * MILLIS_PER_HOUR;
      long to = Math.min(from + MILLIS_PER_HOUR, allOut);
      long millis = 0;
      for (Spell spell : line.spells()) {
        for (TimeSpan span : spell.fishedSpans()) {
          millis += span.overlapMillis(from, to);
        }
      }
      int fish = 0;
      double grams = 0;
      for (FishMark mark : line.fish()) {
        // Landed on the stroke: in the hour that the stroke ends, as its fishing was.
        boolean inside = (mark.at() > from || h == 0) && (mark.at() <= to || h == count - 1);
        if (inside && !mark.opening()) {
          Double weight = mark.grams();
          fish++;
          grams += weight == null ? 0 : weight;
        }
      }
      if (millis > 0) {
        hours.add(new Hour(h, millis / TimeSpan.MILLIS_PER_MINUTE, fish, grams));
      }
    }
    return hours;
  }

  private static List<FirstBiteRow> rows(Session session, LineEffort line, FirstBite firstBite) {
    List<FirstBiteRow> rows = new ArrayList<>();
    long last = Long.MIN_VALUE;
    String bait = null;
    for (FirstBite.Stretch row : firstBite.rows()) {
      boolean opens = row.episodeAt() != last;
      bait = opens ? bait(session, line, row.episodeAt()) : bait;
      rows.add(new FirstBiteRow(bait, row.entry(), row.exit(), row.bite(), opens));
      last = row.episodeAt();
    }
    return rows;
  }

  private static @Nullable String bait(Session session, LineEffort line, long episodeAt) {
    for (SessionEvent event : session.events()) {
      if (event.at() == episodeAt
          && event instanceof SessionEvent.Fed fed
          && fed.feed().bait() != null
          && onSpot(session, fed.lineId(), line.line().spot())) {
        return fed.feed().bait();
      }
    }
    return null;
  }

  private static boolean onSpot(Session session, @Nullable String lineId, String spot) {
    return session.lines().stream()
        .anyMatch(l -> l.id().equals(lineId) && Objects.equals(l.spot(), spot));
  }

  private static Behind behind(Review review, LineEffort line) {
    Grade grade = review.summary().grade();
    FadeTrack track = new FadeTrack(review.session(), line, review.settings().measure(), grade);
    Bunching bunching = new Bunching();
    List<Double> evidence = List.of();
    if (!track.isEmpty() && track.record().even()) {
      bunching = track.bunching();
      evidence = Learner.hazardEvidence(track.record(), bunching.factor());
    }
    return new Behind(
        fades(review, line), evidence, new BunchingFound(bunching.departure(), bunching.pairs()));
  }

  private static List<FadeFound> fades(Review review, LineEffort line) {
    long allIn = review.session().match().allIn();
    List<FadeFound> found = new ArrayList<>();
    for (StayOrGo stay : review.stays()) {
      Fade fade = stay.fade();
      if (fade == null || !stay.spell().lineId().equals(line.line().id())) {
        continue;
      }
      Fade.Moment moment = fade.moment();
      StayOrGo.PastPlain past = stay.past();
      found.add(
          new FadeFound(
              fade.probability(),
              moment == null ? null : minutes(moment.at() - allIn),
              fade.call().plainAt() == null ? null : minutes(fade.call().plainAt() - allIn),
              minutes(stay.spell().span().to() - allIn),
              past == null
                  ? null
                  : new PastPlain(
                      past.minutes(), past.caught().landed(), past.caught().weightG())));
    }
    return found;
  }

  private static double minutes(long millis) {
    return millis / TimeSpan.MILLIS_PER_MINUTE;
  }
}
