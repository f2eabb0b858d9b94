package org.fadeline.figure;

import java.awt.Font;
import java.awt.Graphics2D;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import org.fadeline.model.Line;
import org.fadeline.model.LineCodes;
import org.fadeline.model.Session;

/**
 * A page to fill in by pencil on the bank: the lines with their codes, an example, and rows with
 * the hour printed, a half-hour a block. Each row filled in is a line of the shorthand.
 */
public final class BankSheetFigure implements Figure {
  /** Millimetres to PDF points. */
  private static final double POINT = 72 / 25.4;

  /** Room for a pencil, points: 6 mm. */
  private static final double ROW = 6 * POINT;

  private static final double MARGIN = 10 * POINT;
  private static final int ROWS_A_HALF_HOUR = 7;
  private static final long HALF_HOUR = 1_800_000;

  private final Session session;
  private final FigureStyle style;
  private final Paper paper;
  private final int page;
  private final List<String> rows;

  /** Sizes of paper (ISO 216). */
  public enum Paper {
    /** 210 by 297 mm, two columns. */
    A4(210, 297, 2),
    /** 148 by 210 mm, one column. */
    A5(148, 210, 1);

    private final double widthMm;
    private final double heightMm;
    private final int columns;

    Paper(double widthMm, double heightMm, int columns) {
      this.widthMm = widthMm;
      this.heightMm = heightMm;
      this.columns = columns;
    }

    /** Returns the width in points. */
    public double width() {
      return widthMm * POINT;
    }

    /** Returns the height in points. */
    public double height() {
      return heightMm * POINT;
    }
  }

  private BankSheetFigure(
      Session session, FigureStyle style, Paper paper, int page, List<String> rows) {
    this.session = session;
    this.style = style;
    this.paper = paper;
    this.page = page;
    this.rows = rows;
  }

  /** Returns the pages for a whole match. */
  public static List<Figure> pages(Session session, FigureStyle style, Paper paper) {
    List<String> hours = new ArrayList<>();
    FigureText words = new FigureText(session, style.units());
    for (long at = session.match().allIn(); at < session.match().allOut(); at += HALF_HOUR) {
      for (int i = 0; i < ROWS_A_HALF_HOUR; i++) {
        hours.add(i == 0 ? words.clock(at) : "");
      }
    }
    List<Figure> pages = new ArrayList<>();
    int from = 0;
    while (from < hours.size()) {
      int room = rowsOn(session, paper, pages.size()) * paper.columns;
      while (hours.size() < from + room) {
        // The rest of the last page is for whatever did not fit elsewhere.
        hours.add("");
      }
      int to = from + room;
      pages.add(
          new BankSheetFigure(
              session, style, paper, pages.size(), List.copyOf(hours.subList(from, to))));
      from = to;
    }
    return pages;
  }

  private static double top(Session session, int page) {
    // Title, then on the first page the lines beside the example, whichever is longer.
    int block = Math.max(session.lines().size() + 1, 8);
    return MARGIN + 30 + (page == 0 ? 13 * block + 10 : 0);
  }

  private static int rowsOn(Session session, Paper paper, int page) {
    return Math.max(4, (int) ((paper.height() - MARGIN - 20 - top(session, page) - 14) / ROW));
  }

  @Override
  public String title() {
    String title = session.occasion().title();
    return title.isBlank() ? "Bank sheet" : title;
  }

  @Override
  public String description() {
    return "Page "
        + (page + 1)
        + " of a sheet to fill in by pencil. Lines and codes: "
        + String.join(
            ", ",
            LineCodes.of(session.lines()).entrySet().stream()
                .map(e -> e.getValue() + " for " + name(e.getKey()))
                .toList())
        + ". Example: "
        + String.join("; ", BankSheetExample.rows(session, style.units()))
        + ".";
  }

  private String name(String lineId) {
    return session.line(lineId).map(Line::name).orElse(lineId);
  }

  @Override
  public double aspect() {
    return paper.width() / paper.height();
  }

  @Override
  public FigureStyle style() {
    return style;
  }

