package org.fadeline.export;

import java.util.List;
import org.fadeline.analysis.FirstBite.Clock;
import org.fadeline.analysis.Review;
import org.fadeline.analysis.compare.Comparison;
import org.fadeline.analysis.season.Season;
import org.fadeline.analysis.season.Season.By;
import org.fadeline.figure.CatchWeightsFigure;
import org.fadeline.figure.CompareCatchFigure;
import org.fadeline.figure.CompareFirstBitesFigure;
import org.fadeline.figure.ComparePegsFigure;
import org.fadeline.figure.CompareRatesFigure;
import org.fadeline.figure.CompareTimelinesFigure;
import org.fadeline.figure.FeedResponseFigure;
import org.fadeline.figure.Figure;
import org.fadeline.figure.FigureSheet;
import org.fadeline.figure.FigureStyle;
import org.fadeline.figure.FirstBiteFigure;
import org.fadeline.figure.Knowledge;
import org.fadeline.figure.MatchPageFigure;
import org.fadeline.figure.PegFigure;
import org.fadeline.figure.QuarterHourFigure;
import org.fadeline.figure.RateFigure;
import org.fadeline.figure.SeasonFadesFigure;
import org.fadeline.figure.SeasonFeedFigure;
import org.fadeline.figure.SeasonFirstBiteFigure;
import org.fadeline.figure.SeasonHoursFigure;
import org.fadeline.figure.SeasonPastPlainFigure;
import org.fadeline.figure.SeasonResultsFigure;
import org.fadeline.figure.TimelineFigure;
import org.fadeline.figure.TimelineView;
import org.fadeline.figure.WeightFigure;
import org.fadeline.model.talk.Picture;
import org.fadeline.replay.ReplayFrame;

/** Makes the figure that a picture asks for, and says what it rests on. */
public final class PictureMaker {
  private final TalkMaterial material;
  private final boolean named;

  /**
   * Makes a maker.
   *
   * @param material the sessions
   * @param named whether small print names sessions and dates
   */
  public PictureMaker(TalkMaterial material, boolean named) {
    this.material = material;
    this.named = named;
  }

  /**
   * A figure and what it rests on.
   *
   * @param figure the figure
   * @param foot the small print, most telling first
   */
  public record Made(Figure figure, List<String> foot) {
    /** Copies the list. */
    public Made {
      foot = List.copyOf(foot);
    }
  }

  /**
   * Makes the figure.
   *
   * @param style its units are the picture's own where that has some
   * @throws IllegalArgumentException if a session or a line it asks for is not there
   */
  public Made make(Picture picture, FigureStyle style) {
    FigureStyle own =
        picture.manner().units() == null
            ? style
            : new FigureStyle(style.theme(), picture.manner().units(), style.textScale());
    if (picture.kind().ofSeason()) {
      Season season = material.season(picture.sources().get(0));
      return new Made(seasonal(picture.kind(), season, own), FigureSheet.footOf(season, own));
    }
    if (picture.kind().sessions() == 2) {
      Comparison comparison = material.comparison(picture, own.units());
      return new Made(
          compared(picture.kind(), comparison, own), FigureSheet.footOf(comparison, own, named));
    }
    Review review = material.review(picture.sources().get(0));
    return new Made(reviewed(picture, review, own), FigureSheet.footOf(review, own, named));
  }

  /** Returns a figure of two sessions. */
  public static Figure compared(Picture.Kind kind, Comparison comparison, FigureStyle style) {
    return switch (kind) {
      case COMPARE_CATCH -> new CompareCatchFigure(comparison, style);
      case COMPARE_PEGS -> new ComparePegsFigure(comparison, style);
      case COMPARE_RATES -> new CompareRatesFigure(comparison, style);
      case COMPARE_FIRST_BITES -> new CompareFirstBitesFigure(comparison, style);
      default -> new CompareTimelinesFigure(comparison, style);
    };
  }

  private static Figure seasonal(Picture.Kind kind, Season season, FigureStyle style) {
    return switch (kind) {
      case SEASON_HOURS -> new SeasonHoursFigure(season, style);
      case SEASON_FIRST_BITE_LINE -> new SeasonFirstBiteFigure(season, By.LINE, style);
      case SEASON_FIRST_BITE_BAIT -> new SeasonFirstBiteFigure(season, By.BAIT, style);
      case SEASON_FIRST_BITE_WATER -> new SeasonFirstBiteFigure(season, By.WATER, style);
      case SEASON_FADES -> new SeasonFadesFigure(season, style);
      case SEASON_PAST_PLAIN -> new SeasonPastPlainFigure(season, style);
      case SEASON_FEED -> new SeasonFeedFigure(season, style);
      default -> new SeasonResultsFigure(season, style);
    };
  }

  private static Figure reviewed(Picture picture, Review review, FigureStyle style) {
    return switch (picture.kind()) {
      case TIMELINE -> timeline(picture, review, style);
      case PEG -> peg(picture, review, style);
      case WEIGHT -> new WeightFigure(review, style, new Knowledge(picture.window().knownAt()));
      case FIRST_BITE -> new FirstBiteFigure(review, style);
      case FIRST_BITE_BAIT_IN -> new FirstBiteFigure(review, style, Clock.BAIT_IN);
      case RATE -> new RateFigure(review, line(picture), style, measure(picture));
      case FEED_RESPONSE -> new FeedResponseFigure(review, line(picture), style);
      case QUARTER_HOURS -> new QuarterHourFigure(review, style);
      case CATCH_WEIGHTS -> new CatchWeightsFigure(review, style);
      case MATCH_PAGE -> new MatchPageFigure(review, style);
      default -> throw new IllegalArgumentException(picture.kind().word() + " is not of one match");
    };
  }

  private static Figure peg(Picture picture, Review review, FigureStyle style) {
    Long at = picture.window().knownAt();
    return new PegFigure(
        review.session(),
        ReplayFrame.at(review.session(), at == null ? review.session().match().allOut() : at),
        style);
  }

  private static Figure timeline(Picture picture, Review review, FigureStyle style) {
    Picture.Window window = picture.window();
    TimelineView view = TimelineView.whole(review.session()).withMeasure(measure(picture));
    long start = window.from() == null ? view.from() : window.from();
    long end = Math.max(start + 1000, window.to() == null ? view.to() : window.to());
    TimelineView part = view.withRange(start, end);
    return new TimelineFigure(
        review,
        style,
        picture.lines().isEmpty() ? part : part.withLanes(picture.lines()),
        new Knowledge(window.knownAt()));
  }

  private static TimelineView.Measure measure(Picture picture) {
    return switch (picture.manner().measure()) {
      case FISH -> TimelineView.Measure.FISH;
      case WEIGHT -> TimelineView.Measure.WEIGHT;
    };
  }

  private static String line(Picture picture) {
    if (picture.lines().size() != 1) {
      throw new IllegalArgumentException(
          "the picture \"" + picture.kind().label() + "\" needs one line; choose it");
    }
    return picture.lines().get(0);
  }
}
