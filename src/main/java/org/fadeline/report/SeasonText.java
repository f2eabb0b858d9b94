package org.fadeline.report;

import java.time.format.DateTimeFormatter;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.function.DoubleFunction;
import org.fadeline.analysis.ReviewSettings;
import org.fadeline.analysis.SentenceText;
import org.fadeline.analysis.compare.ComparisonSetup.DayToDay;
import org.fadeline.analysis.season.FeedGroup;
import org.fadeline.analysis.season.Learned;
import org.fadeline.analysis.season.Season;
import org.fadeline.analysis.season.SessionSummary;
import org.fadeline.analysis.season.StandingOut;
import org.fadeline.model.Units;
import org.fadeline.model.WeightText;
import org.fadeline.stats.GammaPosterior;
import org.jspecify.annotations.Nullable;

/** A season's tables as plain text. */
public final class SeasonText {
  private static final DateTimeFormatter DAY = DateTimeFormatter.ofPattern("d MMM yyyy", Locale.UK);

  private final Season season;
  private final Units units;
  private final TextOut out = new TextOut();

  private SeasonText(Season season, Units units) {
    this.season = season;
    this.units = units;
  }

  /** Returns the text, ending in a line feed. */
  public static String toText(Season season, Units units) {
    SeasonText text = new SeasonText(season, units);
    text.write();
    return text.out.toString();
  }

  private void write() {
    int n = season.sessions().size();
    if (n == 0) {
      out.line("No match here.");
      return;
    }
    out.line(n == 1 ? "1 match." : n + " matches.");
    results();
    standingOut();
    lines();
    firstBites();
    fades();
    feed();
    learned();
  }

  private String weight(double grams) {
    return WeightText.format(grams, units.weight());
  }

  private void results() {
    out.heading("Results over time");
    List<List<String>> rows = new ArrayList<>();
    rows.add(
        List.of("date", "water", "fish", "logged", "at the scales", "place", "fished", "an hour"));
    for (SessionSummary session : season.sessions()) {
      SessionSummary.Result result = session.result();
      Double weighed = result.weighedGrams();
      double hours = session.fishedMinutes() / 60;
      String water = session.about().water();
      rows.add(
          List.of(
              session.about().dated() ? DAY.format(session.about().date()) : "undated",
              water == null ? "–" : water,
              Integer.toString(result.fish()),
              weight(result.grams()) + (result.weights().missing() > 0 ? " or more" : ""),
              weighed == null ? "–" : weight(weighed),
              placing(result.placing()),
              SentenceText.minutes(session.fishedMinutes()),
              hours > 0 ? weight(result.grams() / hours) : "–"));
    }
    out.table(rows);
  }

  private static String placing(SessionSummary.@Nullable Placing placing) {
    if (placing == null || placing.position() == null) {
      return "–";
    }
    return placing.position() + (placing.of() == null ? "" : " of " + placing.of());
  }

  private void standingOut() {
    List<StandingOut> found = season.standing();
    if (found.isEmpty()) {
      return;
    }
    out.heading("Matches that stand out from the rest");
    List<List<String>> rows = new ArrayList<>();
    rows.add(List.of("date", "water", "in", "value", "half of the matches"));
    for (StandingOut one : found) {
      SessionSummary.About about = season.sessions().get(one.session()).about();
      rows.add(
          List.of(
              DAY.format(about.date()),
              about.water() == null ? "–" : about.water(),
              switch (one.measure()) {
                case WEIGHT -> "weight an hour";
                case FISH -> "fish an hour";
                case SCALES -> "scales / logged";
              },
              value(one.measure(), one.value()),
              value(one.measure(), one.low()) + "–" + value(one.measure(), one.high())));
    }
    out.table(rows);
  }

  private String value(StandingOut.Measure measure, double value) {
    return switch (measure) {
      case WEIGHT -> weight(value);
      case FISH -> SentenceText.rate(value);
      case SCALES -> String.format(Locale.ROOT, "×%.2f", value);
    };
  }

  private void lines() {
    out.heading("What each kind of line gave by hour of the match, an hour fished");
    List<List<String>> rows = new ArrayList<>();
    rows.add(List.of("line", "hour", "matches", "fished", "weight", "limits", "fish", "limits"));
    for (Season.LineHours line : season.lines()) {
      rows.add(row(line.group(), line.whole()));
      line.hours().forEach(cell -> rows.add(row("", cell)));
    }
    out.table(rows);
    out.paragraph(
        "  ",
        "Limits at 95%, from drawing whole matches; none with fewer than "
            + Season.FEWEST_FOR_LIMITS
            + " matches, but for what may pass for no fish at all. No rate of less than a minute.");
  }

  private List<String> row(String name, Season.Cell cell) {
    return List.of(
        name,
        cell.hour() == null ? "all" : Integer.toString(cell.hour() + 1),
        Integer.toString(cell.sessions().size()),
        SentenceText.minutes(cell.fishedHours() * 60),
        rate(cell.weight(), this::weight),
        limits(cell.weight(), this::weight),
        rate(cell.fish(), SentenceText::rate),
        limits(cell.fish(), SentenceText::rate));
  }

  private static String rate(Season.PerHour rate, DoubleFunction<String> words) {
    return rate.perHour() == null ? "–" : words.apply(rate.perHour());
  }

  private static String limits(Season.PerHour rate, DoubleFunction<String> words) {
    Season.Limits limits = rate.limits();
    return limits == null ? "" : words.apply(limits.low()) + "–" + words.apply(limits.high());
  }

