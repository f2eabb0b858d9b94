package org.fadeline.analysis.season;

import java.time.LocalDate;
import java.util.List;
import org.fadeline.analysis.FeedPut;
import org.fadeline.analysis.Grade;
import org.fadeline.analysis.LearnedPriors;
import org.fadeline.analysis.Review.WeightFrom;
import org.jspecify.annotations.Nullable;

/**
 * What a season needs of one session: small, immutable, and of plain values only, so that it can be
 * kept in a file.
 *
 * @param about which session it is and what the day was like
 * @param result what came of it
 * @param lines its lines, in order
 */
public record SessionSummary(About about, Result result, List<LineSummary> lines) {
  /** Copies the list. */
  public SessionSummary {
    lines = List.copyOf(lines);
  }

  /** Returns whether fades have been worked out. */
  public boolean hasFades() {
    return lines.stream().allMatch(l -> l.behind() != null);
  }

  /** Returns minutes fished on all lines. */
  public double fishedMinutes() {
    double minutes = 0;
    for (LineSummary line : lines) {
      minutes += line.fishedMinutes();
    }
    return minutes;
  }

  /** Returns this of a record that does not tell its date. */
  public SessionSummary undated() {
    return new SessionSummary(about.undated(), result, lines);
  }

  /**
   * Which session it is.
   *
   * @param id id of the document
   * @param title what the angler calls it
   * @param date local date of all in; where the record tells none, that of the file's last change
   * @param dated whether the record tells its date: one that does not belongs to no day or month
   * @param water name of the water, or null
   * @param matchMinutes from all in to all out
   * @param day what the day was like
   */
  public record About(
      String id,
      String title,
      LocalDate date,
      boolean dated,
      @Nullable String water,
      double matchMinutes,
      Day day) {
    /** Returns this of a record that does not tell its date. */
    About undated() {
      return new About(id, title, date, false, water, matchMinutes, day);
    }
  }

  /**
   * The weather of the day: means of its notes, each null where none says.
   *
   * @param waterC water temperature, degrees Celsius
   * @param airC air temperature, degrees Celsius
   * @param windFromDegrees mean compass direction it blew from, in [0, 360)
   * @param windForce mean Beaufort force
   */
  public record Day(
      @Nullable Double waterC,
      @Nullable Double airC,
      @Nullable Double windFromDegrees,
      @Nullable Double windForce) {
    /** Nothing known. */
    public static final Day UNKNOWN = new Day(null, null, null, null);
  }

  /**
   * What came of it.
   *
   * @param grade what kind of record it is
   * @param fish landed that count
   * @param grams their weight as logged
   * @param weights whether the weights are estimates, and whether any is missing
   * @param netGrams weights of the nets at the scales; empty where not known
   * @param placing position and field, or null
   */
  public record Result(
      Grade grade,
      int fish,
      double grams,
      Weights weights,
      List<Double> netGrams,
      @Nullable Placing placing) {
    /** Copies the list. */
    public Result {
      netGrams = List.copyOf(netGrams);
    }

    /** Returns the weight at the scales, or null where not known. */
    public @Nullable Double weighedGrams() {
      return netGrams.isEmpty()
          ? null
          : (Double) netGrams.stream().mapToDouble(Double::doubleValue).sum();
    }
  }

  /**
   * What the weights are worth.
   *
   * @param from where they come from
   * @param missing fish without a weight
   * @param scalesFactor weight at the scales over weight logged, foul-hooked fish in both; null
   *     where the two do not speak of the same fish
   */
  public record Weights(WeightFrom from, int missing, @Nullable Double scalesFactor) {}

  /**
   * Placing.
   *
   * @param position from 1, or null
   * @param of how many fished, or null
   */
  public record Placing(@Nullable Integer position, @Nullable Integer of) {}

  /**
   * One line.
   *
   * @param name what the angler calls it
   * @param kind in trade words, or null
   * @param hours what it gave by hour of the match; hours not fished left out
   * @param firstBites stretches from feed to first bite
   * @param feed what was put in
   * @param behind fades and what is learned from the record, or null where not worked out yet
   */
  public record LineSummary(
      String name,
      @Nullable String kind,
      List<Hour> hours,
      List<FirstBiteRow> firstBites,
      FeedPut feed,
      @Nullable Behind behind) {
    /** Copies the lists. */
    public LineSummary {
      hours = List.copyOf(hours);
      firstBites = List.copyOf(firstBites);
    }

    /** Returns what lines of several sessions are put together by: the kind, else the name. */
    public String group() {
      return LearnedPriors.kindOf(kind, name);
    }

    /** Returns minutes fished. */
    public double fishedMinutes() {
      double minutes = 0;
      for (Hour hour : hours) {
        minutes += hour.fishedMinutes();
      }
      return minutes;
    }

    /** Returns fish landed that count, those of a spell's opening left out. */
    public int fish() {
      int fish = 0;
      for (Hour hour : hours) {
        fish += hour.fish();
      }
      return fish;
    }

    /** Returns their weight in grams. */
    public double grams() {
      double grams = 0;
      for (Hour hour : hours) {
        grams += hour.grams();
      }
      return grams;
    }

    /** Returns this line with its fades. */
    public LineSummary with(Behind newBehind) {
      return new LineSummary(name, kind, hours, firstBites, feed, newBehind);
    }
  }

  /**
   * One hour of the match on one line.
   *
   * @param hour hours since all in, from 0
   * @param fishedMinutes above 0
   * @param fish landed in it, those of a spell's opening left out
   * @param grams their weight
   */
  public record Hour(int hour, double fishedMinutes, int fish, double grams) {}

  /**
   * One stretch at risk of a first bite.
   *
   * @param bait what was fed, or null
   * @param entry minutes since the feed at which a bait went in
   * @param exit minutes since the feed at which the stretch ended
   * @param bite whether it ended in the first bite
   * @param opens whether it is the first stretch of its feeding episode
   */
  public record FirstBiteRow(
      @Nullable String bait, double entry, double exit, boolean bite, boolean opens) {}

  /**
   * What takes longer to work out.
   *
   * @param fades one entry for each spell a fade could be judged in
   * @param hazardLogEvidence log evidence of the line's record at each rate of change of {@link
   *     Learned#HAZARDS}; empty where the record cannot carry it
   * @param bunching how far its bites bunch
   */
  public record Behind(
      List<FadeFound> fades, List<Double> hazardLogEvidence, BunchingFound bunching) {
    /** Copies the lists. */
    public Behind {
      fades = List.copyOf(fades);
      hazardLogEvidence = List.copyOf(hazardLogEvidence);
    }
  }

  /**
   * Bunching of one line, as it adds up over sessions.
   *
   * @param departure Σ (a − b)²/(a + b) of successive ten-minute counts
   * @param pairs how many pairs
   */
  public record BunchingFound(double departure, int pairs) {}

  /**
   * One spell a fade could be judged in. Minutes are since all in.
   *
   * @param probability that the line faded in it
   * @param minute the moment, or null where there is none
   * @param plainMinute when it was plain, or null
   * @param leftMinute when the line was left
   * @param pastPlain what staying past plain gave, or null where it does not apply
   */
  public record FadeFound(
      double probability,
      @Nullable Double minute,
      @Nullable Double plainMinute,
      double leftMinute,
      @Nullable PastPlain pastPlain) {}

  /**
   * From the plain moment to leaving.
   *
   * @param minutes how long
   * @param fish landed in it
   * @param grams their weight
   */
  public record PastPlain(double minutes, int fish, double grams) {}
}
