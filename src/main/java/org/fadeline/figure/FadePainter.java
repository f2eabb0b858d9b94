package org.fadeline.figure;

import java.awt.Color;
import java.awt.geom.Line2D;
import java.awt.geom.Rectangle2D;
import java.awt.geom.RoundRectangle2D;
import java.util.List;
import org.fadeline.analysis.Course.RollingPoint;
import org.fadeline.analysis.Fade;
import org.fadeline.analysis.Rate;
import org.fadeline.analysis.ReviewSettings;
import org.fadeline.analysis.Spell;
import org.fadeline.analysis.TimeSpan;
import org.jspecify.annotations.Nullable;

/** Draws what a lane's fades look like from a given moment, and time that belongs to no line. */
final class FadePainter {
  /** Fewer words are taken where they hide so many pixels less of the curve. */
  private static final double SHORTER_COSTS = 24;

  private final TimelineLayout layout;
  private final TimelineLayout.Lane lane;
  private final LaneRecord record;
  private final Pen pen;
  private final Knowledge knowledge;

  FadePainter(
      TimelineLayout layout,
      TimelineLayout.Lane lane,
      LaneRecord record,
      Pen pen,
      Knowledge knowledge) {
    this.layout = layout;
    this.lane = lane;
    this.record = record;
    this.pen = pen;
    this.knowledge = knowledge;
  }

  /** Counts what has changed the picture by the instant known; −1 in hindsight. */
  static int version(TimelineFigure figure, Knowledge knowledge) {
    if (knowledge.isHindsight()) {
      return -1;
    }
    int version = 0;
    for (LaneRecord lane : figure.lanes()) {
      for (Fade fade : lane.review.fades()) {
        for (Fade.Crossing crossing : fade.call().crossings()) {
          version += knowledge.knows(crossing.at()) ? 1 : 0;
        }
      }
      for (TimeSpan span : lane.unassigned) {
        version += knowledge.knows(span.to()) ? 1 : 0;
      }
    }
    return version;
  }

  void paint() {
    for (TimeSpan span : record.unassigned) {
      if (knowledge.knows(span.to())) {
        paintUnassigned(span);
      }
    }
    for (Fade fade : record.review.fades()) {
      Spell spell = record.review.spells().get(fade.spell());
      Shown shown = knowledge.isHindsight() ? inHindsight(fade, spell) : asSeen(fade, spell);
      if (shown != null) {
        paint(shown);
      }
    }
  }

  /** What is drawn of one fade. */
  private record Shown(
      Spell spell,
      Fade.@Nullable Moment moment,
      @Nullable Long plainAt,
      @Nullable Long wordsUntil,
      List<List<String>> words) {}

  private @Nullable Shown inHindsight(Fade fade, Spell spell) {
    Fade.Moment moment = fade.moment();
    if (fade.probability() < ReviewSettings.MARKED_FROM || moment == null) {
      return null;
    }
    FigureText words = layout.words;
    Long plain = fade.call().plainAt();
    long left = spell.span().to();
    String shortest = "faded " + words.clock(moment.at());
    String second =
        plain == null
            ? "not plain before leaving"
            : "plain by "
                + words.clock(plain)
                + ", left "
                + words.clock(left)
                + ", "
                + FigureText.minutes((left - plain) / TimeSpan.MILLIS_PER_MINUTE)
                + " after";
    return new Shown(
        spell,
        moment,
        plain,
        null,
        List.of(
            List.of(fade.verdict(), second),
            List.of(fade.verdict()),
            List.of(shortest, plain == null ? "" : "plain " + words.clock(plain)),
            List.of(shortest),
            List.of(words.clock(moment.at()))));
  }

