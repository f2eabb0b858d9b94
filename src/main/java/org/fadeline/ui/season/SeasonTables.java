package org.fadeline.ui.season;

import java.nio.file.Path;
import java.time.format.DateTimeFormatter;
import java.util.ArrayList;
import java.util.IdentityHashMap;
import java.util.List;
import java.util.Locale;
import java.util.function.Consumer;
import java.util.function.Function;
import org.fadeline.analysis.SentenceText;
import org.fadeline.analysis.season.Season;
import org.fadeline.analysis.season.SessionSummary;
import org.fadeline.analysis.season.SessionSummary.LineSummary;
import org.fadeline.analysis.season.SessionSummary.Placing;
import org.fadeline.analysis.season.StandingOut;
import org.fadeline.index.SeasonFolder;
import org.fadeline.model.Units;
import org.fadeline.ui.control.Say;
import org.fadeline.ui.control.table.DataTable;
import org.fadeline.ui.season.SeasonShown.FeedRow;
import org.jspecify.annotations.Nullable;

/** The tables of a season that go session by session, and the files left out. */
final class SeasonTables {
  static final DateTimeFormatter DAY = DateTimeFormatter.ofPattern("d MMM yyyy", Locale.UK);

  /** Problems told of one file: one bad file must not hide the next. */
  private static final int MOST_PROBLEMS = 4;

  final DataTable<SessionSummary> results = new DataTable<>("Match by match", "No match.");
  final DataTable<FeedRow> feed =
      new DataTable<>("Feed given and what came", "No feeding is logged.");
  final DataTable<FileRow> files =
      new DataTable<>("Files left out", "Every file of the folder is in use.");

  private final IdentityHashMap<SessionSummary, List<String>> standing = new IdentityHashMap<>();
  private Units units = Units.LB_OZ_AND_METRES;
  private SeasonShown shown = SeasonState.EMPTY.shown();
  private Season season = shown.season();

  /** A file with what is the matter. */
  record FileRow(Path file, String place, String problem, String remedy) {}

  /** Makes the tables; {@code behind} is told the sessions a chosen row rests on. */
  SeasonTables(Consumer<List<Integer>> behind) {
    columnsOfResults();
    columnsOfFeed();
    files
        .words("File", 190, r -> String.valueOf(r.file().getFileName()))
        .words("Where", 75, FileRow::place)
        .words("Problem", 330, FileRow::problem)
        .words("What to do", 330, FileRow::remedy);
    on(results, s -> List.of(season.sessions().indexOf(s)), behind);
    on(feed, r -> List.of(r.session()), behind);
  }

  static <R> void on(
      DataTable<R> table, Function<R, List<Integer>> sessions, Consumer<List<Integer>> behind) {
    table
        .table()
        .getSelectionModel()
        .selectedItemProperty()
        .addListener(
            (p, before, row) -> {
              if (row != null) {
                behind.accept(sessions.apply(row));
              }
            });
  }

  private void columnsOfResults() {
    results
        .numbers("Date", 100, SeasonTables::place, SeasonTables::day)
        .words("Water", 115, s -> water(s))
        .numbers(
            "Fish", 55, s -> (double) s.result().fish(), s -> String.valueOf(s.result().fish()))
        .numbers(
            "Logged",
            145,
            s -> s.result().grams(),
            s ->
                Say.weight(s.result().grams(), units)
                    + (s.result().weights().missing() > 0 ? " or more" : ""))
        .numbers(
            "At the scales",
            108,
            s -> s.result().weighedGrams(),
            s -> weight(s.result().weighedGrams()))
        .numbers(
            "Nets",
            55,
            s -> s.result().netGrams().isEmpty() ? null : (Double) (double) nets(s),
            s -> String.valueOf(nets(s)))
        .numbers(
            "Scales / logged",
            115,
            s -> s.result().weights().scalesFactor(),
            s -> "×" + String.format(Locale.ROOT, "%.2f", s.result().weights().scalesFactor()))
        .words("Place", 70, s -> place(s.result().placing()))
        .numbers(
            "Fished",
            80,
            SessionSummary::fishedMinutes,
            s -> SentenceText.minutes(s.fishedMinutes()))
        .words("Past plain", 115, this::pastPlain)
        .words("Stands out", 330, this::standsOut);
  }

