package org.fadeline.figure;

import java.awt.Color;
import java.awt.Graphics2D;
import java.awt.geom.Rectangle2D;
import java.awt.image.BufferedImage;
import java.util.ArrayList;
import java.util.List;
import org.fadeline.analysis.season.Season;
import org.fadeline.analysis.season.Season.Cell;
import org.fadeline.analysis.season.Season.LineHours;
import org.fadeline.analysis.season.Season.PerHour;
import org.jspecify.annotations.Nullable;

/**
 * What each kind of line gave an hour fished, by hour of the match: the stronger the tint the more.
 * Cells of too few sessions for limits are outlined, never tinted.
 */
public final class SeasonHoursFigure extends SeasonFigure {
  private static final double STRONGEST = 0.62;

  private final boolean weights;
  private final int hours;

  /** Makes the figure: of weight where any is known, else of fish. */
  public SeasonHoursFigure(Season season, FigureStyle style) {
    super(season, style, 2);
    this.weights = season.lines().stream().anyMatch(l -> l.whole().weight().amount() > 0);
    this.hours =
        1
            + season.lines().stream()
                .flatMap(l -> l.hours().stream())
                .mapToInt(SeasonHoursFigure::hour)
                .max()
                .orElse(0);
  }

  private static int hour(Cell cell) {
    return cell.hour() == null ? 0 : cell.hour();
  }

  @Override
  public String title() {
    return (weights ? "Weight" : "Fish") + " an hour fished, by line and hour of the match";
  }

  private PerHour rate(Cell cell) {
    return weights ? cell.weight() : cell.fish();
  }

  @Override
  public String description() {
    StringBuilder text = new StringBuilder(title()).append(". ");
    for (LineHours line : season.lines()) {
      text.append(FigureText.capital(line.group())).append(": all ").append(words(line.whole()));
      for (Cell cell : line.hours()) {
        text.append("; hour ").append(hour(cell) + 1).append(' ').append(words(cell));
      }
      text.append(". ");
    }
    return text.toString().strip();
  }

  private String words(Cell cell) {
    int n = cell.sessions().size();
    return value(cell) + limits(cell) + ", " + FigureText.sessions(n);
  }

  private String limits(Cell cell) {
    Season.Limits limits = rate(cell).limits();
    return limits == null ? "" : " (" + say(limits.low()) + "–" + say(limits.high()) + ")";
  }

  private String value(Cell cell) {
    Double perHour = rate(cell).perHour();
    return perHour == null ? unknown(cell) : say(perHour);
  }

  private String unknown(Cell cell) {
    return rate(cell).sessions() == 0 ? "weights not known" : "under a minute fished";
  }

  /** Returns what a cell holds, from the fullest to what any cell has room for. */
  private List<String> values(Cell cell) {
    Double perHour = rate(cell).perHour();
    if (perHour == null) {
      return List.of(
          unknown(cell), rate(cell).sessions() == 0 ? "no weights" : "under a minute", "–");
    }
    double amount = weights ? words.axisWeight(perHour) : perHour;
    String whole = amount < 1 ? FigureText.number(amount) : Long.toString(Math.round(amount));
    return List.of(value(cell), weights ? whole + " " + words.axisUnit() : whole, whole);
  }

  private String say(double perHour) {
    return weights ? words.weightAmount(perHour) : FigureText.number(perHour);
  }

  @Override
  public void paint(Graphics2D g, double width, double height) {
    Pen pen = new Pen(g, style());
    pen.fill(pen.theme.panel(), 0, 0, width, height);
    if (season.lines().isEmpty()) {
      String none = season.sessions().isEmpty() ? "No match." : "Nothing was fished.";
      pen.text(none, 14, 30, pen.body, pen.theme.secondInk());
      return;
    }
    for (int column = 0; column <= hours; column++) {
      Rectangle2D head = box(pen, 0, column, width, height);
      String full = column == 0 ? "whole match" : "hour " + column;
      pen.text(
          Pen.fitting(
              pen.small,
              head.getWidth(),
              List.of(full, column == 0 ? "all" : Integer.toString(column))),
          head.getCenterX(),
          head.getY() - 5,
          pen.small,
          pen.theme.secondInk(),
          Pen.Align.MIDDLE);
    }
    double most = 0;
    for (LineHours line : season.lines()) {
      for (Cell cell : all(line)) {
        Double perHour = rate(cell).perHour();
        most = Math.max(most, perHour == null || isSmall(cell) ? 0 : perHour);
      }
    }
    List<LineHours> lines = lines(pen, height);
    paintLeftOut(
        pen,
        season.lines().size() - lines.size(),
        box(pen, 0, 0, width, height).getX() - 22,
        box(pen, 0, 0, width, height).getY() - 5);
    for (int row = 0; row < lines.size(); row++) {
      LineHours line = lines.get(row);
      Rectangle2D first = box(pen, row, 0, width, height);
      pen.text(
          Pen.shortened(pen.body, first.getX() - 22, FigureText.capital(line.group())),
          14,
          first.getCenterY() + Type.drop(pen.body),
          pen.body,
          pen.theme.ink());
      for (Cell cell : all(line)) {
        paint(pen, cell, box(pen, row, column(cell), width, height), most);
      }
    }
  }

