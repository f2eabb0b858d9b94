package org.fadeline.analysis;

import java.util.HashMap;
import java.util.List;
import java.util.Map;
import org.fadeline.analysis.Effort.LineEffort;
import org.fadeline.model.Match;

/** The latest run of each line: the next one goes on from it as far as their minutes agree. */
final class PaceRuns {
  private final Map<String, PaceRun> latest = new HashMap<>();

  PaceRun of(Match match, LineEffort line, List<TimeSpan> fished, double hazard) {
    String id = line.line().id();
    PaceRun run = new PaceRun(match, line, fished, hazard, latest.get(id));
    latest.put(id, run);
    return run;
  }
}
