package org.fadeline.analysis;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.stream.Collectors;
import org.fadeline.analysis.Effort.BiteMark;
import org.fadeline.analysis.Effort.LineEffort;
import org.fadeline.analysis.FirstBite.End;
import org.fadeline.analysis.FirstBite.ResponseBin;
import org.fadeline.analysis.FirstBite.Stretch;
import org.fadeline.model.SessionEvent;
import org.fadeline.stats.FollowUp;
import org.jspecify.annotations.Nullable;

/** Time to first bite after feeding, and the feed response, of every line. */
public final class FirstBites {
  /** Episodes that must be at risk for a curve to start. */
  public static final int LEAST_AT_RISK = 5;

  private static final int BIN_MINUTES = 5;
  private static final int FIRST_BIN_MINUTE = -15;
  private static final int LAST_BIN_MINUTE = 60;

  private final Effort effort;
  private final Map<String, List<LogPlace>> episodes;

  /** Instants at which the match was stopped. */
  private final Set<Long> stops;

  /** Looks up the feeding episodes of a session. */
  public FirstBites(Effort effort) {
    this.effort = effort;
    this.episodes = FeedingEpisodes.bySpot(effort.session());
    this.stops =
        effort.session().events().stream()
            .filter(SessionEvent.Stopped.class::isInstance)
            .map(SessionEvent::at)
            .collect(Collectors.toSet());
  }

  /** Returns the first bites of one line: its own stretches on its spot's episodes. */
  public FirstBite of(LineEffort line) {
    List<Stretch> baitIn = new ArrayList<>();
    FirstBite stretches = stretchesOf(line, baitIn);
    List<LogPlace> starts = episodes.getOrDefault(line.line().spot(), List.of());
    return new FirstBite(
        stretches.tally(),
        FirstBiteTimes.of(stretches.rows()),
        FirstBiteTimes.of(baitIn),
        feedResponse(line, starts));
  }

  /** The same without curves, the second clock and the feed response. */
  FirstBite stretchesOf(LineEffort line) {
    return stretchesOf(line, null);
  }

  /**
   * Returns the tally and the stretches by minutes since the feed.
   *
   * @param baitIn takes the stretches by minutes with a bait in; null where they are not wanted
   */
  private FirstBite stretchesOf(LineEffort line, @Nullable List<Stretch> baitIn) {
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
      List<Part> own = parts(line, start.at(), next.at(), first);
      if (first != null && first.at() == start.at() && line.bites().contains(first)) {
        // At once: a stretch of no length tells a curve nothing, but the episode was fished.
        fished++;
        bites++;
      } else if (!own.isEmpty()) {
        fished++;
        bites += own.get(own.size() - 1).end() == End.BITE ? 1 : 0;
        late += own.get(0).span().from() > start.at() ? 1 : 0;
        own.forEach(part -> rows.add(part.sinceFeed(start.at())));
        if (baitIn != null) {
          baitIn.addAll(withBaitIn(own, onSpot, start.at()));
        }
      }
    }
    FirstBite.Tally tally =
        new FirstBite.Tally(fished, bites, fished - bites, late, starts.size() - fished);
    FirstBite.Times bare = new FirstBite.Times(null, null, List.of(), FirstBite.Leaving.NONE, rows);
    return new FirstBite(tally, bare, FirstBite.Times.NONE, List.of());
  }

  private static @Nullable BiteMark firstBite(
      List<LineEffort> onSpot, LogPlace start, LogPlace next) {
    return onSpot.stream()
        .flatMap(any -> any.bitesAt(start.at(), next.at()).stream())
        .filter(bite -> start.before(bite.place()) && bite.place().before(next))
        .min(Comparator.comparingLong(BiteMark::at).thenComparingInt(BiteMark::order))
        .orElse(null);
  }

  /** A stretch on the clock of the water. */
  private record Part(TimeSpan span, End end) {
    Stretch sinceFeed(long start) {
      return new Stretch(
          start,
          new TimeSpan(start, span.from()).minutes(),
          new TimeSpan(start, span.to()).minutes(),
          end);
    }
  }

  /** Returns the stretches of one episode on one line, up to the spot's first bite. */
  private List<Part> parts(LineEffort line, long start, long next, @Nullable BiteMark first) {
    long firstBite = first == null ? Long.MAX_VALUE : first.at();
    List<Part> parts = new ArrayList<>();
    for (Spell spell : line.spells()) {
      if (spell.span().to() <= start || spell.span().from() >= next) {
        continue;
      }
      for (int i = 0; i < spell.baitSpans().size(); i++) {
        TimeSpan span = spell.baitSpans().get(i);
        long from = Math.max(span.from(), start);
        long to = Math.min(Math.min(span.to(), next), firstBite);
        if (from < to) {
          boolean bite = to == firstBite && !line.bitesAt(firstBite, firstBite).isEmpty();
          boolean last = i == spell.baitSpans().size() - 1 && to == span.to() && to < next;
          parts.add(
              new Part(
                  new TimeSpan(from, to),
                  bite ? End.BITE : last && endsInLeaving(spell) ? End.LEFT : End.CUT_OFF));
        }
      }
    }
    parts.sort(Comparator.comparingLong(part -> part.span().from()));
    return parts;
  }

  /** All out and a match stopped end a stay without its being left. */
  private boolean endsInLeaving(Spell spell) {
    long end = spell.span().to();
    return end < effort.session().match().allOut() && !stops.contains(end);
  }

  /**
   * Returns the same stretches by the minutes in which a bait was in on any line of the spot: a
   * rest does not count, nor does a fish being played, so that pieces of one stay join.
   */
  private static List<Stretch> withBaitIn(List<Part> parts, List<LineEffort> onSpot, long start) {
    List<Stretch> rows = new ArrayList<>();
    for (Part part : parts) {
      long before = 0;
      for (LineEffort line : onSpot) {
        before += line.baitMillis(start, part.span().from());
      }
      double entry = before / TimeSpan.MILLIS_PER_MINUTE;
      double exit = (before + part.span().millis()) / TimeSpan.MILLIS_PER_MINUTE;
      Stretch last = rows.isEmpty() ? null : rows.get(rows.size() - 1);
      if (last != null && last.end() == End.CUT_OFF && last.exit() == entry) {
        rows.remove(rows.size() - 1);
        entry = last.entry();
      }
      rows.add(new Stretch(start, entry, exit, part.end()));
    }
    return rows;
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
