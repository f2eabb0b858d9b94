package org.fadeline.figure;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.awt.Graphics2D;
import java.awt.geom.Rectangle2D;
import java.awt.image.BufferedImage;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import org.fadeline.analysis.ReviewSettings;
import org.fadeline.analysis.Reviewer;
import org.fadeline.demo.LargeSessions;
import org.fadeline.model.EventKind;
import org.fadeline.model.Fish;
import org.fadeline.model.Session;
import org.fadeline.model.SessionEvent;
import org.fadeline.model.Stamp;
import org.fadeline.model.Units;
import org.fadeline.ui.HandMade;
import org.junit.jupiter.api.Test;

/** What is picked is the mark that is seen under the pointer, in both directions. */
class MarkPickTest {
  private static final FigureStyle STYLE = FigureStyle.of(Theme.LIGHT, Units.LB_OZ_AND_METRES);
  private static final double PIXEL = 5 * 60.0 / 1000;

  private static Stamp stamp(String id, double minute, String line) {
    return new Stamp(id, HandMade.minute(minute), line, null);
  }

  /** Five hours on 1000 pixels: the marks of a crowded spot are given in pixels from 10:30. */
  private static TimelineLayout layout(List<SessionEvent> more) {
    List<SessionEvent> events = new ArrayList<>();
    events.add(new SessionEvent.Cast(stamp("first", 1, "short")));
    events.addAll(more);
    events.add(new SessionEvent.Move(stamp("left", 100, "short"), null));
    TimelineFigure figure =
        new TimelineFigure(Reviewer.review(HandMade.of(events), ReviewSettings.DEFAULT), STYLE);
    double gutter = figure.layout(2000, 400).plotArea().getX();
    return figure.layout(gutter + 1000 + 14, 400);
  }

  private static double at(double pixels) {
    return 30 + pixels * PIXEL;
  }

  private static TimelineLayout.Lane lane(TimelineLayout layout) {
    return layout.lanes().stream()
        .filter(l -> l.lineId().equals("short"))
        .findFirst()
        .orElseThrow();
  }

  private static Hit hit(TimelineLayout layout, double pixels, double down) {
    double x = layout.xOf(HandMade.minute(30)) + pixels;
    return layout.at(x, lane(layout).stringY() + down, Knowledge.hindsight()).orElseThrow();
  }

  /** A lost fish stands 8 pixels wide to the right of its instant; the next cast begins in it. */
  @Test
  void onACrossItIsTheCrossAndNotTheCastBesideIt() {
    TimelineLayout layout =
        layout(
            List.of(
                new SessionEvent.Lost(stamp("lost", at(0), "short"), null),
                new SessionEvent.Cast(stamp("cast", at(5), "short"))));
    for (double pixels = 1; pixels <= 7.5; pixels += 0.5) {
      for (double down : new double[] {-3, 0, 3}) {
        assertEquals("lost", hit(layout, pixels, down).id(), pixels + " right, " + down + " down");
      }
    }
    // Below the cross only the foot of the cast is to be seen.
    assertEquals("cast", hit(layout, 5.5, 5.2).id());
  }

  @Test
  void ofMarksOnEachOtherItIsTheOneOnTop() {
    TimelineLayout layout =
        layout(
            List.of(
                new SessionEvent.Bite(stamp("bite", at(0), "short")),
                new SessionEvent.Hooked(stamp("hooked", at(1), "short")),
                new SessionEvent.Landed(
                    stamp("fish", at(0), "short"), new Fish(1, "roach", 100.0, false))));
    assertEquals("fish", hit(layout, 1, 0).id());
    // A small fish covers only the middle of a bite.
    assertEquals("bite", hit(layout, 0.5, -4.7).id());
  }

  @Test
  void ofMarksBesideThePointerItIsTheNearestInBothDirections() {
    TimelineLayout layout =
        layout(
            List.of(
                new SessionEvent.Bite(stamp("bite", at(0), "short")),
                new SessionEvent.Cast(stamp("cast", at(4), "short"))));
    assertEquals("bite", hit(layout, 2.2, -4).id());
    assertEquals("cast", hit(layout, 3.4, 5).id());
    assertEquals(List.of(), hit(layout, 2, 16).events(), "out of reach of both");
  }

  @Test
  void aColumnStandsForAllThatItCounts() {
    Session large = LargeSessions.of(20_000, 3);
    TimelineFigure figure =
        new TimelineFigure(Reviewer.review(large, ReviewSettings.DEFAULT), STYLE);
    TimelineLayout layout = figure.layout(1000, 600);
    Set<String> found = new HashSet<>();
    for (TimelineLayout.Lane lane : layout.lanes()) {
      for (double x = lane.plot().getX(); x < lane.plot().getMaxX(); x += 0.5) {
        for (double down = -8; down <= 8; down += 2) {
          layout
              .at(x, lane.stringY() + down, Knowledge.hindsight())
              .ifPresent(hit -> found.addAll(hit.events()));
        }
      }
    }
    List<String> onStrings =
        large.events().stream()
            .filter(e -> e.at() < large.match().allOut())
            .filter(e -> e.kind().group() == EventKind.Group.WATER)
            .map(SessionEvent::id)
            .toList();
    long reached = onStrings.stream().filter(found::contains).count();
    assertTrue(reached > 0.98 * onStrings.size(), reached + " of " + onStrings.size());
  }

