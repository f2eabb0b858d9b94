package org.fadeline.figure;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNull;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.awt.Graphics2D;
import java.awt.image.BufferedImage;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import org.fadeline.analysis.ReviewSettings;
import org.fadeline.analysis.Reviewer;
import org.fadeline.analysis.season.Season;
import org.fadeline.analysis.season.SeasonBuilder;
import org.fadeline.analysis.season.SeasonFilter;
import org.fadeline.analysis.season.SessionSummaries;
import org.fadeline.analysis.season.SessionSummary;
import org.fadeline.demo.DemoMatch;
import org.fadeline.demo.DemoWaters;
import org.fadeline.export.SeasonFigureSet;
import org.fadeline.model.Units;
import org.junit.jupiter.api.Test;

/** Pictures of a season: nothing overlaps at any size, and cells can be found again. */
class SeasonFiguresTest {
  private static final FigureStyle STYLE = FigureStyle.of(Theme.LIGHT, Units.LB_OZ_AND_METRES);
  private static final Season SEASON = season(6);

  private static Season season(int sessions) {
    List<SessionSummary> all = new ArrayList<>();
    for (int seed = 1; seed <= sessions; seed++) {
      all.add(
          SessionSummaries.whole(
              Reviewer.review(
                  seed % 2 == 0
                      ? DemoMatch.generate(DemoWaters.waterA(), DemoWaters.planA(), seed)
                      : DemoMatch.generate(DemoWaters.waterB(), DemoWaters.planB(), seed),
                  ReviewSettings.DEFAULT)));
    }
    return SeasonBuilder.build(all, SeasonFilter.ALL);
  }

  @Test
  void noTextLeavesThePictureOrLiesOnAnother() {
    List<Season> seasons =
        List.of(SEASON, season(1), SeasonBuilder.build(List.of(), SeasonFilter.ALL));
    for (Season season : seasons) {
      for (double scale : new double[] {0.5, 1, 1.5}) {
        for (Figure figure : SeasonFigureSet.of(season, STYLE.withTextScale(scale)).values()) {
          for (double width : new double[] {560, 900, 1400}) {
            RecordingGraphics drawn = new RecordingGraphics();
            figure.paint(drawn, width, width / figure.aspect());
            String what = figure.title() + " " + scale + " " + width;
            assertEquals(List.of(), drawn.overlaps(), what);
            assertEquals(List.of(), drawn.outside(width, width / figure.aspect()), what);
          }
          assertTrue(figure.description().length() > 20, figure.title());
        }
      }
    }
  }

  /** A line fed at the start and first fished hours later begins beyond the axis. */
  @Test
  void aCurveThatBeginsBeyondTheAxisIsToldByItsNameAndNotDrawnOverTheNames() {
    List<SessionSummary> all = new ArrayList<>();
    for (int seed = 1; seed <= 6; seed++) {
      all.add(
          SessionSummaries.quick(
              DemoMatch.generate(DemoWaters.waterC(), DemoWaters.planC(), seed)));
    }
    Season season = SeasonBuilder.build(all, SeasonFilter.ALL);
    assertTrue(
        season.firstBites().stream()
            .anyMatch(g -> g.curve() != null && g.curve().fromMinute() > 100));
    BufferedImage picture = new BufferedImage(900, 400, BufferedImage.TYPE_INT_RGB);
    Graphics2D g = picture.createGraphics();
    new SeasonFirstBiteFigure(season, Season.By.LINE, STYLE).paint(g, 900, 400);
    g.dispose();
    for (int y = 0; y < 400; y++) {
      assertEquals(picture.getRGB(899, 0), picture.getRGB(898, y), "row " + y);
    }
    RecordingGraphics drawn = new RecordingGraphics();
    new SeasonFirstBiteFigure(season, Season.By.LINE, STYLE).paint(drawn, 900, 400);
    assertEquals(List.of(), drawn.overlaps());
  }

  /** A low picture shows the rows that it has room for and says how many it leaves out. */
  @Test
  void rowsThatHaveNoRoomAreToldAndNotDrawnOverEachOther() {
    assertLeavesOut(
        new SeasonHoursFigure(SEASON, STYLE),
        SEASON.lines().stream().map(Season.LineHours::group).toList());
    assertLeavesOut(
        new SeasonFadesFigure(SEASON, STYLE),
        SEASON.fades().stream().map(Season.FadeGroup::group).toList());
  }

  private static void assertLeavesOut(Figure figure, List<String> kinds) {
    RecordingGraphics drawn = new RecordingGraphics();
    figure.paint(drawn, 700, 100);
    assertEquals(List.of(), drawn.overlaps(), figure.title());
    int named = (int) kinds.stream().filter(k -> says(drawn, FigureText.capital(k))).count();
    assertTrue(named >= 2 && named < kinds.size(), named + " of " + kinds.size());
    assertTrue(says(drawn, kinds.size() - named + " more"), figure.title());
  }

  private static boolean says(RecordingGraphics drawn, String start) {
    return drawn.texts.stream().anyMatch(t -> t.text().startsWith(start));
  }

  @Test
  void everyCellIsFoundAgainUnderThePointer() {
    SeasonHoursFigure figure = new SeasonHoursFigure(SEASON, STYLE);
    Set<Season.Cell> found = new HashSet<>();
    for (int x = 0; x < 900; x += 5) {
      for (int y = 0; y < 450; y += 5) {
        Season.Cell cell = figure.at(x, y, 900, 450);
        if (cell != null) {
          found.add(cell);
        }
      }
    }
    Set<Season.Cell> all = new HashSet<>();
    SEASON.lines().forEach(l -> all.addAll(l.hours()));
    SEASON.lines().forEach(l -> all.add(l.whole()));
    assertEquals(all, found);
    assertNull(figure.at(895, 445, 900, 450), "the margin is no cell");
  }
}
