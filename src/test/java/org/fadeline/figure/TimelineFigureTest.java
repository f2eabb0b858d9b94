package org.fadeline.figure;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNotEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.awt.Graphics2D;
import java.awt.geom.Rectangle2D;
import java.awt.image.BufferedImage;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import org.fadeline.analysis.Effort;
import org.fadeline.analysis.Review;
import org.fadeline.analysis.ReviewSettings;
import org.fadeline.analysis.Reviewer;
import org.fadeline.analysis.Spell;
import org.fadeline.demo.AsPeopleLog;
import org.fadeline.demo.LargeSessions;
import org.fadeline.model.EventKind;
import org.fadeline.model.Session;
import org.fadeline.model.SessionEvent;
import org.fadeline.model.Units;
import org.junit.jupiter.api.Test;

class TimelineFigureTest {
  private static final int WIDTH = 1000;
  private static final int HEIGHT = 700;

  private final Review review = Fixtures.carpMatch();
  private final FigureStyle style = FigureStyle.of(Theme.LIGHT, Units.LB_OZ_AND_METRES);
  private final TimelineFigure figure = new TimelineFigure(review, style);
  private final long allIn = review.session().match().allIn();

  private static int[] pixels(Figure figure) {
    BufferedImage image = Gallery.draw(figure, WIDTH, HEIGHT, 1);
    return image.getRGB(0, 0, WIDTH, HEIGHT, null, 0, WIDTH);
  }

  private static Session upTo(Session session, long instant) {
    return session.withEvents(session.events().stream().filter(e -> e.at() <= instant).toList());
  }

  /** Nothing that came later changes a pixel of what is shown as known then. */
  @Test
  void asKnownThenLooksTheSameWithTheFutureCutOff() {
    assertNothingAhead(review.session(), 0, 7, 24, 41, 77, 103, 111, 140, 171, 200, 251, 299);
    assertNothingAhead(AsPeopleLog.movesAndFish(review.session()), 7, 41, 77, 103, 171, 251);
  }

  /**
   * With moves missing, time between two lines turns out to be neither's only at the next sign. No
   * fade is placed in such time (methods, section 4), so that the comparison is of the base.
   */
  @Test
  void timeThatTurnsOutToBelongToNoLineIsNotKnownToBefore() {
    Session fishOnly = AsPeopleLog.fishOnly(review.session());
    TimelineFigure whole = new TimelineFigure(reviewed(fishOnly), style);
    List<Effort.Unassigned> gaps = Effort.of(fishOnly).unassigned();
    assertTrue(gaps.stream().anyMatch(g -> g.span().millis() > 240_000), "a gap to look into");
    for (Effort.Unassigned gap : gaps) {
      for (double share : new double[] {0.1, 0.8, 1.2}) {
        long at = gap.span().from() + Math.round(share * gap.span().millis());
        TimelineFigure cut = new TimelineFigure(reviewed(upTo(fishOnly, at)), style);
        int edge = (int) Math.floor(whole.layout(WIDTH, HEIGHT).xOf(at)) - 1;
        assertTrue(Arrays.equals(base(cut, at, edge), base(whole, at, edge)), gap + " " + share);
        Knowledge then = Knowledge.asKnownAt(at);
        assertEquals(cut.figures(then), whole.figures(then));
      }
    }
  }

  private static Review reviewed(Session session) {
    return Reviewer.review(session, ReviewSettings.DEFAULT);
  }

  private void assertNothingAhead(Session session, double... minutes) {
    TimelineFigure whole = new TimelineFigure(reviewed(session), style);
    for (double minute : minutes) {
      long at = allIn + Math.round(minute * 60_000) + 13_000;
      int[] then =
          pixels(
              new TimelineFigure(reviewed(upTo(session, at)), style).with(Knowledge.asKnownAt(at)));
      int[] known = pixels(whole.with(Knowledge.asKnownAt(at)));
      int different = 0;
      int firstAt = -1;
      for (int i = 0; i < then.length; i++) {
        if (then[i] != known[i]) {
          different++;
          firstAt = firstAt < 0 ? i : firstAt;
        }
      }
      assertEquals(
          0, different, "minute " + minute + " at " + firstAt % WIDTH + "," + firstAt / WIDTH);
    }
  }

  /** The base layer left of a covered future is the same with the future cut off. */
  @Test
  void theBaseNeverRunsAhead() {
    for (int minute : new int[] {33, 77, 140, 251}) {
      long at = allIn + minute * 60_000L;
      Review cut = reviewed(upTo(review.session(), at));
      TimelineLayout full = figure.layout(WIDTH, HEIGHT);
      int edge = (int) Math.floor(full.xOf(at)) - 1;
      assertTrue(
          Arrays.equals(base(figure, at, edge), base(new TimelineFigure(cut, style), at, edge)),
          "minute " + minute);
    }
  }