  @Test
  void aColumnTellsWhatItCounts() {
    List<SessionEvent> many = new ArrayList<>();
    for (int i = 0; i < 5; i++) {
      // Within one step of two minutes, of which one begins at 10:30.
      many.add(
          new SessionEvent.Landed(
              stamp("fish" + i, 30 + i * 0.2, "short"), new Fish(1, "roach", 200.0, false)));
    }
    TimelineLayout layout = layout(many);
    Hit hit = hit(layout, 120 / 60.0 / PIXEL + 1, 0);
    assertEquals(Hit.Kind.COLUMN, hit.kind());
    assertEquals(List.of("fish0", "fish1", "fish2", "fish3", "fish4"), hit.events());
    assertTrue(hit.rows().get(0).startsWith("10:30:00–10:30:48"), hit::toString);
    assertTrue(hit.rows().get(1).startsWith("landed 5, 2 lb 3"), hit::toString);
  }

  @Test
  void theRateSaysWhatItRestsOn() {
    TimelineFigure figure =
        new TimelineFigure(Reviewer.review(HandMade.session(), ReviewSettings.DEFAULT), STYLE);
    TimelineLayout layout = figure.layout(1000, 600);
    TimelineLayout.Lane lane =
        layout.lanes().stream().filter(l -> l.lineId().equals("shallow")).findFirst().orElseThrow();
    Hit hit =
        layout
            .at(layout.xOf(HandMade.minute(48.5)), lane.rate().getCenterY(), Knowledge.hindsight())
            .orElseThrow();
    assertEquals(Hit.Kind.RATE, hit.kind());
    assertTrue(hit.rows().stream().anyMatch(r -> r.contains(" fish an hour (")), hit::toString);
    String rests = hit.rows().get(hit.rows().size() - 1);
    assertTrue(rests.matches("\\d+ fish in \\d+ min fished"), rests);
  }

  /** An event on the floor or on the strip of the clock is ringed where it stands. */
  @Test
  void everythingPickedIsRingedWhereItStands() {
    TimelineLayout layout =
        layout(List.of(new SessionEvent.Weather(stamp("wind", 40, "short").withLine(null))));
    assertRinged(
        layout, "left", layout.xOf(HandMade.minute(100)), lane(layout).plot().getMaxY() - 7);
    assertRinged(
        layout, "wind", layout.xOf(HandMade.minute(40)), layout.aroundStrip().getCenterY());
  }

  private static void assertRinged(TimelineLayout layout, String id, double x, double y) {
    BufferedImage image = new BufferedImage(1100, 400, BufferedImage.TYPE_INT_ARGB);
    Graphics2D g = image.createGraphics();
    layout.paintSelection(g, Set.of(id));
    g.dispose();
    int near = 0;
    int far = 0;
    for (int i = 0; i < image.getWidth(); i++) {
      for (int j = 0; j < image.getHeight(); j++) {
        boolean close = Math.hypot(i - x, j - y) < 16;
        boolean drawn = image.getRGB(i, j) >>> 24 != 0;
        near += close && drawn ? 1 : 0;
        far += !close && drawn ? 1 : 0;
      }
    }
    assertTrue(near > 30, id + " has a ring");
    assertEquals(0, far, id + " has no ring elsewhere");
  }

  /** Of thousands of feeds none is left out: each is in one mark, and a crowd is a column. */
  @Test
  void crowdedFeedsAreCountedInColumnsThatTellWhatTheyHold() {
    Session large = LargeSessions.of(20_000, 5);
    TimelineFigure figure =
        new TimelineFigure(Reviewer.review(large, ReviewSettings.DEFAULT), STYLE);
    TimelineLayout layout = figure.layout(1000, 500);
    int columns = 0;
    for (TimelineLayout.Lane lane : layout.lanes()) {
      LaneRecord record = layout.record(lane);
      MarkPlaces places = new MarkPlaces(layout, lane, record);
      long from = layout.axis.from();
      long to = layout.axis.to();
      List<MarkPlaces.Mark> feeds = places.feeds(from, to);
      List<SessionEvent> told = feeds.stream().flatMap(m -> m.events().stream()).toList();
      assertEquals(record.feeds.slice(from, to), told);
      for (MarkPlaces.Mark mark : feeds) {
        if (mark.isColumn()) {
          columns++;
          Rectangle2D box = mark.shape().getBounds2D();
          assertTrue(layout.instantAt(box.getX()) >= told(mark) - 500, "not before its last feed");
          assertTrue(box.getX() < layout.plotArea().getMaxX(), "in sight");
          Hit hit = hitIn(layout, box, mark.events().get(0).id());
          assertEquals(mark.events().stream().map(SessionEvent::id).toList(), hit.events());
          assertTrue(hit.rows().contains("fed " + mark.events().size()), hit::toString);
        }
      }
    }
    assertTrue(columns > 20, columns + " columns");
  }

  /** Somewhere in its box a column is what the pointer finds, though the next feed lies over it. */
  private static Hit hitIn(TimelineLayout layout, Rectangle2D box, String first) {
    for (double x = box.getX() + 0.5; x < box.getMaxX(); x += 0.5) {
      for (double y = box.getY() + 0.5; y < box.getMaxY(); y += 1) {
        Hit hit = layout.at(x, y, Knowledge.hindsight()).orElseThrow();
        if (hit.kind() == Hit.Kind.COLUMN && hit.id().equals(first)) {
          return hit;
        }
      }
    }
    throw new AssertionError("the column of " + first + " is not found");
  }

  private static long told(MarkPlaces.Mark mark) {
    return mark.events().get(mark.events().size() - 1).at();
  }
}
