package org.fadeline.export;

import java.io.IOException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import org.fadeline.analysis.season.Season;
import org.fadeline.analysis.season.Season.Cell;
import org.fadeline.analysis.season.Season.FadeGroup;
import org.fadeline.analysis.season.Season.LineHours;
import org.fadeline.analysis.season.Season.PastPlainTally;
import org.fadeline.analysis.season.Season.PerHour;
import org.fadeline.analysis.season.SessionSummary;
import org.fadeline.analysis.season.SessionSummary.LineSummary;
import org.jspecify.annotations.Nullable;

/** The tables of a season, each with the name of its file. */
public final class SeasonTableSet {
  private SeasonTableSet() {}

  /** Returns the tables, weights in grams. */
  public static List<Table> of(Season season) {
    return List.of(
        sessions(season),
        hours(season),
        SeasonKindTables.firstBites(season),
        feed(season),
        SeasonKindTables.fed(season),
        fades(season),
        pastPlain(season),
        SeasonKindTables.standingOut(season),
        SeasonKindTables.learned(season));
  }

  /**
   * Writes every table as CSV.
   *
   * @param folder made where it is missing; files of the same names are replaced
   * @return the files written
   * @throws IOException if a file cannot be written; none of them is then left behind
   */
  public static List<Path> write(Season season, Path folder) throws IOException {
    List<Path> written = new ArrayList<>();
    WholeFolder.into(
        folder,
        part -> {
          for (Table table : of(season)) {
            String name = FileNames.of(table.name(), "csv");
            TableCsv.write(table, part.resolve(name));
            written.add(folder.resolve(name));
          }
        });
    return written;
  }

  /** Returns the date of a session, or null where its record tells none. */
  static @Nullable String day(SessionSummary session) {
    return session.about().dated() ? session.about().date().toString() : null;
  }

  private static Table sessions(Season season) {
    List<List<@Nullable Object>> rows = new ArrayList<>();
    for (SessionSummary session : season.sessions()) {
      SessionSummary.Result result = session.result();
      rows.add(
          Table.row(
              day(session),
              session.about().title(),
              session.about().water(),
              result.fish(),
              result.grams(),
              result.weights().missing(),
              result.weighedGrams(),
              result.netGrams().size(),
              session.fishedMinutes()));
    }
    return new Table(
        "season-sessions",
        List.of(
            "date",
            "title",
            "water",
            "fish",
            "logged g",
            "fish without a weight",
            "at the scales g",
            "nets",
            "fished min"),
        rows);
  }

  private static Table hours(Season season) {
    List<List<@Nullable Object>> rows = new ArrayList<>();
    for (LineHours line : season.lines()) {
      rows.add(hour(line.group(), line.whole()));
      line.hours().forEach(cell -> rows.add(hour(line.group(), cell)));
    }
    return new Table(
        "season-line-by-hour",
        List.of(
            "line",
            "hour of the match",
            "sessions",
            "fished h",
            "fish an hour",
            "fish low",
            "fish high",
            "g an hour",
            "g low",
            "g high"),
        rows);
  }

  private static List<@Nullable Object> hour(String line, Cell cell) {
    PerHour fish = cell.fish();
    PerHour weight = cell.weight();
    return Table.row(
        line,
        cell.hour() == null ? "whole match" : String.valueOf(cell.hour() + 1),
        cell.sessions().size(),
        cell.fishedHours(),
        fish.perHour(),
        fish.low(),
        fish.high(),
        weight.perHour(),
        weight.low(),
        weight.high());
  }

  private static Table feed(Season season) {
    List<List<@Nullable Object>> rows = new ArrayList<>();
    for (SessionSummary session : season.sessions()) {
      for (LineSummary line : session.lines()) {
        if (season.filter().holds(line)) {
          rows.add(
              Table.row(
                  day(session),
                  line.name(),
                  String.join(", ", line.feed().baits()),
                  line.feed().feeds(),
                  line.fishedMinutes(),
                  line.fish(),
                  line.grams()));
        }
      }
    }
    return new Table(
        "season-feed",
        List.of("date", "line", "fed with", "feeds", "fished min", "fish", "g"),
        rows);
  }

  private static Table fades(Season season) {
    List<List<@Nullable Object>> rows = new ArrayList<>();
    for (FadeGroup group : season.fades()) {
      rows.add(
          Table.row(
              group.group(),
              group.sessions().size(),
              group.spells(),
              group.faded(),
              group.medianMinute(),
              group.past().stays(),
              group.past().minutes(),
              group.past().fish(),
              group.past().grams()));
    }
    return new Table(
        "season-fades",
        List.of(
            "line",
            "sessions",
            "spells",
            "faded",
            "middle one min after all in",
            "stays past plain",
            "past plain min",
            "fish past plain",
            "g past plain"),
        rows);
  }

  /** A row a session; empty cells where its fades are not worked out. */
  private static Table pastPlain(Season season) {
    List<List<@Nullable Object>> rows = new ArrayList<>();
    for (SessionSummary session : season.sessions()) {
      PastPlainTally past = session.hasFades() ? season.pastPlain(session) : null;
      rows.add(
          Table.row(
              day(session),
              session.about().title(),
              past == null ? null : past.stays(),
              past == null ? null : past.minutes(),
              past == null ? null : past.fish(),
              past == null ? null : past.grams()));
    }
    return new Table(
        "season-past-plain",
        List.of("date", "title", "stays past plain", "past plain min", "fish", "g"),
        rows);
  }
}
