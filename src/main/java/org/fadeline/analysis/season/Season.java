package org.fadeline.analysis.season;

import java.util.List;
import org.fadeline.analysis.FirstBite;
import org.fadeline.stats.LogRank;
import org.jspecify.annotations.Nullable;

/**
 * A season's tables. Sessions are named by their index in {@code sessions}, so that any figure
 * leads back to what it rests on.
 *
 * @param sessions the sessions looked at, by date, those that tell none last
 * @param filter which those are
 * @param lines what each kind of line gave, by hour of the match
 * @param firstBites time to first bite after feeding, by kind of line, bait and water
 * @param fades fades by kind of line
 * @param feed feed given against what came, by kind of line
 * @param standing the sessions that stand out, by date
 * @param learned what is learned for the next review
 */
public record Season(
    List<SessionSummary> sessions,
    SeasonFilter filter,
    List<LineHours> lines,
    List<FirstBiteGroup> firstBites,
    List<FadeGroup> fades,
    List<FeedGroup> feed,
    List<StandingOut> standing,
    Learned learned) {
  /** Sessions below which limits are not given: too few to draw from. */
  public static final int FEWEST_FOR_LIMITS = 5;

  /** Copies the lists. */
  public Season {
    sessions = List.copyOf(sessions);
    lines = List.copyOf(lines);
    firstBites = List.copyOf(firstBites);
    fades = List.copyOf(fades);
    feed = List.copyOf(feed);
    standing = List.copyOf(standing);
  }

  /**
   * One kind of line.
   *
   * @param group the kind, or the name of a line without one
   * @param whole the whole match
   * @param hours hour by hour, hours never fished left out
   */
  public record LineHours(String group, Cell whole, List<Cell> hours) {
    /** Copies the list. */
    public LineHours {
      hours = List.copyOf(hours);
    }
  }

  /**
   * What one kind of line gave in one hour of the match, or in all.
   *
   * @param hour hours since all in, from 0; null for the whole match
   * @param sessions the sessions in which it was fished then
   * @param fishedHours over all of them
   * @param fish landed per fished hour
   * @param weight grams per fished hour, over sessions with every fish's weight
   */
  public record Cell(
      @Nullable Integer hour,
      List<Integer> sessions,
      double fishedHours,
      PerHour fish,
      PerHour weight) {
    /** Copies the list. */
    public Cell {
      sessions = SessionIndices.copyOf(sessions);
    }
  }

  /**
   * A rate over sessions: all that came over all the time, not a mean of rates.
   *
   * @param amount fish or grams
   * @param sessions how many sessions it rests on
   * @param perHour null where there are none, or less than a minute was fished over all of them
   * @param limits null where there are too few sessions
   */
  public record PerHour(
      double amount, int sessions, @Nullable Double perHour, @Nullable Limits limits) {
    /** Returns the lower limit, or null where there is none. */
    public @Nullable Double low() {
      return limits == null ? null : (Double) limits.low();
    }

    /** Returns the upper limit, or null where there is none. */
    public @Nullable Double high() {
      return limits == null ? null : (Double) limits.high();
    }
  }

  /**
   * Limits of a rate.
   *
   * @param low lower limit, 0 or more
   * @param high upper limit
   * @param level of both, in (0, 1)
   * @param basis how they were found
   */
  public record Limits(double low, double high, double level, Basis basis) {}

  /** How limits were found. */
  public enum Basis {
    /** Whole sessions drawn with replacement. */
    BOOTSTRAP("bootstrap"),
    /** The same for many sessions, by its large-sample form. */
    LINEARISED("linearised"),
    /** No fish at all: the exact upper limit of a count of none. */
    NONE_CAUGHT("none-caught");

    private final String word;

    Basis(String word) {
      this.word = word;
    }

    /** Returns the word used in files. */
    public String word() {
      return word;
    }
  }

  /** What first bites are put together by. */
  public enum By {
    /** Kind of line. */
    LINE("line"),
    /** What was fed. */
    BAIT("bait"),
    /** The water. */
    WATER("water");

    private final String word;

    By(String word) {
      this.word = word;
    }

    /** Returns the word used in files. */
    public String word() {
      return word;
    }
  }

  /**
   * First bites of one kind of line, bait or water.
   *
   * @param by what they are put together by
   * @param name which
   * @param sessions the sessions it rests on
   * @param tally feeds fished over and what became of them
   * @param curve the curve, or null with never five at risk
   * @param againstOthers log-rank test against all the others of its sort, stratified by session:
   *     only sessions with both say anything
   */
  public record FirstBiteGroup(
      By by,
      String name,
      List<Integer> sessions,
      FeedTally tally,
      @Nullable Curve curve,
      LogRank againstOthers) {
    /** Copies the list. */
    public FirstBiteGroup {
      sessions = SessionIndices.copyOf(sessions);
    }
  }

  /**
   * Feeds fished over.
   *
   * @param feeds how many
   * @param bites how many ended in a first bite
   * @param late how many were first fished after the feed
   */
  public record FeedTally(int feeds, int bites, int late) {}

  /**
   * A curve over sessions (Kaplan–Meier with delayed entry).
   *
   * @param fromMinute it holds given none before this minute
   * @param medianMinutes null where it does not come down to one half
   * @param low lower limit of the median from whole sessions drawn, or null
   * @param high upper limit, or null where not reached or too few sessions
   * @param level of both, in (0, 1)
   * @param steps limits of each step are null: they would take feeds for the unit; taken as given,
   *     for a long season has tens of thousands
   */
  public record Curve(
      double fromMinute,
      @Nullable Double medianMinutes,
      @Nullable Double low,
      @Nullable Double high,
      double level,
      List<FirstBite.Step> steps) {}

  /**
   * Fades of one kind of line.
   *
   * @param group the kind, or the name of a line without one
   * @param sessions sessions with a spell a fade could be judged in
   * @param spells how many such spells
   * @param faded those that faded with a probability of 0.8 or more
   * @param minutes when those faded, minutes since all in, in order
   * @param past stays past plain
   */
  public record FadeGroup(
      String group,
      List<Integer> sessions,
      int spells,
      int faded,
      List<Double> minutes,
      PastPlainTally past) {
    /** Copies the lists. */
    public FadeGroup {
      sessions = SessionIndices.copyOf(sessions);
      minutes = List.copyOf(minutes);
    }

    /** Returns the middle of {@code minutes}, or null without any. */
    public @Nullable Double medianMinute() {
      int n = minutes.size();
      return n == 0 ? null : (Double) ((minutes.get((n - 1) / 2) + minutes.get(n / 2)) / 2);
    }
  }

  /**
   * Stays past plain.
   *
   * @param stays how many
   * @param minutes all their minutes
   * @param fish landed in them
   * @param grams their weight
   */
  public record PastPlainTally(int stays, double minutes, int fish, double grams) {
    /** None. */
    public static final PastPlainTally NONE = new PastPlainTally(0, 0, 0, 0);

    PastPlainTally plus(SessionSummary.PastPlain more) {
      return new PastPlainTally(
          stays + 1, minutes + more.minutes(), fish + more.fish(), grams + more.grams());
    }
  }

  /** Returns this with its first bites. */
  Season withFirstBites(List<FirstBiteGroup> newFirstBites) {
    return new Season(sessions, filter, lines, newFirstBites, fades, feed, standing, learned);
  }

  /** Returns the sessions that tell their date: what goes over time is told of them. */
  public List<SessionSummary> dated() {
    return sessions.stream().filter(s -> s.about().dated()).toList();
  }

  /** Returns the stays past plain of one session, over the kinds of line looked at. */
  public PastPlainTally pastPlain(SessionSummary session) {
    PastPlainTally tally = PastPlainTally.NONE;
    for (SessionSummary.LineSummary line : session.lines()) {
      SessionSummary.Behind behind = line.behind();
      if (behind != null && filter.holds(line)) {
        for (SessionSummary.FadeFound fade : behind.fades()) {
          SessionSummary.PastPlain past = fade.pastPlain();
          tally = past == null ? tally : tally.plus(past);
        }
      }
    }
    return tally;
  }
}
