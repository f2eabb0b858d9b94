package org.fadeline.figure;

import java.awt.Graphics2D;
import java.awt.image.BufferedImage;
import java.util.concurrent.TimeUnit;
import org.fadeline.analysis.Review;
import org.fadeline.analysis.ReviewSettings;
import org.fadeline.analysis.Reviewer;
import org.fadeline.analysis.compare.Comparer;
import org.fadeline.analysis.compare.Comparison;
import org.fadeline.analysis.compare.ComparisonSetup;
import org.fadeline.demo.LargeSessions;
import org.fadeline.model.Units;
import org.fadeline.replay.ReplayTrack;
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

/**
 * Cost of setting two reviewed sessions side by side, of making its figures and of drawing them.
 */
// JMH fills the fields in its set-up.
@SuppressWarnings("NullAway.Init")
@State(Scope.Benchmark)
@BenchmarkMode(Mode.AverageTime)
@OutputTimeUnit(TimeUnit.MILLISECONDS)
@Fork(1)
@Warmup(iterations = 2, time = 1)
@Measurement(iterations = 3, time = 1)
public class CompareBenchmark {
  /** Events of each session. */
  @Param({"1000", "10000"})
  public int events;

  private Review first;
  private Review second;
  private Comparison comparison;
  private final FigureStyle style = FigureStyle.of(Theme.LIGHT, Units.LB_OZ_AND_METRES);

  /** Makes the sessions. */
  @Setup
  public void prepare() {
    first = Reviewer.review(LargeSessions.of(events, 1), ReviewSettings.DEFAULT);
    second = Reviewer.review(LargeSessions.of(events, 2), ReviewSettings.DEFAULT);
    comparison = compare();
  }

  /** Compares the two reviews. */
  @Benchmark
  public Comparison compare() {
    return Comparer.compare(
        first,
        second,
        ComparisonSetup.usual(first.session(), second.session()),
        Units.LB_OZ_AND_METRES);
  }

  /** Makes the two timelines. */
  @Benchmark
  public CompareTimelinesFigure timelines() {
    return new CompareTimelinesFigure(comparison, style);
  }

  /** Prepares both sessions for replay. */
  @Benchmark
  public int tracks() {
    return ReplayTrack.of(first.session()).hashCode() + ReplayTrack.of(second.session()).hashCode();
  }

  /** Draws the two timelines. */
  @Benchmark
  public void drawTimelines() {
    draw(new CompareTimelinesFigure(comparison, style));
  }

  /** Draws both running catches. */
  @Benchmark
  public void drawCatch() {
    draw(new CompareCatchFigure(comparison, style));
  }

  /** Draws rates and first bites. */
  @Benchmark
  public void drawRatesAndBites() {
    draw(new CompareRatesFigure(comparison, style));
    draw(new CompareFirstBitesFigure(comparison, style));
  }

  private static void draw(Figure figure) {
    Graphics2D g = new BufferedImage(950, 560, BufferedImage.TYPE_INT_RGB).createGraphics();
    figure.paint(g, 950, 560);
    g.dispose();
  }
}
