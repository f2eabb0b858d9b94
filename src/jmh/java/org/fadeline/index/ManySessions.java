package org.fadeline.index;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.IntStream;
import org.fadeline.analysis.ReviewSettings;
import org.fadeline.analysis.Reviewer;
import org.fadeline.analysis.season.SessionSummaries;
import org.fadeline.analysis.season.SessionSummary;
import org.fadeline.analysis.season.SessionSummary.LineSummary;
import org.fadeline.demo.DemoMatch;
import org.fadeline.demo.DemoWaters;
import org.fadeline.io.ReadOptions;
import org.fadeline.io.SessionWriter;
import org.fadeline.model.Session;

/**
 * A folder of many made sessions of three waters with its kept file, for benchmarks that only open
 * it. Every file is there; the fades of {@value #REVIEWED} sessions stand for those of all, for to
 * work them all out takes ten minutes.
 */
public final class ManySessions {
  private static final int REVIEWED = 300;

  private ManySessions() {}

  /** Makes the folder, unless it is there. */
  public static void make(Path folder, int sessions) throws IOException {
    Path keptFile = folder.resolve(SeasonIndex.KEPT);
    if (Files.exists(keptFile)) {
      return;
    }
    Files.createDirectories(folder);
    IntStream.range(0, sessions).parallel().forEach(i -> write(folder, i));
    SeasonIndex index = new SeasonIndex(folder, ReadOptions.DEFAULT, ReviewSettings.DEFAULT);
    index.read(SeasonIndex.Depth.WITHOUT_FADES, SeasonIndex.Watcher.NONE);
    List<SessionSummary> reviewed =
        IntStream.range(0, Math.min(REVIEWED, sessions))
            .parallel()
            .mapToObj(
                i -> SessionSummaries.whole(Reviewer.review(session(i), ReviewSettings.DEFAULT)))
            .toList();
    Map<Path, KeptSummary> kept = new HashMap<>();
    for (int i = 0; i < sessions; i++) {
      Path file = file(folder, i);
      KeptSummary quick = index.keptOf(file);
      if (quick == null) {
        throw new IllegalStateException(file + " was not read");
      }
      SessionSummary summary = withFades(quick.summary(), reviewed.get(i % reviewed.size()));
      kept.put(
          file,
          new KeptSummary(
              quick.size(),
              quick.changed(),
              quick.hash(),
              quick.sequence(),
              summary,
              quick.warnings()));
    }
    KeptSummaries.write(keptFile, folder, index.basis(), kept);
  }

  /** A session with the fades of another of the same water, whose lines are the same. */
  private static SessionSummary withFades(SessionSummary quick, SessionSummary reviewed) {
    List<LineSummary> lines = new ArrayList<>();
    for (int i = 0; i < quick.lines().size(); i++) {
      lines.add(quick.lines().get(i).with(reviewed.lines().get(i).behind()));
    }
    return new SessionSummary(quick.about(), quick.result(), lines);
  }

  private static Path file(Path folder, int i) {
    return folder.resolve("part-" + i / 500).resolve(i + ".session.json");
  }

  private static Session session(int i) {
    return switch (i % 3) {
      case 0 -> DemoMatch.generate(DemoWaters.waterA(), DemoWaters.planA(), i);
      case 1 -> DemoMatch.generate(DemoWaters.waterB(), DemoWaters.planB(), i);
      default -> DemoMatch.generate(DemoWaters.waterC(), DemoWaters.planC(), i);
    };
  }

  private static void write(Path folder, int i) {
    Session session = session(i);
    Path file = file(folder, i);
    try {
      Files.createDirectories(file.getParent());
      Files.write(file, SessionWriter.toBytes(session));
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }
}
