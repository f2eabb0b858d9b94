package org.fadeline.ui.compare;

import java.time.ZoneId;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import org.fadeline.analysis.FirstBite;
import org.fadeline.analysis.compare.Comparison;
import org.fadeline.analysis.compare.Comparison.PairRates;
import org.fadeline.analysis.compare.Comparison.PairedLines;
import org.fadeline.analysis.compare.Comparison.Side;
import org.fadeline.analysis.compare.RatePair;
import org.fadeline.analysis.compare.RunningCatch.Point;
import org.fadeline.analysis.compare.RunningCatch.SoFar;
import org.fadeline.model.Units;
import org.fadeline.stats.LogRank;
import org.fadeline.ui.control.Say;
import org.fadeline.ui.control.table.DataTable;
import org.jspecify.annotations.Nullable;

/** The tables of a comparison: everything that is on a chart, in figures. */
final class CompareTables {
  private Units units = Units.LB_OZ_AND_METRES;

  final DataTable<RateRow> rates =
      new DataTable<>("An hour fished, first over second, limits at 95%", "No lines to compare.");
  final DataTable<Point> running =
      new DataTable<>("Both catches as they grew", "Nothing was caught in either match.");
  final DataTable<TestRow> tests =
      new DataTable<>("First bites after feeding", "No pair of lines was fed and then fished.");
  final DataTable<StepRow> steps =
      new DataTable<>(
          "The curves in figures",
          "Too few feeds for a curve: five feeding episodes at risk are needed on a line.");
  final DataTable<SideRow> sides =
      new DataTable<>("Line by line, side by side", "No lines to compare.");

  /** One rate of one pair, or of all lines. */
  record RateRow(String line, String what, RatePair pair, boolean weight) {}

  /** The test of one pair, or of all. */
  record TestRow(
      String line, LogRank test, @Nullable FirstBite first, @Nullable FirstBite second) {}

  /** One step of one curve. */
  record StepRow(String line, String session, FirstBite.Step step) {}

  /** One line in one session. */
  record SideRow(String session, Side side, ZoneId zone) {}

  CompareTables() {
    rates
        .words("Line", 130, RateRow::line)
        .words("Of", 70, RateRow::what)
        .numbers("First", 150, r -> perHour(r.pair.first()), r -> rate(r, r.pair.first()))
        .numbers("Second", 150, r -> perHour(r.pair.second()), r -> rate(r, r.pair.second()))
        .numbers("Ratio", 60, CompareTables::ratio, r -> CompareWords.ratio(r.pair))
        .words("On what was caught alone", 195, r -> CompareWords.exact(r.pair))
        .words("Allowing for days", 130, r -> CompareWords.wide(r.pair))
        .words("p-value", 60, r -> CompareWords.p(r.pair));
    running
        .numbers("Minutes", 80, Point::minutes, p -> Say.number(p.minutes()))
        .numbers("First, fish", 85, p -> fish(p.first()), p -> whole(fish(p.first())))
        .numbers("Second, fish", 95, p -> fish(p.second()), p -> whole(fish(p.second())))
        .numbers("Difference", 85, CompareTables::fishApart, p -> signed(fishApart(p)))
        .numbers("First, weight", 110, p -> grams(p.first()), p -> weight(grams(p.first())))
        .numbers("Second, weight", 115, p -> grams(p.second()), p -> weight(grams(p.second())))
        .numbers("Difference", 110, Point::gramsDifference, this::apart);
    tests
        .words("Lines", 130, TestRow::line)
        .words("First, half bit within", 150, r -> half(r.first))
        .words("Second, half bit within", 155, r -> half(r.second))
        .numbers(
            "First bites, first",
            150,
            r -> r.test.observed(),
            r -> CompareWords.observed(r.test.observed(), r.test.expected()))
        .numbers(
            "First bites, second",
            150,
            r -> r.test.observedOther(),
            r -> CompareWords.observed(r.test.observedOther(), r.test.expectedOther()))
        .words("Log-rank, of these two days alone", 220, r -> CompareWords.test(r.test));
    steps
        .words("Line", 130, StepRow::line)
        .words("Match", 80, StepRow::session)
        .numbers("Minutes", 75, r -> r.step.minutes(), r -> Say.number(r.step.minutes()))
        .numbers("At risk", 75, r -> (double) r.step.atRisk(), r -> String.valueOf(r.step.atRisk()))
        .numbers("Bites", 65, r -> (double) r.step.bites(), r -> String.valueOf(r.step.bites()))
        .numbers(
            "Still without",
            105,
            r -> r.step.survival(),
            r -> Math.round(100 * r.step.survival()) + "%");
    sides
        .words("Line", 150, r -> Say.capital(Say.line(r.side.line().line(), units)))
        .words("Match", 70, SideRow::session)
        .numbers(
            "Fish",
            55,
            r -> (double) r.side.caught().landed(),
            r -> String.valueOf(r.side.caught().landed()))
        .numbers(
            "Weight",
            90,
            r -> r.side.caught().weightG(),
            r -> Say.weight(r.side.caught().weightG(), units))
        .numbers(
            "Min fished",
            80,
            r -> r.side.line().fishedHours(),
            r -> String.valueOf(Math.round(60 * r.side.line().fishedHours())))
        .words("Put in", 170, r -> CompareWords.feed(r.side.feed()))
        .words("Spells", 230, r -> CompareWords.spells(r.side, r.zone))
        .numbers(
            "Times left", 80, r -> (double) r.side.moves(), r -> String.valueOf(r.side.moves()))
        .words("Fades", 330, r -> CompareWords.fades(r.side))
        .words("Plain at", 90, r -> CompareWords.plain(r.side, r.zone))
        .numbers(
            "Min past plain",
            105,
            r -> r.side.minutesPastPlain(),
            r -> String.valueOf(Math.round(r.side.minutesPastPlain())))
        .detail(
            "Stays",
            r -> Say.capital(Say.line(r.side.line().line(), units)) + ", " + r.session + " match",
            r -> CompareWords.stays(r.side));
  }

