package org.fadeline.ui.compare;

import java.util.function.DoubleConsumer;
import java.util.function.LongConsumer;
import javafx.scene.Node;
import javafx.scene.control.Label;
import javafx.scene.layout.Priority;
import javafx.scene.layout.VBox;
import org.fadeline.analysis.Review;
import org.fadeline.analysis.compare.Comparison;
import org.fadeline.figure.DayAxis;
import org.fadeline.figure.TimelineFigure;
import org.fadeline.ui.control.Nodes;
import org.fadeline.ui.state.TaskService;
import org.jspecify.annotations.Nullable;

/**
 * Both timelines, one above the other on one scale, each drawn from what may be told of its match
 * at the playhead.
 */
final class ComparedTimelines {
  private final TimelineStrip first = new TimelineStrip("first-timeline");
  private final TimelineStrip second = new TimelineStrip("second-timeline");
  private final Label firstName = new Label();
  private final Label secondName = new Label();
  private final Label waiting = new Label("Working out what was known then");
  private final VBox view = new VBox(4, waiting, firstName, first, secondName, second);
  private @Nullable TaskService drawing;
  private @Nullable TimelineFigure above;
  private @Nullable TimelineFigure below;
  private double top;

  ComparedTimelines() {
    firstName.getStyleClass().add("strong");
    secondName.getStyleClass().add("strong");
    waiting.getStyleClass().add("quiet");
    waiting.setId("known-waiting");
    for (TimelineStrip strip : new TimelineStrip[] {first, second}) {
      VBox.setVgrow(strip, Priority.ALWAYS);
      strip.setPrefHeight(100);
    }
  }

  Node view() {
    return view;
  }

  /** Takes the playhead to the instant of the first match that is pressed. */
  void onSeek(LongConsumer seek) {
    first.onSeek(seek);
  }

  /**
   * Lets the second match be dragged along the axis.
   *
   * @param moving is told how many minutes it would be moved while it is dragged
   * @param moved is told when it is let go
   */
  void onShift(DoubleConsumer moving, DoubleConsumer moved) {
    second.onShift(moving, moved);
  }

  /**
   * Shows a comparison; what of it may be told is told by {@link #follow}.
   *
   * @param newDrawing draws off the window's thread what is too large for a frame, or null
   */
  void show(Laid laid, @Nullable TaskService newDrawing) {
    Comparison comparison = laid.comparison();
    drawing = newDrawing;
    above = laid.timelines().first().withScaleTo(0);
    below = laid.timelines().second().withScaleTo(0);
    top = Double.NaN;
    firstName.setText("First, whole stroke: " + name(comparison.first()));
    secondName.setText("Second, dashed stroke (drag to move it): " + name(comparison.second()));
  }

  private static String name(Review review) {
    var occasion = review.session().occasion();
    return occasion.title() + ", " + DayAxis.say(occasion.date());
  }

  /** Stands at a moment. */
  void follow(Moment moment) {
    TimelineFigure one = above;
    TimelineFigure other = below;
    if (one == null || other == null) {
      return;
    }
    Review firstTold = moment.firstTold();
    Review secondTold = moment.secondTold();
    boolean waits = firstTold == null || secondTold == null;
    Nodes.show(waiting, waits);
    if (firstTold == null || secondTold == null) {
      first.show(null, null);
      second.show(null, null);
      top = Double.NaN;
      return;
    }
    TimelineFigure nowAbove = as(one, firstTold);
    TimelineFigure nowBelow = as(other, secondTold);
    // The scale of one would tell of the other's later catches if it were that of the whole match.
    double nowTop = Math.max(nowAbove.scaleTop(moment.first()), nowBelow.scaleTop(moment.second()));
    boolean rescaled = nowTop != top;
    if (rescaled || nowAbove != one) {
      first.show(nowAbove.withScaleTo(nowTop), drawing);
    }
    if (rescaled || nowBelow != other) {
      second.show(nowBelow.withScaleTo(nowTop), drawing);
    }
    above = nowAbove;
    below = nowBelow;
    top = nowTop;
    first.follow(moment.at(), moment.hindsight(), moment.playing());
    second.follow(moment.other(), moment.hindsight(), moment.playing());
  }

  /** Tells the same match by another review; one that is drawn already is not worked out anew. */
  // Reviews are large, and one that only equals another does no harm drawn again.
  @SuppressWarnings("ReferenceEquality")
  private static TimelineFigure as(TimelineFigure figure, Review told) {
    return told == figure.review() ? figure : figure.as(told);
  }
}
