package org.fadeline.report;

import java.time.format.DateTimeFormatter;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.stream.Collectors;
import org.fadeline.analysis.Fade;
import org.fadeline.analysis.FeedPut;
import org.fadeline.analysis.FirstBite;
import org.fadeline.analysis.Review;
import org.fadeline.analysis.SentenceText;
import org.fadeline.analysis.Spell;
import org.fadeline.analysis.compare.Comparison;
import org.fadeline.analysis.compare.Comparison.PairedLines;
import org.fadeline.analysis.compare.Comparison.Side;
import org.fadeline.analysis.compare.RatePair;
import org.fadeline.analysis.compare.RatioText;
import org.fadeline.analysis.compare.RunningCatch;
import org.fadeline.model.Line;
import org.fadeline.model.Units;
import org.fadeline.stats.LogRank;
import org.jspecify.annotations.Nullable;

/** A comparison of two sessions as plain text. */
public final class CompareText {
  private static final DateTimeFormatter DAY =
      DateTimeFormatter.ofPattern("EEEE d MMMM yyyy", Locale.UK);

  private final Comparison comparison;
  private final Units units;
  private final SentenceText first;
  private final SentenceText second;
  private final TextOut out = new TextOut();

  private CompareText(Comparison comparison, Units units) {
    this.comparison = comparison;
    this.units = units;
    this.first = new SentenceText(comparison.first().session(), units);
    this.second = new SentenceText(comparison.second().session(), units);
  }

  /** Returns the text, ending in a line feed. */
  public static String toText(Comparison comparison, Units units) {
    CompareText text = new CompareText(comparison, units);
    text.write();
    return text.out.toString();
  }

  private void write() {
    out.paragraph("First:  ", session(comparison.first(), first));
    out.paragraph("Second: ", session(comparison.second(), second));
    out.paragraph("", comparison.setup().alignment().stated());
    out.heading("What differed most");
    for (Comparison.Finding finding : comparison.findings().sentences()) {
      out.paragraph("  ", finding.text());
    }
    out.paragraph("  ", comparison.findings().caution());
    rates();
    running();
    for (PairedLines pair : comparison.lines().pairs()) {
      out.heading(
          SentenceText.sentence(pair.pair().name())
              + " (paired by "
              + pair.pair().by().word()
              + ")");
      side("first   ", pair.first(), first);
      side("second  ", pair.second(), second);
      firstBites(pair.firstBites());
    }
    alone("Only in the first match: ", comparison.lines().onlyFirst(), first);
    alone("Only in the second match: ", comparison.lines().onlySecond(), second);
    out.heading("First bites after feeding, all paired lines");
    firstBites(comparison.lines().firstBites());
    out.paragraph("  ", SentenceText.LEAVING_SHORTENS);
    String withheld = comparison.lines().bitesWithheld();
    if (withheld != null) {
      out.line("");
      out.paragraph("", withheld);
    }
  }

  private static String session(Review review, SentenceText words) {
    Review.Summary summary = review.summary();
    return review.session().occasion().title()
        + ", "
        + DAY.format(review.session().occasion().date())
        + ", "
        + words.clocks(review.session().match().allIn(), review.session().match().allOut())
        + ": "
        + SentenceText.fish(summary.caught().landed())
        + ", "
        + words.weight(summary.caught().weightG())
        + " ("
        + summary.weightFrom().word()
        + "). Record: "
        + summary.grade().label()
        + ".";
  }

  private void rates() {
    out.heading("An hour fished, first over second (limits at 95%)");
    List<List<String>> rows = new ArrayList<>();
    rows.add(List.of("line", "", "first", "second", "ratio", "fish alone", "days differ"));
    add(rows, "all lines", comparison.lines().whole());
    for (PairedLines pair : comparison.lines().pairs()) {
      add(rows, pair.pair().name(), pair.rates());
    }
    out.table(rows);
    out.paragraph(
        "  ",
        String.format(
            Locale.ROOT,
            "The wider limits allow for days that differ by themselves (spread %.2f of the log"
                + " rate, %s).",
            comparison.setup().days().sigma(),
            comparison.setup().days().learned()
                ? "learned from your season"
                : "the usual value, not learned: so no p-value is given"));
  }

  /** The catch of both at each hour of the axis, and at its end. */
  private void running() {
    List<RunningCatch.Point> points = comparison.running().points();
    if (points.isEmpty()) {
      return;
    }
    out.heading("Running catch, first less second");
    List<List<String>> rows = new ArrayList<>();
    rows.add(List.of("by", "first", "", "second", "", "difference", ""));
    double end = points.get(points.size() - 1).minutes();
    double start = Math.floor(points.get(0).minutes() / 60) * 60;
    for (double at = start + 60; at < end; at += 60) {
      rows.add(running(at));
    }
    rows.add(running(end));
    out.table(rows);
  }

  private List<String> running(double minutes) {
    RunningCatch.Point point = comparison.running().at(minutes);
    Integer fish = point.fishDifference();
    Double grams = point.gramsDifference();
    return List.of(
        String.format(Locale.ROOT, "%.0f min", minutes),
        point.first() == null ? "–" : SentenceText.fish(point.first().fish()),
        soFar(point.first()),
        point.second() == null ? "–" : SentenceText.fish(point.second().fish()),
        soFar(point.second()),
        fish == null ? "–" : String.format(Locale.ROOT, "%+d fish", fish),
        grams == null ? "–" : (grams < 0 ? "-" : "+") + first.weight(Math.abs(grams)));
  }

  private String soFar(RunningCatch.@Nullable SoFar soFar) {
    return soFar == null || soFar.grams() == null ? "–" : first.weight(soFar.grams());
  }

