package org.fadeline.io;

import java.util.ArrayList;
import java.util.List;

/**
 * What came up while a file was read.
 *
 * @param problems with their places, in the order found, at most {@link #LIMIT}
 * @param errors how many errors there were, the unlisted ones too
 * @param warnings how many warnings there were, the unlisted ones too
 * @param rejects CSV rows that could not be used, cells as read; the first is the header
 */
public record ImportReport(
    List<Problem> problems, int errors, int warnings, List<List<String>> rejects) {
  /** How many problems are listed; more are counted only. */
  public static final int LIMIT = 1000;

  /** Nothing came up. */
  public static final ImportReport CLEAN = new ImportReport(List.of(), 0, 0, List.of());

  /** Copies the lists. */
  public ImportReport {
    problems = List.copyOf(problems);
    rejects = rejects.stream().map(List::copyOf).toList();
  }

  /** Returns a report of one problem. */
  public static ImportReport of(Problem problem) {
    Collector collector = new Collector();
    collector.add(problem);
    return collector.report();
  }

  /** Returns whether something in the file cannot be used. */
  public boolean hasErrors() {
    return errors > 0;
  }

  /** Returns how many problems were counted but not listed. */
  public int unlisted() {
    return errors + warnings - problems.size();
  }

  /** Collects problems up to the limit, then counts. */
  public static final class Collector {
    private final List<Problem> problems = new ArrayList<>();
    private final List<List<String>> rejects = new ArrayList<>();
    private int errors;
    private int warnings;

    /** Takes a problem in. */
    public void add(Problem problem) {
      if (problem.isError()) {
        errors++;
      } else {
        warnings++;
      }
      if (problems.size() < LIMIT) {
        problems.add(problem);
      }
    }

    /** Takes in a row of a table that cannot be used; the first is the header. */
    void reject(List<String> cells) {
      rejects.add(cells);
    }

    /** Returns how many errors there were so far, the unlisted ones too. */
    public int errors() {
      return errors;
    }

    int rejected() {
      return rejects.size();
    }

    /** Returns what was collected so far. */
    public ImportReport report() {
      return new ImportReport(problems, errors, warnings, rejects);
    }
  }
}
