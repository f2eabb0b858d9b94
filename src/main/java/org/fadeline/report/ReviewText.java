package org.fadeline.report;

import java.time.format.DateTimeFormatter;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import org.fadeline.analysis.Course;
import org.fadeline.analysis.Fade;
import org.fadeline.analysis.FirstBite;
import org.fadeline.analysis.LineOrWater;
import org.fadeline.analysis.LineReview;
import org.fadeline.analysis.Rate;
import org.fadeline.analysis.Review;
import org.fadeline.analysis.ReviewSettings;
import org.fadeline.analysis.StayOrGo;
import org.fadeline.model.Occasion;
import org.fadeline.model.RoughText;
import org.fadeline.model.Units;
import org.fadeline.model.WeightText;
import org.jspecify.annotations.Nullable;

/** The review as plain text, for reading at a prompt or printing. */
public final class ReviewText {
  private static final DateTimeFormatter DAY =
      DateTimeFormatter.ofPattern("EEEE d MMMM yyyy", Locale.UK);
  private static final DateTimeFormatter CLOCK = DateTimeFormatter.ofPattern("HH:mm", Locale.UK);
  private static final int WIDTH = 92;

  private final Review review;
  private final Units units;
  private final StringBuilder out = new StringBuilder();

  private ReviewText(Review review, Units units) {
    this.review = review;
    this.units = units;
  }

  /** Returns the text, ending in a line feed. */
  public static String toText(Review review, Units units) {
    ReviewText text = new ReviewText(review, units);
    text.write();
    return text.out.toString();
  }

  private void write() {
    head();
    lessons();
    lines();
    stays();
    firstBites();
    finish();
    warnings();
    cautions();
  }

  private String clock(long at) {
    return CLOCK.format(review.session().clock(at));
  }

  private String weight(double grams) {
    return WeightText.format(grams, units.weight());
  }

  private void heading(String text) {
    out.append('\n').append(text).append('\n');
  }

  private void head() {
    Occasion occasion = review.session().occasion();
    Review.Summary summary = review.summary();
    String peg = occasion.peg().number() == null ? "" : ", peg " + occasion.peg().number();
    out.append(occasion.title()).append(peg).append('\n');
    out.append(DAY.format(occasion.date()))
        .append(", all in ")
        .append(clock(review.session().match().allIn()))
        .append(", all out ")
        .append(clock(review.session().match().allOut()))
        .append('\n');
    out.append(count(summary.caught().landed(), "fish", "fish"))
        .append(", ")
        .append(weight(summary.caught().weightG()))
        .append(" (")
        .append(summary.weightFrom().word())
        .append("), ")
        .append(count(summary.caught().bites(), "bite", "bites"))
        .append(", ")
        .append(summary.caught().lost())
        .append(" lost, ")
        .append(summary.caught().foul())
        .append(" foul-hooked. Record: ")
        .append(summary.grade().label())
        .append(".\n");
    double weighed =
        review.session().outcome().weighIn().stream().mapToDouble(n -> n.grams()).sum();
    if (weighed > 0 && summary.caught().weightG() > 0) {
      out.append("At the scales ")
          .append(weight(weighed))
          .append(": ")
          .append(String.format(Locale.ROOT, "%.2f", weighed / summary.caught().weightG()))
          .append(" times the estimates.\n");
    }
  }

  private static String count(int n, String one, String many) {
    return n + " " + (n == 1 ? one : many);
  }

  private void lessons() {
    heading("Lessons");
    for (Course.Lesson lesson : review.course().lessons()) {
      paragraph(clock(lesson.at()) + "  ", lesson.text());
    }
    if (review.course().lessons().isEmpty()) {
      paragraph("  ", "This record cannot tell any.");
    }
  }

  private void lines() {
    heading("What each line paid (limits at 95%)");
    List<String[]> rows = new ArrayList<>();
    rows.add(new String[] {"line", "fished", "fish", "weight", "weight an hour", "fish an hour"});
    for (LineReview line : review.lines()) {
      if (line.spells().isEmpty()) {
        rows.add(new String[] {line.line().name(), "not fished", "", "", "", ""});
        continue;
      }
      rows.add(
          new String[] {
            line.line().name(),
            Math.round(line.fishedHours() * 60) + " min",
            Integer.toString(line.caught().landed()),
            weight(line.caught().weightG()),
            line.rates().weight() == null ? "–" : weightRate(line.rates().weight()),
            line.rates().fish() == null ? "–" : rate(line.rates().fish())
          });
    }
    table(rows);
    for (LineReview line : review.lines()) {
      LineReview.WithUnassigned range = line.rates().withUnassigned();
      if (range != null) {
        paragraph(
            "  ",
            line.line().name()
                + ", had the time that belongs to no line been fished on it: "
                + (range.weight() == null ? "" : weightRate(range.weight()) + " and ")
                + (range.fish() == null ? "–" : rate(range.fish()))
                + " fish an hour.");
      }
    }
  }

  private String weightRate(Rate rate) {
    return RoughText.weight(rate.perHour(), units.weight())
        + " ("
        + RoughText.weights(rate.low(), rate.high(), units.weight())
        + ")";
  }

  private static String rate(Rate rate) {
    return String.format(Locale.ROOT, "%.1f (%.1f–%.1f)", rate.perHour(), rate.low(), rate.high());
  }