  private @Nullable Shown asSeen(Fade fade, Spell spell) {
    Fade.Crossing up = null;
    Fade.Crossing down = null;
    for (Fade.Crossing crossing : fade.call().crossings()) {
      if (knowledge.knows(crossing.at())) {
        if (crossing.up()) {
          up = crossing;
          down = null;
        } else {
          down = crossing;
        }
      }
    }
    if (up == null) {
      return null;
    }
    FigureText words = layout.words;
    if (down != null) {
      String said = "called faded " + words.clock(up.at());
      String back = "withdrawn " + words.clock(down.at());
      return new Shown(
          spell,
          null,
          up.at(),
          down.at(),
          List.of(List.of(said + ", " + back), List.of(said, back), List.of(back)));
    }
    Fade.Moment moment = up.asSeenThen();
    String plain = "plain at " + words.clock(up.at());
    if (moment == null) {
      return new Shown(spell, null, up.at(), up.at(), List.of(List.of(plain)));
    }
    String seen = "faded around " + words.clock(moment.at());
    String span = " (" + words.clock(moment.low()) + "–" + words.clock(moment.high()) + ")";
    return new Shown(
        spell,
        moment,
        up.at(),
        up.at(),
        List.of(
            List.of(seen + span, plain),
            List.of(seen, plain),
            List.of("faded " + words.clock(moment.at()), plain),
            List.of("fading " + plain)));
  }

  private void paint(Shown shown) {
    Rectangle2D plot = lane.plot();
    Color red = pen.theme.warning();
    Fade.Moment moment = shown.moment;
    if (moment != null) {
      paintStain(moment, plot, red);
      double x = layout.axis.x(moment.at());
      if (inRange(x)) {
        pen.fill(red, x - 0.9, plot.getY(), 1.8, plot.getHeight());
      }
    }
    Long plain = shown.plainAt;
    if (plain != null) {
      double x = layout.axis.x(plain);
      if (inRange(x)) {
        pen.stroke(
            red, 1.8, new float[] {1, 1.6f}, new Line2D.Double(x, plot.getY(), x, plot.getMaxY()));
      }
      if (moment != null) {
        double x1 = clamp(x);
        double x2 = clamp(layout.axis.x(shown.spell.span().to()));
        pen.fill(red, x1, plot.getMaxY() - 4, x2 - x1, 5);
      }
    }
    paintWords(shown);
  }

  private void paintStain(Fade.Moment moment, Rectangle2D plot, Color red) {
    double most = 0;
    for (Fade.Mass mass : moment.density()) {
      most = Math.max(most, perMilli(mass));
    }
    for (Fade.Mass mass : moment.density()) {
      double share = most > 0 ? perMilli(mass) / most : 0;
      if (share > 0.01) {
        double x1 = Math.round(clamp(layout.axis.x(mass.span().from())));
        double x2 = Math.round(clamp(layout.axis.x(mass.span().to())));
        pen.fill(Pen.alpha(red, 0.42 * share), x1, plot.getY(), x2 - x1, plot.getHeight());
      }
    }
  }

  private static double perMilli(Fade.Mass mass) {
    return mass.probability() / Math.max(1, mass.span().millis());
  }

  private boolean inRange(double x) {
    return x >= layout.axis.left() - 1 && x <= layout.axis.right() + 1;
  }

  private double clamp(double x) {
    return Math.max(layout.axis.left(), Math.min(layout.axis.right(), x));
  }

  /** Puts the words beside the fade, never over another spell, away from the curve. */
  private void paintWords(Shown shown) {
    double left = clamp(layout.axis.x(endOfSpellBefore(shown.spell))) + 2;
    Long until = shown.wordsUntil;
    double right =
        clamp(until == null ? layout.axis.x(startOfSpellAfter(shown.spell)) : layout.axis.x(until))
            - 2;
    double anchor =
        shown.moment != null
            ? layout.axis.x(shown.moment.at())
            : layout.axis.x(shown.spell.span().from());
    if (!inRange(anchor) && !(shown.plainAt != null && inRange(layout.axis.x(shown.plainAt)))) {
      return;
    }
    Rectangle2D area = lane.rate();
    // Words longer than the stay they tell of reach over what is not theirs.
    double stay =
        clamp(layout.axis.x(shown.spell.span().to()))
            - clamp(layout.axis.x(shown.spell.span().from()));
    List<String> said = List.of();
    Rectangle2D best = null;
    double least = Double.MAX_VALUE;
    for (int i = 0; i < shown.words.size(); i++) {
      List<String> rows = shown.words.get(i);
      Rectangle2D place = place(rows, clamp(anchor), left, right, area);
      double cost =
          place == null
              ? Double.MAX_VALUE
              : crossed(place) + i * SHORTER_COSTS + Math.max(0, place.getWidth() - stay);
      if (place != null && cost < least) {
        least = cost;
        best = place;
        said = rows;
      }
    }
    if (best != null) {
      paintPlate(said, best);
    }
  }

