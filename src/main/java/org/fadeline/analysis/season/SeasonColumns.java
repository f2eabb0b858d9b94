package org.fadeline.analysis.season;

import java.util.Arrays;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.TreeSet;
import org.fadeline.analysis.season.SessionSummary.FirstBiteRow;
import org.fadeline.analysis.season.SessionSummary.LineSummary;
import org.jspecify.annotations.Nullable;

/**
 * All sessions laid out in columns, once, by date: names become numbers and first bites are sorted,
 * so that each filter is a pass over plain arrays. A line's number runs over all sessions, and so
 * does that of a stretch at risk of a first bite (a row).
 */
final class SeasonColumns {
  final List<SessionSummary> sessions;

  /** Kinds of line, baits and waters, in alphabetical order; numbers below are places in them. */
  final String[] groups;

  final String[] baits;
  final String[] waters;

  /** First line of each session, and one entry more. */
  final int[] firstLine;

  final int[] lineGroup;

  /** What each line gave, was fed and how it faded. */
  final LineColumns lines;

  /** Water of each session, −1 where none is named. */
  final int[] water;

  /** Whether every fish of each session has a weight. */
  final boolean[] weighed;

  /** First row of each line, and one entry more. */
  final int[] firstRow;

  final int[] rowSession;
  final int[] rowGroup;

  /** Bait of each row, −1 where none is named. */
  final int[] rowBait;

  final double[] entry;
  final double[] exit;
  final boolean[] bite;
  final boolean[] opens;

  /** Rows by rising entry and by rising exit. */
  final int[] byEntry;

  final int[] byExit;

  SeasonColumns(List<SessionSummary> all) {
    sessions =
        all.stream()
            .sorted(
                Comparator.comparing((SessionSummary s) -> !s.about().dated())
                    .thenComparing(s -> s.about().date())
                    .thenComparing(s -> s.about().title())
                    .thenComparing(s -> s.about().id()))
            .toList();
    Names kinds = new Names();
    Names fed = new Names();
    Names places = new Names();
    int lineCount = 0;
    int rows = 0;
    for (SessionSummary session : sessions) {
      places.add(session.about().water());
      for (LineSummary line : session.lines()) {
        kinds.add(line.group());
        lineCount++;
        rows += line.firstBites().size();
        line.firstBites().forEach(row -> fed.add(row.bait()));
      }
    }
    groups = kinds.sorted();
    baits = fed.sorted();
    waters = places.asWritten();
    firstLine = new int[sessions.size() + 1];
    water = new int[sessions.size()];
    weighed = new boolean[sessions.size()];
    lines = new LineColumns(sessions);
    lineGroup = new int[lineCount];
    firstRow = new int[lineCount + 1];
    rowSession = new int[rows];
    rowGroup = new int[rows];
    rowBait = new int[rows];
    entry = new double[rows];
    exit = new double[rows];
    bite = new boolean[rows];
    opens = new boolean[rows];
    int line = 0;
    int row = 0;
    for (int s = 0; s < sessions.size(); s++) {
      water[s] = places.number(sessions.get(s).about().water());
      weighed[s] = sessions.get(s).result().weights().missing() == 0;
      for (LineSummary one : sessions.get(s).lines()) {
        lineGroup[line] = kinds.number(one.group());
        for (FirstBiteRow stretch : one.firstBites()) {
          rowSession[row] = s;
          rowGroup[row] = lineGroup[line];
          rowBait[row] = fed.number(stretch.bait());
          entry[row] = stretch.entry();
          exit[row] = stretch.exit();
          bite[row] = stretch.bite();
          opens[row++] = stretch.opens();
        }
        firstRow[++line] = row;
      }
      firstLine[s + 1] = line;
    }
    byEntry = order(entry);
    byExit = order(exit);
  }

  /** Names as they are told apart: without blanks around them and in lower case. */
  private static final class Names {
    private final HashMap<String, String> written = new HashMap<>();
    private final HashMap<String, String> tidied = new HashMap<>();
    private final HashMap<String, Integer> numbers = new HashMap<>();

