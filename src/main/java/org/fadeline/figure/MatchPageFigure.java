package org.fadeline.figure;

import java.awt.Color;
import java.awt.Graphics2D;
import java.awt.geom.AffineTransform;
import java.awt.geom.Rectangle2D;
import java.util.List;
import org.fadeline.analysis.Course.Lesson;
import org.fadeline.analysis.Rate;
import org.fadeline.analysis.Review;
import org.fadeline.analysis.ReviewSettings;
import org.fadeline.analysis.StayOrGo;

/** The match on one A5 page: what each spell paid an hour, the running weight, the lessons. */
public final class MatchPageFigure extends StyledFigure {
  /** The shape of an A5 sheet (ISO 216: 148 by 210 mm). */
  private static final double A5_ASPECT = 148.0 / 210;

  /** Height of a spell where there is room, pixels. */
  private static final double ROW = 54;

  /** The running weight is drawn so high or not at all, pixels. */
  private static final double LEAST_CHART = 90;

  private final Review review;
  private final FigureText words;

  /** Makes the page. */
  public MatchPageFigure(Review review, FigureStyle style) {
    super(style, A5_ASPECT);
    this.review = review;
    this.words = new FigureText(review.session(), style.units());
  }

  @Override
  public String title() {
    return review.session().occasion().title();
  }

  @Override
  public String description() {
    StringBuilder text = new StringBuilder(summary()).append(" ");
    for (StayOrGo stay : review.stays()) {
      text.append(review.line(stay.spell().lineId()).map(l -> l.line().name()).orElse(""))
          .append(" from ")
          .append(words.clock(stay.spell().span().from()))
          .append(" to ")
          .append(words.clock(stay.spell().span().to()))
          .append(": ")
          .append(paid(stay).get(0))
          .append(". ");
    }
    review.course().lessons().forEach(l -> text.append(l.text()).append(" "));
    return text.toString().strip();
  }

  private String summary() {
    var caught = review.summary().caught();
    return (caught.weightG() > 0
            ? words.weight(caught.weightG()) + " " + review.summary().weightFrom().word() + ", "
            : "")
        + FigureText.fish(caught.landed())
        + ", "
        + caught.lost()
        + " lost, "
        + FigureText.bites(caught.bites())
        + ".";
  }

  private List<String> paid(StayOrGo stay) {
    Rate weight = stay.paid().weight();
    Rate fish = stay.paid().fish();
    String effort =
        FigureText.fish(stay.spell().caught().landed())
            + " in "
            + FigureText.minutes(stay.spell().fishedHours() * 60);
    if (weight != null && stay.spell().caught().weightG() > 0) {
      return List.of(
          words.weightPerHour(weight) + ", " + effort,
          words.weightPerHour(weight.perHour()) + ", " + effort,
          words.weightPerHour(weight.perHour()));
    }
    return fish == null
        ? List.of(effort)
        : List.of(
            FigureText.perHour(fish) + ", " + effort, FigureText.perHour(fish.perHour()), effort);
  }

  @Override
  public void paint(Graphics2D g, double width, double height) {
    Pen pen = new Pen(g, style);
    double scale = style.textScale();
    pen.fill(pen.theme.panel(), 0, 0, width, height);
    if (width > height) {
      paintAcross(pen, width, height);
      return;
    }
    double pad = 26;
    double y = pad + 16 * scale;
    var heading = Type.semiBold(18 * scale);
    pen.text(Pen.shortened(heading, width - 2 * pad, title()), pad, y, heading, pen.theme.ink());
    y += 20 * scale;
    String where = where();
    pen.text(
        Pen.shortened(pen.body, width - 2 * pad, where), pad, y, pen.body, pen.theme.secondInk());
    y += 24 * scale;
    pen.text(
        Pen.shortened(pen.strong, width - 2 * pad, summary()), pad, y, pen.strong, pen.theme.ink());
    y += 14 * scale;
    double lessonsHeight = lessonsHeight(pen, width - 2 * pad);
    var tiny = Type.regular(8.5 * scale);
    List<String> rests =
        FigureSheet.footOf(review, style, true).stream()
            .flatMap(r -> Pen.wrapped(tiny, width - 2 * pad, r).stream())
            .toList();
    double foot = height - pad - rests.size() * 12 * scale;
    double spells = ROW * review.stays().size() + 10;
    double most =
        Math.min(height * 0.4, Math.max(height * 0.24, foot - y - lessonsHeight - spells));
    // Every spell comes before the running weight, which is drawn where they leave it room.
    double left =
        foot - y - lessonsHeight - leastRow(pen) * Math.max(1, review.stays().size()) - 10;
    double chart = left < LEAST_CHART ? 0 : Math.min(most, left);
    double spellsEnd = foot - lessonsHeight - chart;
    paintSpells(pen, new Rectangle2D.Double(pad, y, width - 2 * pad, spellsEnd - y - 10));
    if (chart > 0) {
      AffineTransform before = g.getTransform();
      g.translate(pad - 10, spellsEnd);
      new WeightFigure(review, style, Knowledge.hindsight()).paint(g, width - 2 * pad + 20, chart);
      g.setTransform(before);
    }
    paintLessons(pen, pad, spellsEnd + chart + 14 * scale, width - 2 * pad, foot);
    for (int i = 0; i < rests.size(); i++) {
      pen.text(
          rests.get(i),
          pad,
          height - pad + 6 - (rests.size() - 1 - i) * 12 * scale,
          tiny,
          pen.theme.secondInk());
    }
  }

