package org.fadeline.analysis;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import org.fadeline.analysis.Effort.LineEffort;
import org.fadeline.model.Session;
import org.fadeline.model.SessionEvent;
import org.fadeline.stats.Bunching;
import org.fadeline.stats.ChangePointBins;
import org.fadeline.stats.FadeRecord;

/** One line's record of bites in bait minutes, and the way back to the clock. */
public final class FadeTrack {
  private final BaitClock clock;
  private final List<Integer> spellIndices = new ArrayList<>();
  private final boolean empty;
  private final FadeRecord record;
  private final LineEffort line;
  private final ReviewSettings.Measure measure;

  /**
   * Takes the bites of one line.
   *
   * @param session the record
   * @param line effort on the line
   * @param measure what counts
   * @param grade of the record: what it can carry
   */
  public FadeTrack(Session session, LineEffort line, ReviewSettings.Measure measure, Grade grade) {
    this.line = line;
    this.measure = measure.carriedBy(grade);
    clock = new BaitClock(line);
    for (Spell spell : line.spells()) {
      if (isTimed(spell.index())) {
        spellIndices.add(spell.index());
      }
    }
    empty = spellIndices.isEmpty();
    double[] times = biteMinutes();
    record =
        empty
            ? FadeRecord.ofTimes(new double[0], new double[] {1})
            : grade == Grade.COUNTS ? reports(session, times) : FadeRecord.ofTimes(times, ends());
  }

  /** Returns whether the line has no bait time. */
  public boolean isEmpty() {
    return empty;
  }

  /** Returns the record by bait minutes. */
  public FadeRecord record() {
    return record;
  }

  /** Returns the index on the line of a spell of the record. */
  int spellIndex(int spellOfRecord) {
    return spellIndices.get(spellOfRecord);
  }

  /** Returns the index on the line of the last spell of the record, which must not be empty. */
  int lastSpellIndex() {
    return spellIndices.get(spellIndices.size() - 1);
  }

  /** Returns whether a spell has any bait time. */
  private boolean isTimed(int spell) {
    return clock.spellEnd(spell) > clock.spellStart(spell);
  }

  /** Returns the bites of a spell dated in [from, to], and the bait minutes of that stretch. */
  Recovery.Stretch counted(Spell spell, long from, long to) {
    long bites =
        line.bitesOf(spell).stream()
            .filter(bite -> measure.counts(bite) && bite.at() >= from && bite.at() <= to)
            .count();
    return new Recovery.Stretch(
        (int) bites,
        SpanMath.overlapMillis(spell.baitSpans(), from, to) / TimeSpan.MILLIS_PER_MINUTE);
  }

  /** Returns the bites by minutes since each visit began. */
  Visits visits() {
    if (!record.even()) {
      double[] counts = new double[record.size()];
      double[] hours = new double[counts.length];
      double[] minutes = new double[counts.length];
      for (FadeRecord.Spell spell : record.spells()) {
        for (int i = spell.from(); i < spell.to(); i++) {
          counts[i] = record.count(i);
          hours[i] = (record.edge(i + 1) - record.edge(i)) / 60;
          minutes[i] = (record.edge(i + 1) + record.edge(i)) / 2 - spell.startMinute();
        }
      }
      return new Visits(spellIndices.size(), ChangePointBins.of(counts, hours), minutes);
    }
    double[] lengths = new double[spellIndices.size()];
    double[][] bites = new double[lengths.length][];
    for (int i = 0; i < lengths.length; i++) {
      int spell = spellIndices.get(i);
      double start = clock.spellStart(spell);
      double length = clock.spellEnd(spell) - start;
      lengths[i] = length;
      bites[i] =
          line.bitesOf(line.spells().get(spell)).stream()
              .filter(measure::counts)
              .mapToDouble(bite -> clock.minutesAt(bite.at()) - start)
              .map(minute -> Math.min(length, Math.max(0, minute)))
              .toArray();
    }
    return Visits.of(lengths, bites);
  }

  private double[] ends() {
    return spellIndices.stream().mapToDouble(clock::spellEnd).toArray();
  }

  private double[] biteMinutes() {
    return line.bites().stream()
        .filter(b -> isTimed(b.spell()) && !b.opening() && measure.counts(b))
        .mapToDouble(
            b ->
                Math.min(
                    clock.spellEnd(b.spell()),
                    Math.max(clock.spellStart(b.spell()), clock.minutesAt(b.at()))))
        .sorted()
        .toArray();
  }

