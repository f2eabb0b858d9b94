package org.fadeline.bench;

import java.util.SplittableRandom;
import java.util.concurrent.TimeUnit;
import org.fadeline.stats.Interval;
import org.fadeline.stats.PoissonInterval;
import org.openjdk.jmh.annotations.Benchmark;
import org.openjdk.jmh.annotations.BenchmarkMode;
import org.openjdk.jmh.annotations.Mode;
import org.openjdk.jmh.annotations.OutputTimeUnit;
import org.openjdk.jmh.annotations.Scope;
import org.openjdk.jmh.annotations.Setup;
import org.openjdk.jmh.annotations.State;

/** Exact limits of a million counts drawn from Poisson(20), and of single counts not kept. */
@State(Scope.Benchmark)
@BenchmarkMode(Mode.AverageTime)
@OutputTimeUnit(TimeUnit.MILLISECONDS)
public class PoissonIntervalBenchmark {
  private final int[] counts = new int[1_000_000];

  /** Draws the counts. */
  @Setup
  public void draw() {
    SplittableRandom random = new SplittableRandom(1);
    double stop = Math.exp(-20);
    for (int i = 0; i < counts.length; i++) {
      int count = -1;
      for (double product = 1; product > stop; product *= random.nextDouble()) {
        count++;
      }
      counts[i] = count;
    }
  }

  /**
   * A million counts at a level asked for anew each time, so that the first of each is included.
   */
  @Benchmark
  public double millionCounts() {
    PoissonInterval limits = PoissonInterval.atLevel(0.94);
    double sum = 0;
    for (int count : counts) {
      Interval interval = limits.ofRate(count, 0.5);
      sum += interval.high() - interval.low();
    }
    return sum;
  }

  /** Ten thousand fractional counts, none of which is kept. */
  @Benchmark
  public double tenThousandFractional() {
    PoissonInterval limits = PoissonInterval.atLevel(0.94);
    double sum = 0;
    for (int i = 0; i < 10_000; i++) {
      sum += limits.ofRate(counts[i] / 1.8, 0.5).width();
    }
    return sum;
  }
}
