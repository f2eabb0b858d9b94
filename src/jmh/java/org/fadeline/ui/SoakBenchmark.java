package org.fadeline.ui;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.Random;
import java.util.Set;
import java.util.concurrent.CompletableFuture;
import java.util.stream.Stream;
import org.apache.commons.math3.distribution.TDistribution;
import org.apache.commons.math3.stat.regression.SimpleRegression;
import org.fadeline.analysis.Reviewer;
import org.fadeline.bench.TemporaryFolder;
import org.fadeline.demo.DemoMatch;
import org.fadeline.demo.DemoWaters;
import org.fadeline.io.store.SessionStore;
import org.fadeline.log.Pad;
import org.fadeline.log.Press;
import org.fadeline.model.Edit;
import org.fadeline.model.EventEdits;
import org.fadeline.model.Session;
import org.fadeline.model.SessionEvent;
import org.fadeline.replay.ReplayFrame;
import org.fadeline.ui.state.Desk;
import org.fadeline.ui.state.OpenSession;
import org.fadeline.ui.state.Workbench;

/**
 * Hours of work on one match without closing it: a gesture a second of the simulated clock (logged,
 * amended, taken out, undone, done again), a save every ten minutes, a replayed frame after each
 * gesture and a review every minute, through the workbench, the store, its journal and the disk.
 * Prints for every tenth of the run the memory held after a full collection and how long gestures,
 * saves and frames took, and the trend of each over the run with its 95% interval (least squares).
 * The record is kept at a match's size, so that what grows is the program. A benchmark main:
 *
 * <pre>
 * mvn -q -Pbench test-compile exec:exec -Dbench.main=org.fadeline.ui.SoakBenchmark -Dbench=10
 * </pre>
 */
public final class SoakBenchmark {
  private static final int TENTHS = 10;
  private static final int GESTURES_AN_HOUR = 3600;
  private static final int SAVE_EVERY = 600;
  private static final int REVIEW_EVERY = 60;
  private static final long FRAME_NANOS = 16_666_667;
  private static final double LEVEL = 0.95;

  private final Random chance = new Random(20260815);
  private final SoakTasks tasks = new SoakTasks();
  private final Workbench bench;
  private final Watched record;
  private final int size;
  private final int kinds;
  private final List<Tenth> tenths = new ArrayList<>();

  private SoakBenchmark(Path folder) throws IOException {
    Session match = DemoMatch.generate(DemoWaters.waterA(), DemoWaters.planA(), 7);
    size = match.events().size();
    kinds = Pad.all(match.lines().size()).size();
    Path file = folder.resolve("soak.session.json");
    record =
        new Watched(new StoredRecord(SessionStore.create(file, match, folder), Desk.Notice.NONE));
    bench = new Workbench(new FileDesk(folder), Reviewer::review, tasks, () -> {});
    bench.openWith(file, "Opening ", desk -> record);
    bench.transport().speed(600);
  }

  /** Runs it; the argument is how many simulated hours, 1 without one. */
  public static void main(String[] args) throws IOException {
    int hours = args.length == 0 ? 1 : Integer.parseInt(args[0]);
    Path folder = Files.createTempDirectory("fadeline-soak");
    try {
      SoakBenchmark soak = new SoakBenchmark(folder);
      soak.work(GESTURES_AN_HOUR / 6, new Tenth(0));
      soak.run(hours * GESTURES_AN_HOUR);
      soak.print(folder);
      soak.bench.close();
    } finally {
      TemporaryFolder.remove(folder);
    }
  }

  /** What was measured in a tenth of the run: nanoseconds, and bytes at its end. */
  private static final class Tenth {
    final int number;
    final SoakTimes gestures = new SoakTimes();
    final SoakTimes frames = new SoakTimes();
    final SoakTimes saves = new SoakTimes();
    long held;

    Tenth(int number) {
      this.number = number;
    }
  }

  private void run(int gestures) {
    // All there from the start, so that measuring is no part of what grows.
    for (int i = 1; i <= TENTHS; i++) {
      tenths.add(new Tenth(i));
    }
    for (Tenth tenth : tenths) {
      work(gestures / TENTHS, tenth);
      tenth.held = held();
    }
  }

  private void work(int gestures, Tenth into) {
    for (int i = 1; i <= gestures; i++) {
      into.gestures.add(time(this::gesture));
      into.frames.add(time(this::frame));
      if (i % REVIEW_EVERY == 0) {
        tasks.runLatest();
      }
      if (i % SAVE_EVERY == 0) {
        into.saves.add(time(this::save));
      }
    }
  }

  private static long time(Runnable work) {
    long from = System.nanoTime();
    work.run();
    return System.nanoTime() - from;
  }

  /** One step of an angler's, until the disk has it. */
  private void gesture() {
    int what = chance.nextInt(100);
    if (what < 8) {
      bench.editing().undo();
    } else if (what < 14) {
      bench.editing().redo();
    } else if (what < 40) {
      amend();
    } else if (session().events().size() > size) {
      bench.editing().edit("Take out", EventEdits.remove(Set.of(any().id())));
    } else {
      Pad pad = Pad.all(session().lines().size()).get(chance.nextInt(kinds));
      bench.editing().edit(Press.of(session(), pad, instant()).edit());
    }
    record.settle();
    tasks.runLater();
  }

