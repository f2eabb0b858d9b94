package org.fadeline.report;

import java.time.format.DateTimeFormatter;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import org.fadeline.analysis.Course;
import org.fadeline.analysis.Fade;
import org.fadeline.analysis.LeavingRule;
import org.fadeline.analysis.LeavingRule.Withheld;
import org.fadeline.analysis.LineOrWater;
import org.fadeline.analysis.LineReview;
import org.fadeline.analysis.NetScale;
import org.fadeline.analysis.Rate;
import org.fadeline.analysis.Recovery;
import org.fadeline.analysis.Review;
import org.fadeline.analysis.ReviewSettings;
import org.fadeline.analysis.SentenceText;
import org.fadeline.analysis.StayOrGo;
import org.fadeline.analysis.TimeSpan;
import org.fadeline.model.Line;
import org.fadeline.model.Occasion;
import org.fadeline.model.RoughText;
import org.fadeline.model.Units;
import org.jspecify.annotations.Nullable;

/** The review as plain text, for reading at a prompt or printing. */
public final class ReviewText {
  private static final DateTimeFormatter DAY =
      DateTimeFormatter.ofPattern("EEEE d MMMM yyyy", Locale.UK);

  private final Review review;
  private final Units units;
  private final SentenceText words;
  private final TextOut out = new TextOut();

  private ReviewText(Review review, Units units) {
    this.review = review;
    this.units = units;
    this.words = new SentenceText(review.session(), units);
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
    leaving();
    firstBites();
    finish();
    warnings();
    cautions();
  }

  private void head() {
    Occasion occasion = review.session().occasion();
    Review.Summary summary = review.summary();
    String peg = occasion.peg().number() == null ? "" : ", peg " + occasion.peg().number();
    out.line(occasion.title() + peg);
    out.line(
        DAY.format(occasion.date())
            + ", all in "
            + words.clock(review.session().match().allIn())
            + ", all out "
            + words.clock(review.session().match().allOut()));
    out.line(
        TextOut.count(summary.caught().landed(), "fish", "fish")
            + ", "
            + words.weight(summary.caught().weightG())
            + " ("
            + summary.weightFrom().word()
            + "), "
            + TextOut.count(summary.caught().bites(), "bite", "bites")
            + ", "
            + summary.caught().lost()
            + " lost, "
            + summary.caught().foul()
            + " foul-hooked. Record: "
            + summary.grade().label()
            + ".");
    NetScale.Total nets = NetScale.total(NetScale.of(review.session()));
    if (nets.scalesG() != null && nets.factor() != null) {
      out.line(
          String.format(
              Locale.ROOT,
              "At the scales %s against %s logged, foul-hooked fish included: %.2f times.",
              words.weight(nets.scalesG()),
              words.weight(nets.logged().grams()),
              nets.factor()));
    }
  }

  private void lessons() {
    out.heading("Lessons");
    for (Course.Lesson lesson : review.course().lessons()) {
      out.paragraph(words.clock(lesson.at()) + "  ", lesson.text());
    }
    if (review.course().lessons().isEmpty()) {
      out.paragraph("  ", "This record cannot tell any.");
    }
  }

