package org.fadeline.figure;

import java.awt.Graphics2D;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Set;
import org.fadeline.analysis.Course.RollingPoint;
import org.fadeline.analysis.LineReview;
import org.fadeline.analysis.Rate;
import org.fadeline.analysis.Review;
import org.fadeline.analysis.ReviewSettings;
import org.fadeline.replay.ReplayFrame;
import org.fadeline.replay.ReplayTrack;
import org.jspecify.annotations.Nullable;

/**
 * The match over time, a lane a line: what went in hangs from the lane's top, what came out stands
 * on a string below it, and the rolling rate with its band fills the rest.
 *
 * <p>What is known is an argument. As known at an instant, nothing that came later shows: no fish,
 * no total, no rate, no scale, and a fade only as it could be called by then. A screen asks for a
 * {@link TimelineLayout} and draws its layers apart.
 */
public final class TimelineFigure implements Figure {
  private final Review review;
  private final FigureStyle style;
  private final TimelineView view;
  private final Knowledge knowledge;
  private final Shared shared;
  private final double leastScaleTop;
  private final FigureText words;

  /** What does not depend on view, style or knowledge, worked out once for a review. */
  record Shared(LaneRecord.Lanes lanes, ReplayTrack track, SessionStroke session, Beside beside) {}

  /**
   * What a timeline shares with one it is set beside, so that both read alike.
   *
   * @param hues by line id; a line not named has its place in the review
   * @param names of the lines of both, for which there is room left of the axis: what lies at the
   *     same x happened at the same place; empty for a timeline that stands alone
   */
  record Beside(Map<String, Integer> hues, List<String> names) {
    static final Beside NOTHING = new Beside(Map.of(), List.of());
  }

  /** Makes the timeline of a whole match as it looks afterwards. */
  public TimelineFigure(Review review, FigureStyle style) {
    this(review, style, TimelineView.whole(review.session()), Knowledge.hindsight());
  }

  /** Makes a timeline. */
  public TimelineFigure(Review review, FigureStyle style, TimelineView view, Knowledge knowledge) {
    this(review, style, view, knowledge, shared(review, Beside.NOTHING, SessionStroke.FIRST), 0);
  }

  /** Makes one of two timelines set side by side, as it looks afterwards. */
  static TimelineFigure ofTwo(
      Review review, FigureStyle style, TimelineView view, Beside beside, SessionStroke session) {
    return new TimelineFigure(
        review, style, view, Knowledge.hindsight(), shared(review, beside, session), 0);
  }

  private static Shared shared(Review review, Beside beside, SessionStroke session) {
    return new Shared(
        LaneRecord.of(review, beside.hues), ReplayTrack.of(review.session()), session, beside);
  }

  private TimelineFigure(
      Review review,
      FigureStyle style,
      TimelineView view,
      Knowledge knowledge,
      Shared shared,
      double leastScaleTop) {
    this.leastScaleTop = leastScaleTop;
    this.words = new FigureText(review.session(), style.units());
    this.review = review;
    this.style = style;
    this.view = view;
    this.knowledge = knowledge;
    this.shared = shared;
  }

  /**
   * Returns this timeline as another review tells it, such as that of an earlier moment.
   *
   * @param told a review of the same session
   */
  public TimelineFigure as(Review told) {
    if (!told.session().equals(review.session())) {
      throw new IllegalArgumentException("the review is of another session");
    }
    return of(told, shared.lanes.events());
  }

  private TimelineFigure of(Review told, LaneRecord.Split events) {
    Shared anew =
        new Shared(
            LaneRecord.of(told, shared.beside.hues, events),
            shared.track,
            shared.session,
            shared.beside);
    return new TimelineFigure(told, style, view, knowledge, anew, leastScaleTop);
  }

  /** Returns this timeline over another view; the session is not read again. */
  public TimelineFigure with(TimelineView newView) {
    return new TimelineFigure(review, style, newView, knowledge, shared, leastScaleTop);
  }

  /** Returns this timeline in another style; the session is not read again. */
  public TimelineFigure with(FigureStyle newStyle) {
    return new TimelineFigure(review, newStyle, view, knowledge, shared, leastScaleTop);
  }

  /** Returns this timeline from another moment; the session is not read again. */
  public TimelineFigure with(Knowledge newKnowledge) {
    return new TimelineFigure(review, style, view, newKnowledge, shared, leastScaleTop);
  }

