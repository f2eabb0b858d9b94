package org.fadeline.io.store;

import java.util.ArrayDeque;
import java.util.Deque;

/** Which edits can be undone and redone, by their sequences; the edits stand in the journal. */
final class History {
  private final Deque<Long> undo = new ArrayDeque<>();
  private final Deque<Long> redo = new ArrayDeque<>();

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
    return undo.element();
  }

  long nextRedo() {
    return redo.element();
  }
}
