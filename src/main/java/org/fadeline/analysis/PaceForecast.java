package org.fadeline.analysis;

import java.util.List;
import org.fadeline.analysis.Course.Pace;

/** The finish as it could be told at each minute. */
final class PaceForecast {
  private final Effort effort;
  private final ReviewSettings settings;

  PaceForecast(Effort effort, ReviewSettings settings) {
    this.effort = effort;
    this.settings = settings;
  }

  List<Pace> everyMinute() {
    return effort.spells().isEmpty() || settings.changeHazard() <= 0 ? List.of() : List.of();
  }
}