  private @Nullable Rectangle2D place(
      List<String> rows, double anchor, double left, double right, Rectangle2D area) {
    double width = 8;
    for (String row : rows) {
      width = Math.max(width, Type.width(pen.smallStrong, row) + 8);
    }
    double height = rows.size() * pen.smallRow() + 3;
    if (width > right - left || height > area.getHeight()) {
      return null;
    }
    double[] xs = {
      anchor + 4, anchor - 4 - width, Math.max(left, Math.min(right - width, anchor + 4)),
    };
    double[] ys = {area.getY() + 2, area.getMaxY() - height - 3};
    Rectangle2D best = null;
    double least = Double.MAX_VALUE;
    for (double x : xs) {
      if (x < left - 0.5 || x + width > right + 0.5) {
        continue;
      }
      for (double y : ys) {
        Rectangle2D candidate = new Rectangle2D.Double(x, y, width, height);
        double cost = crossed(candidate);
        if (cost < least - 1e-9) {
          least = cost;
          best = candidate;
        }
      }
    }
    return best;
  }

  /** Returns over how many pixels of width the curve runs through a rectangle. */
  private double crossed(Rectangle2D box) {
    RateScale scale = layout.scale(lane, layout.figure.scaleTop(knowledge));
    double pixels = 0;
    double minute = layout.axis.pixelsPerMinute();
    LaneSight sight = record.sight(knowledge);
    for (RollingPoint point : sight.rolling()) {
      double x = layout.axis.x(point.at());
      Rate rate = layout.figure.rate(point);
      if (x + minute >= box.getX() && x <= box.getMaxX() && rate != null && sight.isDrawn(point)) {
        double y = scale.y(layout.figure.scaled(rate.perHour()));
        pixels += y >= box.getY() - 3 && y <= box.getMaxY() + 3 ? minute : 0;
      }
    }
    return pixels;
  }

  private void paintPlate(List<String> rows, Rectangle2D place) {
    pen.fill(
        Pen.alpha(pen.theme.panel(), 0.88),
        new RoundRectangle2D.Double(
            place.getX(), place.getY(), place.getWidth(), place.getHeight(), 5, 5));
    double y = place.getY() + Type.ascent(pen.smallStrong) + 3;
    for (int i = 0; i < rows.size(); i++) {
      pen.text(
          rows.get(i),
          place.getX() + 4,
          y + i * pen.smallRow(),
          i == 0 ? pen.smallStrong : pen.small,
          pen.theme.warning());
    }
  }

  private long endOfSpellBefore(Spell spell) {
    List<Spell> spells = record.review.spells();
    return spell.index() == 0 ? layout.axis.from() : spells.get(spell.index() - 1).span().to();
  }

  private long startOfSpellAfter(Spell spell) {
    List<Spell> spells = record.review.spells();
    return spell.index() + 1 < spells.size()
        ? spells.get(spell.index() + 1).span().from()
        : layout.axis.to();
  }

  /** Dots: the record does not say which of two lines this time belongs to. */
  private void paintUnassigned(TimeSpan span) {
    TimeSpan visible = LanePainter.visible(span, layout.axis);
    if (visible == null) {
      return;
    }
    Rectangle2D plot = lane.plot();
    double x1 = layout.axis.x(visible.from());
    double x2 = layout.axis.x(visible.to());
    Color ground = Theme.mix(pen.theme.secondInk(), 0.08, pen.theme.panel());
    pen.fill(ground, x1, plot.getY(), x2 - x1, plot.getHeight() - 1);
    for (double y = plot.getY() + 4; y < plot.getMaxY() - 3; y += 6) {
      for (double x = Math.ceil(x1 / 6) * 6; x < x2 - 1.5; x += 6) {
        pen.fill(pen.theme.secondInk(), x, y, 1.5, 1.5);
      }
    }
  }
}
