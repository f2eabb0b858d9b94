package org.fadeline.analysis.season;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Set;
import org.fadeline.analysis.FeedPut;
import org.fadeline.analysis.Grade;
import org.fadeline.analysis.Review.WeightFrom;
import org.fadeline.analysis.season.SessionSummary.About;
import org.fadeline.analysis.season.SessionSummary.Behind;
import org.fadeline.analysis.season.SessionSummary.Day;
import org.fadeline.analysis.season.SessionSummary.FirstBiteRow;
import org.fadeline.analysis.season.SessionSummary.Hour;
import org.fadeline.analysis.season.SessionSummary.LineSummary;
import org.fadeline.analysis.season.SessionSummary.Result;
import org.fadeline.analysis.season.SessionSummary.Weights;
import org.jspecify.annotations.Nullable;

/** Summaries written down by hand. */
final class Summaries {
  static final FeedPut NO_FEED = new FeedPut(0, 0, 0, Map.of(), Set.of());

  private Summaries() {}

  static SessionSummary session(String date, @Nullable String water, LineSummary... lines) {
    return session(date, water, Day.UNKNOWN, 0, lines);
  }

  static SessionSummary session(
      String date, @Nullable String water, Day day, int missing, LineSummary... lines) {
    int fish = 0;
    double grams = 0;
    for (LineSummary line : lines) {
      fish += line.fish();
      grams += line.grams();
    }
    return new SessionSummary(
        new About(date + water, "Match", LocalDate.parse(date), true, water, 300, day),
        new Result(
            Grade.FULL,
            fish,
            grams,
            new Weights(WeightFrom.ESTIMATED, missing, null),
            List.of(),
            null),
        List.of(lines));
  }

  static LineSummary line(String kind, Hour... hours) {
    return new LineSummary(kind, kind, List.of(hours), List.of(), NO_FEED, null);
  }

  static LineSummary line(String kind, List<FirstBiteRow> rows) {
    return new LineSummary(kind, kind, List.of(new Hour(0, 60, 1, 500)), rows, NO_FEED, null);
  }

  static LineSummary behind(String kind, Behind behind) {
    return line(kind, new Hour(0, 60, 1, 500)).with(behind);
  }

  /** Feeds each with one stretch from 0 to its first bite. */
  static List<FirstBiteRow> bites(@Nullable String bait, double... minutes) {
    List<FirstBiteRow> rows = new ArrayList<>();
    for (double minute : minutes) {
      rows.add(new FirstBiteRow(bait, 0, minute, true, true));
    }
    return rows;
  }
}