  /**
   * Returns this timeline with curves on a scale that reaches at least so high, for drawing beside
   * another; the session is not read again.
   *
   * @param perHour {@link #scaleTop} of the other, 0 or more
   */
  public TimelineFigure withScaleTo(double perHour) {
    return new TimelineFigure(review, style, view, knowledge, shared, perHour);
  }

  /** Returns the review it draws. */
  public Review review() {
    return review;
  }

  /** Returns the part of the match it shows. */
  public TimelineView view() {
    return view;
  }

  @Override
  public FigureStyle style() {
    return style;
  }

  Shared shared() {
    return shared;
  }

  /** Returns the lanes shown, top down. */
  List<LaneRecord> lanes() {
    List<LaneRecord> shown = new ArrayList<>();
    for (String id : view.lanes()) {
      LaneRecord lane = shared.lanes().byLine().get(id);
      if (lane != null) {
        shown.add(lane);
      }
    }
    return shown;
  }

  @Override
  public String title() {
    return "The match, line by line";
  }

  @Override
  public double aspect() {
    return 16.0 / 9;
  }

  @Override
  public String description() {
    StringBuilder text = new StringBuilder("Timeline from ");
    text.append(words.clock(view.from())).append(" to ").append(words.clock(view.to()));
    Long known = knowledge.at();
    if (known != null) {
      text.append(", as known at ").append(words.clock(known));
    }
    text.append(". ");
    List<List<String>> figures = figures(knowledge);
    List<LaneRecord> lanes = lanes();
    for (int i = 0; i < lanes.size(); i++) {
      LineReview line = lanes.get(i).review;
      text.append(words.line(line.line())).append(": ").append(figures.get(i).get(0)).append(". ");
      if (knowledge.isHindsight()) {
        line.fades().stream()
            .filter(f -> f.probability() >= ReviewSettings.MARKED_FROM)
            .forEach(f -> text.append(FigureText.capital(f.verdict())).append(". "));
      }
    }
    return text.toString().strip();
  }

  /** A mark is wider than its moment: what came later is not drawn at all, not covered. */
  private TimelineFigure seen() {
    Long known = knowledge.at();
    return known == null ? this : of(review, shared.lanes.events().until(known));
  }

  @Override
  public void paint(Graphics2D g, double width, double height) {
    seen().layout(width, height).paintAll(g, knowledge, Set.of());
  }

  /**
   * Lays the timeline out for a size.
   *
   * @param width pixels, above 0
   * @param height pixels, above 0
   */
  public TimelineLayout layout(double width, double height) {
    return new TimelineLayout(this, width, height);
  }

  /**
   * Returns what each shown lane had given, top down, each as texts from the longest to the
   * shortest; weight first.
   */
  public List<List<String>> figures(Knowledge seen) {
    ReplayFrame frame =
        seen.at() == null ? null : shared.track().frameAt(Objects.requireNonNull(seen.at()));
    List<List<String>> all = new ArrayList<>();
    for (LaneRecord lane : lanes()) {
      all.add(LaneFigures.of(lane, words, frame));
    }
    return all;
  }

  /** Returns the top of the curve's even scale as far as it is known, in the scale's unit. */
  public double scaleTop(Knowledge seen) {
    return RateScale.ladder(Math.max(leastScaleTop, highest(seen)));
  }

  /** Returns the highest rate of any lane as far as it is known, in the unit of the scale. */
  private double highest(Knowledge seen) {
    double highest = 0;
    for (LaneRecord lane : shared.lanes().byLine().values()) {
      LaneSight sight = lane.sight(seen);
      for (RollingPoint point : sight.rolling()) {
        if (!seen.knows(point.at())) {
          break;
        }
        Rate rate = sight.isDrawn(point) ? rate(point) : null;
        if (rate != null) {
          highest = Math.max(highest, scaled(rate.perHour()));
        }
      }
    }
    return highest;
  }

  /** Returns the curve's rate at a point, or null where there is none. */
  @Nullable Rate rate(RollingPoint point) {
    return view.measure() == TimelineView.Measure.WEIGHT ? point.weight() : point.fish();
  }

  /** Returns the limits drawn at a point: those that allow for bunching where there are. */
  @Nullable Rate band(RollingPoint point) {
    if (view.measure() == TimelineView.Measure.WEIGHT) {
      return point.weight();
    }
    return point.fishWide() == null ? point.fish() : point.fishWide();
  }

  /** Returns a rate in the unit of the lane's scale. */
  double scaled(double perHour) {
    return view.measure() == TimelineView.Measure.WEIGHT ? words.axisWeight(perHour) : perHour;
  }
}
