package org.fadeline.ui.state;

import java.io.IOException;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.CompletableFuture;
import java.util.function.UnaryOperator;
import org.fadeline.model.Edit;
import org.fadeline.model.Session;
import org.fadeline.ui.state.Activity.Trouble;
import org.jspecify.annotations.Nullable;

/**
 * The commands that change the record and keep it: one gesture, one named step, taken back and done
 * again without limit, each written to the disk as it is made.
 */
public final class Editing {
  private final Workbench bench;

  Editing(Workbench bench) {
    this.bench = bench;
  }

  /** Returns whether the session in hand may be changed. */
  public boolean allowed() {
    OpenSession open = bench.state().open();
    return open != null && open.source().readOnly() == null;
  }

  private Desk.@Nullable Held held() {
    return allowed() ? bench.held() : null;
  }

  /**
   * Changes the record.
   *
   * @param name what the angler did, such as "Move bite"
   * @param change gives the session after the change
   */
  public void edit(String name, UnaryOperator<Session> change) {
    Desk.Held held = held();
    if (held != null) {
      Edit edit = Edit.between(name, held.session(), change.apply(held.session()));
      if (!edit.isEmpty()) {
        edit(edit);
      }
    }
  }

  /** Does one step; where it cannot be kept, says so and changes nothing. */
  public void edit(Edit edit) {
    Desk.Held held = held();
    if (held == null) {
      return;
    }
    try {
      watch(held.append(edit));
      bench.refresh(held);
      bench.tell(edit.name());
    } catch (IllegalArgumentException doesNotFit) {
      bench.report(
          Trouble.of(
              "“" + edit.name() + "” was not done",
              "Nothing was changed: " + doesNotFit.getMessage() + "."));
    }
  }

  /** Takes the last step back. */
  public void undo() {
    step(true);
  }

  /** Does the step taken back last again. */
  public void redo() {
    step(false);
  }

  private void step(boolean back) {
    Desk.Held held = held();
    if (held == null) {
      return;
    }
    String name = back ? held.history().undo() : held.history().redo();
    try {
      Optional<CompletableFuture<?>> kept = back ? held.undo() : held.redo();
      if (kept.isPresent()) {
        watch(kept.get());
        bench.refresh(held);
        bench.tell((back ? "Undone: " : "Done again: ") + name);
      }
    } catch (IOException unreadable) {
      bench.report(
          Trouble.of(
              "The step could not be taken back",
              "Its journal cannot be read ("
                  + unreadable.getMessage()
                  + "). Nothing was changed."));
    }
  }

  private void watch(CompletableFuture<?> kept) {
    // The result is of no interest; a failure is told on the owning thread.
    var unused =
        kept.whenComplete(
            (done, failure) -> {
              if (failure != null) {
                bench.tasks().later(() -> bench.report(notKept(failure)));
              }
            });
  }

  private static Trouble notKept(Throwable failure) {
    return Trouble.of(
        "The last change is not on the disk",
        "It is in effect here and will be written with the next one ("
            + failure.getMessage()
            + "). Free some space or save the match elsewhere.");
  }

  /**
   * Saves the record to its file.
   *
   * @param overwrite whether to replace a file that was changed outside
   * @return whether it has a file of its own; otherwise nothing was done and a name is needed
   */
  public boolean save(boolean overwrite) {
    Desk.Held held = bench.held();
    if (held == null || !allowed()) {
      return true;
    }
    Optional<CompletableFuture<Desk.Saved>> saving = held.save(overwrite);
    if (saving.isEmpty()) {
      return false;
    }
    var unused =
        saving
            .get()
            .whenComplete(
                (saved, failure) ->
                    bench
                        .tasks()
                        .later(
                            () ->
                                answer(
                                    held,
                                    failure == null
                                        ? saved
                                        : new Desk.Saved(
                                            false, false, String.valueOf(failure.getMessage())))));
    return true;
  }

  private void answer(Desk.Held held, Desk.Saved saved) {
    if (bench.held() != held) {
      return;
    }
    bench.refresh(held);
    if (saved.done()) {
      bench.tell("Saved");
    } else if (saved.changedOutside()) {
      bench.report(
          new Trouble(
              "The file was changed outside Fadeline",
              "It was left alone. Saving over it keeps what it holds now among the backups.",
              List.of(),
              new Activity.Offer("Save over it", () -> save(true))));
    } else {
      bench.report(Trouble.of("The match was not saved", saved.message()));
    }
  }

  /** Saves the record under another name, in the background, and goes on there. */
  public void saveAs(Path path) {
    OpenSession open = bench.state().open();
    if (open != null) {
      bench.openWith(path, "Saving ", desk -> desk.saveAs(path, open.session()));
    }
  }
}
