package org.fadeline.index;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.attribute.FileTime;
import java.time.Instant;
import java.time.LocalDate;
import java.time.ZoneId;
import java.util.List;
import java.util.Set;
import org.fadeline.analysis.ReviewSettings;
import org.fadeline.analysis.season.Season;
import org.fadeline.analysis.season.SeasonBuilder;
import org.fadeline.analysis.season.SeasonFilter;
import org.fadeline.analysis.season.SessionSummary;
import org.fadeline.figure.FigureStyle;
import org.fadeline.figure.SeasonPastPlainFigure;
import org.fadeline.figure.SeasonResultsFigure;
import org.fadeline.figure.Theme;
import org.fadeline.io.ReadOptions;
import org.fadeline.model.Units;
import org.fadeline.report.SeasonText;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** A record that tells no date belongs to no day of a season, and counts in all the rest. */
class UndatedSessionTest {
  private static final String TABLE =
      """
      time,event,line,weight_g
      10:00,all-in,,
      10:05,cast,short,
      10:10,landed,short,900
      10:40,landed,short,1200
      11:00,all-out,,
      """;

  @TempDir private Path folder = Path.of("");

  private SeasonIndex index(ReadOptions options) {
    return new SeasonIndex(folder, options, ReviewSettings.DEFAULT);
  }

  private void write(String name, String text) throws IOException {
    Files.writeString(folder.resolve(name), text);
  }

  private static Season season(SeasonFolder found, SeasonFilter filter) {
    return SeasonBuilder.build(found.summaries(), filter);
  }

  private SeasonFolder read() throws IOException {
    return index(ReadOptions.DEFAULT).read(SeasonIndex.Depth.WITH_FADES, SeasonIndex.Watcher.NONE);
  }

  @Test
  void isUndatedWhereNeitherRowsNorNameNorOptionsTellADate() throws IOException {
    write("friday.csv", TABLE);
    assertFalse(read().summaries().get(0).about().dated());
    SeasonIndex told = index(ReadOptions.of(LocalDate.of(2026, 5, 8), ZoneId.of("Europe/London")));
    SeasonFolder dated = told.read(SeasonIndex.Depth.WITHOUT_FADES, SeasonIndex.Watcher.NONE);
    assertTrue(dated.summaries().get(0).about().dated());
    Files.move(folder.resolve("friday.csv"), folder.resolve("2026-05-08 friday.csv"));
    SessionSummary.About named = read().summaries().get(0).about();
    assertTrue(named.dated());
    assertEquals(LocalDate.of(2026, 5, 8), named.date());
  }

  @Test
  void isSaidToBeUndatedAndStandsInAllButWhatGoesOverTime() throws IOException {
    write("a.csv", TABLE);
    write("2026-05-08 b.csv", TABLE.replace("900", "901"));
    SeasonFolder found = read();
    Season season = season(found, SeasonFilter.ALL);
    assertEquals(2, season.sessions().size());
    assertTrue(season.sessions().get(0).about().dated());
    assertEquals(List.of(season.sessions().get(0)), season.dated());
    assertEquals(List.of(0, 1), season.lines().get(0).whole().sessions());
    assertEquals(2, season.fades().get(0).sessions().size());
    FigureStyle style = FigureStyle.of(Theme.LIGHT, Units.LB_OZ_AND_METRES);
    String results = new SeasonResultsFigure(season, style).description();
    assertTrue(results.contains("8 May 2026: 1 match"), results);
    assertTrue(results.endsWith("Undated, not shown: 1 match."), results);
    String stayed = new SeasonPastPlainFigure(season, style).description();
    assertTrue(stayed.endsWith("Undated, not shown: 1 match."), stayed);
    String text = SeasonText.toText(season, Units.LB_OZ_AND_METRES);
    assertTrue(text.contains("undated"), text);
  }

  @Test
  void belongsToNoMonth() throws IOException {
    write("a.csv", TABLE);
    int month = read().summaries().get(0).about().date().getMonthValue();
    SeasonFilter filter = new SeasonFilter(Set.of(), Set.of(month), Set.of(), null, null);
    assertEquals(List.of(), season(read(), filter).sessions());
  }

  @Test
  void isOneSessionHoweverOftenItsFileWasCopied() throws IOException {
    write("a.csv", TABLE);
    write("copy.csv", TABLE);
    Files.setLastModifiedTime(
        folder.resolve("copy.csv"), FileTime.from(Instant.parse("2020-01-02T10:00:00Z")));
    SeasonFolder found = read();
    assertEquals(1, found.entries().size());
    assertEquals(1, found.copies().size());
  }

  @Test
  void staysUndatedInTheKeptFile() throws IOException {
    write("a.csv", TABLE);
    SeasonIndex first = index(ReadOptions.DEFAULT);
    first.read(SeasonIndex.Depth.WITH_FADES, SeasonIndex.Watcher.NONE);
    Path kept = folder.resolve(SeasonIndex.KEPT);
    first.save(kept);
    SeasonIndex again = index(ReadOptions.DEFAULT);
    again.load(kept);
    assertEquals(first.soFar(), again.soFar());
    assertFalse(again.soFar().summaries().get(0).about().dated());
  }
}