  private void amend() {
    SessionEvent event = any();
    bench
        .editing()
        .edit("Move", EventEdits.shift(Set.of(event.id()), chance.nextInt(20_001) - 10_000));
  }

  private void frame() {
    if (!bench.state().playhead().motion().playing()) {
      bench.transport().toStart();
      bench.transport().play();
    }
    bench.transport().advance(FRAME_NANOS);
    ReplayFrame frame = ReplayFrame.at(session(), bench.state().playhead().at());
    if (frame.totals().fish() < 0) {
      throw new IllegalStateException("fewer than no fish");
    }
  }

  private void save() {
    if (!bench.editing().save(false)) {
      throw new IllegalStateException("the match has no file");
    }
    record.settle();
    tasks.runLater();
  }

  private Session session() {
    return record.session();
  }

  private SessionEvent any() {
    return session().events().get(chance.nextInt(session().events().size()));
  }

  private long instant() {
    long from = session().match().allIn();
    return from + (long) (chance.nextDouble() * (session().match().allOut() - from));
  }

  private static long held() {
    for (int i = 0; i < 3; i++) {
      System.gc();
    }
    Runtime machine = Runtime.getRuntime();
    return machine.totalMemory() - machine.freeMemory();
  }

  private void print(Path folder) throws IOException {
    say(
        "| tenth | held MB | gesture ms, median | 95%% | 99%% | frame µs, median | 99%% | save ms, median |");
    say("|---|---|---|---|---|---|---|---|");
    for (Tenth t : tenths) {
      say(
          "| %d | %.2f | %.2f | %.2f | %.2f | %.0f | %.0f | %.1f |",
          t.number,
          t.held / 1e6,
          t.gestures.at(0.5) / 1e6,
          t.gestures.at(0.95) / 1e6,
          t.gestures.at(0.99) / 1e6,
          t.frames.at(0.5) / 1e3,
          t.frames.at(0.99) / 1e3,
          t.saves.at(0.5) / 1e6);
    }
    int gestures = tenths.stream().mapToInt(t -> t.gestures.count()).sum();
    say(
        "%d gestures, %d events in the record, journal %d kB",
        gestures, session().events().size(), journalBytes(folder) / 1000);
    double perTenth = gestures / (double) TENTHS;
    trend("held, bytes a gesture", perTenth, tenths.stream().map(t -> (double) t.held).toList());
    trend(
        "gesture median, ms a tenth",
        1,
        tenths.stream().map(t -> t.gestures.at(0.5) / 1e6).toList());
    trend(
        "gesture 95%, ms a tenth", 1, tenths.stream().map(t -> t.gestures.at(0.95) / 1e6).toList());
    trend("frame median, µs a tenth", 1, tenths.stream().map(t -> t.frames.at(0.5) / 1e3).toList());
    trend("save median, ms a tenth", 1, tenths.stream().map(t -> t.saves.at(0.5) / 1e6).toList());
  }

  private static long journalBytes(Path folder) throws IOException {
    try (Stream<Path> files = Files.walk(folder)) {
      return files
          .filter(file -> file.toString().endsWith(".journal"))
          .mapToLong(file -> file.toFile().length())
          .sum();
    }
  }

  private static void trend(String what, double step, List<Double> values) {
    SimpleRegression line = new SimpleRegression();
    for (int i = 0; i < values.size(); i++) {
      line.addData(i * step, values.get(i));
    }
    double half =
        new TDistribution(values.size() - 2.0).inverseCumulativeProbability((1 + LEVEL) / 2)
            * line.getSlopeStdErr();
    say(
        "trend of %s: %.3f (%.3f to %.3f)",
        what, line.getSlope(), line.getSlope() - half, line.getSlope() + half);
  }

  private static void say(String words, Object... values) {
    System.out.printf(Locale.ROOT, words + "%n", values);
  }

  /** A record whose writing can be waited for. */
  private static final class Watched implements Desk.Held {
    private final Desk.Held inner;
    private CompletableFuture<?> last = CompletableFuture.completedFuture(null);

    Watched(Desk.Held inner) {
      this.inner = inner;
    }

    void settle() {
      last.join();
    }

    private <T> CompletableFuture<T> watch(CompletableFuture<T> kept) {
      last = kept;
      return kept;
    }

    @Override
    public Session session() {
      return inner.session();
    }

    @Override
    public OpenSession.Source source() {
      return inner.source();
    }

    @Override
    public OpenSession.History history() {
      return inner.history();
    }

    @Override
    public Desk.Notice notice() {
      return inner.notice();
    }

    @Override
    public CompletableFuture<?> append(Edit edit) {
      return watch(inner.append(edit));
    }

    @Override
    public Optional<CompletableFuture<?>> undo() throws IOException {
      return inner.undo().map(this::watch);
    }

    @Override
    public Optional<CompletableFuture<?>> redo() throws IOException {
      return inner.redo().map(this::watch);
    }

    @Override
    public Optional<CompletableFuture<Desk.Saved>> save(boolean overwrite) {
      return inner.save(overwrite).map(this::watch);
    }

    @Override
    public void close() {
      inner.close();
    }
  }
}
