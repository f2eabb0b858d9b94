package org.fadeline.analysis;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import org.fadeline.analysis.Effort.BiteMark;
import org.fadeline.analysis.Effort.LineEffort;
import org.fadeline.analysis.FirstBite.ResponseBin;
import org.fadeline.analysis.FirstBite.Step;
import org.fadeline.analysis.FirstBite.Stretch;
import org.fadeline.stats.FollowUp;
import org.fadeline.stats.Interval;
import org.fadeline.stats.KaplanMeier;
import org.jspecify.annotations.Nullable;

/** Time to first bite after feeding, and the feed response, of every line. */
public final class FirstBites {
  /** Episodes that must be at risk for the curve to start. */
  public static final int LEAST_AT_RISK = 5;

  private static final int BIN_MINUTES = 5;
  private static final int FIRST_BIN_MINUTE = -15;
  private static final int LAST_BIN_MINUTE = 60;

  private final Effort effort;
  private final Map<String, List<LogPlace>> episodes;

  /** Looks up the feeding episodes of a session. */
  public FirstBites(Effort effort) {
    this.effort = effort;
    this.episodes = FeedingEpisodes.bySpot(effort.session());
  }

  /** Returns the first bites of one line: its own stretches on its spot's episodes. */
  public FirstBite of(LineEffort line) {
    FirstBite stretches = stretchesOf(line);
    List<LogPlace> starts = episodes.getOrDefault(line.line().spot(), List.of());
    return withCurve(stretches.tally(), stretches.rows(), feedResponse(line, starts));
  }

  /** The same without the curve and the feed response. */
  FirstBite stretchesOf(LineEffort line) {
    List<LineEffort> onSpot =
        effort.lines().stream().filter(l -> l.line().spot().equals(line.line().spot())).toList();
    List<LogPlace> starts = episodes.getOrDefault(line.line().spot(), List.of());
    List<Stretch> rows = new ArrayList<>();
    int fished = 0;
    int bites = 0;
    int late = 0;
    for (int i = 0; i < starts.size(); i++) {
      LogPlace start = starts.get(i);
      LogPlace next =
          i + 1 < starts.size()
              ? starts.get(i + 1)
              : LogPlace.endOf(effort.session().match().allOut());
      BiteMark first = firstBite(onSpot, start, next);
      List<Stretch> own = stretches(line, start.at(), next.at(), first);
      if (first != null && first.at() == start.at() && line.bites().contains(first)) {
        // At once: a stretch of no length tells a curve nothing, but the episode was fished.
        fished++;
        bites++;
      } else if (!own.isEmpty()) {
        fished++;
        bites += own.get(own.size() - 1).bite() ? 1 : 0;
        late += own.get(0).entry() > 0 ? 1 : 0;
        rows.addAll(own);
      }
    }
    FirstBite.Tally tally =
        new FirstBite.Tally(fished, bites, fished - bites, late, starts.size() - fished);
    return new FirstBite(tally, null, null, List.of(), rows, List.of());
  }

  private static @Nullable BiteMark firstBite(
      List<LineEffort> onSpot, LogPlace start, LogPlace next) {
    return onSpot.stream()
        .flatMap(any -> any.bitesAt(start.at(), next.at()).stream())
        .filter(bite -> start.before(bite.place()) && bite.place().before(next))
        .min(Comparator.comparingLong(BiteMark::at).thenComparingInt(BiteMark::order))
        .orElse(null);
  }

  /** Returns the stretches of one episode on one line, up to the spot's first bite. */
  private static List<Stretch> stretches(
      LineEffort line, long start, long next, @Nullable BiteMark first) {
    long firstBite = first == null ? Long.MAX_VALUE : first.at();
    List<Stretch> rows = new ArrayList<>();
    for (Spell spell : line.spells()) {
      if (spell.span().to() <= start || spell.span().from() >= next) {
        continue;
      }
      for (TimeSpan span : spell.baitSpans()) {
        long from = Math.max(span.from(), start);
        long to = Math.min(Math.min(span.to(), next), firstBite);
        if (from < to) {
          boolean bite = to == firstBite && !line.bitesAt(firstBite, firstBite).isEmpty();
          rows.add(
              new Stretch(
                  start,
                  new TimeSpan(start, from).minutes(),
                  new TimeSpan(start, to).minutes(),
                  bite));
        }
      }
    }
    rows.sort(Comparator.comparingDouble(Stretch::entry));
    return rows;
  }

