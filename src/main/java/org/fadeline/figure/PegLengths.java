package org.fadeline.figure;

import java.awt.Color;
import java.awt.Font;
import java.awt.geom.Path2D;
import java.awt.geom.Point2D;
import java.awt.geom.Rectangle2D;
import java.util.ArrayList;
import java.util.List;
import org.fadeline.model.Line;
import org.jspecify.annotations.Nullable;

/**
 * The working lengths on the peg diagram: arcs round the angler, each named where there is room.
 */
final class PegLengths {
  /** Working lengths of a pole, metres (common practice); beyond it, tens of metres. */
  private static final double[] LENGTHS = {
    5, 6.5, 8, 9.5, 11, 11.5, 13, 14.5, 16, 20, 30, 40, 50, 60, 70, 80, 90, 100, 120, 150, 200
  };

  private final PegLayout layout;
  private final List<Length> lengths;

  PegLengths(PegLayout layout) {
    this.layout = layout;
    this.lengths = lengths();
  }

  void paint(Pen pen) {
    Color rule = Theme.mix(pen.theme.secondInk(), 0.42, pen.theme.water());
    for (Length length : lengths) {
      pen.stroke(rule, 1, arc(length.radius));
    }
  }

  void paintNames(Pen pen) {
    for (Length length : lengths) {
      Rectangle2D box = length.box;
      if (box != null) {
        boolean onBank = box.getY() > layout.bankTop();
        pen.fill(onBank ? pen.theme.bank() : pen.theme.water(), box);
        pen.text(
            length.label,
            box.getCenterX(),
            box.getCenterY() + Type.drop(pen.small),
            pen.small,
            pen.theme.ink(),
            Pen.Align.MIDDLE);
      }
    }
  }

  /** A working length: its arc, and where that is named, if there is room. */
  private record Length(String label, double radius, @Nullable Rectangle2D box) {}

  private List<Length> lengths() {
    Font small = Type.regular(11 * layout.style.textScale());
    double room = Type.width(small, layout.words.units().distance(14.5)) + 7;
    double reach = layout.angler().getY() / layout.pixelsPerMetre();
    double last = 0;
    List<Length> lengths = new ArrayList<>();
    for (double length : LENGTHS) {
      double radius = length * layout.pixelsPerMetre();
      if (length <= reach + 0.01 && radius - last >= room) {
        String label = layout.words.units().distance(length);
        lengths.add(new Length(label, radius, named(Type.width(small, label), radius)));
        last = radius;
      }
    }
    return lengths;
  }

  /** A working length is named where its arc meets the bank, or where it leaves the picture. */
  private @Nullable Rectangle2D named(double labelWidth, double radius) {
    double high = 14 * layout.style.textScale();
    if (layout.angler().getX() + radius + labelWidth / 2 < layout.width - 4) {
      // A line under the bank would lie over the name: then it stands on the other side.
      for (int side : new int[] {1, -1}) {
        double x = layout.angler().getX() + side * radius;
        Rectangle2D box =
            new Rectangle2D.Double(x - labelWidth / 2, layout.bankTop() + 5, labelWidth, high);
        if (isFree(box)) {
          return box;
        }
      }
      return null;
    }
    double across = layout.width - 8 - labelWidth / 2 - layout.angler().getX();
    double y = layout.angler().getY() - Math.sqrt(Math.max(0, radius * radius - across * across));
    // Nor does it stand under the rose.
    double top = layout.isWeatherRight() ? PegFeatures.belowWeather(layout) + high / 2 : 14;
    return y > top && y < layout.bankTop() - 14
        ? new Rectangle2D.Double(layout.width - 11 - labelWidth, y - high / 2, labelWidth + 6, high)
        : null;
  }

  /** Returns whether no line's mark and no peg lies over a name on the bank. */
  private boolean isFree(Rectangle2D box) {
    double reach = 13 * Math.sqrt(layout.style.textScale());
    boolean free = Math.abs(box.getCenterX() - layout.angler().getX()) > 14 + box.getWidth() / 2;
    for (Line line : layout.session.lines()) {
      Point2D at = layout.pointOf(line).orElse(null);
      free &=
          at == null || !box.intersects(at.getX() - reach, at.getY() - reach, 2 * reach, 2 * reach);
    }
    return free;
  }

  /** Returns where working lengths are named on the water. */
  List<Rectangle2D> namesOnWater() {
    List<Rectangle2D> boxes = new ArrayList<>();
    for (Length length : lengths) {
      if (length.box != null && length.box.getY() < layout.bankTop()) {
        boxes.add(length.box);
      }
    }
    return boxes;
  }

  /** Half a circle round the angler, the parts inside the picture. */
  private Path2D arc(double radius) {
    Path2D path = new Path2D.Double();
    boolean drawing = false;
    for (int degrees = -90; degrees <= 90; degrees++) {
      double angle = Math.toRadians(degrees);
      double x = layout.angler().getX() + radius * Math.sin(angle);
      double y = layout.angler().getY() - radius * Math.cos(angle);
      boolean inside = x >= 0 && x <= layout.width && y >= 0;
      if (inside && drawing) {
        path.lineTo(x, y);
      } else if (inside) {
        path.moveTo(x, y);
      }
      drawing = inside;
    }
    return path;
  }
}
