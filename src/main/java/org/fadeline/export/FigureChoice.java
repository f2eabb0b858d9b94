package org.fadeline.export;

import org.fadeline.analysis.Review;
import org.fadeline.figure.CatchWeightsFigure;
import org.fadeline.figure.FeedResponseFigure;
import org.fadeline.figure.Figure;
import org.fadeline.figure.FigureStyle;
import org.fadeline.figure.FirstBiteFigure;
import org.fadeline.figure.Knowledge;
import org.fadeline.figure.MatchPageFigure;
import org.fadeline.figure.PegFigure;
import org.fadeline.figure.QuarterHourFigure;
import org.fadeline.figure.RateFigure;
import org.fadeline.figure.TimelineFigure;
import org.fadeline.figure.TimelineView;
import org.fadeline.figure.WeightFigure;
import org.fadeline.replay.ReplayFrame;
import org.jspecify.annotations.Nullable;

/**
 * Which figure of a session to show: what a talk's file keeps of a picture.
 *
 * @param kind which figure
 * @param lineId the line, for figures of one line; else null
 * @param moment from when the match is looked at, epoch milliseconds; null in hindsight
 * @param from first instant shown on a timeline, epoch milliseconds; null from all in
 * @param to last instant shown on a timeline, epoch milliseconds; null to all out
 */
public record FigureChoice(
    Kind kind,
    @Nullable String lineId,
    @Nullable Long moment,
    @Nullable Long from,
    @Nullable Long to) {
  /** The figures there are. */
  public enum Kind {
    /** The match over time. */
    TIMELINE("timeline"),
    /** The peg from above. */
    PEG("peg"),
    /** First bite after feeding. */
    FIRST_BITE("first-bite"),
    /** Running weight. */
    WEIGHT("weight"),
    /** Catch rate of one line. */
    RATE("rate"),
    /** Bites by minutes since feeding, one line. */
    FEED_RESPONSE("feed-response"),
    /** Catch by quarter-hour. */
    QUARTER_HOURS("quarter-hours"),
    /** Weight of each fish. */
    CATCH_WEIGHTS("catch-weights"),
    /** The match on one page. */
    MATCH_PAGE("match-page");

    private final String word;

    Kind(String word) {
      this.word = word;
    }

    /** Returns the word used in files. */
    public String word() {
      return word;
    }
  }

  /** Returns the choice of a figure of the whole match, seen from afterwards. */
  public static FigureChoice of(Kind kind) {
    return new FigureChoice(kind, null, null, null, null);
  }

  /** Returns the choice of a figure of one line, seen from afterwards. */
  public static FigureChoice of(Kind kind, String lineId) {
    return new FigureChoice(kind, lineId, null, null, null);
  }

  /**
   * Makes the figure.
   *
   * @throws IllegalArgumentException if it is of a line and the review has no such line
   */
  public Figure make(Review review, FigureStyle style) {
    return switch (kind) {
      case TIMELINE -> timeline(review, style);
      case PEG ->
          new PegFigure(
              review.session(),
              ReplayFrame.at(
                  review.session(), moment == null ? review.session().match().allOut() : moment),
              style);
      case FIRST_BITE -> new FirstBiteFigure(review, style);
      case WEIGHT -> new WeightFigure(review, style, new Knowledge(moment));
      case RATE -> new RateFigure(review, line(), style, TimelineView.Measure.FISH);
      case FEED_RESPONSE -> new FeedResponseFigure(review, line(), style);
      case QUARTER_HOURS -> new QuarterHourFigure(review, style);
      case CATCH_WEIGHTS -> new CatchWeightsFigure(review, style);
      case MATCH_PAGE -> new MatchPageFigure(review, style);
    };
  }

  private Figure timeline(Review review, FigureStyle style) {
    TimelineView view = TimelineView.whole(review.session());
    long start = from == null ? view.from() : from;
    long end = Math.max(start + 1000, to == null ? view.to() : to);
    return new TimelineFigure(review, style, view.withRange(start, end), new Knowledge(moment));
  }

  private String line() {
    if (lineId == null) {
      throw new IllegalArgumentException("the figure \"" + kind.word() + "\" needs a line");
    }
    return lineId;
  }
}
