package org.fadeline.figure;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.awt.geom.Rectangle2D;
import java.util.List;
import org.fadeline.model.Units;
import org.junit.jupiter.api.Test;

/** The scales of a plot. */
class PlotTest {
  @Test
  void theScaleBelowHasTwoNumbersBesideALongUnit() {
    for (int width = 180; width <= 500; width += 5) {
      RecordingGraphics g = new RecordingGraphics();
      new Plot(
              new Pen(g, FigureStyle.of(Theme.LIGHT, Units.LB_OZ_AND_METRES)),
              new Rectangle2D.Double(60, 20, width, 100),
              0,
              22,
              1)
          .paintX("min since the feed");
      List<String> numbers =
          g.texts.stream()
              .map(RecordingGraphics.Written::text)
              .filter(t -> t.matches("\\d+"))
              .toList();
      assertTrue(numbers.size() > 1, width + " wide: " + numbers);
      assertEquals(List.of(), g.overlaps(), width + " wide");
    }
  }
}
