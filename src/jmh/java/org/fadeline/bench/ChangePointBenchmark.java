package org.fadeline.bench;

import java.util.List;
import java.util.SplittableRandom;
import java.util.concurrent.TimeUnit;
import org.fadeline.stats.ChangePointBins;
import org.fadeline.stats.ChangePointDraw;
import org.fadeline.stats.ChangePointMixture;
import org.fadeline.stats.ChangePointPosterior;
import org.fadeline.stats.ChangePointPrior;
import org.openjdk.jmh.annotations.Benchmark;
import org.openjdk.jmh.annotations.BenchmarkMode;
import org.openjdk.jmh.annotations.Mode;
import org.openjdk.jmh.annotations.OutputTimeUnit;
import org.openjdk.jmh.annotations.Param;
import org.openjdk.jmh.annotations.Scope;
import org.openjdk.jmh.annotations.Setup;
import org.openjdk.jmh.annotations.State;

/** Exact change points in one-minute bins: 12 an hour, then 3 from the middle on. */
@State(Scope.Benchmark)
@BenchmarkMode(Mode.AverageTime)
@OutputTimeUnit(TimeUnit.MILLISECONDS)
public class ChangePointBenchmark {
  private static final ChangePointPrior PRIOR =
      new ChangePointPrior(1, 1.0 / 12, -Math.expm1(-0.25 / 60), 10);

  /** Number of bins. */
  @Param({"300", "1000", "3000"})
  public int bins;

  private ChangePointBins data = ChangePointBins.of(new double[0], 1);
  private ChangePointPosterior fitted = ChangePointPosterior.of(data, PRIOR);

  /** Draws the counts and fits them once. */
  @Setup
  public void draw() {
    SplittableRandom random = new SplittableRandom(3);
    double[] counts = new double[bins];
    for (int i = 0; i < bins; i++) {
      double perMinute = (i < bins / 2 ? 12 : 3) / 60.0;
      counts[i] = random.nextDouble() < perMinute ? 1 : 0;
    }
    data = ChangePointBins.of(counts, 1.0 / 60);
    fitted = ChangePointPosterior.of(data, PRIOR);
  }

  /** One prior mean: evidence, change probabilities and mean rates. */
  @Benchmark
  public ChangePointPosterior oneScale() {
    return ChangePointPosterior.of(data, PRIOR);
  }

  /** Six prior means. */
  @Benchmark
  public ChangePointMixture sixScales() {
    return ChangePointMixture.of(data, PRIOR, ChangePointMixture.hourlyMeans());
  }

  /** Two thousand exact draws from a fitted posterior. */
  @Benchmark
  public List<ChangePointDraw> draws() {
    return fitted.draws(2000, 1);
  }
}
