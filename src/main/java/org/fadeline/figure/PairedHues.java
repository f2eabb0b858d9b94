package org.fadeline.figure;

import java.util.HashMap;
import java.util.List;
import java.util.Map;
import org.fadeline.analysis.compare.Comparison;
import org.fadeline.analysis.compare.Comparison.PairedLines;
import org.fadeline.analysis.compare.Comparison.Side;
import org.fadeline.model.Line;

/**
 * The hues and letters of two sessions set side by side. The first session's lines keep theirs; a
 * line of the second has its counterpart's, and one without a counterpart has one of its own.
 *
 * @param first place among the hues by id of the first session's lines
 * @param second place among the hues by id of the second session's lines
 */
record PairedHues(Map<String, Integer> first, Map<String, Integer> second) {
  /** Copies the maps. */
  PairedHues {
    first = Map.copyOf(first);
    second = Map.copyOf(second);
  }

  static PairedHues of(Comparison comparison) {
    List<Line> lines = comparison.first().session().lines();
    Map<String, Integer> one = new HashMap<>();
    for (int i = 0; i < lines.size(); i++) {
      one.put(lines.get(i).id(), i);
    }
    Map<String, Integer> other = new HashMap<>();
    for (PairedLines pair : comparison.lines().pairs()) {
      other.put(
          pair.pair().second().id(), one.getOrDefault(pair.pair().first().id(), lines.size()));
    }
    int next = lines.size();
    for (Side side : comparison.lines().onlySecond()) {
      other.put(side.line().line().id(), next++);
    }
    return new PairedHues(one, other);
  }
}
