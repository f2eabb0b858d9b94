package org.fadeline.figure;

import java.util.Comparator;
import java.util.List;
import java.util.function.ToIntFunction;
import org.fadeline.analysis.season.Season;

/** What all figures of a season have in common. */
abstract class SeasonFigure extends StyledFigure {
  /** The sessions shown. */
  protected final Season season;

  /** Units and numbers in words. */
  protected final FigureText words;

  SeasonFigure(Season season, FigureStyle style, double aspect) {
    super(style, aspect);
    this.season = season;
    this.words = new FigureText(style.units());
  }

  /** Returns the radius of a session's point, pixels: the smaller the more there are. */
  static double pointRadius(int sessions) {
    return sessions > 400 ? 2 : sessions > 60 ? 3 : 4.5;
  }

  /** Returns what an axis shows, with what is left out so far as there is room. */
  final String captioned(Pen pen, double room, String what, String more) {
    String shorter = what.replaceAll(" \\(.*\\)", "");
    return Pen.fitting(
        pen.small,
        room,
        more.isEmpty() ? List.of(what, shorter) : List.of(what + ". " + more, what, shorter));
  }

  /**
   * Returns the rows that there is room for without one lying on another, the largest of them, in
   * their order; at least one.
   *
   * @param room height for all, pixels
   * @param row least height of one, pixels
   * @param size the larger the sooner shown
   */
  static <T> List<T> fitting(List<T> rows, double room, double row, ToIntFunction<T> size) {
    int fit = (int) Math.max(1, room / row);
    if (rows.size() <= fit) {
      return rows;
    }
    List<T> largest =
        rows.stream().sorted(Comparator.comparingInt(size).reversed()).limit(fit).toList();
    return rows.stream().filter(largest::contains).toList();
  }

  /** Says in the corner before the rows how many there was no room for. */
  static void paintLeftOut(Pen pen, int left, double room, double baseline) {
    if (left > 0) {
      List<String> said = List.of(left + " more in the table", left + " more", "+" + left);
      String text = Pen.fitting(pen.small, room, said);
      pen.text(text, 14, baseline, pen.small, pen.theme.secondInk());
    }
  }

  /** What is said where sessions that tell no date are not in the picture; empty without any. */
  final String undatedLeftOut() {
    int undated = season.sessions().size() - season.dated().size();
    return undated == 0 ? "" : "Undated, not shown: " + FigureText.sessions(undated);
  }
}
