package org.fadeline.ui.replay;

import static java.util.Objects.requireNonNull;
import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;

import java.awt.Graphics2D;
import java.awt.image.BufferedImage;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.ShrinkingMode;
import net.jqwik.api.constraints.DoubleRange;
import net.jqwik.api.constraints.IntRange;
import org.fadeline.figure.FigureStyle;
import org.fadeline.figure.Knowledge;
import org.fadeline.figure.Theme;
import org.fadeline.figure.TimelineFigure;
import org.fadeline.figure.TimelineView;
import org.fadeline.model.Session;
import org.fadeline.model.Units;
import org.fadeline.ui.state.FakeDesk;
import org.fadeline.ui.state.OpenSession;
import org.fadeline.ui.state.Workbench;

/**
 * As known then, a record shows at each moment what it would show had nothing been logged since,
 * whatever its grade, however its casts and clock were told, then and later.
 */
class KnownThenProperties {
  @Property(tries = 60, seed = "20260102", shrinking = ShrinkingMode.OFF)
  void nothingLoggedLaterIsTold(
      @ForAll @IntRange(min = 1, max = 1_000_000) int seed,
      @ForAll @DoubleRange(min = -0.02, max = 1.1) double share) {
    Two two = new Two(RoughLog.of(seed), share);
    assertEquals(
        ShownThen.at(FakeDesk.opened(two.cut), two.at),
        ShownThen.at(FakeDesk.opened(two.whole), two.at));
  }

  @Property(tries = 20, seed = "20260103", shrinking = ShrinkingMode.OFF)
  void norIsItDrawn(
      @ForAll @IntRange(min = 1, max = 1_000_000) int seed,
      @ForAll @DoubleRange(min = 0.05, max = 1.1) double share) {
    Two two = new Two(RoughLog.of(seed), share);
    assertArrayEquals(two.picture(two.cut), two.picture(two.whole));
  }

  /** A record, and what was logged of it by a moment. */
  private static final class Two {
    final Session whole;
    final Session cut;
    final long at;

    Two(Session whole, double share) {
      this.whole = whole;
      long sought = whole.match().allIn() + Math.round(share * whole.match().lengthMillis());
      cut = whole.withEvents(whole.events().stream().filter(e -> e.at() <= sought).toList());
      // The replay ends with the record: a moment past the end of what is known cannot be sought.
      at = Math.min(sought, OpenSession.rangeOf(cut).to());
    }

    int[] picture(Session session) {
      Workbench bench = FakeDesk.opened(session);
      TimelineFigure figure =
          new TimelineFigure(
                  requireNonNull(bench.state().review().known()).drawnAt(at),
                  FigureStyle.of(Theme.LIGHT, Units.LB_OZ_AND_METRES))
              .with(TimelineView.whole(cut))
              .with(Knowledge.asKnownAt(at));
      BufferedImage image = new BufferedImage(700, 420, BufferedImage.TYPE_INT_RGB);
      Graphics2D g = image.createGraphics();
      figure.paint(g, image.getWidth(), image.getHeight());
      g.dispose();
      return image.getRGB(0, 0, image.getWidth(), image.getHeight(), null, 0, image.getWidth());
    }
  }
}
