package org.fadeline.figure;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNotNull;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.awt.Graphics2D;
import java.awt.geom.Rectangle2D;
import java.awt.image.BufferedImage;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import org.fadeline.analysis.Fade;
import org.fadeline.analysis.LineReview;
import org.fadeline.analysis.Review;
import org.fadeline.analysis.Spell;
import org.fadeline.model.Units;
import org.jspecify.annotations.Nullable;
import org.junit.jupiter.api.Test;

/** A fade as it is drawn and as it is told to the pointer. */
class FadeDrawingTest {
  private static final int WIDTH = 1400;
  private static final int HEIGHT = 700;

  private final FigureStyle style = FigureStyle.of(Theme.LIGHT, Units.LB_OZ_AND_METRES);

  /** A fade that was plain a while after it was likeliest, and a while before the line was left. */
  private record Drawn(
      TimelineLayout layout, TimelineLayout.Lane lane, Fade fade, Fade.Moment moment, Spell spell) {
    double x(long at) {
      return layout.xOf(at);
    }

    long plain() {
      return assertThere(fade.call().plainAt());
    }
  }

  private static <T> T assertThere(@Nullable T value) {
    assertNotNull(value);
    return value;
  }

  private List<Drawn> fades() {
    List<Drawn> found = new ArrayList<>();
    for (Review review :
        List.of(Fixtures.carpMatch(), Fixtures.springMatch(), Fixtures.winterMatch())) {
      TimelineLayout layout = new TimelineFigure(review, style).layout(WIDTH, HEIGHT);
      for (LineReview line : review.lines()) {
        for (Fade fade : line.fades()) {
          Fade.Moment moment = fade.moment();
          Long plain = fade.call().plainAt();
          Spell spell = line.spells().get(fade.spell());
          if (moment != null
              && plain != null
              && layout.xOf(plain) - layout.xOf(moment.at()) > 6
              && layout.xOf(spell.span().to()) - layout.xOf(plain) > 6) {
            TimelineLayout.Lane lane =
                layout.lanes().stream()
                    .filter(l -> l.lineId().equals(line.line().id()))
                    .findFirst()
                    .orElseThrow();
            found.add(new Drawn(layout, lane, fade, moment, spell));
          }
        }
      }
    }
    assertTrue(!found.isEmpty(), "a fade to look at");
    return found;
  }

  private static int opacity(BufferedImage image, double x, double y) {
    return image.getRGB((int) Math.floor(x), (int) Math.floor(y)) >>> 24;
  }

  @Test
  void theStainIsDarkestWhereTheChangeMostLikelyLayAndMedianPlainAndLeavingAreMarked() {
    for (Drawn drawn : fades()) {
      BufferedImage image = new BufferedImage(WIDTH, HEIGHT, BufferedImage.TYPE_INT_ARGB);
      Graphics2D g = image.createGraphics();
      drawn.layout.paintFades(g, Knowledge.hindsight());
      g.dispose();
      Rectangle2D plot = drawn.lane.plot();
      double top = plot.getY() + 1;
      assertEquals(
          255, opacity(image, drawn.x(drawn.moment.at()), top), 60, "a line at its middle");

      // The stain goes with the probability for each minute.
      double most =
          drawn.moment.density().stream().mapToDouble(FadeDrawingTest::perMilli).max().orElse(0);
      int steps = 0;
      for (Fade.Mass mass : drawn.moment.density()) {
        double middle = (drawn.x(mass.span().from()) + drawn.x(mass.span().to())) / 2;
        boolean wide = drawn.x(mass.span().to()) - drawn.x(mass.span().from()) >= 3;
        boolean apart =
            Math.abs(middle - drawn.x(drawn.moment.at())) > 3
                && Math.abs(middle - drawn.x(drawn.plain())) > 3;
        double share = perMilli(mass) / most;
        if (wide && apart && share > 0.02) {
          assertEquals(255 * 0.42 * share, opacity(image, middle, top), 6, "share " + share);
          steps++;
        }
      }
      assertTrue(steps > 0, "some of the stain was looked at");

      int dots = 0;
      for (int y = (int) plot.getY(); y < plot.getMaxY() - 8; y++) {
        dots += opacity(image, drawn.x(drawn.plain()), y) > 120 ? 1 : 0;
      }
      assertTrue(dots > plot.getHeight() / 6, dots + " dots at the minute it was plain");

      double floor = plot.getMaxY() - 2;
      double left = drawn.x(drawn.spell.span().to());
      assertEquals(255, opacity(image, left - 2, floor), 2, "up to the leaving");
      assertEquals(255, opacity(image, drawn.x(drawn.plain()) + 2, floor), 2, "from plain on");
      assertTrue(opacity(image, left + 3, floor) < 60, "and no longer");
    }
  }

  private static double perMilli(Fade.Mass mass) {
    return mass.probability() / Math.max(1, mass.span().millis());
  }

  @Test
  void pointedAtAFadeTellsItsValuesAndWhatTheyRestOn() {
    for (Drawn drawn : fades()) {
      Hit hit = fadeUnder(drawn);
      assertEquals(FigureText.capital(drawn.fade.verdict()), hit.title());
      String told = String.join("\n", hit.rows());
      Fade.Strength strength = drawn.fade.strength();
      String from = FigureText.number(assertThere(strength.before()));
      String to = FigureText.number(assertThere(strength.after()));
      assertTrue(told.contains("from " + from + " to " + to + " bites an hour of bait time"), told);
      assertTrue(
          told.contains(String.format(Locale.ROOT, "probability %.2f", drawn.fade.probability())),
          told);
      assertTrue(
          told.contains("rests on " + FigureText.minutes(strength.baitMinutesAfter())), told);
      assertTrue(told.contains("plain by " + drawn.layout.words.clock(drawn.plain())), told);
    }
  }

  /** On a small timeline the words on a fade do not reach beyond the stay they tell of. */
  @Test
  void wordsOnAFadeAreNoLongerThanItsStayWhereShorterOnesAre() {
    int told = 0;
    for (Review review : List.of(Fixtures.carpMatch(), Fixtures.springMatch())) {
      for (int width = 650; width < 1000; width += 50) {
        told += toldWithin(new TimelineFigure(review, style).layout(width, 500));
      }
    }
    assertTrue(told > 3, told + " told");
  }

  private static int toldWithin(TimelineLayout layout) {
    int told = 0;
    RecordingGraphics g = new RecordingGraphics();
    layout.paintFades(g, Knowledge.hindsight());
    for (TimelineLayout.Lane lane : layout.lanes()) {
      LineReview line = layout.record(lane).review;
      double longest =
          line.fades().stream()
              .map(fade -> line.spells().get(fade.spell()).span())
              .mapToDouble(span -> layout.xOf(span.to()) - layout.xOf(span.from()))
              .max()
              .orElse(0);
      for (RecordingGraphics.Written words : g.texts) {
        if (longest > 90
            && lane.plot().contains(words.box().getCenterX(), words.box().getCenterY())) {
          told++;
          assertTrue(words.box().getWidth() <= longest, words.text() + " over " + longest);
        }
      }
    }
    return told;
  }

  /** Away from marks, which the pointer finds first. */
  private static Hit fadeUnder(Drawn drawn) {
    Rectangle2D plot = drawn.lane.plot();
    for (double y = plot.getY() + 1; y < plot.getMaxY(); y += 1) {
      Hit hit = drawn.layout.at(drawn.x(drawn.moment.at()), y, Knowledge.hindsight()).orElseThrow();
      if (hit.kind() == Hit.Kind.FADE) {
        return hit;
      }
    }
    throw new AssertionError("no fade under the pointer");
  }
}
