package org.fadeline.model;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.HashMap;
import java.util.List;
import java.util.Map;

/**
 * What changed between two lists of events: the events that keep their order are found as a longest
 * increasing subsequence, the rest are runs taken out and put in.
 */
final class EventDiff {
  private EventDiff() {}

  static List<Edit.EventRun> runs(List<SessionEvent> before, List<SessionEvent> after) {
    int[] kept = kept(before, after);
    List<Edit.EventRun> runs = new ArrayList<>();
    int i = 0;
    int j = 0;
    while (i < before.size() || j < after.size()) {
      int from = i;
      while (i < before.size() && kept[i] < 0) {
        i++;
      }
      int to = j;
      j = i < before.size() ? kept[i] : after.size();
      if (i > from || j > to) {
        runs.add(new Edit.EventRun(from, before.subList(from, i), to, after.subList(to, j)));
      }
      if (i < before.size()) {
        i++;
        j++;
      }
    }
    return runs;
  }

  /** Returns for each event before its position after, or -1 where it does not stay in order. */
  private static int[] kept(List<SessionEvent> before, List<SessionEvent> after) {
    Map<SessionEvent, Integer> positions = new HashMap<>();
    for (int j = after.size() - 1; j >= 0; j--) {
      positions.put(after.get(j), j);
    }
    int n = before.size();
    int[] target = new int[n];
    for (int i = 0; i < n; i++) {
      // Equal events count once: the second of a pair is written out again.
      Integer position = positions.remove(before.get(i));
      target[i] = position == null ? -1 : position;
    }
    return longestIncreasing(target);
  }

  private static int[] longestIncreasing(int[] target) {
    int n = target.length;
    int[] tails = new int[n];
    int[] previous = new int[n];
    int length = 0;
    for (int i = 0; i < n; i++) {
      if (target[i] < 0) {
        continue;
      }
      int low = 0;
      int high = length;
      while (low < high) {
        int middle = (low + high) >>> 1;
        if (target[tails[middle]] < target[i]) {
          low = middle + 1;
        } else {
          high = middle;
        }
      }
      previous[i] = low == 0 ? -1 : tails[low - 1];
      tails[low] = i;
      length = Math.max(length, low + 1);
    }
    int[] kept = new int[n];
    Arrays.fill(kept, -1);
    for (int i = length == 0 ? -1 : tails[length - 1]; i >= 0; i = previous[i]) {
      kept[i] = target[i];
    }
    return kept;
  }
}
