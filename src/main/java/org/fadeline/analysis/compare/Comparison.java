package org.fadeline.analysis.compare;

import java.util.List;
import org.fadeline.analysis.Caught;
import org.fadeline.analysis.FeedPut;
import org.fadeline.analysis.LineReview;
import org.fadeline.analysis.Review;
import org.fadeline.analysis.StayOrGo;
import org.fadeline.stats.LogRank;
import org.jspecify.annotations.Nullable;

/**
 * Two sessions side by side. Every ratio is first over second.
 *
 * @param first review of the first session
 * @param second review of the second session
 * @param setup alignment, pairing and the spread between days it rests on
 * @param lines what each pair of lines gave, and the lines without a counterpart
 * @param running both catches as they grew
 * @param findings what differed most, in words
 */
public record Comparison(
    Review first,
    Review second,
    ComparisonSetup setup,
    Lines lines,
    RunningCatch running,
    Findings findings) {

  /**
   * Line by line.
   *
   * @param pairs the paired lines
   * @param onlyFirst lines of the first session without a counterpart
   * @param onlySecond lines of the second session without a counterpart
   * @param whole rates over all lines of each session together
   * @param firstBites first bites after feeding, stratified by paired line; its figures are the
   *     first session's
   * @param bitesWithheld why bites are not compared, or null where they are
   */
  public record Lines(
      List<PairedLines> pairs,
      List<Side> onlyFirst,
      List<Side> onlySecond,
      PairRates whole,
      LogRank firstBites,
      @Nullable String bitesWithheld) {
    /** Copies the lists. */
    public Lines {
      pairs = List.copyOf(pairs);
      onlyFirst = List.copyOf(onlyFirst);
      onlySecond = List.copyOf(onlySecond);
    }
  }

  /**
   * Two lines held against each other.
   *
   * @param pair the lines and what they were paired by
   * @param rates fish, weight and bites an hour
   * @param firstBites log-rank test of the first bites after feeding, with delayed entry
   * @param first the first session's side
   * @param second the second session's side
   */
  public record PairedLines(
      LinePair pair, PairRates rates, LogRank firstBites, Side first, Side second) {}

  /**
   * The three rates.
   *
   * @param fish landed per fished hour
   * @param weight grams per fished hour
   * @param bites bites per bait hour, or null where a record cannot carry them
   */
  public record PairRates(RatePair fish, RatePair weight, @Nullable RatePair bites) {}

  /**
   * One line in one session: spells, first bites and fades in its review.
   *
   * @param line the line's review
   * @param feed what was put in on it
   * @param moves how often it was left for another line
   * @param stays its spells looked at both ways, in time order
   */
  public record Side(LineReview line, FeedPut feed, int moves, List<StayOrGo> stays) {
    /** Copies the list. */
    public Side {
      stays = List.copyOf(stays);
    }

    /** Returns minutes fished past the moment a fade was plain. */
    public double minutesPastPlain() {
      double minutes = 0;
      for (StayOrGo stay : stays) {
        StayOrGo.PastPlain past = stay.past();
        minutes += past == null ? 0 : past.minutes();
      }
      return minutes;
    }

    /** Returns all the line gave. */
    public Caught caught() {
      return line.caught();
    }
  }

  /**
   * What differed most.
   *
   * @param sentences at most three, each with what it rests on
   * @param caution that two days differ in more than what is compared
   */
  public record Findings(List<Finding> sentences, String caution) {
    /** Copies the list. */
    public Findings {
      sentences = List.copyOf(sentences);
    }
  }

  /**
   * One sentence.
   *
   * @param firstLine line of the first session it is about, or null
   * @param secondLine line of the second session it is about, or null
   * @param text the sentence with its figures
   */
  public record Finding(@Nullable String firstLine, @Nullable String secondLine, String text) {}
}
