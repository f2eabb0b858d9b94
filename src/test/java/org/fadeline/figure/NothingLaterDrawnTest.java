package org.fadeline.figure;

import static org.fadeline.ui.HandMade.minute;
import static org.junit.jupiter.api.Assertions.assertArrayEquals;

import java.awt.Graphics2D;
import java.awt.image.BufferedImage;
import java.util.ArrayList;
import java.util.List;
import org.fadeline.analysis.KnownThen;
import org.fadeline.analysis.ReviewSettings;
import org.fadeline.analysis.Reviewer;
import org.fadeline.model.Fish;
import org.fadeline.model.Session;
import org.fadeline.model.SessionEvent;
import org.fadeline.model.Stamp;
import org.fadeline.model.Units;
import org.fadeline.ui.HandMade;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;

/** A picture as known at a moment does not tell an event logged a millisecond later. */
class NothingLaterDrawnTest {
  private static final SessionEvent CAST =
      new SessionEvent.Cast(new Stamp("c", minute(5), "short", null));

  /** What comes right after the moment shown. */
  enum Next {
    LOST,
    LANDED;

    SessionEvent at(long instant) {
      Stamp stamp = new Stamp("x", instant, "short", null);
      return this == LOST
          ? new SessionEvent.Lost(stamp, null)
          : new SessionEvent.Landed(stamp, new Fish(1, "carp", 3000.0, false));
    }
  }

  @ParameterizedTest
  @EnumSource
  void aMarkOfTheNextMillisecondShowsNoEdge(Next next) {
    for (int step = 1; step < 40; step++) {
      long known = minute(60) + step * 1500L;
      List<SessionEvent> more = new ArrayList<>(List.of(CAST, next.at(known + 1)));
      assertArrayEquals(drawn(List.of(CAST), known), drawn(more, known), "step " + step);
    }
  }

  private static int[] drawn(List<SessionEvent> events, long known) {
    BufferedImage image = new BufferedImage(1000, 400, BufferedImage.TYPE_INT_RGB);
    Graphics2D g = image.createGraphics();
    Session session = HandMade.of(events);
    new TimelineFigure(
            Reviewer.review(session, ReviewSettings.DEFAULT),
            FigureStyle.of(Theme.LIGHT, Units.LB_OZ_AND_METRES))
        .as(
            KnownThen.of(
                    session,
                    ReviewSettings.DEFAULT,
                    Units.LB_OZ_AND_METRES,
                    share -> {},
                    () -> false)
                .at(known))
        .with(Knowledge.asKnownAt(known))
        .paint(g, 1000, 400);
    g.dispose();
    return image.getRGB(0, 0, 1000, 400, null, 0, 1000);
  }
}
