package org.fadeline.figure;

import java.time.Instant;
import java.time.ZoneId;
import java.time.ZonedDateTime;
import java.time.temporal.ChronoUnit;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.function.ToDoubleFunction;

/** Clock time along x. */
record TimeAxis(long from, long to, double left, double right, ZoneId zone) {
  private static final int[] STEPS_SECONDS = {
    1, 2, 5, 10, 15, 30, 60, 120, 300, 600, 900, 1800, 3600, 7200, 10_800, 21_600, 43_200, 86_400
  };

  double x(long at) {
    return left + (right - left) * (at - from) / (double) (to - from);
  }

  long instant(double x) {
    return from + Math.round((x - left) / (right - left) * (to - from));
  }

  double pixelsPerMinute() {
    return (right - left) * 60_000 / (to - from);
  }

  /** A mark on the axis; the label is empty where there is no room for it. */
  record Tick(long at, double x, String label) {}

  /** Returns ticks at round clock times, no closer than the labels need. */
  List<Tick> ticks(double labelGap, ToDoubleFunction<String> widthOf) {
    int step = STEPS_SECONDS[STEPS_SECONDS.length - 1];
    for (int candidate : STEPS_SECONDS) {
      double pixels = pixelsPerMinute() * candidate / 60;
      double label = widthOf.applyAsDouble(candidate < 60 ? "00:00:00" : "00:00");
      if (pixels >= label + labelGap) {
        step = candidate;
        break;
      }
    }
    List<Tick> ticks = new ArrayList<>();
    // Counted from local midnight so that steps of hours fall on round local times.
    ZonedDateTime midnight = Instant.ofEpochMilli(from).atZone(zone).truncatedTo(ChronoUnit.DAYS);
    long base = midnight.toInstant().toEpochMilli();
    long stepMillis = step * 1000L;
    for (long at = base + Math.floorDiv(from - base + stepMillis - 1, stepMillis) * stepMillis;
        at <= to;
        at += stepMillis) {
      ticks.add(new Tick(at, x(at), label(at, step)));
    }
    return ticks;
  }

  private String label(long at, int step) {
    ZonedDateTime time = Instant.ofEpochMilli(at).atZone(zone);
    return step < 60
        ? String.format(
            Locale.ROOT, "%02d:%02d:%02d", time.getHour(), time.getMinute(), time.getSecond())
        : String.format(Locale.ROOT, "%02d:%02d", time.getHour(), time.getMinute());
  }
}