  private void stays() {
    heading("Stay or go, every move both ways");
    for (StayOrGo stay : review.stays()) {
      String name =
          review
              .session()
              .line(stay.spell().lineId())
              .map(l -> l.name())
              .orElse(stay.spell().lineId());
      out.append(name).append('\n');
      paragraph("  ", stay.wording().text());
      LineOrWater quiet = stay.quiet();
      if (quiet != null) {
        paragraph("  ", quiet.text());
        quiet.parts().forEach(part -> paragraph("    ", part.text()));
      }
      String reason = stay.spell().reasonForLeaving(review.session());
      if (reason != null) {
        paragraph("  ", "Reason noted for leaving: " + reason + ".");
      }
    }
    if (review.stays().isEmpty()) {
      paragraph("  ", "No line was fished.");
    }
    boolean plain =
        review.stays().stream()
            .map(StayOrGo::fade)
            .anyMatch(f -> f != null && f.call().plainAt() != null);
    boolean any = review.stays().stream().map(StayOrGo::fade).anyMatch(ReviewText::faded);
    if (any && !plain) {
      paragraph("  ", "None of these fades was plain while the line was still being fished.");
    }
  }

  private static boolean faded(@Nullable Fade fade) {
    return fade != null && fade.probability() >= ReviewSettings.PROBABLE_FROM;
  }

  private void firstBites() {
    heading("First bite after feeding");
    for (LineReview line : review.lines()) {
      FirstBite first = line.firstBite();
      int episodes = first.tally().episodes();
      if (episodes == 0) {
        continue;
      }
      String fed = count(episodes, "feed", "feeds") + " fished over";
      String told;
      if (first.fromMinute() == null) {
        told =
            fed
                + ", "
                + count(first.tally().bites(), "first bite", "first bites")
                + ": too few feeds for a curve";
      } else if (first.median() == null) {
        told = fed + ": half had not had a bite when it ended";
      } else {
        told =
            fed
                + String.format(
                    Locale.ROOT,
                    ": half the first bites within %.0f min of feeding (%s–%s)",
                    first.median().minutes(),
                    minutes(first.median().low()),
                    minutes(first.median().high()));
        if (first.fromMinute() > 0) {
          told += String.format(Locale.ROOT, ", given none before %.0f min", first.fromMinute());
        }
      }
      paragraph("  ", line.line().name() + ": " + told + ".");
    }
    paragraph(
        "  ", "Leaving a line because it is dead makes these times look shorter than they are.");
  }

  private static String minutes(@Nullable Double value) {
    return value == null ? "not reached" : String.format(Locale.ROOT, "%.0f", value);
  }

  /** The finish as it could be told with whole hours left, and how far to believe it. */
  private void finish() {
    List<Course.Pace> told =
        review.course().pace().stream()
            .filter(p -> hoursLeft(p) % 1 == 0 && hoursLeft(p) <= 3)
            .toList();
    if (told.isEmpty()) {
      return;
    }
    heading("The finish as it could be told, at the present rate of the line being fished");
    for (Course.Pace pace : told) {
      paragraph(
          "  " + clock(pace.at()) + "  ",
          String.format(
              Locale.ROOT,
              "%.0f h left, %s so far: %s by all out, 9 chances in 10 if that rate lasts; %s if"
                  + " the line may be tiring as it has so far.",
              hoursLeft(pace),
              count(pace.fishSoFar(), "fish", "fish"),
              range(pace.fish(), pace.weight()),
              range(pace.tiring().fish(), pace.tiring().weight())));
    }
    paragraph(
        "  ",
        "Lines tire while they are fished: on simulated lines that do, the finish lay in the first"
            + " range in 55 to 75% of matches two and three hours out and below it in the others,"
            + " and in the second, of fish, in 86% or more. On lines whose rate changes by steps"
            + " either way both hold it in 80 to 86%.");
  }

  private String range(Course.Finish fish, Course.@Nullable Finish weight) {
    return String.format(
        Locale.ROOT,
        "%.0f to %.0f fish%s",
        fish.low(),
        fish.high(),
        weight == null ? "" : ", " + weight(weight.low()) + " to " + weight(weight.high()));
  }

  private double hoursLeft(Course.Pace pace) {
    return (review.session().match().allOut() - pace.at()) / 3_600_000.0;
  }

  private void warnings() {
    if (review.course().warnings().isEmpty()) {
      return;
    }
    heading("About the record");
    for (Course.Warning warning : review.course().warnings()) {
      Long at = warning.at();
      paragraph("  ", (at == null ? "" : clock(at) + "  ") + warning.text());
    }
  }

  private void cautions() {
    out.append('\n');
    paragraph(
        "",
        "Carbon poles conduct: keep 30 m from power lines. Your water's rules and the match"
            + " organiser decide.");
  }

  private void table(List<String[]> rows) {
    int columns = rows.get(0).length;
    int[] widths = new int[columns];
    for (String[] row : rows) {
      for (int c = 0; c < columns; c++) {
        widths[c] = Math.max(widths[c], row[c].length());
      }
    }
    for (String[] row : rows) {
      StringBuilder text = new StringBuilder("  ");
      for (int c = 0; c < columns; c++) {
        String pad = " ".repeat(widths[c] - row[c].length());
        text.append(c == 0 ? row[c] + pad : pad + row[c]).append("  ");
      }
      out.append(text.toString().stripTrailing()).append('\n');
    }
  }

  /** Wraps the text under its lead. */
  private void paragraph(String lead, String text) {
    String indent = " ".repeat(lead.length());
    StringBuilder line = new StringBuilder(lead);
    for (String word : text.split(" ", -1)) {
      if (line.length() + word.length() > WIDTH && line.length() > lead.length()) {
        out.append(line.toString().stripTrailing()).append('\n');
        line = new StringBuilder(indent);
      }
      line.append(word).append(' ');
    }
    out.append(line.toString().stripTrailing()).append('\n');
  }
}
