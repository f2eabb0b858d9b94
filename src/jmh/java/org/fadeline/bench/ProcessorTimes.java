package org.fadeline.bench;

import java.lang.management.ManagementFactory;
import java.lang.management.ThreadMXBean;
import java.util.Arrays;
import java.util.Locale;
import java.util.function.Supplier;
import org.fadeline.analysis.KnownThen;
import org.fadeline.analysis.ReviewSettings;
import org.fadeline.demo.LargeSessions;
import org.fadeline.model.Session;
import org.fadeline.model.Units;

/**
 * Processor time of one thread for the work of the other benchmarks: for a machine that others use
 * too, where wall time says more about them. Prints the median of eleven runs after warm-up.
 */
public final class ProcessorTimes {
  private static final long WARM_NANOS = 3_000_000_000L;
  private static final int RUNS = 11;

  private ProcessorTimes() {}

  /** Prints one line for each piece of work. */
  public static void main(String[] arguments) {
    for (int bins : new int[] {300, 1000, 3000}) {
      ChangePointBenchmark points = new ChangePointBenchmark();
      points.bins = bins;
      points.draw();
      say("fit, one prior mean, " + bins + " bins", points::oneScale);
      say("fit, six prior means, " + bins + " bins", points::sixScales);
      say("2,000 draws, " + bins + " bins", points::draws);
    }
    for (int lines : new int[] {1, 4}) {
      for (int bites : new int[] {100, 300, 1000}) {
        FadeReviewBenchmark fades = new FadeReviewBenchmark();
        fades.bites = bites;
        fades.lines = lines;
        fades.draw();
        say("fades of " + lines + " lines, " + bites + " bites", fades::review);
      }
    }
    for (int events : new int[] {1000, 10_000}) {
      ReviewBenchmark review = new ReviewBenchmark();
      review.events = events;
      review.make();
      say("review of " + events + " events", review::review);
    }
    for (int events : new int[] {1000, 10_000, 100_000}) {
      Session session = LargeSessions.of(events, 5);
      say(
          "known then of " + events + " events",
          () -> KnownThen.of(session, ReviewSettings.DEFAULT, Units.LB_OZ_AND_METRES, () -> false));
    }
  }

  private static void say(String name, Supplier<?> work) {
    ThreadMXBean threads = ManagementFactory.getThreadMXBean();
    int kept = 0;
    long begun = threads.getCurrentThreadCpuTime();
    while (threads.getCurrentThreadCpuTime() - begun < WARM_NANOS) {
      kept += work.get().hashCode() & 1;
    }
    double[] millis = new double[RUNS];
    for (int i = 0; i < RUNS; i++) {
      long from = threads.getCurrentThreadCpuTime();
      kept += work.get().hashCode() & 1;
      millis[i] = (threads.getCurrentThreadCpuTime() - from) / 1e6;
    }
    Arrays.sort(millis);
    System.out.println(
        String.format(Locale.ROOT, "%-40s %9.2f ms  (%d)", name, millis[RUNS / 2], kept));
  }
}
