package org.fadeline.analysis.compare;

import java.time.LocalDate;
import java.time.format.DateTimeFormatter;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import org.fadeline.analysis.LineReview;
import org.fadeline.analysis.Review;
import org.fadeline.analysis.SentenceText;
import org.fadeline.analysis.compare.Comparison.Finding;
import org.fadeline.analysis.compare.Comparison.Findings;
import org.fadeline.analysis.compare.Comparison.Lines;
import org.fadeline.analysis.compare.Comparison.PairedLines;
import org.fadeline.analysis.compare.Comparison.Side;
import org.fadeline.model.Units;
import org.fadeline.stats.Interval;
import org.fadeline.stats.LogRank;
import org.jspecify.annotations.Nullable;

/**
 * Says what differed most. The difference of two catches is shared out exactly over the lines: a
 * paired line's share is what it paid (difference of its rates over the mean of its times) and how
 * long it was fished (difference of its times at the mean of its rates); a line of one session
 * alone is its whole catch (Kitagawa 1955, JASA 50:1168–1194, components of a difference between
 * two rates, here of two products). Shares are in weight, or in fish where a weight is missing.
 */
final class WhatDiffered {
  static final String CAUTION =
      "Two days differ in more than what is set side by side here: weather, peg, fish and company."
          + " One match of each cannot tell which of them made the difference.";

  private static final int MOST = 3;
  private static final double FIRST_BITES_BELOW_P = 0.05;

  /** A share below this part of both catches together is not worth a sentence. */
  private static final double LEAST_SHARE = 0.01;

  private static final DateTimeFormatter DAY = DateTimeFormatter.ofPattern("d MMMM", Locale.UK);
  private static final DateTimeFormatter DAY_AND_YEAR =
      DateTimeFormatter.ofPattern("d MMMM yyyy", Locale.UK);

  private final Review first;
  private final Review second;
  private final Lines lines;
  private final SentenceText words;
  private final boolean weights;
  private final String one;
  private final String other;
  private final String in;

  WhatDiffered(Review first, Review second, Lines lines, Units units) {
    this.first = first;
    this.second = second;
    this.lines = lines;
    this.words = new SentenceText(first.session(), units);
    this.weights = lines.whole().weight().ratio() != null;
    LocalDate day1 = first.session().occasion().date();
    LocalDate day2 = second.session().occasion().date();
    DateTimeFormatter format = day1.getYear() == day2.getYear() ? DAY : DAY_AND_YEAR;
    boolean apart = !day1.equals(day2);
    this.one = apart ? format.format(day1) : "the first match";
    this.other = apart ? format.format(day2) : "the second match";
    this.in = apart ? "on " : "in ";
  }

  Findings tell() {
    List<Finding> told = new ArrayList<>();
    told.add(whole());
    List<Share> shares = shares();
    Finding firstBites = firstBites();
    int room = MOST - told.size() - (firstBites == null ? 0 : 1);
    shares.stream().limit(room).forEach(s -> told.add(s.finding));
    if (firstBites != null) {
      told.add(firstBites);
    }
    if (told.size() == 1) {
      told.add(
          new Finding(
              null,
              null,
              "No line differed in what it paid or in how long it was fished by more than a"
                  + " hundredth of the catch."));
    }
    return new Findings(told, CAUTION);
  }

  private Finding whole() {
    RatePair rate = weights ? lines.whole().weight() : lines.whole().fish();
    String gave =
        SentenceText.sentence(one)
            + " gave "
            + caught(first)
            + " in "
            + SentenceText.minutes(rate.first().hours() * 60)
            + " fished, "
            + other
            + " "
            + caught(second)
            + " in "
            + SentenceText.minutes(rate.second().hours() * 60)
            + "; "
            + ratio(rate)
            + ".";
    return new Finding(null, null, gave);
  }

  private String caught(Review review) {
    int fish = review.summary().caught().landed();
    return SentenceText.fish(fish)
        + (weights ? " for " + words.weight(review.summary().caught().weightG()) : "");
  }

  /** Says the ratio with both limits, or why there is none. */
  private static String ratio(RatePair pair) {
    RatePair.Ratio ratio = pair.ratio();
    if (ratio == null || ratio.value() == null) {
      return "this record cannot tell the ratio of what they paid an hour";
    }
    Interval days = ratio.widest();
    boolean daysAlone = days.contains(1);
    return String.format(
        Locale.ROOT,
        "an hour fished, that is %s times as much (%s–%s on these fish alone, %s–%s allowing for"
            + " days that differ by themselves%s)",
        times(ratio.value()),
        times(ratio.fishing().low()),
        times(ratio.fishing().high()),
        times(days.low()),
        times(days.high()),
        daysAlone ? ", and that much they can" : "");
  }

  /** A sentence has room to say which limit there is none of. */
  private static String times(double value) {
    return value == Double.POSITIVE_INFINITY ? "no upper limit" : RatioText.of(value);
  }

  /** One share of the difference and its sentence. */
  private record Share(double amount, Finding finding) {}