  private void lines() {
    out.heading("What each line paid (limits at 95%)");
    List<List<String>> rows = new ArrayList<>();
    rows.add(List.of("line", "fished", "fish", "weight", "weight an hour", "fish an hour"));
    for (LineReview line : review.lines()) {
      if (line.spells().isEmpty()) {
        rows.add(List.of(line.line().name(), "not fished", "", "", "", ""));
        continue;
      }
      rows.add(
          List.of(
              line.line().name(),
              Math.round(line.fishedHours() * 60) + " min",
              Integer.toString(line.caught().landed()),
              words.weight(line.caught().weightG()),
              line.rates().weight() == null ? "–" : weightRate(line.rates().weight()),
              line.rates().fish() == null ? "–" : rate(line.rates().fish())));
    }
    out.table(rows);
    for (LineReview line : review.lines()) {
      LineReview.WithUnassigned range = line.rates().withUnassigned();
      if (range != null) {
        out.paragraph(
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
    out.heading("Stay or go, every move both ways");
    for (StayOrGo stay : review.stays()) {
      String name =
          review
              .session()
              .line(stay.spell().lineId())
              .map(Line::name)
              .orElse(stay.spell().lineId());
      out.line(name);
      out.paragraph("  ", stay.wording().text());
      stay.notes().forEach(note -> out.paragraph("    ", note));
      Recovery recovery = stay.recovery();
      if (recovery != null) {
        out.paragraph("  ", recovery.wording());
      }
      LineOrWater quiet = stay.quiet();
      if (quiet != null) {
        out.paragraph("  ", quiet.text());
        quiet.parts().forEach(part -> out.paragraph("    ", part.text()));
      }
      String reason = stay.spell().reasonForLeaving(review.session());
      if (reason != null) {
        out.paragraph("  ", "Reason noted for leaving: " + reason + ".");
      }
    }
    if (review.stays().isEmpty()) {
      out.paragraph("  ", "No line was fished.");
    }
    boolean plain =
        review.stays().stream()
            .map(StayOrGo::fade)
            .anyMatch(f -> f != null && f.call().plainAt() != null);
    boolean any = review.stays().stream().map(StayOrGo::fade).anyMatch(ReviewText::faded);
    if (any && !plain) {
      out.paragraph("  ", "None of these fades was plain while the line was still being fished.");
    }
  }

  /** Lines with too few visits are told of together. */
  private void leaving() {
    out.heading("How long a stay pays, a guide");
    List<String> few = new ArrayList<>();
    for (LineReview line : review.lines()) {
      LeavingRule rule = line.leaving();
      if (rule != null && rule.withheld() == Withheld.FEW_VISITS) {
        few.add(words.line(line.line().id()));
      } else if (rule != null) {
        out.paragraph("  ", rule.wording());
      }
    }
    if (!few.isEmpty()) {
      out.paragraph(
          "  ",
          "It takes "
              + LeavingRule.LEAST_VISITS
              + " visits to a line to tell; there were fewer to "
              + String.join(", ", few)
              + ".");
    }
  }

  private static boolean faded(@Nullable Fade fade) {
    return fade != null && fade.probability() >= ReviewSettings.PROBABLE_FROM;
  }

  private void firstBites() {
    out.heading("First bite after feeding");
    if (review.lines().stream().allMatch(l -> l.firstBite().tally().episodes() == 0)) {
      out.paragraph("  ", "No line was fed and then fished in this record.");
      return;
    }
    for (LineReview line : review.lines()) {
      if (line.firstBite().tally().episodes() > 0) {
        out.paragraph("  ", line.line().name() + ": " + FirstBiteText.of(line.firstBite()));
      }
    }
    out.paragraph("  ", SentenceText.LEAVING_SHORTENS);
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
    out.heading("The finish as it could be told, at the present rate of the line being fished");
    for (Course.Pace pace : told) {
      out.paragraph(
          "  " + words.clock(pace.at()) + "  ",
          String.format(
              Locale.ROOT,
              "%.0f h left, %s so far: %s by all out, 9 chances in 10 if that rate lasts; %s if"
                  + " the line may be tiring as it has so far.",
              hoursLeft(pace),
              TextOut.count(pace.fishSoFar(), "fish", "fish"),
              range(pace.fish(), pace.weight()),
              range(pace.tiring().fish(), pace.tiring().weight())));
    }
    out.paragraph(
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
        weight == null
            ? ""
            : ", " + words.weight(weight.low()) + " to " + words.weight(weight.high()));
  }

  private double hoursLeft(Course.Pace pace) {
    return (review.session().match().allOut() - pace.at()) / TimeSpan.MILLIS_PER_HOUR;
  }

  private void warnings() {
    if (review.course().warnings().isEmpty()) {
      return;
    }
    out.heading("About the record");
    for (Course.Warning warning : review.course().warnings()) {
      Long at = warning.at();
      out.paragraph("  ", (at == null ? "" : words.clock(at) + "  ") + warning.text());
    }
  }

  private void cautions() {
    out.line("");
    out.paragraph(
        "",
        "Carbon poles conduct: keep 30 m from power lines. Your water's rules and the match"
            + " organiser decide.");
  }
}
