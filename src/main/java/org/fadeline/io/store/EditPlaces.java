package org.fadeline.io.store;

import java.util.Arrays;

/**
 * Where each edit of a journal stands, in order of their sequences: twenty bytes an edit, so that a
 * day of edits without closing costs next to nothing.
 */
final class EditPlaces {
  private static final int FIRST_SIZE = 64;

  private long[] sequences = new long[FIRST_SIZE];
  private long[] starts = new long[FIRST_SIZE];
  private int[] lengths = new int[FIRST_SIZE];
  private int size;

  /**
   * Notes an edit.
   *
   * @param sequence above all that were noted
   * @param start of its line, bytes from the end of the header
   * @param length of its line, bytes
   */
  void put(long sequence, long start, int length) {
    if (size > 0 && sequence <= sequences[size - 1]) {
      throw new IllegalArgumentException("edit " + sequence + " comes after a later one");
    }
    if (size == starts.length) {
      sequences = Arrays.copyOf(sequences, 2 * size);
      starts = Arrays.copyOf(starts, 2 * size);
      lengths = Arrays.copyOf(lengths, 2 * size);
    }
    sequences[size] = sequence;
    starts[size] = start;
    lengths[size] = length;
    size++;
  }

  /** Returns the place of the edit with a sequence, or a negative number where there is none. */
  int find(long sequence) {
    return Arrays.binarySearch(sequences, 0, size, sequence);
  }

  /** Returns where the line at a place starts, bytes from the end of the header. */
  long start(int place) {
    return starts[place];
  }

  /** Returns how long the line at a place is, bytes. */
  int length(int place) {
    return lengths[place];
  }
}
