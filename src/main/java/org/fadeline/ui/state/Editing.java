package org.fadeline.ui.state;

import java.util.ArrayDeque;
import java.util.Deque;
import java.util.function.UnaryOperator;
import org.fadeline.model.Edit;
import org.fadeline.model.Session;
import org.fadeline.ui.state.OpenSession.History;
import org.jspecify.annotations.Nullable;

/**
 * The commands that change the record: one gesture, one named step, taken back and done again
 * without limit. A step holds what it changed and nothing else, so that many cost little.
 */
public final class Editing {
  private final Workbench bench;
  private final Deque<Step> undo = new ArrayDeque<>();
  private final Deque<Step> redo = new ArrayDeque<>();
  private long done;
  private long savedNumber;

  /** A step and its number, so that a step done again is known for the same. */
  private record Step(long number, Edit edit) {}

  Editing(Workbench bench) {
    this.bench = bench;
  }

  void forget() {
    undo.clear();
    redo.clear();
    done = 0;
    savedNumber = 0;
  }

  /** Returns whether the session in hand may be changed. */
  public boolean allowed() {
    OpenSession open = bench.state().open();
    return open != null && open.source().readOnly() == null;
  }

  /**
   * Changes the record.
   *
   * @param name what the angler did, such as "Move bite"
   * @param change gives the session after the change
   */
  public void edit(String name, UnaryOperator<Session> change) {
    OpenSession open = bench.state().open();
    if (open == null || !allowed()) {
      return;
    }
    Edit edit = Edit.between(name, open.session(), change.apply(open.session()));
    if (!edit.isEmpty()) {
      edit(edit);
    }
  }

  /**
   * Does one step.
   *
   * @throws IllegalArgumentException if it does not fit the session in hand
   */
  public void edit(Edit edit) {
    OpenSession open = bench.state().open();
    if (open == null || !allowed()) {
      return;
    }
    Session after = edit.apply(open.session());
    undo.push(new Step(++done, edit));
    redo.clear();
    bench.replace(open, after, history());
    bench.keep(edit, edit.name());
  }

  /** Takes the last step back. */
  public void undo() {
    OpenSession open = bench.state().open();
    if (open == null || undo.isEmpty() || !allowed()) {
      return;
    }
    Step step = undo.pop();
    redo.push(step);
    Edit edit = step.edit;
    Edit inverse = edit.inverse();
    bench.replace(open, inverse.apply(open.session()), history());
    bench.keep(inverse, "Undone: " + edit.name());
  }

  /** Does the step taken back last again. */
  public void redo() {
    OpenSession open = bench.state().open();
    if (open == null || redo.isEmpty() || !allowed()) {
      return;
    }
    Step step = redo.pop();
    undo.push(step);
    Edit edit = step.edit;
    bench.replace(open, edit.apply(open.session()), history());
    bench.keep(edit, "Done again: " + edit.name());
  }

  /** Takes note that the file now holds everything done so far. */
  void markSaved() {
    savedNumber = numberOf(undo.peek());
  }

  private static long numberOf(@Nullable Step step) {
    return step == null ? 0 : step.number;
  }

  private History history() {
    Step last = undo.peek();
    Step next = redo.peek();
    return new History(
        last == null ? null : last.edit.name(),
        next == null ? null : next.edit.name(),
        numberOf(last) != savedNumber);
  }
}