  private static FirstBite withCurve(
      FirstBite.Tally tally, List<Stretch> rows, List<ResponseBin> response) {
    Double from = firstWithEnoughAtRisk(rows);
    if (from == null) {
      return new FirstBite(tally, null, null, List.of(), rows, response);
    }
    KaplanMeier curve = KaplanMeier.of(followUp(rows)).from(from);
    List<Step> steps = new ArrayList<>();
    for (KaplanMeier.Step step : curve.steps()) {
      Interval limits = step.limits();
      steps.add(
          new Step(
              step.time(),
              step.atRisk(),
              step.events(),
              step.survival(),
              limits == null ? null : limits.low(),
              limits == null ? null : limits.high()));
    }
    KaplanMeier.Median median = curve.median();
    FirstBite.Median shown =
        median.time() == null
            ? null
            : new FirstBite.Median(median.time(), median.low(), median.high(), median.level());
    return new FirstBite(tally, from, shown, steps, rows, response);
  }

  /** Returns stretches as the statistics take them. */
  public static FollowUp followUp(List<Stretch> rows) {
    double[] entry = rows.stream().mapToDouble(Stretch::entry).toArray();
    double[] exit = rows.stream().mapToDouble(Stretch::exit).toArray();
    boolean[] event = new boolean[rows.size()];
    for (int i = 0; i < event.length; i++) {
      event[i] = rows.get(i).bite();
    }
    return FollowUp.of(entry, exit, event);
  }

  /** Returns the earliest entry from which at least five stretches are at risk, or null. */
  private static @Nullable Double firstWithEnoughAtRisk(List<Stretch> rows) {
    List<Double> entries = rows.stream().map(Stretch::entry).sorted().distinct().toList();
    for (double t : entries) {
      if (rows.stream().filter(r -> r.entry() <= t && t < r.exit()).count() >= LEAST_AT_RISK) {
        return t;
      }
    }
    return null;
  }

  /**
   * Returns bites per bait hour in five-minute bins: those before a feed tell whether it was fed
   * because bites were coming anyway.
   */
  private static List<ResponseBin> feedResponse(LineEffort line, List<LogPlace> starts) {
    if (starts.isEmpty() || line.spells().isEmpty()) {
      return List.of();
    }
    List<ResponseBin> bins = new ArrayList<>();
    for (int m = FIRST_BIN_MINUTE; m < LAST_BIN_MINUTE; m += BIN_MINUTES) {
      long millis = 0;
      int bites = 0;
      for (int i = 0; i < starts.size(); i++) {
        LogPlace from = minutesAfter(starts.get(i), m);
        LogPlace to = minutesAfter(starts.get(i), m + BIN_MINUTES);
        if (m < 0 && i > 0) {
          from = later(from, starts.get(i - 1));
        } else if (m >= 0 && i + 1 < starts.size()) {
          to = to.before(starts.get(i + 1)) ? to : starts.get(i + 1);
        }
        if (from.before(to)) {
          millis += line.baitMillis(from.at(), to.at());
          bites += bitesIn(line, from, to);
        }
      }
      double hours = millis / TimeSpan.MILLIS_PER_HOUR;
      bins.add(new ResponseBin(m, m + BIN_MINUTES, bites, hours, Rates.perHour(bites, hours)));
    }
    return bins;
  }

  /** Returns the feed itself for 0 minutes: what was logged before it came before it. */
  private static LogPlace minutesAfter(LogPlace feed, int minutes) {
    return minutes == 0 ? feed : LogPlace.startOf(feed.at() + minutes * 60_000L);
  }

  private static LogPlace later(LogPlace a, LogPlace b) {
    return a.before(b) ? b : a;
  }

  private static int bitesIn(LineEffort line, LogPlace from, LogPlace to) {
    return (int)
        line.bitesAt(from.at(), to.at()).stream()
            .filter(b -> !b.opening() && !b.place().before(from) && b.place().before(to))
            .count();
  }
}
