package org.fadeline.figure;

import java.util.List;
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

  /** What is said where sessions that tell no date are not in the picture; empty without any. */
  final String undatedLeftOut() {
    int undated = season.sessions().size() - season.dated().size();
    return undated == 0 ? "" : "Undated, not shown: " + FigureText.sessions(undated);
  }
}
