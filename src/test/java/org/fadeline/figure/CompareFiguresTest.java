package org.fadeline.figure;

import static java.util.Objects.requireNonNull;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNotEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.awt.Graphics2D;
import java.awt.image.BufferedImage;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Set;
import org.fadeline.analysis.ReviewSettings;
import org.fadeline.analysis.Reviewer;
import org.fadeline.analysis.compare.Alignment;
import org.fadeline.analysis.compare.Comparer;
import org.fadeline.analysis.compare.Comparison;
import org.fadeline.analysis.compare.ComparisonSetup;
import org.fadeline.analysis.compare.LinePairing;
import org.fadeline.demo.DemoMatch;
import org.fadeline.demo.DemoWaters;
import org.fadeline.model.Session;
import org.fadeline.model.Units;
import org.junit.jupiter.api.Test;

/** Pictures of two sessions: one axis, one scale, told apart by stroke. */
class CompareFiguresTest {
  private static final FigureStyle STYLE = FigureStyle.of(Theme.LIGHT, Units.LB_OZ_AND_METRES);
  private static final Session A = DemoMatch.generate(DemoWaters.waterA(), DemoWaters.planA(), 7);
  private static final Session B =
      DemoMatch.generate(DemoWaters.waterASecondDay(), DemoWaters.planASecondDay(), 8);

  private static Comparison compare(Session first, Session second, Alignment alignment) {
    return Comparer.compare(
        Reviewer.review(first, ReviewSettings.DEFAULT),
        Reviewer.review(second, ReviewSettings.DEFAULT),
        ComparisonSetup.usual(first, second).withAlignment(alignment),
        Units.LB_OZ_AND_METRES);
  }

  @Test
  void bothTimelinesShareAxisAndScale() {
    Alignment alignment = Alignment.byHand(A, B, 30);
    CompareTimelinesFigure figure = new CompareTimelinesFigure(compare(A, B, alignment), STYLE);
    TimelineView above = figure.first().view();
    TimelineView below = figure.second().view();
    assertEquals(alignment.firstMinutes(above.from()), alignment.secondMinutes(below.from()), 1e-3);
    assertEquals(alignment.firstMinutes(above.to()), alignment.secondMinutes(below.to()), 1e-3);
    // The second is laid 30 min later: neither is cut off.
    assertTrue(above.to() - above.from() >= A.match().lengthMillis() + 30 * 60_000);
    assertEquals(
        figure.first().scaleTop(Knowledge.hindsight()),
        figure.second().scaleTop(Knowledge.hindsight()));
    assertEquals(above.lanes().size(), below.lanes().size());
    assertTrue(figure.description().contains("by hand"), figure.description());
  }

  @Test
  void pairedLinesHaveTheFirstSessionsHueAndOthersOneOfTheirOwn() {
    LinePairing unpaired =
        LinePairing.of(
            A,
            B,
            List.of(
                new LinePairing.Choice(A.lines().get(0).id(), null),
                new LinePairing.Choice(null, B.lines().get(0).id())));
    Comparison comparison =
        Comparer.compare(
            Reviewer.review(A, ReviewSettings.DEFAULT),
            Reviewer.review(B, ReviewSettings.DEFAULT),
            ComparisonSetup.usual(A, B).withPairing(unpaired),
            Units.LB_OZ_AND_METRES);
    PairedHues hues = PairedHues.of(comparison);
    for (int i = 0; i < A.lines().size(); i++) {
      assertEquals(i, hues.first().get(A.lines().get(i).id()), "as it is by itself");
    }
    comparison
        .lines()
        .pairs()
        .forEach(
            p ->
                assertEquals(
                    hues.first().get(p.pair().first().id()),
                    hues.second().get(p.pair().second().id())));
    assertTrue(requireNonNull(hues.second().get(B.lines().get(0).id())) >= A.lines().size());
    assertEquals(B.lines().size(), Set.copyOf(hues.second().values()).size());
    CompareTimelinesFigure figure = new CompareTimelinesFigure(comparison, STYLE);
    figure
        .second()
        .lanes()
        .forEach(lane -> assertEquals(hues.second().get(lane.id()), lane.index, lane.id()));
  }

  @Test
  void wordsStayInsideAndApart() {
    for (Alignment alignment : List.of(Alignment.byClock(A, B), Alignment.byHand(A, B, 45))) {
      Comparison comparison = compare(A, B, alignment);
      for (double scale : new double[] {0.8, 1, 1.4}) {
        FigureStyle style = STYLE.withTextScale(scale);
        for (Figure figure :
            List.of(
                new ComparePegsFigure(comparison, style),
                new CompareFirstBitesFigure(comparison, style),
                new CompareRatesFigure(comparison, style),
                new CompareCatchFigure(comparison, style),
                new CompareTimelinesFigure(comparison, style))) {
          for (double width : new double[] {860, 1280}) {
            RecordingGraphics g = new RecordingGraphics();
            figure.paint(g, width, width / figure.aspect());
            String which = figure.title() + " " + scale + " " + width + ": ";
            assertTrue(g.texts.size() > 5, which);
            assertEquals(which + "[]", which + g.outside(width, width / figure.aspect()));
            assertEquals(which + "[]", which + g.overlaps());
          }
        }
      }
    }
  }

