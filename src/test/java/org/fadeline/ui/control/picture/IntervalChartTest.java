package org.fadeline.ui.control.picture;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.awt.Graphics2D;
import java.awt.image.BufferedImage;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import org.fadeline.figure.FigureStyle;
import org.fadeline.figure.Theme;
import org.fadeline.model.Units;
import org.junit.jupiter.api.Test;

class IntervalChartTest {
  private static List<Double> ticks(double value, double high) {
    List<Double> said = new ArrayList<>();
    FigureStyle style = FigureStyle.of(Theme.LIGHT, Units.LB_OZ_AND_METRES);
    IntervalChart chart =
        new IntervalChart(
            List.of(new IntervalChart.Row("pole", 0, 0, value, high, "no fish", true)),
            style,
            v -> {
              said.add(v);
              return String.valueOf(v);
            });
    Graphics2D g = new BufferedImage(600, 200, BufferedImage.TYPE_INT_ARGB).createGraphics();
    chart.paint(g, 600, 200);
    g.dispose();
    return said;
  }

  /** No fish at all: the scale goes up to the limit, or to one, with every tick another value. */
  @Test
  void aScaleWithoutFishStillHasTicksThatDiffer() {
    for (List<Double> said : List.of(ticks(0, 2.4), ticks(0, 0), ticks(3, 9))) {
      assertTrue(said.size() > 1, said::toString);
      assertEquals(new HashSet<>(said).size(), said.size(), said::toString);
      assertTrue(said.stream().allMatch(v -> v == 0 || v > 0.01), said::toString);
    }
  }
}
