package org.fadeline.demo;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import org.jspecify.annotations.Nullable;

/** The state of one line during a match: its condition and the feed it was given. */
final class DemoSwim {
  private final DemoLine line;
  private final List<Double> byMinute = new ArrayList<>();
  private final double fadeOfSecond;
  private final double restOfSecond;
  private double[] feeds = new double[64];
  private int feedCount;
  private double condition = 1;
  private double patternNext;
  private double patternStep;
  private double patternEnd = -1;

  DemoSwim(DemoLine line) {
    this.line = line;
    this.fadeOfSecond = line.bites().conditionAfter(1, 1 / 60.0, true);
    this.restOfSecond = 1 - line.bites().conditionAfter(0, 1 / 60.0, false);
  }

  DemoLine line() {
    return line;
  }

  List<Double> byMinute() {
    return List.copyOf(byMinute);
  }

  void feed(double minute) {
    if (feedCount == feeds.length) {
      feeds = Arrays.copyOf(feeds, 2 * feedCount);
    }
    feeds[feedCount++] = minute;
  }

  void feedRepeatedly(double minute, double everySeconds, @Nullable Double until) {
    patternNext = minute;
    patternStep = everySeconds / 60;
    patternEnd = until == null ? DemoMatch.MINUTES : until;
  }

  /** Lets one second pass. */
  void pass(int second, boolean fished) {
    double minute = second / 60.0;
    // The same as BiteRate.conditionAfter, whose exponentials are the same every second.
    condition = fished ? condition * fadeOfSecond : 1 - (1 - condition) * restOfSecond;
    if (patternEnd >= 0 && minute >= patternNext && patternNext <= patternEnd) {
      feed(minute);
      patternNext += patternStep;
    }
    if (second % 60 == 0) {
      byMinute.add(bitesPerHour(minute));
    }
  }

  double bitesPerHour(double minute) {
    return line.bites().perHourAt(minute, condition, feeds, feedCount);
  }
}
