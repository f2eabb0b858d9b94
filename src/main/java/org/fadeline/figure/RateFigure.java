package org.fadeline.figure;

import java.awt.Graphics2D;
import java.util.List;
import org.fadeline.analysis.LineReview;
import org.fadeline.analysis.Rate;
import org.fadeline.analysis.Review;

/** The rolling catch rate of one line over the match: its lane of the timeline, by itself. */
public final class RateFigure implements Figure {
  private final TimelineFigure timeline;
  private final LineReview line;

  /**
   * Makes the figure of one line.
   *
   * @param lineId a line of the review
   * @throws IllegalArgumentException if the review has no such line
   */
  public RateFigure(Review review, String lineId, FigureStyle style, TimelineView.Measure measure) {
    this.line =
        review
            .line(lineId)
            .orElseThrow(() -> new IllegalArgumentException("no such line: " + lineId));
    this.timeline =
        new TimelineFigure(
            review,
            style,
            TimelineView.whole(review.session())
                .withLanes(List.of(lineId))
                .withMeasure(measure)
                .withKey(style.textScale() < 1.6),
            Knowledge.hindsight());
  }

  @Override
  public String title() {
    return "Catch rate on " + line.line().name();
  }

  @Override
  public FigureStyle style() {
    return timeline.style();
  }

  @Override
  public double aspect() {
    return 2;
  }

  @Override
  public String description() {
    Rate fish = line.rates().fish();
    return timeline.description()
        + (fish == null ? "" : " Overall " + FigureText.perHour(fish) + " fish.");
  }

  @Override
  public void paint(Graphics2D g, double width, double height) {
    timeline.paint(g, width, height);
  }
}
