package org.fadeline.io.store;

import java.util.Arrays;
import java.util.NoSuchElementException;

/** Which edits can be undone and redone, by their sequences; the edits stand in the journal. */
final class History {
  private final Steps undo = new Steps();
  private final Steps redo = new Steps();

  void note(JournalRecord record) {
    switch (record.act()) {
      case EDIT -> {
        undo.push(record.sequence());
        redo.clear();
      }
      case UNDO -> {
        undo.remove(record.of());
        redo.push(record.of());
      }
      case REDO -> {
        redo.remove(record.of());
        undo.push(record.of());
      }
      case SAVE -> {}
    }
  }

  boolean canUndo() {
    return !undo.isEmpty();
  }

  boolean canRedo() {
    return !redo.isEmpty();
  }

  long nextUndo() {
    return undo.last();
  }

  long nextRedo() {
    return redo.last();
  }

  /** Sequences of edits, the last on top: eight bytes each, for a history has no end. */
  private static final class Steps {
    private static final int FIRST_SIZE = 64;

    private long[] sequences = new long[FIRST_SIZE];
    private int size;

    void push(long sequence) {
      if (size == sequences.length) {
        sequences = Arrays.copyOf(sequences, 2 * size);
      }
      sequences[size++] = sequence;
    }

    /** Takes a sequence out, which is on top unless a journal is damaged. */
    void remove(long sequence) {
      for (int i = size - 1; i >= 0; i--) {
        if (sequences[i] == sequence) {
          System.arraycopy(sequences, i + 1, sequences, i, size - i - 1);
          size--;
          return;
        }
      }
    }

    void clear() {
      size = 0;
    }

    boolean isEmpty() {
      return size == 0;
    }

    long last() {
      if (size == 0) {
        throw new NoSuchElementException("no step");
      }
      return sequences[size - 1];
    }
  }
}
