package org.fadeline.figure;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.awt.Graphics2D;
import java.awt.Rectangle;
import java.awt.geom.Point2D;
import java.awt.image.BufferedImage;
import java.time.LocalDate;
import java.time.ZoneId;
import java.util.ArrayList;
import java.util.List;
import org.fadeline.analysis.Review;
import org.fadeline.analysis.ReviewSettings;
import org.fadeline.analysis.Reviewer;
import org.fadeline.analysis.StayOrGo;
import org.fadeline.model.Document;
import org.fadeline.model.Line;
import org.fadeline.model.Match;
import org.fadeline.model.MatchRules;
import org.fadeline.model.Occasion;
import org.fadeline.model.Outcome;
import org.fadeline.model.Peg;
import org.fadeline.model.Session;
import org.fadeline.model.Units;
import org.fadeline.model.Venue;
import org.fadeline.replay.ReplayFrame;
import org.junit.jupiter.api.Test;

class FiguresTest {
  private final Review review = Fixtures.carpMatch();
  private final FigureStyle style = FigureStyle.of(Theme.LIGHT, Units.LB_OZ_AND_METRES);

  private static List<Figure> all(Review review, FigureStyle style) {
    List<Figure> figures = new ArrayList<>();
    long end = review.session().match().allOut();
    figures.add(new TimelineFigure(review, style));
    figures.add(new FirstBiteFigure(review, style));
    figures.add(new WeightFigure(review, style, Knowledge.hindsight()));
    figures.add(new QuarterHourFigure(review, style));
    figures.add(new CatchWeightsFigure(review, style));
    figures.add(new MatchPageFigure(review, style));
    for (int hour = 0; hour <= 5; hour++) {
      figures.add(
          new PegFigure(
              review.session(), ReplayFrame.at(review.session(), end - hour * 3_600_000L), style));
    }
    for (var line : review.lines()) {
      figures.add(new RateFigure(review, line.line().id(), style, TimelineView.Measure.WEIGHT));
      figures.add(new FeedResponseFigure(review, line.line().id(), style));
    }
    List<Figure> sheets = new ArrayList<>();
    figures.forEach(f -> sheets.add(FigureSheet.of(f, review)));
    figures.addAll(sheets);
    return figures;
  }

  @Test
  void wordsStayInsideAndApart() {
    for (Review each : List.of(review, Fixtures.springMatch(), Fixtures.winterMatch())) {
      for (Figure figure : all(each, style)) {
        double width = figure.aspect() < 1 ? 620 : 900;
        RecordingGraphics g = new RecordingGraphics();
        figure.paint(g, width, width / figure.aspect());
        String which = figure.getClass().getSimpleName() + " " + figure.title() + ": ";
        assertFalse(g.texts.isEmpty(), which);
        assertEquals(which + "[]", which + g.outside(width, width / figure.aspect()));
        assertEquals(which + "[]", which + g.overlaps());
      }
    }
  }

  @Test
  void theRateOfALineKeepsItsWordsInsideANarrowSlide() {
    FigureStyle slide =
        new FigureStyle(Theme.LIGHT, Units.LB_OZ_AND_METRES, SlideFigure.figureTextScale());
    for (var line : review.lines()) {
      RecordingGraphics g = new RecordingGraphics();
      new RateFigure(review, line.line().id(), slide, TimelineView.Measure.FISH).paint(g, 684, 420);
      assertEquals(List.of(), g.outside(684, 420), line.line().name());
    }
  }

