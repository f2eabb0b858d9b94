package org.fadeline.model.talk;

import java.util.List;
import org.fadeline.model.Units;
import org.jspecify.annotations.Nullable;

/**
 * Which figure of which sessions a slide shows, and how it is looked at.
 *
 * @param kind which figure
 * @param sources ids of what it is of: one session, or two where it compares, or one season
 * @param lines ids of the lines shown, top down; for a figure of one line that one; empty for all
 * @param window what time it shows and from when it is looked at
 * @param manner how it counts
 */
public record Picture(
    Kind kind, List<String> sources, List<String> lines, Window window, Manner manner) {
  /** Copies the lists and checks how many sessions there are. */
  public Picture {
    sources = List.copyOf(sources);
    lines = List.copyOf(lines);
    if (sources.size() != kind.sources()) {
      throw new IllegalArgumentException(
          kind.word() + " is of " + kind.sources() + " sources, not " + sources.size());
    }
  }

  /** Returns the picture of a whole session, seen from afterwards. */
  public static Picture of(Kind kind, String... sources) {
    return new Picture(kind, List.of(sources), List.of(), Window.WHOLE, Manner.USUAL);
  }

  /** Returns the picture of one line of a session, seen from afterwards. */
  public static Picture ofLine(Kind kind, String source, String line) {
    return new Picture(kind, List.of(source), List.of(line), Window.WHOLE, Manner.USUAL);
  }

  /** The figures there are. */
  public enum Kind {
    /** The match over time, a lane a line. */
    TIMELINE("timeline", "The match, line by line", Needs.WINDOW),
    /** The peg from above. */
    PEG("peg", "The peg from above", Needs.MOMENT),
    /** Running weight. */
    WEIGHT("weight", "Running weight", Needs.MOMENT),
    /** First bite after feeding. */
    FIRST_BITE("first-bite", "First bite after feeding", Needs.NOTHING),
    /** The same by minutes with a bait in. */
    FIRST_BITE_BAIT_IN(
        "first-bite-bait-in", "First bite, by minutes with a bait in", Needs.NOTHING),
    /** Catch rate of one line. */
    RATE("rate", "Catch rate of one line", Needs.LINE),
    /** Bites by minutes since feeding, one line. */
    FEED_RESPONSE("feed-response", "Bites since feeding, one line", Needs.LINE),
    /** Catch by quarter-hour. */
    QUARTER_HOURS("quarter-hours", "Catch by quarter-hour", Needs.NOTHING),
    /** Weight of each fish. */
    CATCH_WEIGHTS("catch-weights", "Weight of each fish", Needs.NOTHING),
    /** The match on one page. */
    MATCH_PAGE("match-page", "The match on one page", Needs.NOTHING),
    /** Two matches over time. */
    COMPARE_TIMELINES("compare-timelines", "Two matches, line by line", Needs.TWO_SESSIONS),
    /** Running catch of two matches. */
    COMPARE_CATCH("compare-catch", "Running catch of two matches", Needs.TWO_SESSIONS),
    /** Both pegs on one scale. */
    COMPARE_PEGS("compare-pegs", "Two pegs on one scale", Needs.TWO_SESSIONS),
    /** What each pair of lines paid an hour, with the ratios. */
    COMPARE_RATES("compare-rates", "Rates of two matches", Needs.TWO_SESSIONS),
    /** First bites after feeding of two matches. */
    COMPARE_FIRST_BITES("compare-first-bites", "First bites of two matches", Needs.TWO_SESSIONS),
    /** What each session of a season came to. */
    SEASON_RESULTS("season-results", "Season: each match", Needs.SEASON),
    /** What each kind of line gave by hour of the match. */
    SEASON_HOURS("season-line-by-hour", "Season: lines by the hour", Needs.SEASON),
    /** First bites by kind of line. */
    SEASON_FIRST_BITE_LINE("season-first-bite-by-line", "Season: first bite by line", Needs.SEASON),
    /** First bites by bait. */
    SEASON_FIRST_BITE_BAIT("season-first-bite-by-bait", "Season: first bite by bait", Needs.SEASON),
    /** First bites by water. */
    SEASON_FIRST_BITE_WATER(
        "season-first-bite-by-water", "Season: first bite by water", Needs.SEASON),
    /** When each kind of line faded. */
    SEASON_FADES("season-fades", "Season: when lines faded", Needs.SEASON),
    /** How long stays went past plain. */
    SEASON_PAST_PLAIN("season-past-plain", "Season: stays past plain", Needs.SEASON),
    /** Feed given against what came. */
    SEASON_FEED("season-feed", "Season: feed and catch", Needs.SEASON);

    private final String word;
    private final String label;
    private final Needs needs;

    private enum Needs {
      NOTHING,
      LINE,
      MOMENT,
      WINDOW,
      TWO_SESSIONS,
      SEASON
    }

    Kind(String word, String label, Needs needs) {
      this.word = word;
      this.label = label;
      this.needs = needs;
    }

    /** Returns the word used in files. */
    public String word() {
      return word;
    }

    /** Returns the words on screen. */
    public String label() {
      return label;
    }

    /** Returns of how many sessions it is; 0 where it is of a season. */
    public int sessions() {
      return needs == Needs.TWO_SESSIONS ? 2 : needs == Needs.SEASON ? 0 : 1;
    }

    /** Returns how many sources it names: its sessions, or its season. */
    public int sources() {
      return needs == Needs.TWO_SESSIONS ? 2 : 1;
    }

    /** Returns whether it is of a season. */
    public boolean ofSeason() {
      return needs == Needs.SEASON;
    }

    /** Returns whether it is of one line, which must be named. */
    public boolean ofOneLine() {
      return needs == Needs.LINE;
    }

    /** Returns whether it can be looked at from a moment of the match. */
    public boolean hasMoment() {
      return needs == Needs.MOMENT || needs == Needs.WINDOW;
    }

    /** Returns whether it can show a part of the match and some of the lines. */
    public boolean hasWindow() {
      return needs == Needs.WINDOW;
    }

    /** Returns whether what its curves count can be chosen. */
    public boolean hasMeasure() {
      return needs == Needs.WINDOW || this == RATE;
    }
  }

  /**
   * What time a picture shows.
   *
   * @param from first instant, epoch milliseconds; null from the start
   * @param to last instant, epoch milliseconds, after {@code from}; null to the end
   * @param knownAt from when the match is looked at, epoch milliseconds; null from afterwards
   */
  public record Window(@Nullable Long from, @Nullable Long to, @Nullable Long knownAt) {
    /** The whole match, seen from afterwards. */
    public static final Window WHOLE = new Window(null, null, null);

    /** Checks the order. */
    public Window {
      if (from != null && to != null && to <= from) {
        throw new IllegalArgumentException("a picture's time must end after it starts");
      }
    }
  }

  /** What a curve counts. */
  public enum Measure {
    /** Fish landed per fished hour. */
    FISH("fish"),
    /** Weight landed per fished hour. */
    WEIGHT("weight");

    private final String word;

    Measure(String word) {
      this.word = word;
    }

    /** Returns the word used in files. */
    public String word() {
      return word;
    }
  }

  /** What is laid on what where two sessions share an axis. */
  public enum Align {
    /** All in on all in. */
    ALL_IN("all-in"),
    /** The same time of day. */
    CLOCK("clock"),
    /** First feed on first feed. */
    FIRST_FED("first-fed"),
    /** One chosen event of each. */
    EVENT("event"),
    /** All in on all in, the second moved. */
    BY_HAND("by-hand");

    private final String word;

    Align(String word) {
      this.word = word;
    }

    /** Returns the word used in files. */
    public String word() {
      return word;
    }
  }

  /**
   * How a picture counts.
   *
   * @param measure what curves count
   * @param align how two sessions share an axis
   * @param units of this picture, or null for the talk's own
   * @param chosen what was chosen by hand of two sessions
   */
  public record Manner(Measure measure, Align align, @Nullable Units units, Chosen chosen) {
    /** Fish, all in on all in, the talk's units. */
    public static final Manner USUAL = new Manner(Measure.FISH, Align.ALL_IN, null, Chosen.NOTHING);

    /** Returns this manner with curves that count something else. */
    public Manner withMeasure(Measure newMeasure) {
      return new Manner(newMeasure, align, units, chosen);
    }

    /** Returns this manner with two sessions laid otherwise. */
    public Manner withAlign(Align newAlign) {
      return new Manner(measure, newAlign, units, chosen);
    }

    /** Returns this manner in other units, or the talk's own. */
    public Manner withUnits(@Nullable Units newUnits) {
      return new Manner(measure, align, newUnits, chosen);
    }

    /** Returns this manner with something else chosen by hand. */
    public Manner withChosen(Chosen newChosen) {
      return new Manner(measure, align, units, newChosen);
    }

    /** Returns this manner without what has a meaning for its two sessions alone. */
    public Manner forOtherSessions() {
      boolean own = align == Align.EVENT || align == Align.BY_HAND;
      return new Manner(measure, own ? Align.ALL_IN : align, units, Chosen.NOTHING);
    }
  }

  /**
   * What was chosen by hand of two sessions.
   *
   * @param minutes how much later the second is laid where {@link Align#BY_HAND}, in [−1440, 1440]
   * @param firstEvent id of the first session's event where {@link Align#EVENT}, or null
   * @param secondEvent id of the second session's event where {@link Align#EVENT}, or null
   * @param pairs lines held against each other, or kept apart, before others pair by themselves
   */
  public record Chosen(
      double minutes, @Nullable String firstEvent, @Nullable String secondEvent, List<Pair> pairs) {
    /** Nothing chosen. */
    public static final Chosen NOTHING = new Chosen(0, null, null, List.of());

    /** Most minutes of a shift: a day. */
    public static final double MOST_MINUTES = 1440;

    /** Copies the list and checks the shift. */
    public Chosen {
      pairs = List.copyOf(pairs);
      if (!(Math.abs(minutes) <= MOST_MINUTES)) {
        throw new IllegalArgumentException("minutes must be -1440 to 1440: " + minutes);
      }
    }
  }

  /**
   * Two lines held against each other, or one kept without counterpart.
   *
   * @param first id of a line of the first session, or null to keep the other alone
   * @param second id of a line of the second session, or null to keep the other alone
   */
  public record Pair(@Nullable String first, @Nullable String second) {}

  /** Returns this picture with other lines. */
  public Picture withLines(List<String> newLines) {
    return new Picture(kind, sources, newLines, window, manner);
  }

  /** Returns this picture over another time. */
  public Picture withWindow(Window newWindow) {
    return new Picture(kind, sources, lines, newWindow, manner);
  }

  /** Returns this picture counted otherwise. */
  public Picture withManner(Manner newManner) {
    return new Picture(kind, sources, lines, window, newManner);
  }
}
