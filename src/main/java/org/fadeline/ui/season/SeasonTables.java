package org.fadeline.ui.season;

import java.nio.file.Path;
import java.time.format.DateTimeFormatter;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.function.Consumer;
import org.fadeline.analysis.season.Learned.GroupLearned;
import org.fadeline.analysis.season.Season;
import org.fadeline.analysis.season.Season.Cell;
import org.fadeline.analysis.season.Season.FadeGroup;
import org.fadeline.analysis.season.Season.FirstBiteGroup;
import org.fadeline.analysis.season.Season.Limits;
import org.fadeline.analysis.season.Season.LineHours;
import org.fadeline.analysis.season.SessionSummary;
import org.fadeline.analysis.season.SessionSummary.LineSummary;
import org.fadeline.analysis.season.SessionSummary.Placing;
import org.fadeline.index.SeasonFolder;
import org.fadeline.model.Units;
import org.fadeline.ui.control.DataTable;
import org.fadeline.ui.control.Say;
import org.jspecify.annotations.Nullable;

/** The tables of a season: everything that is on a chart, in figures. */
final class SeasonTables {
  static final DateTimeFormatter DAY = DateTimeFormatter.ofPattern("d MMM yyyy", Locale.UK);

  final DataTable<SessionSummary> results = new DataTable<>("Session by session", "No session.");
  final DataTable<HourRow> hours =
      new DataTable<>("Line by hour of the match, an hour fished", "Nothing was fished.");
  final DataTable<FirstBiteGroup> firstBites =
      new DataTable<>("First bite after feeding", "No feeding is logged.");
  final DataTable<FadeGroup> fades =
      new DataTable<>("Fades by kind of line", "No spell that a fade could be judged in yet.");
  final DataTable<FeedRow> feed =
      new DataTable<>("Feed given and what came", "No feeding is logged.");
  final DataTable<GroupLearned> learned =
      new DataTable<>("What each kind of line pays", "Nothing is learned yet.");
  final DataTable<FileRow> files =
      new DataTable<>("Files left out", "Every file of the folder is in use.");

  private Units units = Units.LB_OZ_AND_METRES;
  private Season season = SeasonState.EMPTY.season();

  /** A cell with its line. */
  record HourRow(String line, Cell cell) {}

  /** What one line of one session was fed. */
  record FeedRow(int session, SessionSummary of, LineSummary line) {}

  /** A file with what is the matter. */
  record FileRow(Path file, String place, String problem, String remedy) {}

  /** Makes the tables; {@code behind} is told the sessions a chosen row rests on. */
  SeasonTables(Consumer<List<Integer>> behind) {
    columnsOfResults();
    columnsOfHours();
    columnsOfFirstBites();
    columnsOfFades();
    columnsOfFeed();
    learned
        .words("Line", 160, g -> Say.capital(g.group()))
        .numbers("Sessions", 90, g -> (double) g.sessions(), g -> String.valueOf(g.sessions()))
        .numbers("Bunching", 95, GroupLearned::bunching, g -> "×" + Say.number(g.bunching()))
        .words("Fish an hour, another day", 260, SeasonTables::pool);
    files
        .words("File", 240, r -> String.valueOf(r.file().getFileName()))
        .words("Where", 110, FileRow::place)
        .words("Problem", 330, FileRow::problem)
        .words("What to do", 330, FileRow::remedy);
    on(results, s -> List.of(season.sessions().indexOf(s)), behind);
    on(hours, r -> r.cell().sessions(), behind);
    on(firstBites, FirstBiteGroup::sessions, behind);
    on(fades, FadeGroup::sessions, behind);
    on(feed, r -> List.of(r.session()), behind);
  }