  private void firstBites() {
    out.heading("First bite after feeding");
    List<List<String>> rows = new ArrayList<>();
    rows.add(List.of("", "by", "matches", "feeds", "bites", "half within", "limits", "p"));
    for (Season.FirstBiteGroup group : season.firstBites()) {
      Season.Curve curve = group.curve();
      Double median = curve == null ? null : curve.medianMinutes();
      Double p = group.againstOthers().p();
      rows.add(
          List.of(
              group.name(),
              group.by().word(),
              Integer.toString(group.sessions().size()),
              Integer.toString(group.tally().feeds()),
              Integer.toString(group.tally().bites()),
              curve == null ? "too few" : minutes(median),
              curve == null || (curve.low() == null && curve.high() == null)
                  ? ""
                  : minutes(curve.low()) + "–" + minutes(curve.high()),
              p == null ? "" : p < 0.001 ? "<0.001" : String.format(Locale.ROOT, "%.3f", p)));
    }
    out.table(rows);
    out.paragraph(
        "  ",
        "p: against all others of its sort within the same matches (log-rank); of twenty such, one is"
            + " below 0.05 by chance. "
            + SentenceText.LEAVING_SHORTENS);
  }

  private static String minutes(@Nullable Double value) {
    return value == null ? "not reached" : String.format(Locale.ROOT, "%.0f min", value);
  }

  private void fades() {
    out.heading("Fades");
    List<List<String>> rows = new ArrayList<>();
    rows.add(
        List.of("line", "matches", "spells", "faded", "in the middle at", "past plain", "gave"));
    for (Season.FadeGroup group : season.fades()) {
      Double middle = group.medianMinute();
      rows.add(
          List.of(
              group.group(),
              Integer.toString(group.sessions().size()),
              Integer.toString(group.spells()),
              Integer.toString(group.faded()),
              middle == null ? "–" : SentenceText.minutes(middle) + " in",
              group.past().stays() == 0
                  ? "–"
                  : group.past().stays() + " for " + SentenceText.minutes(group.past().minutes()),
              group.past().stays() == 0 ? "" : SentenceText.fish(group.past().fish())));
    }
    out.table(rows);
  }

  private void feed() {
    List<FeedGroup> groups = season.feed();
    if (groups.isEmpty()) {
      return;
    }
    out.heading("Feed given and what came, an hour fished");
    List<List<String>> rows = new ArrayList<>();
    rows.add(List.of("line", "feeds", "matches", "weight", "limits", "fish", "limits"));
    for (FeedGroup group : groups) {
      share(rows, group.group(), group.fewer());
      share(rows, group.fewer() == null ? group.group() : "", group.more());
      if (group.fedOnly() > 0) {
        String sessions = Integer.toString(group.fedOnly());
        rows.add(List.of(group.group(), "not fished", sessions, "", "", "", ""));
      }
    }
    out.table(rows);
    out.paragraph(
        "  ",
        "Each line's matches in two: fed at most as often as the middle one, and more often. A"
            + " line is fed more because fish come, too: a difference is no proof that feed made"
            + " it.");
  }

  private void share(List<List<String>> rows, String name, FeedGroup.@Nullable Share share) {
    if (share != null) {
      rows.add(
          List.of(
              name,
              share.feeds(),
              Integer.toString(share.sessions().size()),
              rate(share.weight(), this::weight),
              limits(share.weight(), this::weight),
              rate(share.fish(), SentenceText::rate),
              limits(share.fish(), SentenceText::rate)));
    }
  }

  private void learned() {
    Learned learned = season.learned();
    out.heading("What the next review could rest on (used only when chosen)");
    out.paragraph(
        "  ",
        String.format(
            Locale.ROOT,
            "Changes of rate per bait hour: %.2f (%.2f–%.2f at %.0f%%), from %d records of a line;"
                + " %.2f is used otherwise.",
            learned.hazard().perHour(),
            learned.hazard().interval().low(),
            learned.hazard().interval().high(),
            learned.hazard().interval().level() * 100,
            learned.hazard().records(),
            ReviewSettings.DEFAULT.changeHazard()));
    Learned.DaysLearned days = learned.days();
    out.paragraph(
        "  ",
        days == null
            ? String.format(
                Locale.ROOT,
                "How much days differ by themselves: too few matches to tell; %.2f is used.",
                DayToDay.USUAL.sigma())
            : String.format(
                Locale.ROOT,
                "How much days differ by themselves: %.2f of the log rate (%.2f from these matches"
                    + " alone; %.2f is used otherwise).",
                days.sigma(),
                days.raw(),
                DayToDay.USUAL.sigma()));
    List<List<String>> rows = new ArrayList<>();
    rows.add(List.of("line", "matches", "bunching", "fish an hour, another day"));
    for (Learned.GroupLearned group : learned.groups()) {
      GammaPosterior pool = group.pool();
      rows.add(
          List.of(
              group.group(),
              Integer.toString(group.sessions()),
              String.format(Locale.ROOT, "×%.1f", group.bunching()),
              pool == null
                  ? "too few matches"
                  : String.format(
                      Locale.ROOT,
                      "%s (%s–%s for nine days in ten)",
                      SentenceText.rate(pool.mean()),
                      SentenceText.rate(pool.quantile(0.05)),
                      SentenceText.rate(pool.quantile(0.95)))));
    }
    out.table(rows);
  }
}