  @Override
  public void paint(Graphics2D g, double width, double height) {
    Pen pen = new Pen(g, style);
    g.scale(width / paper.width(), height / paper.height());
    pen.fill(pen.theme.panel(), 0, 0, paper.width(), paper.height());
    Font heading = Type.semiBold(14);
    double inner = paper.width() - 2 * MARGIN;
    pen.text(
        Pen.shortened(heading, inner, heading()), MARGIN, MARGIN + 12, heading, pen.theme.ink());
    if (page == 0) {
      paintLines(pen, inner / 2 - 8);
      paintExample(pen, MARGIN + inner / 2 + 8, inner / 2 - 8);
    }
    paintGrid(pen, inner);
    Font tiny = Type.regular(7.5);
    pen.text(
        Pen.shortened(
            tiny,
            inner,
            "cast, bite, hooked, landed, lost, foul, fed, move (dead, resting, plan, weather,"
                + " neighbour), off, net, sign, count, note"),
        MARGIN,
        paper.height() - MARGIN - 9,
        tiny,
        pen.theme.ink());
    pen.text(
        Pen.shortened(
            tiny,
            inner,
            "One event a row, with its time. Keep 30 m from power lines; pole down in lightning;"
                + " mind the bank."),
        MARGIN,
        paper.height() - MARGIN,
        tiny,
        pen.theme.secondInk());
  }

  private String heading() {
    FigureText words = new FigureText(session, style.units());
    String number = session.occasion().peg().number();
    return title()
        + ", "
        + DayAxis.say(session.occasion().date())
        + (number == null ? "" : ", peg " + number)
        + ", "
        + words.clock(session.match().allIn())
        + "–"
        + words.clock(session.match().allOut())
        + (page == 0 ? "" : ", sheet " + (page + 1));
  }

  private void paintLines(Pen pen, double width) {
    Map<String, String> codes = LineCodes.of(session.lines());
    double y = MARGIN + 34;
    Font strong = Type.semiBold(9.5);
    Font plain = Type.regular(9.5);
    pen.text("Write for the line", MARGIN, y, strong, pen.theme.ink());
    for (Line line : session.lines()) {
      y += 13;
      pen.text(codes.getOrDefault(line.id(), ""), MARGIN, y, strong, pen.theme.ink());
      Double distance = line.place().distanceM();
      String words =
          line.name() + (distance == null ? "" : ", " + style.units().distance(distance));
      pen.text(Pen.shortened(plain, width - 34, words), MARGIN + 34, y, plain, pen.theme.ink());
    }
  }

  private void paintExample(Pen pen, double x, double width) {
    double y = MARGIN + 34;
    Font strong = Type.semiBold(9.5);
    Font pencil = Type.regular(9.5).deriveFont(Font.ITALIC);
    pen.text("For example", x, y, strong, pen.theme.ink());
    for (String row : BankSheetExample.rows(session, style.units())) {
      y += 13;
      pen.text(Pen.shortened(pencil, width, row), x, y, pencil, pen.theme.ink());
      pen.line(pen.theme.hairline(), 0.6, x, y + 3, x + width, y + 3);
    }
  }

  private void paintGrid(Pen pen, double inner) {
    double top = top(session, page);
    int perColumn = rowsOn(session, paper, page);
    double gap = 10;
    double width = (inner - gap * (paper.columns - 1)) / paper.columns;
    double[] shares = {0.15, 0.13, 0.24, 0.48};
    String[] heads = {"Time", "Line", "What", "Fish, weight; bait, amount"};
    Font head = Type.semiBold(8);
    Font hour = Type.semiBold(10);
    for (int c = 0; c < paper.columns; c++) {
      int from = c * perColumn;
      int count = Math.min(perColumn, rows.size() - from);
      if (count <= 0) {
        break;
      }
      double left = MARGIN + c * (width + gap);
      double x = left;
      for (int i = 0; i < heads.length; i++) {
        pen.text(heads[i], x + 3, top + 9, head, pen.theme.secondInk());
        if (i > 0) {
          pen.line(pen.theme.hairline(), 0.6, x, top + 13, x, top + 13 + count * ROW);
        }
        x += width * shares[i];
      }
      for (int r = 0; r <= count; r++) {
        double y = top + 13 + r * ROW;
        boolean block = r == count || !rows.get(from + r).isEmpty();
        pen.line(
            block ? pen.theme.ink() : pen.theme.hairline(),
            block ? 0.9 : 0.6,
            left,
            y,
            left + width,
            y);
        if (r < count) {
          pen.text(rows.get(from + r), left + 2, y + ROW - 5, hour, pen.theme.secondInk());
        }
      }
    }
  }
}