  /** Returns the day of a session in words. */
  static String day(SessionSummary session) {
    return session.about().dated() ? DAY.format(session.about().date()) : "undated";
  }

  /** By date; those without one come last. */
  private static Double place(SessionSummary session) {
    return session.about().dated()
        ? (double) session.about().date().toEpochDay()
        : Double.POSITIVE_INFINITY;
  }

  private static int nets(SessionSummary session) {
    return session.result().netGrams().size();
  }

  private String weight(@Nullable Double grams) {
    return grams == null ? "" : Say.weight(grams, units);
  }

  static String water(SessionSummary session) {
    String water = session.about().water();
    return water == null ? "" : water;
  }

  private static String place(@Nullable Placing placing) {
    return placing == null || placing.position() == null
        ? ""
        : placing.position() + (placing.of() == null ? "" : " of " + placing.of());
  }

  private String pastPlain(SessionSummary session) {
    if (!session.hasFades()) {
      return "not worked out yet";
    }
    Season.PastPlainTally past = season.pastPlain(session);
    return past.stays() == 0
        ? "none"
        : SentenceText.minutes(past.minutes()) + ", " + Say.fish(past.fish());
  }

  private String standsOut(SessionSummary session) {
    return String.join("; ", standing.getOrDefault(session, List.of()));
  }

  private void columnsOfFeed() {
    feed.numbers("Date", 110, r -> place(r.of()), r -> day(r.of()))
        .words("Line", 140, r -> Say.capital(r.line().name()))
        .words("Fed with", 200, r -> String.join(", ", r.line().feed().baits()))
        .numbers(
            "Feeds",
            75,
            r -> (double) r.line().feed().feeds(),
            r -> String.valueOf(r.line().feed().feeds()))
        .words("Amount", 150, r -> amounts(r.line()))
        .numbers(
            "Fished",
            95,
            r -> r.line().fishedMinutes(),
            r -> SentenceText.minutes(r.line().fishedMinutes()))
        .numbers("Fish", 65, r -> (double) r.line().fish(), r -> String.valueOf(r.line().fish()))
        .numbers("Weight", 110, r -> r.line().grams(), r -> Say.weight(r.line().grams(), units));
  }

  private static String amounts(LineSummary line) {
    List<String> parts = new ArrayList<>();
    line.feed()
        .amounts()
        .forEach((unit, amount) -> parts.add(Say.number(amount) + " " + unit.word()));
    return String.join(", ", parts);
  }

  /** Takes a season in; each table shows it once it is told to. */
  void take(SeasonShown newShown, Units newUnits) {
    shown = newShown;
    season = newShown.season();
    units = newUnits;
    standing.clear();
    for (StandingOut one : season.standing()) {
      standing
          .computeIfAbsent(season.sessions().get(one.session()), x -> new ArrayList<>())
          .add(SeasonWords.standsOut(one, newUnits));
    }
  }

  /** While the folder is read nothing is said to be missing. */
  void reading(boolean reading) {
    results.whenEmpty(reading ? SeasonWords.READING : "No match.");
    feed.whenEmpty(reading ? SeasonWords.READING : "No feeding is logged.");
    files.whenEmpty(reading ? SeasonWords.READING : "Every file of the folder is in use.");
  }

  void showResults() {
    results.show(season.sessions());
  }

  void showFeed() {
    feed.show(shown.feeds());
  }

  void showFiles(SeasonFolder found) {
    List<FileRow> fileRows = new ArrayList<>();
    for (SeasonFolder.Broken broken : found.broken()) {
      broken.problems().stream()
          .limit(MOST_PROBLEMS)
          .forEach(
              p ->
                  fileRows.add(
                      new FileRow(broken.file(), "row " + p.row(), p.what(), p.whatToDo())));
      int more = broken.problems().size() - MOST_PROBLEMS;
      if (more > 0) {
        fileRows.add(
            new FileRow(
                broken.file(),
                "",
                "and " + Say.count(more, "problem") + " more",
                "open it from Matches to see all of them"));
      }
    }
    for (SeasonFolder.Copy copy : found.copies()) {
      fileRows.add(
          new FileRow(
              copy.file(),
              "",
              "the same match as " + copy.used().getFileName() + ", which is used",
              "keep one of them in the folder"));
    }
    files.show(fileRows);
  }
}