  /** Makes bins of the times between two clicker counts: changes are looked for only there. */
  private FadeRecord reports(Session session, double[] times) {
    List<Double> edges = new ArrayList<>(List.of(0.0));
    List<Integer> spellEnds = new ArrayList<>();
    List<SessionEvent> counts =
        session.events().stream().filter(SessionEvent.Count.class::isInstance).toList();
    for (int spell : spellIndices) {
      double end = clock.spellEnd(spell);
      TimeSpan span = line.spells().get(spell).span();
      for (SessionEvent count :
          SortedLists.between(counts, SessionEvent::at, span.from() + 1, span.to())) {
        double minute = clock.minutesAt(count.at());
        if (minute > last(edges) && minute < end) {
          edges.add(minute);
        }
      }
      edges.add(end);
      spellEnds.add(edges.size() - 1);
    }
    double[] fish = new double[edges.size() - 1];
    int bin = 0;
    for (double time : times) {
      while (bin < fish.length - 1 && time > edges.get(bin + 1) + 1e-9) {
        bin++;
      }
      fish[bin]++;
    }
    return FadeRecord.ofReports(
        edges.stream().mapToDouble(Double::doubleValue).toArray(),
        fish,
        spellEnds.stream().mapToInt(Integer::intValue).toArray());
  }

  private static double last(List<Double> values) {
    return values.get(values.size() - 1);
  }

  /** Returns the instant at which a bait minute starts; at a gap, the clock after it. */
  long startOf(double minute) {
    return clock.startOf(minute);
  }

  /** Returns the instant at which a bait minute of a spell ends, at the latest the spell's end. */
  long endOf(double minute, Spell spell) {
    return Math.min(clock.startOf(minute), spell.span().to());
  }

  /**
   * Returns the bin after the last whole one of the last spell that ended in (after, until], epoch
   * milliseconds, or 0 where none did.
   */
  int lastBinOver(Spell last, long after, long until) {
    FadeRecord.Spell spell = record.spells().get(record.spells().size() - 1);
    boolean whole = spell.lastMinutes() >= 1 - 1e-9;
    for (int to = whole ? spell.to() : spell.to() - 1; to > spell.from(); to--) {
      long end = endOf(to == spell.to() ? spell.endMinute() : record.edge(to), last);
      if (end <= until) {
        return end > after ? to : 0;
      }
    }
    return 0;
  }

  /** Returns the stretch of clock that a bin covers, any gaps within it included. */
  TimeSpan binOnClock(int bin) {
    long from = clock.startOf(record.edge(bin));
    long to = clock.startOf(record.edge(bin + 1));
    for (Spell spell : line.spells()) {
      if (from >= spell.span().from() && from < spell.span().to()) {
        to = Math.min(to, spell.span().to());
      }
    }
    return new TimeSpan(from, Math.max(from, to));
  }

  /** Returns the bait minutes of a spell from an instant to its end. */
  double minutesFrom(long instant, Spell spell) {
    return clock.spellEnd(spell.index())
        - Math.min(clock.minutesAt(instant), clock.spellEnd(spell.index()));
  }

  /** Returns the bunching factor as it stood at each instant: it moves when a block closes. */
  RollingRates.BunchingInTime bunchingInTime() {
    if (empty || !record.even()) {
      return at -> 1;
    }
    List<Long> since = new ArrayList<>();
    List<Double> factors = new ArrayList<>();
    addUp(
        new Bunching(),
        (bunching, closed) -> {
          since.add(closed);
          factors.add(bunching.factor());
        });
    long[] instants = since.stream().mapToLong(Long::longValue).toArray();
    return at -> {
      int found = Arrays.binarySearch(instants, at);
      int index = found >= 0 ? found : -found - 2;
      return index < 0 ? 1 : factors.get(index);
    };
  }

  /** Returns how far the bites bunch over the whole record, which must be one of times. */
  public Bunching bunching() {
    return addUp(new Bunching(), (bunching, closed) -> {});
  }

  /**
   * Returns the bunching factor over the whole record, 1 where it is one of reports.
   *
   * @param before the factor expected beforehand, 1 or more
   */
  double bunching(double before) {
    return record.even() ? addUp(new Bunching(before), (bunching, closed) -> {}).factor() : 1;
  }

  /** Is told of each block of bins as it closes. */
  private interface BlockWatch {
    void closed(Bunching bunching, long at);
  }

  private Bunching addUp(Bunching bunching, BlockWatch watch) {
    for (int s = 0; s < record.spells().size(); s++) {
      FadeRecord.Spell spell = record.spells().get(s);
      Spell onClock = line.spells().get(spellIndices.get(s));
      bunching.rest();
      for (int i = spell.from(); i + Bunching.BLOCK <= spell.to(); i += Bunching.BLOCK) {
        double block = 0;
        for (int j = i; j < i + Bunching.BLOCK; j++) {
          block += record.count(j);
        }
        bunching.add(block);
        watch.closed(bunching, endOf(record.edge(i + Bunching.BLOCK), onClock));
      }
    }
    return bunching;
  }
}
