package org.fadeline.ui.season;

import java.io.IOException;
import java.nio.file.Path;
import java.util.HashSet;
import java.util.IdentityHashMap;
import java.util.List;
import java.util.Set;
import java.util.concurrent.CancellationException;
import java.util.concurrent.atomic.AtomicLong;
import java.util.function.UnaryOperator;
import javafx.beans.property.ReadOnlyObjectProperty;
import javafx.beans.property.ReadOnlyObjectWrapper;
import org.fadeline.analysis.ReviewSettings;
import org.fadeline.analysis.season.SeasonBuilder;
import org.fadeline.analysis.season.SeasonFilter;
import org.fadeline.analysis.season.SessionSummary;
import org.fadeline.index.FolderWatch;
import org.fadeline.index.SeasonFolder;
import org.fadeline.index.SeasonIndex;
import org.fadeline.index.SeasonIndex.Depth;
import org.fadeline.io.ReadOptions;
import org.fadeline.ui.season.SeasonState.Reading;
import org.fadeline.ui.state.TaskService;
import org.jspecify.annotations.Nullable;

/**
 * The season in hand: reads its folder in the background, first all but the fades, then those;
 * keeps what was worked out in a hidden file of the folder, and notes what changes meanwhile.
 */
final class SeasonDesk {
  /** Keeps summaries in the folder itself: they go where the sessions go. */
  static final String KEPT = SeasonIndex.KEPT;

  private static final String READING = "season";
  private static final String TABLES = "season-tables";

  /** Tables of a growing folder are made again after a pause of this many times their own time. */
  private static final int PAUSES = 6;

  private static final long LEAST_PAUSE_NANOS = 300_000_000;

  private final TaskService tasks;
  private final ReadOnlyObjectWrapper<SeasonState> state =
      new ReadOnlyObjectWrapper<>(SeasonState.EMPTY);
  private final Set<Path> changed = new HashSet<>();
  private SeasonFilter filter = SeasonFilter.ALL;
  private volatile @Nullable LaidOut laidOut;
  private @Nullable SeasonIndex index;
  private @Nullable FolderWatch watch;

  SeasonDesk(TaskService tasks) {
    this.tasks = tasks;
  }

  ReadOnlyObjectProperty<SeasonState> stateProperty() {
    return state.getReadOnlyProperty();
  }

  SeasonState state() {
    return state.get();
  }

  private void change(UnaryOperator<SeasonState> step) {
    state.set(step.apply(state.get()));
  }

  /** Opens a folder in place of the one in hand. */
  void open(Path folder) {
    index = new SeasonIndex(folder, ReadOptions.DEFAULT, ReviewSettings.DEFAULT);
    filter = SeasonFilter.ALL;
    state.set(SeasonState.of(folder));
    close();
    read(true);
  }

  /** Reads what changed. */
  void readAgain() {
    read(false);
  }

  private void read(boolean first) {
    SeasonIndex sessions = index;
    Path folder = state.get().folder();
    if (sessions == null || folder == null) {
      return;
    }
    changed.clear();
    change(s -> s.withReading(new Reading("Reading the folder", 0, 0)).withChanged(0));
    SeasonFilter wanted = filter;
    tasks.submit(
        READING,
        "Reading the season",
        progress -> {
          if (first) {
            // Before the reading, so that no change falls between the two.
            watch(folder, sessions);
            sessions.load(folder.resolve(KEPT));
          }
          SeasonFolder found =
              pass(sessions, Depth.WITHOUT_FADES, "Reading matches", wanted, progress);
          if (!found.summaries().stream().allMatch(SessionSummary::hasFades)) {
            keep(sessions, folder);
            found = pass(sessions, Depth.WITH_FADES, "Working out fades", wanted, progress);
          }
          keep(sessions, folder);
          return found;
        },
        new TaskService.Answer<>(this::finished, this::failed));
  }

  private SeasonFolder pass(
      SeasonIndex sessions,
      Depth depth,
      String what,
      SeasonFilter wanted,
      TaskService.Progress progress)
      throws IOException {
    tasks.later(
        () -> {
          if (!progress.cancelled()) {
            change(s -> s.withReading(new Reading(what, 0, 0)));
          }
        });
    AtomicLong next = new AtomicLong(System.nanoTime() + LEAST_PAUSE_NANOS);
    SeasonFolder found =
        sessions.read(
            depth,
            (done, of) -> {
              long due = next.get();
              if (System.nanoTime() >= due && next.compareAndSet(due, Long.MAX_VALUE)) {
                long from = System.nanoTime();
                show(sessions.soFar(), wanted, new Reading(what, done, of), progress);
                progress.report((double) done / of);
                long now = System.nanoTime();
                next.set(now + Math.max(LEAST_PAUSE_NANOS, PAUSES * (now - from)));
              }
              return !progress.cancelled();
            });
    show(found, wanted, new Reading(what, 0, 0), progress);
    return found;
  }