    void add(@Nullable String name) {
      if (name != null) {
        written.putIfAbsent(tidied.computeIfAbsent(name, SeasonFilter::tidied), name.strip());
      }
    }

    String[] sorted() {
      String[] names = new TreeSet<>(tidied.values()).toArray(String[]::new);
      tidied.forEach((name, tidy) -> numbers.put(name, Arrays.binarySearch(names, tidy)));
      return names;
    }

    /** Returns the same names, each as it was written first: a water's has its capitals. */
    String[] asWritten() {
      return Arrays.stream(sorted()).map(written::get).toArray(String[]::new);
    }

    int number(@Nullable String name) {
      return name == null ? -1 : numbers.getOrDefault(name, -1);
    }
  }

  /** Returns the places of the values in rising order, equal ones as they come. */
  private static int[] order(double[] values) {
    double[] sorted = values.clone();
    Arrays.sort(sorted);
    int[] taken = new int[sorted.length];
    int[] order = new int[sorted.length];
    for (int i = 0; i < values.length; i++) {
      int place = firstAtLeast(sorted, values[i]);
      order[place + taken[place]++] = i;
    }
    return order;
  }

  private static int firstAtLeast(double[] sorted, double value) {
    int low = 0;
    int high = sorted.length;
    while (low < high) {
      int middle = (low + high) >>> 1;
      if (sorted[middle] < value) {
        low = middle + 1;
      } else {
        high = middle;
      }
    }
    return low;
  }

  /** Which of the sessions and lines a filter holds. */
  final class Held {
    /** The sessions held, by date. */
    final List<SessionSummary> sessions;

    /** Their places among all. */
    final int[] of;

    /** The place among those held of each of all sessions, −1 where it is not. */
    final int[] place;

    private final boolean[] groupHeld;

    /** Whether every line of a session held is held. */
    final boolean everyLine;

    private Held(SeasonFilter filter) {
      everyLine = filter.groups().isEmpty();
      groupHeld = new boolean[groups.length];
      for (int g = 0; g < groups.length; g++) {
        groupHeld[g] = filter.holdsGroup(groups[g]);
      }
      place = new int[SeasonColumns.this.sessions.size()];
      int[] found = new int[place.length];
      int n = 0;
      for (int s = 0; s < place.length; s++) {
        boolean held =
            filter.holdsDay(SeasonColumns.this.sessions.get(s).about())
                && (filter.groups().isEmpty() || anyLine(s));
        place[s] = held ? n : -1;
        if (held) {
          found[n++] = s;
        }
      }
      of = Arrays.copyOf(found, n);
      sessions = Arrays.stream(of).mapToObj(SeasonColumns.this.sessions::get).toList();
    }

    private boolean anyLine(int session) {
      boolean any = false;
      for (int line = firstLine[session]; line < firstLine[session + 1]; line++) {
        any |= groupHeld[lineGroup[line]];
      }
      return any;
    }

    SeasonColumns columns() {
      return SeasonColumns.this;
    }

    /** Something done with a line: its session's place among those held, its kind's number. */
    interface LineWork {
      void with(int session, int group, int line);
    }

    /** Goes through the lines held, session by session. */
    void eachLine(LineWork work) {
      for (int s = 0; s < of.length; s++) {
        for (int line = firstLine[of[s]]; line < firstLine[of[s] + 1]; line++) {
          if (groupHeld[lineGroup[line]]) {
            work.with(s, lineGroup[line], line);
          }
        }
      }
    }

    /** Whether a row is of a line held in a session held. */
    boolean holdsRow(int row) {
      return place[rowSession[row]] >= 0 && groupHeld[rowGroup[row]];
    }
  }

  /** Returns minutes fished on all lines of a session. */
  double fishedMinutes(int session) {
    double minutes = 0;
    for (int line = firstLine[session]; line < firstLine[session + 1]; line++) {
      minutes += lines.minutes[line];
    }
    return minutes;
  }

  Held held(SeasonFilter filter) {
    return new Held(filter);
  }
}