  @Test
  void theA5PageOfAMatchHasEverySpellAndItsWholeFoot() {
    FigureStyle paper = FigureStyle.of(Theme.PRINT, Units.LB_OZ_AND_METRES);
    double width = 148 / 25.4 * 72;
    double height = 210 / 25.4 * 72;
    for (Review each : List.of(review, Fixtures.springMatch(), Fixtures.winterMatch())) {
      RecordingGraphics g = new RecordingGraphics();
      new MatchPageFigure(each, paper).paint(g, width, height);
      List<String> texts = g.texts.stream().map(RecordingGraphics.Written::text).toList();
      FigureText words = new FigureText(each.session(), paper.units());
      for (StayOrGo stay : each.stays()) {
        var span = stay.spell().span();
        String times = words.clock(span.from()) + "–" + words.clock(span.to());
        assertTrue(texts.contains(times), times + " in " + texts);
      }
      assertEquals(List.of(), texts.stream().filter(t -> t.endsWith("…")).toList());
      assertEquals(List.of(), g.outside(width, height));
      assertEquals(List.of(), g.overlaps());
    }
  }

  @Test
  void nothingIsDrawnOutsideThePicture() {
    // On a slide or a page a figure is not clipped: what leaves its box lies on the title.
    int margin = 150;
    for (Review each : List.of(review, Fixtures.springMatch(), Fixtures.winterMatch())) {
      for (Figure figure : all(each, style)) {
        int width = 840;
        int height = figure instanceof PegFigure ? 400 : (int) (width / figure.aspect());
        BufferedImage image =
            new BufferedImage(width + 2 * margin, height + 2 * margin, BufferedImage.TYPE_INT_ARGB);
        Graphics2D g = image.createGraphics();
        g.translate(margin, margin);
        figure.paint(g, width, height);
        g.dispose();
        String which = figure.getClass().getSimpleName() + " " + figure.title();
        assertEquals(0, inked(image, new Rectangle(margin, margin, width, height)), which);
      }
    }
  }

  /** Counts the dots drawn outside a box, but for the half line along its edge. */
  private static int inked(BufferedImage image, Rectangle box) {
    box.grow(2, 2);
    int dots = 0;
    for (int y = 0; y < image.getHeight(); y++) {
      for (int x = 0; x < image.getWidth(); x++) {
        if (!box.contains(x, y) && image.getRGB(x, y) >>> 24 != 0) {
          dots++;
        }
      }
    }
    return dots;
  }

  @Test
  void everyFigureDescribesItself() {
    for (Figure figure : all(review, style)) {
      assertFalse(figure.title().isBlank());
      assertTrue(figure.description().length() > 30, figure.description());
      assertFalse(figure.description().contains("null"), figure.description());
      assertFalse(figure.description().contains("NaN"), figure.description());
    }
  }

  @Test
  void aRecordWithNothingInItIsDrawnToo() {
    Session empty = session(List.of(Line.named("a", "short"), Line.named("b", "edge")));
    Review nothing = Reviewer.review(empty, ReviewSettings.DEFAULT);
    for (Figure figure : all(nothing, style)) {
      RecordingGraphics g = new RecordingGraphics();
      figure.paint(g, 600, 400);
      assertEquals(List.of(), g.outside(600, 400), figure.getClass().getSimpleName());
    }
    Review none = Reviewer.review(session(List.of()), ReviewSettings.DEFAULT);
    new TimelineFigure(none, style).paint(new RecordingGraphics(), 600, 400);
    new CatchWeightsFigure(none, style).paint(new RecordingGraphics(), 600, 400);
  }

  private static Session session(List<Line> lines) {
    return new Session(
        Document.of("d", 0),
        new Occasion(
            "Empty",
            LocalDate.of(2026, 5, 2),
            ZoneId.of("Europe/London"),
            Venue.UNKNOWN,
            Peg.UNKNOWN,
            List.of()),
        new Match(1_777_712_400_000L, 1_777_730_400_000L, MatchRules.UNSTATED),
        lines,
        List.of(),
        Outcome.UNKNOWN);
  }