  private static @Nullable Double perHour(RatePair.Side side) {
    return side.rate() == null ? null : (Double) side.rate().perHour();
  }

  private String rate(RateRow row, RatePair.Side side) {
    return CompareWords.rate(side, row.weight, units);
  }

  private static @Nullable Double ratio(RateRow row) {
    return row.pair.ratio() == null ? null : row.pair.ratio().value();
  }

  private static @Nullable Double fish(@Nullable SoFar soFar) {
    return soFar == null ? null : (Double) (double) soFar.fish();
  }

  private static @Nullable Double fishApart(Point point) {
    Integer apart = point.fishDifference();
    return apart == null ? null : (Double) (double) apart;
  }

  private static @Nullable Double grams(@Nullable SoFar soFar) {
    return soFar == null ? null : soFar.grams();
  }

  private static String whole(@Nullable Double value) {
    return value == null ? "" : String.valueOf(Math.round(value));
  }

  private static String signed(@Nullable Double value) {
    return value == null
        ? ""
        : String.format(Locale.ROOT, "%+d", Math.round(value)).replace('-', '−').replace("+0", "0");
  }

  private String weight(@Nullable Double grams) {
    return grams == null ? "" : Say.weight(grams, units);
  }

  private String apart(Point point) {
    Double grams = point.gramsDifference();
    if (grams == null) {
      return "";
    }
    String sign = grams > 0 ? "+" : grams < 0 ? "−" : "";
    return sign + Say.weight(Math.abs(grams), units);
  }

  private static String half(@Nullable FirstBite first) {
    return first == null ? "" : CompareWords.half(first);
  }

  /** Shows a comparison, or nothing; its running catch is shown as far as it may be told. */
  void show(@Nullable Comparison comparison, Units newUnits) {
    units = newUnits;
    if (comparison == null) {
      List.of(rates, running, tests, steps, sides).forEach(table -> table.show(List.of()));
      return;
    }
    List<RateRow> rateRows = new ArrayList<>();
    add(rateRows, "All lines", comparison.lines().whole());
    List<TestRow> testRows = new ArrayList<>();
    testRows.add(new TestRow("All pairs", comparison.lines().firstBites(), null, null));
    List<StepRow> stepRows = new ArrayList<>();
    List<SideRow> sideRows = new ArrayList<>();
    ZoneId zone = comparison.first().session().occasion().zone();
    ZoneId otherZone = comparison.second().session().occasion().zone();
    for (PairedLines pair : comparison.lines().pairs()) {
      String name = Say.capital(pair.pair().name());
      add(rateRows, name, pair.rates());
      FirstBite first = pair.first().line().firstBite();
      FirstBite second = pair.second().line().firstBite();
      testRows.add(new TestRow(name, pair.firstBites(), first, second));
      first.curve().forEach(s -> stepRows.add(new StepRow(name, "first", s)));
      second.curve().forEach(s -> stepRows.add(new StepRow(name, "second", s)));
      sideRows.add(new SideRow("first", pair.first(), zone));
      sideRows.add(new SideRow("second", pair.second(), otherZone));
    }
    comparison.lines().onlyFirst().forEach(s -> sideRows.add(new SideRow("first", s, zone)));
    comparison.lines().onlySecond().forEach(s -> sideRows.add(new SideRow("second", s, otherZone)));
    rates.show(rateRows);
    tests.show(testRows);
    steps.show(stepRows);
    sides.show(sideRows);
  }

  private static void add(List<RateRow> rows, String line, PairRates rates) {
    rows.add(new RateRow(line, "weight", rates.weight(), true));
    rows.add(new RateRow(line, "fish", rates.fish(), false));
    RatePair bites = rates.bites();
    if (bites != null) {
      rows.add(new RateRow(line, "bites", bites, false));
    }
  }
}