  @Test
  void onALowSlideTheNamesOfTheLanesStayApart() {
    Comparison comparison = compare(A, B, Alignment.byAllIn(A, B));
    for (double scale : new double[] {1.6, 2, 2.6}) {
      RecordingGraphics g = new RecordingGraphics();
      new CompareTimelinesFigure(comparison, STYLE.withTextScale(scale)).paint(g, 1240, 450);
      assertEquals(List.of(), g.overlaps(), "text at " + scale);
      List<String> names = g.texts.stream().map(RecordingGraphics.Written::text).toList();
      assertTrue(
          names.containsAll(A.lines().stream().map(l -> l.name()).toList()), () -> "" + names);
    }
  }

  @Test
  void theMinutesOfTwoCatchesSayFromWhereTheyCount() {
    for (var laid :
        Map.of(
                Alignment.byAllIn(A, B), "min since all in",
                Alignment.byHand(A, B, 45), "min since the first's all in")
            .entrySet()) {
      RecordingGraphics g = new RecordingGraphics();
      new CompareCatchFigure(compare(A, B, laid.getKey()), STYLE).paint(g, 1280, 720);
      assertTrue(
          g.texts.stream().anyMatch(text -> text.toString().contains(laid.getValue())),
          laid.getValue());
    }
  }

  @Test
  void pegsHaveOneScaleAndSayWhichIsWhich() {
    ComparePegsFigure figure = new ComparePegsFigure(compare(A, B, Alignment.byAllIn(A, B)), STYLE);
    assertTrue(figure.description().startsWith("Left, first match: "), figure.description());
    assertTrue(figure.description().contains("Right, second match"), figure.description());
    PegLayout wide = new PegLayout(A, STYLE, PegLook.ALONE, 400, 400);
    PegLook half = PegLook.ALONE.withMostPixelsPerMetre(wide.pixelsPerMetre() / 2);
    assertEquals(
        wide.pixelsPerMetre() / 2, new PegLayout(A, STYLE, half, 400, 400).pixelsPerMetre(), 1e-9);
  }

  @Test
  void firstBitesTellEveryPairAndTheTest() {
    Comparison comparison = compare(A, B, Alignment.byAllIn(A, B));
    CompareFirstBitesFigure figure = new CompareFirstBitesFigure(comparison, STYLE);
    comparison.lines().pairs().stream()
        .filter(p -> !p.first().line().firstBite().rows().isEmpty())
        .forEach(
            p ->
                assertTrue(
                    figure.description().contains(FigureText.capital(p.pair().name())),
                    figure.description()));
    Double p = comparison.lines().firstBites().p();
    assertTrue(p != null, "the fixture lets the pairs be tested");
    assertTrue(
        figure.description().contains(String.format(Locale.ROOT, "%.3f", p))
            || figure.description().contains("under 0.001"),
        figure.description());
  }

  /** A session against itself has no difference: below the curves only the zero rule is drawn. */
  @Test
  void theDifferenceIsDrawnWhereThereIsOne() {
    BufferedImage same =
        draw(new CompareCatchFigure(compare(A, A, Alignment.byAllIn(A, A)), STYLE));
    BufferedImage apart =
        draw(new CompareCatchFigure(compare(A, B, Alignment.byAllIn(A, B)), STYLE));
    assertEquals(0, greyBlocks(same));
    assertTrue(greyBlocks(apart) > 200, "pixels of difference: " + greyBlocks(apart));
  }

  /** Counts pixels of the lower half that stand in a patch of one colour that is not the ground. */
  private static int greyBlocks(BufferedImage image) {
    int ground = image.getRGB(2, image.getHeight() / 2);
    int count = 0;
    for (int y = image.getHeight() * 7 / 10; y < image.getHeight() * 95 / 100; y++) {
      for (int x = 60; x < image.getWidth() - 24; x++) {
        int colour = image.getRGB(x, y);
        boolean patch = true;
        for (int d = 1; d <= 4 && patch; d++) {
          patch = image.getRGB(x + d, y) == colour && image.getRGB(x, y - d) == colour;
        }
        count += patch && colour != ground ? 1 : 0;
      }
    }
    return count;
  }

  @Test
  void everyThemeAndSizeIsDrawn() {
    Comparison comparison = compare(A, B, Alignment.byClock(A, B));
    for (Theme theme : Theme.values()) {
      for (double scale : new double[] {0.5, 1, 3}) {
        FigureStyle style = new FigureStyle(theme, STYLE.units(), scale);
        BufferedImage image =
            draw(FigureSheet.of(new CompareCatchFigure(comparison, style), comparison));
        assertNotEquals(image.getRGB(1, 1), darkest(image, theme.isDark()), theme + " " + scale);
        draw(FigureSheet.of(new CompareTimelinesFigure(comparison, style), comparison));
      }
    }
    String unnamed = FigureSheet.footOf(comparison, STYLE, false).toString();
    assertTrue(!unnamed.contains(A.occasion().title()), unnamed);
  }

  private static int darkest(BufferedImage image, boolean lightest) {
    int found = image.getRGB(1, 1);
    for (int y = 0; y < image.getHeight(); y++) {
      for (int x = 0; x < image.getWidth(); x++) {
        int colour = image.getRGB(x, y);
        int more = (colour & 0xff) - (found & 0xff);
        found = (lightest ? more > 0 : more < 0) ? colour : found;
      }
    }
    return found;
  }

  private static BufferedImage draw(Figure figure) {
    int width = 640;
    BufferedImage image =
        new BufferedImage(width, (int) (width / figure.aspect()), BufferedImage.TYPE_INT_RGB);
    Graphics2D g = image.createGraphics();
    figure.paint(g, image.getWidth(), image.getHeight());
    g.dispose();
    return image;
  }
}
