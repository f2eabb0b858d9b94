package org.fadeline.bench;

import java.util.SplittableRandom;
import java.util.concurrent.TimeUnit;
import org.fadeline.stats.FollowUp;
import org.fadeline.stats.KaplanMeier;
import org.openjdk.jmh.annotations.Benchmark;
import org.openjdk.jmh.annotations.BenchmarkMode;
import org.openjdk.jmh.annotations.Mode;
import org.openjdk.jmh.annotations.OutputTimeUnit;
import org.openjdk.jmh.annotations.Param;
import org.openjdk.jmh.annotations.Scope;
import org.openjdk.jmh.annotations.Setup;
import org.openjdk.jmh.annotations.State;

/** Kaplan–Meier on delayed-entry rows, raw arrays to median and limits. */
@State(Scope.Benchmark)
@BenchmarkMode(Mode.AverageTime)
@OutputTimeUnit(TimeUnit.MILLISECONDS)
public class KaplanMeierBenchmark {
  /** Number of rows. */
  @Param({"10000", "100000", "1000000"})
  public int rows;

  /** Whole-minute times, which tie, or times that are all different. */
  @Param({"minutes", "distinct"})
  public String times = "distinct";

  private double[] entry = {};
  private double[] exit = {};
  private boolean[] event = {};

  /** Draws the rows. */
  @Setup
  public void draw() {
    SplittableRandom random = new SplittableRandom(2);
    entry = new double[rows];
    exit = new double[rows];
    event = new boolean[rows];
    for (int i = 0; i < rows; i++) {
      entry[i] = 60 * random.nextDouble();
      exit[i] = entry[i] - 90 * Math.log(1 - random.nextDouble());
      if (times.equals("minutes")) {
        entry[i] = Math.floor(entry[i]);
        exit[i] = Math.ceil(exit[i]);
      }
      event[i] = random.nextInt(3) > 0;
    }
  }

  /** Sorts, fits, and takes the median with its limits. */
  @Benchmark
  public KaplanMeier.Median fit() {
    return KaplanMeier.of(FollowUp.of(entry, exit, event)).median();
  }
}
