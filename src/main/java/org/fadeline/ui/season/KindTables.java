package org.fadeline.ui.season;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.function.Consumer;
import org.fadeline.analysis.SentenceText;
import org.fadeline.analysis.season.FeedGroup;
import org.fadeline.analysis.season.Learned.GroupLearned;
import org.fadeline.analysis.season.Season;
import org.fadeline.analysis.season.Season.Cell;
import org.fadeline.analysis.season.Season.FadeGroup;
import org.fadeline.analysis.season.Season.FirstBiteGroup;
import org.fadeline.analysis.season.Season.Limits;
import org.fadeline.analysis.season.Season.LineHours;
import org.fadeline.analysis.season.Season.PerHour;
import org.fadeline.model.Units;
import org.fadeline.ui.control.Say;
import org.fadeline.ui.control.table.DataTable;
import org.jspecify.annotations.Nullable;

/** The tables of a season that go by kind of line, bait or water. */
final class KindTables {
  final DataTable<HourRow> hours =
      new DataTable<>("Line by hour of the match, an hour fished", "No match.");
  final DataTable<FirstBiteGroup> firstBites =
      new DataTable<>("First bite after feeding", "No match.");
  final DataTable<FadeGroup> fades = new DataTable<>("Fades by kind of line", "No match.");
  final DataTable<FedRow> fed =
      new DataTable<>("Fed less and fed more, an hour fished", "No match.");
  final DataTable<GroupLearned> learned =
      new DataTable<>("What each kind of line pays", "No match.");

  private Units units = Units.LB_OZ_AND_METRES;
  private Season season = SeasonState.EMPTY.season();
  private List<FeedGroup> groups = List.of();

  /** A cell with its line. */
  record HourRow(String line, Cell cell) {}

  /** The sessions in which a kind of line was fed about as often. */
  record FedRow(String line, FeedGroup.Share share) {}

  /** Makes the tables; {@code behind} is told the sessions a chosen row rests on. */
  KindTables(Consumer<List<Integer>> behind) {
    columnsOfHours();
    columnsOfFirstBites();
    columnsOfFades();
    columnsOfFed();
    learned
        .words("Line", 160, g -> Say.capital(g.group()))
        .numbers("Matches", 90, g -> (double) g.sessions(), g -> String.valueOf(g.sessions()))
        .numbers("Bunching", 95, GroupLearned::bunching, g -> "×" + Say.number(g.bunching()))
        .words("Fish an hour, another day", 260, KindTables::pool);
    SeasonTables.on(hours, r -> r.cell().sessions(), behind);
    SeasonTables.on(firstBites, FirstBiteGroup::sessions, behind);
    SeasonTables.on(fades, FadeGroup::sessions, behind);
    SeasonTables.on(fed, r -> r.share().sessions(), behind);
    SeasonTables.on(learned, r -> fishedOn(r.group()), behind);
  }

  private List<Integer> fishedOn(String group) {
    return season.lines().stream()
        .filter(line -> line.group().equals(group))
        .findFirst()
        .map(line -> line.whole().sessions())
        .orElse(List.of());
  }

  private void columnsOfHours() {
    hours
        .words("Line", 150, r -> Say.capital(r.line()))
        .words("Hour", 95, r -> hour(r.cell()))
        .numbers(
            "Matches",
            90,
            r -> (double) r.cell().sessions().size(),
            r -> String.valueOf(r.cell().sessions().size()))
        .numbers(
            "Fished",
            100,
            r -> r.cell().fishedHours(),
            r -> SentenceText.minutes(r.cell().fishedHours() * 60))
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
        .words("Name", 160, g -> Say.capital(g.name()))
        .words("By", 80, g -> g.by().word())
        .numbers(
            "Matches",
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
        .words("Half bit within", 190, KindTables::median)
        .words("Against the others", 150, KindTables::against);
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
            "Matches",
            90,
            g -> (double) g.sessions().size(),
            g -> String.valueOf(g.sessions().size()))
        .numbers("Spells", 75, g -> (double) g.spells(), g -> String.valueOf(g.spells()))
        .numbers("Faded", 75, g -> (double) g.faded(), g -> String.valueOf(g.faded()))
        .numbers(
            "Middle fade",
            110,
            FadeGroup::medianMinute,
            g -> SentenceText.minutes(known(g.medianMinute())) + " in")
        .numbers(
            "Stays past plain",
            130,
            g -> (double) g.past().stays(),
            g -> String.valueOf(g.past().stays()))
        .numbers(
            "For",
            100,
            g -> g.past().stays() == 0 ? null : (Double) g.past().minutes(),
            g -> SentenceText.minutes(g.past().minutes()))
        .numbers(
            "Gave",
            100,
            g -> g.past().stays() == 0 ? null : (Double) (double) g.past().fish(),
            g -> Say.fish(g.past().fish()));
  }

  private void columnsOfFed() {
    fed.words("Line", 140, r -> Say.capital(r.line()))
        .words("Fed", 90, r -> r.share().feeds() + "×")
        .numbers(
            "Matches",
            80,
            r -> (double) r.share().sessions().size(),
            r -> String.valueOf(r.share().sessions().size()))
        .numbers(
            "Weight an hour",
            230,
            r -> r.share().weight().perHour(),
            r -> weight(r.share().weight()))
        .numbers("Fish an hour", 150, r -> r.share().fish().perHour(), r -> fish(r.share().fish()));
  }

  private String weight(PerHour rate) {
    return Say.roughWeight(known(rate.perHour()), units) + weights(rate.limits());
  }

  private static String fish(PerHour rate) {
    return Say.number(known(rate.perHour())) + fish(rate.limits());
  }

  private static String pool(GroupLearned group) {
    var pool = group.pool();
    return pool == null
        ? "too few matches"
        : Say.number(pool.mean())
            + " ("
            + Say.number(pool.quantile(0.05))
            + "–"
            + Say.number(pool.quantile(0.95))
            + " nine days in ten)";
  }

  /** Takes a season in; each table shows it once it is told to. */
  void take(SeasonShown newShown, Units newUnits) {
    season = newShown.season();
    groups = newShown.season().feed();
    units = newUnits;
  }

  /** While the folder is read nothing is said to be missing. */
  void reading(boolean reading) {
    hours.whenEmpty(reading ? SeasonWords.READING : "Nothing was fished.");
    firstBites.whenEmpty(reading ? SeasonWords.READING : "No feeding is logged.");
    fades.whenEmpty(reading ? SeasonWords.READING : "No spell that a fade could be judged in.");
    fed.whenEmpty(reading ? SeasonWords.READING : "No line that was fed and fished.");
    learned.whenEmpty(reading ? SeasonWords.READING : "Nothing is learned yet.");
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

  void showFed() {
    List<FedRow> rows = new ArrayList<>();
    for (FeedGroup group : groups) {
      FeedGroup.Share fewer = group.fewer();
      FeedGroup.Share more = group.more();
      if (fewer != null) {
        rows.add(new FedRow(group.group(), fewer));
      }
      if (more != null) {
        rows.add(new FedRow(group.group(), more));
      }
    }
    fed.show(rows);
  }
}
