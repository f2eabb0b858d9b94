package org.fadeline.analysis;

import java.util.List;
import java.util.function.ToLongFunction;

/** Parts of lists whose entries are in rising order. */
final class SortedLists {
  private SortedLists() {}

  /** Returns the entries whose values lie in [from, to]. */
  static <T> List<T> between(List<T> sorted, ToLongFunction<T> value, long from, long to) {
    int first = firstFrom(sorted, value, from);
    int end = to == Long.MAX_VALUE ? sorted.size() : firstFrom(sorted, value, to + 1);
    return sorted.subList(first, Math.max(first, end));
  }

  /** Returns the index of the first entry whose value is not below a limit. */
  static <T> int firstFrom(List<T> sorted, ToLongFunction<T> value, long limit) {
    int low = 0;
    int high = sorted.size();
    while (low < high) {
      int middle = (low + high) >>> 1;
      if (value.applyAsLong(sorted.get(middle)) < limit) {
        low = middle + 1;
      } else {
        high = middle;
      }
    }
    return low;
  }
}