  private void add(List<List<String>> rows, String name, Comparison.PairRates rates) {
    rows.add(row(name, "weight", rates.weight(), true));
    rows.add(row("", "fish", rates.fish(), false));
    RatePair bites = rates.bites();
    if (bites != null) {
      rows.add(row("", "bites", bites, false));
    }
  }

  private List<String> row(String name, String what, RatePair pair, boolean weight) {
    RatePair.Ratio ratio = pair.ratio();
    Double value = ratio == null ? null : ratio.value();
    return List.of(
        name,
        what,
        rate(pair.first(), weight),
        rate(pair.second(), weight),
        value == null ? "–" : RatioText.of(value),
        ratio == null ? "–" : RatioText.of(ratio.fishing()),
        ratio == null ? "–" : RatioText.of(ratio.widest()));
  }

  private String rate(RatePair.Side side, boolean weight) {
    if (!(side.hours() > 0)) {
      return "not fished";
    }
    if (side.rate() == null) {
      return "–";
    }
    String told = weight ? first.weightRate(side.rate()) : SentenceText.rate(side.rate());
    // The heading says that it is an hour.
    return told.replace(" an hour", "");
  }

  private void side(String lead, Side side, SentenceText words) {
    out.paragraph("  " + lead, told(side, words));
    stays(side);
  }

  private void stays(Side side) {
    side.stays().forEach(stay -> out.paragraph("    ", stay.wording().text()));
  }

  private String told(Side side, SentenceText words) {
    if (side.line().spells().isEmpty()) {
      return "Not fished. " + feed(side.feed());
    }
    StringBuilder text = new StringBuilder(place(side));
    text.append(SentenceText.fish(side.caught().landed()));
    if (side.caught().weightG() > 0) {
      text.append(", ").append(words.weight(side.caught().weightG()));
    }
    text.append(", in ")
        .append(SentenceText.minutes(side.line().fishedHours() * 60))
        .append(" fished: ");
    text.append(
        side.line().spells().stream()
            .map(s -> words.clocks(s.span().from(), s.span().to()))
            .collect(Collectors.joining(", ")));
    text.append(". Left ").append(TextOut.count(side.moves(), "time", "times")).append(". ");
    for (Fade fade : side.line().fades()) {
      text.append(fade(side.line().spells().get(fade.spell()), fade, words));
    }
    if (side.minutesPastPlain() > 0) {
      text.append("Fished past plain for ")
          .append(SentenceText.minutes(side.minutesPastPlain()))
          .append(". ");
    }
    text.append(feed(side.feed())).append(' ').append(median(side.line().firstBite()));
    return text.toString().strip();
  }

  /** Where the line lies, for who cannot see the two pegs. */
  private String place(Side side) {
    Line.Place place = side.line().line().place();
    if (place.distanceM() == null) {
      return "";
    }
    Double bearing = place.bearingDegrees();
    String way =
        bearing == null
            ? ""
            : bearing == 0
                ? " straight out"
                : String.format(
                    Locale.ROOT, ", %.0f° %s", Math.abs(bearing), bearing < 0 ? "left" : "right");
    return units.distance(place.distanceM()) + way + ": ";
  }

  private static String fade(Spell spell, Fade fade, SentenceText words) {
    Long plain = fade.call().plainAt();
    return fade.verdict()
        + " (from "
        + words.clock(spell.span().from())
        + (plain == null ? "" : ", plain by " + words.clock(plain))
        + "). ";
  }

  private static String feed(FeedPut feed) {
    if (feed.feeds() == 0) {
      return "No feed logged.";
    }
    List<String> amounts = new ArrayList<>();
    feed.amounts()
        .forEach((unit, v) -> amounts.add(String.format(Locale.ROOT, "%.0f %s", v, unit.word())));
    if (feed.withoutAmount() > 0) {
      amounts.add(feed.withoutAmount() + " with no amount logged");
    }
    return "Fed "
        + TextOut.count(feed.feeds(), "time", "times")
        + ": "
        + String.join(", ", amounts)
        + (feed.baits().isEmpty() ? "" : " (" + String.join(", ", feed.baits()) + ")")
        + (feed.openPatterns() == 0
            ? ""
            : ", " + TextOut.count(feed.openPatterns(), "pattern", "patterns") + " without an end")
        + ".";
  }

  private static String median(FirstBite firstBite) {
    FirstBite.Median median = firstBite.median();
    if (firstBite.tally().episodes() == 0) {
      return "";
    }
    return median == null
        ? "Too few feeds fished over to give a time to the first bite."
        : String.format(
            Locale.ROOT,
            "Half the first bites within %.0f min of feeding (%s–%s).",
            median.minutes(),
            TextOut.minutesOrNotReached(median.low()),
            TextOut.minutesOrNotReached(median.high()));
  }

  private void firstBites(LogRank test) {
    if (test.chiSquare() == null || test.p() == null) {
      out.paragraph("  ", "First bites: too few feeds of both to set against each other.");
      return;
    }
    out.paragraph(
        "  ",
        String.format(
            Locale.ROOT,
            "First bites, first match: %.0f where equal days would give %.1f; second: %.0f where"
                + " they would give %.1f (log-rank χ² %.2f, p %s).",
            test.observed(),
            test.expected(),
            test.observedOther(),
            test.expectedOther(),
            test.chiSquare(),
            test.p() < 0.001 ? "under 0.001" : String.format(Locale.ROOT, "%.3f", test.p())));
  }

  private void alone(String heading, List<Side> sides, SentenceText words) {
    for (Side side : sides) {
      out.heading(heading + side.line().line().name());
      out.paragraph("  ", told(side, words));
      stays(side);
    }
  }
}
