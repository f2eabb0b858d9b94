package org.fadeline.report;

import java.util.Locale;
import org.fadeline.analysis.FirstBite;
import org.fadeline.analysis.FirstBite.LeavingStep;
import org.fadeline.analysis.FirstBite.Times;

/** Times to first bite of one line, in a sentence or three. */
final class FirstBiteText {
  private FirstBiteText() {}

  /** Returns the words, from the number of feeds on. */
  static String of(FirstBite first) {
    StringBuilder text = new StringBuilder();
    text.append(TextOut.count(first.tally().episodes(), "feed", "feeds")).append(" fished over");
    if (first.fromMinute() == null) {
      text.append(", ")
          .append(TextOut.count(first.tally().bites(), "first bite", "first bites"))
          .append(": too few feeds for a curve.");
    } else {
      text.append(": ").append(half(first.sinceFeed(), " of feeding")).append('.');
    }
    if (first.baitIn().fromMinute() != null) {
      text.append(" Counting only the minutes with a bait in, ")
          .append(half(first.baitIn(), ""))
          .append('.');
    }
    LeavingStep last = first.sinceFeed().leaving().last();
    if (last != null && last.left() > 0) {
      text.append(
          String.format(
              Locale.ROOT,
              " With leaving counted as an end of its own: %.0f%% bitten, %.0f%% left without a"
                  + " bite by %.0f min.",
              100 * last.bitten(),
              100 * last.left(),
              last.minutes()));
    }
    return text.toString();
  }

  private static String half(Times times, String since) {
    if (times.median() == null) {
      return "half had not had a bite when it ended";
    }
    String text =
        String.format(
            Locale.ROOT,
            "half the first bites within %.0f min%s (%s–%s)",
            times.median().minutes(),
            since,
            TextOut.minutesOrNotReached(times.median().low()),
            TextOut.minutesOrNotReached(times.median().high()));
    Double from = times.fromMinute();
    return from != null && from >= 0.5
        ? text + String.format(Locale.ROOT, ", given none before %.0f min", from)
        : text;
  }
}