  private static int[] base(TimelineFigure figure, long at, int edge) {
    BufferedImage image = new BufferedImage(WIDTH, HEIGHT, BufferedImage.TYPE_INT_RGB);
    Graphics2D g = image.createGraphics();
    figure.layout(WIDTH, HEIGHT).paintBase(g, Knowledge.asKnownAt(at));
    g.dispose();
    // Below the clock, left of the playhead.
    return image.getRGB(0, 30, edge, HEIGHT - 30, null, 0, edge);
  }

  @Test
  void hindsightShowsMore() {
    assertNotEquals(
        Arrays.hashCode(pixels(figure)),
        Arrays.hashCode(pixels(figure.with(Knowledge.asKnownAt(allIn + 100 * 60_000L)))));
  }

  @Test
  void everyEventCanBePickedAndNoneBeforeItHappens() {
    TimelineLayout layout = figure.layout(6000, HEIGHT);
    Set<String> found = new HashSet<>();
    for (TimelineLayout.Lane lane : layout.lanes()) {
      double[] rows = {
        lane.plot().getY() + 5,
        lane.stringY() - 4,
        lane.stringY(),
        lane.stringY() + 5,
        lane.plot().getMaxY() - 5,
      };
      for (double y : rows) {
        for (double x = lane.plot().getX(); x <= lane.plot().getMaxX() + 8; x += 0.5) {
          layout
              .at(Math.min(x, lane.plot().getMaxX() - 0.01), y, Knowledge.hindsight())
              .filter(h -> h.kind() == Hit.Kind.EVENT)
              .ifPresent(h -> found.add(h.id()));
          layout
              .at(x, y, Knowledge.asKnownAt(allIn + 60 * 60_000L))
              .filter(h -> h.kind() == Hit.Kind.EVENT)
              .ifPresent(h -> assertTrue(h.at() <= allIn + 60 * 60_000L, h::toString));
        }
      }
    }
    List<String> missed = new ArrayList<>();
    for (SessionEvent event : review.session().events()) {
      boolean water = event.kind().group() == EventKind.Group.WATER;
      if (water && event.at() < review.session().match().allOut() && !found.contains(event.id())) {
        missed.add(event.kind() + " " + event.id());
      }
    }
    // Events of one instant lie under each other: the pick goes to the fish.
    assertTrue(missed.size() <= review.session().events().size() / 50, missed::toString);
  }

  @Test
  void aLandedFishTellsItsWeight() {
    TimelineLayout layout = figure.layout(WIDTH, HEIGHT);
    SessionEvent fish =
        review.session().events().stream()
            .filter(e -> e.kind() == EventKind.LANDED)
            .findFirst()
            .orElseThrow();
    TimelineLayout.Lane lane =
        layout.lanes().stream()
            .filter(l -> l.lineId().equals(fish.lineId()))
            .findFirst()
            .orElseThrow();
    Hit hit =
        layout.at(layout.xOf(fish.at()) + 3, lane.stringY(), Knowledge.hindsight()).orElseThrow();
    assertEquals(fish.id(), hit.id());
    assertTrue(hit.rows().stream().anyMatch(r -> r.contains("lb")), hit::toString);
  }

  @Test
  void instantAndXAreEachOthersInverse() {
    TimelineFigure zoomed =
        figure.with(figure.view().withRange(allIn + 60_000, allIn + 9 * 60_000));
    for (TimelineFigure each : List.of(figure, zoomed)) {
      TimelineLayout layout = each.layout(WIDTH, HEIGHT);
      for (double x = layout.plotArea().getX(); x < layout.plotArea().getMaxX(); x += 7) {
        assertEquals(x, layout.xOf(layout.instantAt(x)), 0.01);
      }
    }
  }

  @Test
  void wordsStayInsideAndApart() {
    for (Figure each : variants()) {
      for (int[] size :
          new int[][] {{1280, 800}, {1100, 720}, {800, 500}, {1460, 810}, {1600, 1000}}) {
        RecordingGraphics g = new RecordingGraphics();
        each.paint(g, size[0], size[1]);
        assertEquals(List.of(), g.outside(size[0], size[1]));
        assertEquals(List.of(), g.overlaps());
      }
    }
  }

  private List<Figure> variants() {
    return List.of(
        figure,
        figure.with(figure.view().withKey(true)),
        figure.with(figure.view().withMeasure(TimelineView.Measure.WEIGHT).withKey(true)),
        figure.with(Knowledge.asKnownAt(allIn + 130 * 60_000L)),
        figure.with(style.withTextScale(1.5)),
        figure.with(style.withTextScale(2.18)),
        figure.with(figure.view().withRange(allIn + 80 * 60_000L, allIn + 110 * 60_000L)));
  }