  /** On a slide there is room for the total and the spells; the rest are pictures of their own. */
  private void paintAcross(Pen pen, double width, double height) {
    double pad = 18;
    double y = pen.bodyRow();
    pen.text(
        Pen.fitting(
            pen.strong,
            width - 2 * pad,
            List.of(summary(), summary().substring(0, summary().lastIndexOf(',')) + ".")),
        pad,
        y,
        pen.strong,
        pen.theme.ink());
    y += pen.bodyRow() * 0.5;
    paintSpells(pen, new Rectangle2D.Double(pad, y, width - 2 * pad, height - y));
  }

  private String where() {
    var occasion = review.session().occasion();
    String number = occasion.peg().number();
    String venue = occasion.venue().name();
    return DayAxis.say(occasion.date())
        + (venue == null ? "" : ", " + venue)
        + (number == null ? "" : ", peg " + number)
        + ", "
        + words.clock(review.session().match().allIn())
        + "–"
        + words.clock(review.session().match().allOut());
  }

  private static double leastRow(Pen pen) {
    return pen.smallRow() + 8;
  }

  private void paintSpells(Pen pen, Rectangle2D area) {
    List<StayOrGo> stays = review.stays();
    if (stays.isEmpty()) {
      pen.text(
          "No spell was recorded.", area.getX(), area.getY() + 20, pen.body, pen.theme.secondInk());
      return;
    }
    double least = leastRow(pen);
    int shown = (int) Math.min(stays.size(), Math.max(1, Math.floor(area.getHeight() / least)));
    if (shown < stays.size()) {
      // The last row is for saying so.
      shown = Math.max(1, shown - 1);
      pen.text(
          "and " + (stays.size() - shown) + " later spells",
          area.getX(),
          area.getY() + shown * least + Type.ascent(pen.small) + 3,
          pen.small,
          pen.theme.secondInk());
    }
    double row =
        shown < stays.size()
            ? least
            : Math.min(ROW * Math.max(1, style.textScale()), area.getHeight() / shown);
    boolean weights = review.summary().caught().weightG() > 0;
    double most = 0;
    for (StayOrGo stay : stays) {
      Rate rate = weights ? stay.paid().weight() : stay.paid().fish();
      most = rate == null ? most : Math.max(most, rate.perHour());
    }
    for (int i = 0; i < shown; i++) {
      StayOrGo stay = stays.get(i);
      Rate rate = weights ? stay.paid().weight() : stay.paid().fish();
      paintSpell(
          pen,
          stay,
          new Rectangle2D.Double(area.getX(), area.getY() + row * i, area.getWidth(), row),
          rate == null || most <= 0 ? 0 : rate.perHour() / most);
    }
  }

  /** One spell: when and where, a bar as long as what it paid an hour, what it rests on. */
  private void paintSpell(Pen pen, StayOrGo stay, Rectangle2D row, double share) {
    int index = Math.max(0, review.indexOf(stay.spell().lineId()));
    Color hue = pen.theme.line(index);
    double baseline = row.getY() + Type.ascent(pen.small) + 3;
    double x = row.getX();
    String times =
        words.clock(stay.spell().span().from()) + "–" + words.clock(stay.spell().span().to());
    pen.text(times, x, baseline, pen.small, pen.theme.secondInk());
    x += Type.width(pen.small, "00:00–00:00") + 10;
    x += pen.badge(index, x, baseline - Type.drop(pen.small)) + 6;
    String name = review.lines().get(index).line().name();
    pen.text(name, x, baseline, pen.smallStrong, pen.theme.ink());
    double nameEnd = x + Type.width(pen.smallStrong, name) + 12;
    pen.text(
        Pen.fitting(pen.small, row.getMaxX() - nameEnd, paid(stay)),
        row.getMaxX(),
        baseline,
        pen.small,
        pen.theme.ink(),
        Pen.Align.RIGHT);
    double barY = baseline + 5;
    double barHeight =
        Math.max(3, Math.min(7, row.getHeight() - (barY - row.getY()) - pen.smallRow() - 2));
    pen.fill(pen.theme.hairline(), row.getX(), barY, row.getWidth(), 1);
    pen.fill(hue, row.getX(), barY, row.getWidth() * share, barHeight);
    var fade = stay.fade();
    double under = barY + barHeight + pen.smallRow() * 0.8;
    if (fade != null
        && fade.probability() >= ReviewSettings.PROBABLE_FROM
        && under < row.getMaxY() + 2) {
      pen.text(
          Pen.shortened(pen.small, row.getWidth(), fade.verdict()),
          row.getX(),
          under,
          pen.small,
          pen.theme.warning());
    }
  }

  private double lessonsHeight(Pen pen, double width) {
    double rows = 0;
    for (Lesson lesson : review.course().lessons()) {
      rows += Pen.wrapped(pen.small, width - 46, lesson.text()).size() + 0.3;
    }
    return rows == 0 ? 0 : rows * pen.smallRow() + 22 * style.textScale();
  }

  private void paintLessons(Pen pen, double x, double top, double width, double foot) {
    double y = top;
    for (Lesson lesson : review.course().lessons()) {
      pen.text(words.clock(lesson.at()), x, y, pen.smallStrong, pen.theme.accent());
      for (String row : Pen.wrapped(pen.small, width - 46, lesson.text())) {
        if (y > foot) {
          return;
        }
        pen.text(row, x + 46, y, pen.small, pen.theme.ink());
        y += pen.smallRow();
      }
      y += pen.smallRow() * 0.3;
    }
  }
}
