package org.fadeline.analysis;

import java.util.List;
import org.fadeline.analysis.Effort.LineEffort;

/** Finds whether and when each line faded, and puts it back on the clock. */
final class Fades {
  Fades(Effort effort, ReviewSettings settings, Grade grade, double precision, Words words) {}

  List<Fade> of(LineEffort line) {
    return List.of();
  }

  RollingRates.BunchingInTime bunchingInTime(LineEffort line) {
    return at -> 1;
  }
}