  /** The words on a fade never cross another spell of the line. */
  @Test
  void wordsOnAFadeKeepClearOfOtherSpells() {
    for (int width : new int[] {500, 800, 1100, 1600}) {
      RecordingGraphics g = new RecordingGraphics();
      TimelineLayout layout = figure.layout(width, HEIGHT);
      layout.paintFades(g, Knowledge.hindsight());
      assertTrue(!g.texts.isEmpty(), "a fade is told in words at " + width);
      for (RecordingGraphics.Written written : g.texts) {
        TimelineLayout.Lane lane = layout.laneAt(written.box().getCenterY()).orElseThrow();
        long over = 0;
        for (Spell spell : review.line(lane.lineId()).orElseThrow().spells()) {
          double x1 = layout.xOf(spell.span().from());
          double x2 = layout.xOf(spell.span().to());
          over += written.box().getMaxX() > x1 && written.box().getX() < x2 ? 1 : 0;
        }
        assertTrue(over <= 1, written.text() + " crosses another spell at width " + width);
      }
    }
  }

  @Test
  void layersChangeOnlyWhenTheySay() {
    TimelineLayout layout = figure.layout(WIDTH, HEIGHT);
    int lastFades = -2;
    int[] lastPixels = new int[0];
    for (int minute = 0; minute <= 300; minute += 10) {
      Knowledge then = Knowledge.asKnownAt(allIn + minute * 60_000L);
      BufferedImage image = new BufferedImage(WIDTH, HEIGHT, BufferedImage.TYPE_INT_RGB);
      Graphics2D g = image.createGraphics();
      layout.paintFades(g, then);
      g.dispose();
      int[] now = image.getRGB(0, 0, WIDTH, HEIGHT, null, 0, WIDTH);
      if (layout.fadesVersion(then) == lastFades) {
        assertTrue(Arrays.equals(lastPixels, now), "minute " + minute);
      }
      lastFades = layout.fadesVersion(then);
      lastPixels = now;
    }
    assertTrue(lastFades > 0, "the fade became plain during the match");
  }

  @Test
  void denseMarksAreDrawnAsColumnsAndSaidToBe() {
    Session large = LargeSessions.of(20_000, 3);
    Review dense = Reviewer.review(large, ReviewSettings.DEFAULT);
    RecordingGraphics g = new RecordingGraphics();
    new TimelineFigure(dense, style).paint(g, WIDTH, HEIGHT);
    assertTrue(
        g.texts.stream().anyMatch(t -> t.text().startsWith("crowded marks: columns of")),
        "says that marks are binned");
    assertTrue(g.shapes.size() < 20_000, "far fewer shapes than events: " + g.shapes.size());
  }

  /** A column stands right of what it counts, but not beyond the stay that it counts. */
  @Test
  void columnsEndWithTheirStay() {
    Review dense = reviewed(LargeSessions.of(20_000, 3));
    TimelineLayout layout = new TimelineFigure(dense, style).layout(WIDTH, HEIGHT);
    long allOut = dense.session().match().allOut();
    int columns = 0;
    for (TimelineLayout.Lane lane : layout.lanes()) {
      RecordingGraphics g = new RecordingGraphics();
      new MarkPainter(layout, lane, layout.record(lane), new Pen(g, style))
          .paintMarks(dense.session().match().allIn(), allOut);
      for (Rectangle2D shape : g.shapes) {
        columns++;
        double right = shape.getMaxX();
        assertTrue(right <= layout.xOf(allOut) + 10, "ends at " + right);
      }
    }
    assertTrue(columns > 0, "there is something to draw");
  }

  @Test
  void theScaleHoldsEveryLimit() {
    RateScale scale = new RateScale(20, 100, 80);
    assertEquals(100, scale.y(0), 1e-9);
    assertEquals(36, scale.y(20), 1e-9);
    assertTrue(scale.y(1e9) >= 20 && scale.y(40) < scale.y(20));
    assertEquals(10, RateScale.ladder(0));
    assertEquals(20, RateScale.ladder(10.1));
    assertEquals(80, RateScale.ladder(61));
    assertEquals(100, RateScale.ladder(81));
    assertEquals(3200, RateScale.ladder(1601));
  }

  @Test
  void theKeyTellsTheWindowTheRateWasTakenOver() {
    Review review = Fixtures.springMatch();
    Review wide = Reviewer.review(review.session(), ReviewSettings.DEFAULT.withWindowMinutes(45));
    TimelineFigure figure =
        new TimelineFigure(wide, FigureStyle.of(Theme.LIGHT, Units.KG_AND_METRES));
    RecordingGraphics g = new RecordingGraphics();
    figure.with(figure.view().withKey(true)).paint(g, 1600, 900);
    assertTrue(
        g.texts.stream().anyMatch(t -> t.text().startsWith("fish an hour, last 45 min")),
        g.texts::toString);
  }
}
