package org.fadeline.bench;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.Set;
import java.util.stream.IntStream;
import org.fadeline.analysis.ReviewSettings;
import org.fadeline.analysis.season.SeasonBuilder;
import org.fadeline.analysis.season.SeasonFilter;
import org.fadeline.demo.DemoMatch;
import org.fadeline.demo.DemoWaters;
import org.fadeline.index.SeasonFolder;
import org.fadeline.index.SeasonIndex;
import org.fadeline.io.ReadOptions;
import org.fadeline.io.SessionWriter;
import org.fadeline.model.Session;

/**
 * A folder of many sessions, as a season of many anglers: how long it takes to read it, to work out
 * its fades, to open it again and to filter it, and how much memory is held. A benchmark main:
 *
 * <pre>
 * mvn -q -Pbench test-compile exec:exec -Dbench.main=org.fadeline.bench.SeasonLoad -Dbench=10000
 * </pre>
 */
public final class SeasonLoad {
  private static final int FILTERS = 41;
  private static final SeasonFilter ALL = SeasonFilter.ALL;

  private SeasonLoad() {}

  /**
   * Runs it.
   *
   * @param args how many sessions, 10,000 without one; then a folder to keep them in. A folder kept
   *     by an earlier run is only opened again, so that a fresh process is measured
   */
  public static void main(String[] args) throws IOException {
    int sessions = args.length == 0 ? 10_000 : Integer.parseInt(args[0]);
    if (args.length > 1) {
      Path folder = Path.of(args[1]);
      Path kept = folder.resolve(SeasonIndex.KEPT);
      if (!Files.exists(kept)) {
        Files.createDirectories(folder);
        make(folder, kept, sessions);
      }
      openAgain(folder, kept);
      return;
    }
    Path folder = Files.createTempDirectory("fadeline-season");
    Path kept = folder.resolve(SeasonIndex.KEPT);
    try {
      make(folder, kept, sessions);
      openAgain(folder, kept);
    } finally {
      TemporaryFolder.remove(folder);
    }
  }

  private static void make(Path folder, Path kept, int sessions) throws IOException {
    say("generated", time(() -> generate(folder, sessions)));
    SeasonIndex index = index(folder);
    say(
        "indexed without fades",
        time(() -> index.read(SeasonIndex.Depth.WITHOUT_FADES, SeasonIndex.Watcher.NONE)));
    say("tables of them", time(() -> SeasonBuilder.build(index.soFar().summaries(), ALL)));
    say(
        "fades filled in behind",
        time(() -> index.read(SeasonIndex.Depth.WITH_FADES, SeasonIndex.Watcher.NONE)));
    say("kept", time(() -> index.save(kept)));
    System.out.printf(Locale.ROOT, "%-28s %8.1f MiB%n", "kept file", Files.size(kept) / 1048576.0);
  }

  private static void openAgain(Path folder, Path kept) throws IOException {
    SeasonIndex again = index(folder);
    SeasonFolder[] found = new SeasonFolder[1];
    SeasonBuilder[] laidOut = new SeasonBuilder[1];
    double opened =
        time(
            () -> {
              again.load(kept);
              found[0] = again.read(SeasonIndex.Depth.WITH_FADES, SeasonIndex.Watcher.NONE);
              laidOut[0] = new SeasonBuilder(found[0].summaries());
              laidOut[0].build(ALL);
            });
    say("opened again, to the tables", opened);
    filters(found[0], laidOut[0]);
    say("at the end", 0);
  }

  private static SeasonIndex index(Path folder) {
    // As the window reads it, and so ManySessions, whose folder can be opened here.
    return new SeasonIndex(folder, ReadOptions.DEFAULT, ReviewSettings.DEFAULT);
  }

  private static void generate(Path folder, int sessions) {
    IntStream.range(0, sessions)
        .parallel()
        .forEach(
            i -> {
              Session session =
                  switch (i % 3) {
                    case 0 -> DemoMatch.generate(DemoWaters.waterA(), DemoWaters.planA(), i);
                    case 1 -> DemoMatch.generate(DemoWaters.waterB(), DemoWaters.planB(), i);
                    default -> DemoMatch.generate(DemoWaters.waterC(), DemoWaters.planC(), i);
                  };
              try {
                Path sub = Files.createDirectories(folder.resolve("part-" + i / 500));
                Files.write(sub.resolve(i + ".session.json"), SessionWriter.toBytes(session));
              } catch (IOException e) {
                throw new UncheckedIOException(e);
              }
            });
  }

  private static void filters(SeasonFolder found, SeasonBuilder laidOut) {
    List<SeasonFilter> filters =
        List.of(
            ALL,
            new SeasonFilter(
                Set.of(found.summaries().get(0).about().water()), Set.of(), Set.of(), null, null));
    for (SeasonFilter filter : filters) {
      double[] millis = new double[FILTERS];
      for (int i = 0; i < FILTERS; i++) {
        millis[i] = 1000 * time(() -> laidOut.build(filter));
      }
      double first = millis[0];
      Arrays.sort(millis);
      System.out.printf(
          Locale.ROOT,
          "%-28s %8.0f ms first, %.0f ms median, %.0f ms most%n",
          filter.equals(ALL) ? "filtered: all" : "filtered: one water",
          first,
          millis[FILTERS / 2],
          millis[FILTERS - 1]);
    }
  }

  /** Something that takes a while. */
  private interface Work {
    void run() throws IOException;
  }

  private static double time(Work work) {
    long from = System.nanoTime();
    try {
      work.run();
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
    return (System.nanoTime() - from) / 1e9;
  }

  private static void say(String what, double seconds) {
    System.gc();
    Runtime machine = Runtime.getRuntime();
    System.out.printf(
        Locale.ROOT,
        "%-28s %8.2f s   %6.0f MiB held, of at most %.0f%n",
        what,
        seconds,
        (machine.totalMemory() - machine.freeMemory()) / 1048576.0,
        machine.maxMemory() / 1048576.0);
  }
}
