package org.fadeline.index;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.fadeline.analysis.season.SessionSummary;
import org.fadeline.io.Problem;

/**
 * What a folder of sessions holds.
 *
 * @param entries the sessions, by path; of several files of one session the one edited last
 * @param broken files that cannot be used, each with its problems
 * @param copies files left out because another holds the same session, edited as often or more
 */
public record SeasonFolder(List<Entry> entries, List<Broken> broken, List<Copy> copies) {
  /** Copies the lists. */
  public SeasonFolder {
    entries = List.copyOf(entries);
    broken = List.copyOf(broken);
    copies = List.copyOf(copies);
  }

  /**
   * One session of the folder.
   *
   * @param file where it is
   * @param summary what a season needs of it
   * @param warnings what was assumed in reading it, at most {@link SeasonIndex#MOST_WARNINGS}
   */
  public record Entry(Path file, SessionSummary summary, List<String> warnings) {
    /** Copies the list. */
    public Entry {
      warnings = List.copyOf(warnings);
    }
  }

  /**
   * A file that cannot be used.
   *
   * @param file where it is
   * @param problems why, at least one
   */
  public record Broken(Path file, List<Problem> problems) {
    /** Copies the list. */
    public Broken {
      problems = List.copyOf(problems);
    }
  }

  /**
   * A file left out.
   *
   * @param file where it is
   * @param used the file used in its place
   */
  public record Copy(Path file, Path used) {}

  /** Returns the summaries, in the order of the entries. */
  public List<SessionSummary> summaries() {
    return entries.stream().map(Entry::summary).toList();
  }

  /** One file as it was looked at. */
  sealed interface Looked {
    /** Returns the file. */
    Path file();
  }

  /** A file that holds a session. */
  record Good(Path file, SessionSummary summary, long sequence, List<String> warnings)
      implements Looked {}

  /** A file that does not. */
  record Bad(Path file, List<Problem> problems) implements Looked {}

  /** Puts the files of a folder together. */
  static SeasonFolder of(List<Looked> looked) {
    List<Broken> broken = new ArrayList<>();
    Map<String, List<Good>> byId = new LinkedHashMap<>();
    for (Looked one : looked) {
      if (one instanceof Bad bad) {
        broken.add(new Broken(bad.file, bad.problems));
      } else if (one instanceof Good good) {
        // A file copied to start another day's record keeps its id: the date tells them apart.
        String which =
            good.summary.about().id()
                + (good.summary.about().dated() ? " " + good.summary.about().date() : "");
        byId.computeIfAbsent(which, w -> new ArrayList<>()).add(good);
      }
    }
    List<Entry> entries = new ArrayList<>();
    List<Copy> copies = new ArrayList<>();
    for (List<Good> same : byId.values()) {
      Good used =
          same.stream()
              .max(
                  Comparator.comparingLong(Good::sequence)
                      .thenComparing(Good::file, Comparator.reverseOrder()))
              .orElseThrow();
      entries.add(new Entry(used.file, used.summary, used.warnings));
      same.stream()
          .filter(g -> !g.file.equals(used.file))
          .forEach(g -> copies.add(new Copy(g.file, used.file)));
    }
    entries.sort(Comparator.comparing(Entry::file));
    return new SeasonFolder(entries, broken, copies);
  }
}
