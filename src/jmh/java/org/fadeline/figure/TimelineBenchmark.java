package org.fadeline.figure;

import java.awt.Graphics2D;
import java.awt.image.BufferedImage;
import java.util.concurrent.TimeUnit;
import org.fadeline.analysis.Review;
import org.fadeline.analysis.ReviewSettings;
import org.fadeline.analysis.Reviewer;
import org.fadeline.demo.LargeSessions;
import org.fadeline.model.Units;
import org.openjdk.jmh.annotations.Benchmark;
import org.openjdk.jmh.annotations.BenchmarkMode;
import org.openjdk.jmh.annotations.Fork;
import org.openjdk.jmh.annotations.Measurement;
import org.openjdk.jmh.annotations.Mode;
import org.openjdk.jmh.annotations.OutputTimeUnit;
import org.openjdk.jmh.annotations.Param;
import org.openjdk.jmh.annotations.Scope;
import org.openjdk.jmh.annotations.Setup;
import org.openjdk.jmh.annotations.State;
import org.openjdk.jmh.annotations.Warmup;

/** Cost of a timeline: all of its base on a change of zoom, and what one replay tick asks. */
// JMH fills the fields in its set-up.
@SuppressWarnings("NullAway.Init")
@State(Scope.Benchmark)
@BenchmarkMode(Mode.AverageTime)
@OutputTimeUnit(TimeUnit.MILLISECONDS)
@Fork(1)
@Warmup(iterations = 3, time = 1)
@Measurement(iterations = 3, time = 1)
public class TimelineBenchmark {
  /** Events of the session. */
  @Param({"1000", "100000"})
  public int events;

  private TimelineLayout layout;
  private Graphics2D g;
  private long at;
  private long end;

  /** Makes the session. */
  @Setup
  public void prepare() {
    Review review = Reviewer.review(LargeSessions.of(events, 1), ReviewSettings.DEFAULT);
    layout =
        new TimelineFigure(review, FigureStyle.of(Theme.LIGHT, Units.LB_OZ_AND_METRES))
            .layout(1600, 700);
    g = new BufferedImage(1600, 700, BufferedImage.TYPE_INT_RGB).createGraphics();
    at = review.session().match().allIn();
    end = review.session().match().allOut();
  }

  /** Draws the base once. */
  @Benchmark
  public void base() {
    layout.paintBase(g, Knowledge.hindsight());
  }

  /** Asks whether a layer has to be drawn again, and for the lanes' figures. */
  @Benchmark
  public int tick() {
    at = at + 1000 > end ? end - 10_000_000 : at + 1000;
    Knowledge then = Knowledge.asKnownAt(at);
    layout.figures(then);
    return layout.fadesVersion(then) + layout.baseVersion(then).told();
  }
}
