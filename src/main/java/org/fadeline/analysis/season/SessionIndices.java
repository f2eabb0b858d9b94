package org.fadeline.analysis.season;

import java.util.AbstractList;
import java.util.Arrays;
import java.util.List;
import java.util.RandomAccess;

/** Indices of sessions in {@link Season#sessions()}: ten thousand of them as plain numbers. */
final class SessionIndices extends AbstractList<Integer> implements RandomAccess {
  private final int[] indices;

  private SessionIndices(int[] indices) {
    this.indices = indices;
  }

  /** Returns the first of the indices, copied. */
  static List<Integer> of(int[] indices, int size) {
    return new SessionIndices(Arrays.copyOf(indices, size));
  }

  /** Returns a list that does not change, with the same indices. */
  static List<Integer> copyOf(List<Integer> list) {
    return list instanceof SessionIndices ? list : List.copyOf(list);
  }

  @Override
  public Integer get(int index) {
    return indices[index];
  }

  @Override
  public int size() {
    return indices.length;
  }
}