  @Test
  void thePegIsToScale() {
    PegLayout layout =
        new PegFigure(
                review.session(),
                ReplayFrame.at(review.session(), review.session().match().allOut()),
                style)
            .layout(420, 460);
    Point2D five = layout.pointOf(5, 0);
    Point2D ten = layout.pointOf(10, 0);
    assertEquals(5 * layout.pixelsPerMetre(), five.distance(ten), 1e-9);
    for (double[] place : new double[][] {{5, 0}, {13, -40}, {27, 25}}) {
      Point2D at = layout.pointOf(place[0], place[1]);
      assertEquals(place[0], layout.distanceAt(at.getX(), at.getY()), 1e-9);
      assertEquals(place[1], layout.bearingAt(at.getX(), at.getY()), 1e-9);
    }
    Line line = review.session().lines().get(1);
    Point2D at = layout.pointOf(line).orElseThrow();
    ReplayFrame frame = ReplayFrame.at(review.session(), review.session().match().allOut());
    assertEquals(line.id(), layout.at(at.getX() + 3, at.getY(), frame).orElseThrow().id());
    assertTrue(layout.at(2, 2, frame).isEmpty());
  }

  /** However small the panel, and however far a feature lies, every line keeps its letter. */
  @Test
  void everyLineKeepsItsLetterOnASmallPegDiagram() {
    Session farIsland = withFeature(new Peg.Feature("far bank", 85, 4, 30.0));
    PegFigure figure =
        new PegFigure(
            farIsland, ReplayFrame.at(farIsland, farIsland.match().allIn() + 9_000_000), style);
    for (int[] size : new int[][] {{270, 230}, {300, 250}, {420, 300}, {620, 500}}) {
      RecordingGraphics g = new RecordingGraphics();
      figure.paint(g, size[0], size[1]);
      List<String> texts = g.texts.stream().map(RecordingGraphics.Written::text).toList();
      for (String letter : List.of("A", "B", "C", "D", "E")) {
        assertTrue(texts.contains(letter), letter + " of " + texts + " at " + size[0]);
      }
      assertEquals(List.of(), g.overlaps());
      PegLayout layout = figure.layout(size[0], size[1]);
      assertTrue(27 * layout.pixelsPerMetre() > size[1] * 0.4, "the lines fill the picture");
    }
  }

  private Session withFeature(Peg.Feature feature) {
    Session session = review.session();
    var was = session.occasion();
    Peg peg =
        new Peg(
            was.peg().number(),
            was.peg().facingDegrees(),
            was.peg().bankHeightM(),
            List.of(feature));
    return new Session(
        session.document(),
        new Occasion(was.title(), was.date(), was.zone(), was.venue(), peg, was.weather()),
        session.match(),
        session.lines(),
        session.events(),
        session.outcome());
  }

  /** A line whose place was not logged is named in words and not put on the water. */
  @Test
  void nothingIsInventedOnTheWater() {
    Session session = session(List.of(Line.named("a", "mystery line")));
    RecordingGraphics g = new RecordingGraphics();
    PegFigure peg = new PegFigure(session, ReplayFrame.at(session, session.match().allIn()), style);
    peg.paint(g, 420, 460);
    RecordingGraphics.Written written =
        g.texts.stream().filter(t -> t.text().contains("mystery")).findFirst().orElseThrow();
    assertTrue(written.text().startsWith("place not logged"));
    assertTrue(written.box().getY() > peg.layout(420, 460).bankTop());
    assertTrue(peg.layout(420, 460).pointOf(session.lines().get(0)).isEmpty());
  }

  @Test
  void aSheetSaysWhatItRestsOn() {
    RecordingGraphics g = new RecordingGraphics();
    FigureSheet.of(new QuarterHourFigure(review, style), review).paint(g, 900, 500);
    String all = String.join("|", g.texts.stream().map(RecordingGraphics.Written::text).toList());
    for (String part :
        List.of(
            "Catch by quarter-hour",
            "rests on",
            "window 30 min",
            "pounds and ounces",
            "Fadeline",
            review.session().occasion().title())) {
      assertTrue(all.contains(part), part + " in " + all);
    }
    assertFalse(
        FigureSheet.footOf(review, style, false)
            .toString()
            .contains(review.session().occasion().title()));
  }
}