  private static <R> void on(
      DataTable<R> table,
      java.util.function.Function<R, List<Integer>> sessions,
      Consumer<List<Integer>> behind) {
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
        .numbers(
            "Date",
            100,
            s -> (double) s.about().date().toEpochDay(),
            s -> DAY.format(s.about().date()))
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
            s -> s.result().scalesFactor(),
            s -> "×" + String.format(Locale.ROOT, "%.2f", s.result().scalesFactor()))
        .words("Place", 70, s -> place(s.result().placing()))
        .numbers(
            "Fished",
            80,
            SessionSummary::fishedMinutes,
            s -> Say.span(Math.round(s.fishedMinutes() * 60_000)))
        .words("Past plain", 115, this::pastPlain);
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
        : Say.span(Math.round(past.minutes() * 60_000)) + ", " + Say.fish(past.fish());
  }

  private void columnsOfHours() {
    hours
        .words("Line", 150, r -> Say.capital(r.line()))
        .words("Hour", 95, r -> hour(r.cell()))
        .numbers(
            "Sessions",
            90,
            r -> (double) r.cell().sessions().size(),
            r -> String.valueOf(r.cell().sessions().size()))
        .numbers(
            "Fished",
            100,
            r -> r.cell().fishedHours(),
            r -> Say.span(Math.round(r.cell().fishedHours() * 3_600_000)))
        .numbers(
            "Weight an hour",
            240,
            r -> r.cell().weight().perHour(),
            r ->
                Say.roughWeight(known(r.cell().weight().perHour()), units)
                    + weights(r.cell().weight().limits()))
        .numbers(
            "Fish an hour",
            150,
            r -> r.cell().fish().perHour(),
            r -> Say.number(known(r.cell().fish().perHour())) + fish(r.cell().fish().limits()));
  }

  private static double known(@Nullable Double value) {
    return value == null ? 0 : value;
  }

  private static String hour(Cell cell) {
    return cell.hour() == null ? "whole match" : "hour " + (cell.hour() + 1);
  }

  private String weights(@Nullable Limits limits) {
    return limits == null
        ? ", too few to tell"
        : " (" + Say.roughWeights(limits.low(), limits.high(), units) + ")";
  }

  private static String fish(@Nullable Limits limits) {
    return limits == null
        ? ", too few to tell"
        : " (" + Say.number(limits.low()) + "–" + Say.number(limits.high()) + ")";
  }

  private void columnsOfFirstBites() {
    firstBites
        .words("", 160, g -> Say.capital(g.name()))
        .words("By", 80, g -> g.by().word())
        .numbers(
            "Sessions",
            90,
            g -> (double) g.sessions().size(),
            g -> String.valueOf(g.sessions().size()))
        .numbers(
            "Feeds", 70, g -> (double) g.tally().feeds(), g -> String.valueOf(g.tally().feeds()))
        .numbers(
            "With a bite",
            95,
            g -> (double) g.tally().bites(),
            g -> String.valueOf(g.tally().bites()))
        .words("Half bit within", 190, SeasonTables::median)
        .words("Against the others", 150, SeasonTables::against);
  }

  private static String median(FirstBiteGroup group) {
    Season.Curve curve = group.curve();
    if (curve == null) {
      return "too few feeds to say";
    }
    Double median = curve.medianMinutes();
    if (median == null) {
      return "not reached";
    }
    Double low = curve.low();
    Double high = curve.high();
    String limits =
        low == null && high == null
            ? ", too few to tell"
            : " ("
                + (low == null ? "?" : Say.number(low))
                + "–"
                + (high == null ? "no upper limit" : Say.number(high))
                + ")";
    return Say.number(median) + " min" + limits;
  }

  private static String against(FirstBiteGroup group) {
    Double p = group.againstOthers().p();
    return p == null
        ? ""
        : p < 0.001 ? "p < 0.001" : "p = " + String.format(Locale.ROOT, "%.3f", p);
  }

  private void columnsOfFades() {
    fades
        .words("Line", 160, g -> Say.capital(g.group()))
        .numbers(
            "Sessions",
            90,
            g -> (double) g.sessions().size(),
            g -> String.valueOf(g.sessions().size()))
        .numbers("Spells", 75, g -> (double) g.spells(), g -> String.valueOf(g.spells()))
        .numbers("Faded", 75, g -> (double) g.faded(), g -> String.valueOf(g.faded()))
        .numbers(
            "Middle one",
            110,
            FadeGroup::medianMinute,
            g -> Say.number(known(g.medianMinute())) + " min in")
        .numbers(
            "Stays past plain",
            130,
            g -> (double) g.past().stays(),
            g -> String.valueOf(g.past().stays()))
        .numbers(
            "For",
            100,
            g -> g.past().stays() == 0 ? null : (Double) g.past().minutes(),
            g -> Say.span(Math.round(g.past().minutes() * 60_000)))
        .numbers(
            "Gave",
            100,
            g -> g.past().stays() == 0 ? null : (Double) (double) g.past().fish(),
            g -> Say.fish(g.past().fish()));
  }

  private void columnsOfFeed() {
    feed.numbers(
            "Date",
            110,
            r -> (double) r.of().about().date().toEpochDay(),
            r -> DAY.format(r.of().about().date()))
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
            r -> Say.span(Math.round(r.line().fishedMinutes() * 60_000)))
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

  private static String pool(GroupLearned group) {
    var pool = group.pool();
    return pool == null
        ? "too few sessions"
        : Say.number(pool.mean())
            + " ("
            + Say.number(pool.quantile(0.05))
            + "–"
            + Say.number(pool.quantile(0.95))
            + " nine days in ten)";
  }

  /** Takes a season in; each table shows it once it is told to. */
  void take(Season newSeason, Units newUnits) {
    season = newSeason;
    units = newUnits;
  }

  void showResults() {
    results.show(season.sessions());
  }

  void showFirstBites() {
    firstBites.show(season.firstBites());
  }

  void showFades() {
    fades.show(season.fades());
  }

  void showLearned() {
    learned.show(season.learned().groups());
  }

  void showHours() {
    List<HourRow> hourRows = new ArrayList<>();
    for (LineHours line : season.lines()) {
      hourRows.add(new HourRow(line.group(), line.whole()));
      line.hours().forEach(cell -> hourRows.add(new HourRow(line.group(), cell)));
    }
    hours.show(hourRows);
  }

  void showFeed() {
    List<FeedRow> feedRows = new ArrayList<>();
    for (int i = 0; i < season.sessions().size(); i++) {
      SessionSummary session = season.sessions().get(i);
      for (LineSummary line : session.lines()) {
        if (line.feed().feeds() > 0 && season.filter().holds(line)) {
          feedRows.add(new FeedRow(i, session, line));
        }
      }
    }
    feed.show(feedRows);
  }

  void showFiles(SeasonFolder found) {
    List<FileRow> fileRows = new ArrayList<>();
    for (SeasonFolder.Broken broken : found.broken()) {
      broken
          .problems()
          .forEach(
              p ->
                  fileRows.add(
                      new FileRow(broken.file(), "row " + p.row(), p.what(), p.whatToDo())));
    }
    for (SeasonFolder.Copy copy : found.copies()) {
      fileRows.add(
          new FileRow(
              copy.file(),
              "",
              "the same session as " + copy.used().getFileName() + ", which is used",
              "keep one of them in the folder"));
    }
    files.show(fileRows);
  }
}
