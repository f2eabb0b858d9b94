package org.fadeline.bench;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.SplittableRandom;
import java.util.concurrent.TimeUnit;
import org.fadeline.stats.FadeOptions;
import org.fadeline.stats.FadePosterior;
import org.fadeline.stats.FadeRecord;
import org.openjdk.jmh.annotations.Benchmark;
import org.openjdk.jmh.annotations.BenchmarkMode;
import org.openjdk.jmh.annotations.Mode;
import org.openjdk.jmh.annotations.OutputTimeUnit;
import org.openjdk.jmh.annotations.Param;
import org.openjdk.jmh.annotations.Scope;
import org.openjdk.jmh.annotations.Setup;
import org.openjdk.jmh.annotations.State;

/** Every fade of a five-hour session, plain-at moments minute by minute included. */
@State(Scope.Benchmark)
@BenchmarkMode(Mode.AverageTime)
@OutputTimeUnit(TimeUnit.MILLISECONDS)
public class FadeReviewBenchmark {
  /** Bites in five hours. */
  @Param({"100", "300", "1000"})
  public int bites;

  /** How many lines share the session, two spells on each; 1 is one spell of five hours. */
  @Param({"1", "4"})
  public int lines;

  private List<FadeRecord> records = List.of();

  /** Draws the bites, in shoals of ten minutes so that the bunching factor moves. */
  @Setup
  public void draw() {
    SplittableRandom random = new SplittableRandom(4);
    List<FadeRecord> drawn = new ArrayList<>();
    double minutes = 300.0 / lines;
    for (int k = 0; k < lines; k++) {
      double[] times = new double[bites / lines];
      for (int i = 0; i < times.length; i++) {
        double u = random.nextDouble() * minutes;
        times[i] = random.nextInt(3) == 0 ? Math.floor(u / 30) * 30 + u % 10 : u;
      }
      Arrays.sort(times);
      double[] ends = lines == 1 ? new double[] {minutes} : new double[] {minutes / 2, minutes};
      drawn.add(FadeRecord.ofTimes(times, ends));
    }
    records = drawn;
  }

  /** Reviews all lines. */
  @Benchmark
  public int review() {
    int fades = 0;
    for (FadeRecord record : records) {
      fades += FadePosterior.review(record, FadeOptions.DEFAULT).size();
    }
    return fades;
  }
}
