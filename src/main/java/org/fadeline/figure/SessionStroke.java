package org.fadeline.figure;

import java.awt.geom.Line2D;
import java.util.List;
import java.util.Locale;
import org.fadeline.model.Session;

/**
 * How two sessions are told apart in every picture of both, hue being the line's: whole stroke and
 * full marks for the first, dashed stroke and open marks for the second.
 */
enum SessionStroke {
  /** The first session. */
  FIRST("First"),
  /** The second session. */
  SECOND("Second");

  private final String word;

  SessionStroke(String word) {
    this.word = word;
  }

  /** Returns the pattern of its strokes, in multiples of their width; empty for a whole one. */
  float[] dash() {
    return this == FIRST ? new float[0] : new float[] {3.5f, 2};
  }

  /** Returns the words that tell its stroke: "first (whole)", "second (dashed)". */
  String words() {
    return word.toLowerCase(Locale.ROOT) + (this == FIRST ? " (whole)" : " (dashed)");
  }

  /** Draws a piece of its stroke and what session it is. */
  void paintHeading(Pen pen, Session session, double x, double baseline, double width) {
    double length = 26 * pen.style.textScale();
    String day = ": " + DayAxis.say(session.occasion().date());
    String title =
        ": " + session.occasion().title() + ", " + DayAxis.say(session.occasion().date());
    // Both are told in the same way: by what the longer word leaves room for.
    String what =
        Pen.fitting(
            pen.strong,
            width - length - 8 - Type.width(pen.strong, SECOND.word),
            List.of(title, day));
    double middle = baseline - Type.drop(pen.strong);
    pen.stroke(pen.theme.ink(), 2.2, dash(), new Line2D.Double(x, middle, x + length, middle));
    pen.text(word + what, x + length + 8, baseline, pen.strong, pen.theme.ink());
  }
}