  private static List<Cell> all(LineHours line) {
    List<Cell> cells = new ArrayList<>(line.hours());
    cells.add(0, line.whole());
    return cells;
  }

  private static int column(Cell cell) {
    return cell.hour() == null ? 0 : cell.hour() + 1;
  }

  private boolean isSmall(Cell cell) {
    return rate(cell).sessions() < Season.FEWEST_FOR_LIMITS;
  }

  private void paint(Pen pen, Cell cell, Rectangle2D box, double most) {
    Double perHour = rate(cell).perHour();
    boolean small = isSmall(cell);
    Color ground = pen.theme.panel();
    if (small || perHour == null) {
      pen.stroke(pen.theme.hairline(), 1, box);
    } else {
      double share = most > 0 ? STRONGEST * perHour / most : 0;
      ground = Theme.mix(pen.theme.accent(), 0.06 + share, pen.theme.panel());
      pen.fill(ground, box);
    }
    Color ink = small || perHour == null ? pen.theme.secondInk() : readable(pen.theme, ground);
    int n = cell.sessions().size();
    double row = pen.smallRow();
    List<String> rows = new ArrayList<>();
    rows.add(value(cell));
    if (box.getHeight() > 2.6 * row) {
      rows.add(limits(cell).strip());
    }
    if (box.getHeight() > 1.8 * row) {
      rows.add(FigureText.sessions(n));
    }
    rows.removeIf(String::isEmpty);
    double top = box.getCenterY() - row * (rows.size() - 1) / 2 + Type.drop(pen.small);
    for (int i = 0; i < rows.size(); i++) {
      pen.text(
          Pen.fitting(
              i == 0 ? pen.smallStrong : pen.small,
              box.getWidth() - 4,
              i == 0
                  ? values(cell)
                  : List.of(rows.get(i), rows.get(i).replaceAll(" match(es)?$", "×"))),
          box.getCenterX(),
          top + i * row,
          i == 0 ? pen.smallStrong : pen.small,
          ink,
          Pen.Align.MIDDLE);
    }
  }

  private static Color readable(Theme theme, Color ground) {
    return Theme.contrast(theme.ink(), ground) >= 4.5 ? theme.ink() : theme.on(ground);
  }

  private Rectangle2D box(Pen pen, int row, int column, double width, double height) {
    double names = 0;
    for (LineHours line : season.lines()) {
      names = Math.max(names, Type.width(pen.body, FigureText.capital(line.group())));
    }
    double left = Math.min(width * 0.3, names + 30);
    double top = top(pen);
    double each = (width - left - 14) / (hours + 1);
    double tall =
        Math.min((height - top - 8) / lines(pen, height).size(), 96 * style().textScale());
    return new Rectangle2D.Double(left + column * each, top + row * tall, each - 2, tall - 2);
  }

  private static double top(Pen pen) {
    return pen.smallRow() * 1.8;
  }

  private List<LineHours> lines(Pen pen, double height) {
    return fitting(
        season.lines(),
        height - top(pen) - 8,
        pen.bodyRow(),
        line -> line.whole().sessions().size());
  }

  /** Returns the cell under a point of a drawing of the given size, or null. */
  public @Nullable Cell at(double x, double y, double width, double height) {
    Pen pen = new Pen(new BufferedImage(1, 1, 1).createGraphics(), style());
    List<LineHours> lines = lines(pen, height);
    for (int row = 0; row < lines.size(); row++) {
      for (Cell cell : all(lines.get(row))) {
        if (box(pen, row, column(cell), width, height).contains(x, y)) {
          return cell;
        }
      }
    }
    return null;
  }
}
