package org.fadeline.analysis;

import java.util.List;
import org.fadeline.analysis.Course.Pace;

/** The finish as it could be told at each minute. */
final class PaceForecast {
  PaceForecast(Effort effort, ReviewSettings settings) {}

  List<Pace> everyMinute() {
    return List.of();
  }
}
