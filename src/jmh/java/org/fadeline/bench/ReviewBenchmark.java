package org.fadeline.bench;

import java.util.concurrent.TimeUnit;
import org.fadeline.analysis.Review;
import org.fadeline.analysis.ReviewSettings;
import org.fadeline.analysis.Reviewer;
import org.fadeline.demo.LargeSessions;
import org.fadeline.model.Session;
import org.openjdk.jmh.annotations.Benchmark;
import org.openjdk.jmh.annotations.BenchmarkMode;
import org.openjdk.jmh.annotations.Mode;
import org.openjdk.jmh.annotations.OutputTimeUnit;
import org.openjdk.jmh.annotations.Param;
import org.openjdk.jmh.annotations.Scope;
import org.openjdk.jmh.annotations.Setup;
import org.openjdk.jmh.annotations.State;

/** A whole review of a session of five hours, plain-at moments and every minute's pace included. */
@State(Scope.Benchmark)
@BenchmarkMode(Mode.AverageTime)
@OutputTimeUnit(TimeUnit.MILLISECONDS)
public class ReviewBenchmark {
  /** Events of the session. */
  @Param({"1000", "10000"})
  public int events;

  private Session session = LargeSessions.of(2, 1);

  /** Makes the session. */
  @Setup
  public void make() {
    session = LargeSessions.of(events, 1);
  }

  /** Reviews it. */
  @Benchmark
  public Review review() {
    return Reviewer.review(session, ReviewSettings.DEFAULT);
  }
}