  private List<Share> shares() {
    List<Share> shares = new ArrayList<>();
    for (PairedLines pair : lines.pairs()) {
      double h1 = pair.first().line().fishedHours();
      double h2 = pair.second().line().fishedHours();
      if (h1 > 0 && h2 > 0) {
        double r1 = amount(pair.first()) / h1;
        double r2 = amount(pair.second()) / h2;
        shares.add(paid(pair, (r1 - r2) * (h1 + h2) / 2));
        shares.add(fished(pair, (h1 - h2) * (r1 + r2) / 2));
      } else if (h1 > 0) {
        shares.add(alone(pair.first(), true));
      } else if (h2 > 0) {
        shares.add(alone(pair.second(), false));
      }
    }
    lines.onlyFirst().stream()
        .filter(WhatDiffered::isFished)
        .forEach(s -> shares.add(alone(s, true)));
    lines.onlySecond().stream()
        .filter(WhatDiffered::isFished)
        .forEach(s -> shares.add(alone(s, false)));
    double both =
        weights
            ? first.summary().caught().weightG() + second.summary().caught().weightG()
            : first.summary().caught().landed() + (double) second.summary().caught().landed();
    return shares.stream()
        .filter(s -> Math.abs(s.amount) >= LEAST_SHARE * both && Math.abs(s.amount) > 0)
        .sorted(Comparator.comparingDouble((Share s) -> -Math.abs(s.amount)))
        .toList();
  }

  private static boolean isFished(Side side) {
    return side.line().fishedHours() > 0;
  }

  private double amount(Side side) {
    return weights ? side.caught().weightG() : side.caught().landed();
  }

  private Share paid(PairedLines pair, double amount) {
    RatePair rate = weights ? pair.rates().weight() : pair.rates().fish();
    String text =
        lineName(pair)
            + " paid "
            + perHour(pair.first())
            + " an hour "
            + in
            + one
            + " and "
            + perHour(pair.second())
            + " "
            + in
            + other
            + ", over the time it was fished "
            + amount(Math.abs(amount))
            + " of the difference; it rests on "
            + SentenceText.fish(pair.first().caught().landed())
            + " and "
            + SentenceText.fish(pair.second().caught().landed())
            + ": "
            + ratio(rate)
            + ".";
    return new Share(amount, about(pair, text));
  }

  private Share fished(PairedLines pair, double amount) {
    String text =
        lineName(pair)
            + " was fished for "
            + SentenceText.minutes(pair.first().line().fishedHours() * 60)
            + " "
            + in
            + one
            + " and "
            + SentenceText.minutes(pair.second().line().fishedHours() * 60)
            + " "
            + in
            + other
            + ", at what it paid over both "
            + amount(Math.abs(amount))
            + " of the difference; it rests on "
            + SentenceText.fish(pair.first().caught().landed())
            + " and "
            + SentenceText.fish(pair.second().caught().landed())
            + ".";
    return new Share(amount, about(pair, text));
  }

  private Share alone(Side side, boolean inFirst) {
    LineReview line = side.line();
    String text =
        SentenceText.sentence(
            SentenceText.named(line.line().name())
                + " was fished "
                + in
                + (inFirst ? one : other)
                + " alone: "
                + SentenceText.fish(side.caught().landed())
                + (weights ? " for " + words.weight(side.caught().weightG()) : "")
                + " in "
                + SentenceText.minutes(line.fishedHours() * 60)
                + ".");
    String id = line.line().id();
    Finding finding = inFirst ? new Finding(id, null, text) : new Finding(null, id, text);
    return new Share(amount(side) * (inFirst ? 1 : -1), finding);
  }

  private static Finding about(PairedLines pair, String text) {
    return new Finding(pair.pair().first().id(), pair.pair().second().id(), text);
  }

  private String lineName(PairedLines pair) {
    return SentenceText.sentence(SentenceText.named(pair.pair().name()));
  }

  private String perHour(Side side) {
    double rate = amount(side) / side.line().fishedHours();
    return weights ? words.weight(rate) : SentenceText.rate(rate) + " fish";
  }

  private String amount(double amount) {
    return weights ? words.weight(amount) : SentenceText.rate(amount) + " fish";
  }

  private @Nullable Finding firstBites() {
    LogRank test = lines.firstBites();
    if (test.p() == null || !(test.p() < FIRST_BITES_BELOW_P)) {
      return null;
    }
    boolean sooner = test.observed() > test.expected();
    return new Finding(
        null,
        null,
        String.format(
            Locale.ROOT,
            "First bites after feeding came sooner %s: over the paired lines %s had %.0f where"
                + " %.1f were to be expected of equal days, %s %.0f where %.1f were (log-rank"
                + " p %s, on these two days alone).",
            in + (sooner ? one : other),
            one,
            test.observed(),
            test.expected(),
            other,
            test.observedOther(),
            test.expectedOther(),
            p(test.p())));
  }

  private static String p(double p) {
    return p < 0.001 ? "under 0.001" : String.format(Locale.ROOT, "= %.3f", p);
  }
}