  private void show(
      SeasonFolder found, SeasonFilter wanted, Reading reading, TaskService.Progress progress) {
    SeasonShown season = laidOut(found).build(wanted);
    tasks.later(
        () -> {
          // Another folder may have been chosen meanwhile, or other filters.
          if (!progress.cancelled() && wanted.equals(filter)) {
            change(s -> s.withFound(found, season).withReading(reading));
          }
        });
  }

  private static void keep(SeasonIndex sessions, Path folder) {
    try {
      sessions.save(folder.resolve(KEPT));
    } catch (IOException notKept) {
      // A folder that cannot be written is read anew each time; nothing else follows.
      return;
    }
  }

  @SuppressWarnings("ReferenceEquality") // comparing ten thousand summaries would take too long
  private void finished(SeasonFolder found) {
    boolean shown = state.get().found() == found;
    change(s -> s.withReading(null).withFound(found, s.shown()));
    if (!shown) {
      filter(filter);
    }
  }

  /** Lays a folder's sessions out; those laid out last are kept, for every filter takes them. */
  @SuppressWarnings("ReferenceEquality") // comparing ten thousand summaries would take too long
  private LaidOut laidOut(SeasonFolder found) {
    LaidOut last = laidOut;
    if (last == null || last.found != found) {
      last = new LaidOut(found);
      laidOut = last;
    }
    return last;
  }

  /** Sessions laid out for filters, and what the screen needs of all of them. */
  private static final class LaidOut {
    private final SeasonFolder found;
    private final SeasonBuilder builder;
    private final FilterOffers offers;
    private final IdentityHashMap<SessionSummary, Path> files;

    /** The tables without a filter, to which a user comes back. */
    private volatile @Nullable SeasonShown all;

    LaidOut(SeasonFolder found) {
      List<SessionSummary> summaries = found.summaries();
      this.found = found;
      builder = new SeasonBuilder(summaries);
      offers = FilterOffers.of(summaries);
      files = SeasonShown.files(found);
    }

    SeasonShown build(SeasonFilter filter) {
      SeasonShown whole = all;
      if (whole != null && filter.equals(SeasonFilter.ALL)) {
        return whole;
      }
      SeasonShown shown = SeasonShown.of(builder.build(filter), offers, files);
      if (filter.equals(SeasonFilter.ALL)) {
        all = shown;
      }
      return shown;
    }
  }

  private void failed(Exception failure) {
    if (failure instanceof CancellationException) {
      change(s -> s.withReading(null));
      return;
    }
    change(
        s ->
            s.withProblem(
                "The folder cannot be read ("
                    + failure.getMessage()
                    + "). Check that it is there and that you may read it."));
  }

  /** Stops reading; what was read stays. */
  void stop() {
    tasks.cancel(READING);
    change(s -> s.withReading(null));
  }

  /** Looks at other sessions or lines. */
  void filter(SeasonFilter newFilter) {
    filter = newFilter;
    SeasonFolder found = state.get().found();
    tasks.submit(
        TABLES,
        "Putting the season together",
        progress -> laidOut(found).build(newFilter),
        new TaskService.Answer<>(
            season -> change(s -> s.withShown(season)),
            failure -> change(s -> s.withProblem("The tables could not be made: " + failure))));
  }

  /** Begins to watch a folder: on a thread of the background, for it goes through all of it. */
  @SuppressWarnings("ReferenceEquality") // is it still that folder, opened that time
  private void watch(Path folder, SeasonIndex sessions) {
    try {
      FolderWatch fresh = new FolderWatch(folder, file -> tasks.later(() -> note(folder, file)));
      tasks.later(
          () -> {
            if (index == sessions && watch == null) {
              watch = fresh;
            } else {
              end(fresh);
            }
          });
    } catch (IOException notWatched) {
      // Reading again by hand still works; the reading itself tells what is wrong.
      return;
    }
  }

  /** Ends the watch of the folder. */
  void close() {
    FolderWatch before = watch;
    watch = null;
    if (before != null) {
      end(before);
    }
  }

  private static void end(FolderWatch watch) {
    try {
      watch.close();
    } catch (IOException alreadyGone) {
      return;
    }
  }

  private void note(Path folder, Path file) {
    if (folder.equals(state.get().folder()) && changed.add(file)) {
      change(s -> s.withChanged(changed.size()));
    }
  }
}
