package org.fadeline.analysis;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.SortedMap;
import java.util.TreeMap;
import java.util.concurrent.CancellationException;
import java.util.function.BooleanSupplier;
import java.util.stream.Collectors;
import org.fadeline.analysis.Course.Pace;
import org.fadeline.analysis.Course.Rolling;
import org.fadeline.analysis.Course.RollingPoint;
import org.fadeline.analysis.Course.TurningPoint;
import org.fadeline.analysis.Course.Untold;
import org.fadeline.analysis.Effort.LineEffort;
import org.fadeline.analysis.Effort.Unassigned;
import org.fadeline.analysis.Review.Summary;
import org.fadeline.model.Session;
import org.fadeline.model.SessionEvent;
import org.fadeline.model.Units;
import org.jspecify.annotations.Nullable;

/** Goes through a match once, and at each telling instant reviews the record cut there. */
final class KnownThenBuilder {
  private static final long STEP_MILLIS = 60_000;

  /** From this many events on, what one of them tells is told at the end of its minute. */
  static final int CROWDED = 5_000;

  private final Session whole;
  private final ReviewSettings settings;
  private final Units units;
  private final BooleanSupplier cancelled;
  private final RollingRates rollingRates;
  private final LiveCalls calls;
  private final TurningPoints.Nets nets;
  private final Map<String, List<RollingPoint>> points = new HashMap<>();
  private final List<Pace> pace = new ArrayList<>();
  private final List<TurningPoint> turns = new ArrayList<>();
  private final List<Review> told = new ArrayList<>();
  private final List<Long> from = new ArrayList<>();

  KnownThenBuilder(Session whole, ReviewSettings settings, Units units, BooleanSupplier cancelled) {
    this.whole = whole;
    this.settings = settings;
    this.units = units;
    this.cancelled = cancelled;
    this.rollingRates = new RollingRates(whole.match(), settings);
    this.calls = new LiveCalls(settings);
    EstimateError error = settings.estimates();
    this.nets = new TurningPoints.Nets(NetCourse.asKnownThen(whole, error), null, error);
    whole.lines().forEach(line -> points.put(line.id(), new ArrayList<>()));
  }

  /** What is to be looked at anew at an instant. */
  private record Look(boolean minute, boolean turn) {
    Look or(Look other) {
      return new Look(minute || other.minute, turn || other.turn);
    }
  }

  KnownThen build() {
    long before = Long.MIN_VALUE;
    add(before, before, 0, new Look(false, false));
    int seen = 0;
    List<SessionEvent> events = whole.events();
    for (Map.Entry<Long, Look> each : looks().entrySet()) {
      if (cancelled.getAsBoolean()) {
        throw new CancellationException();
      }
      long at = each.getKey();
      while (seen < events.size() && events.get(seen).at() <= at) {
        seen++;
      }
      add(before, at, seen, each.getValue());
      before = at;
    }
    long[] instants = from.stream().mapToLong(Long::longValue).toArray();
    return new KnownThen(instants, told, new SameDrawing(instants, told).last());
  }

  /**
   * Every minute of the match, and the events that can make a turning point or end a stay; in a
   * record of very many events the minutes alone, so that the work grows with the match's length.
   */
  private SortedMap<Long, Look> looks() {
    SortedMap<Long, Look> looks = new TreeMap<>();
    long allIn = whole.match().allIn();
    long allOut = whole.match().allOut();
    for (long at = allIn + STEP_MILLIS; at <= allOut; at += STEP_MILLIS) {
      looks.put(at, new Look(true, false));
    }
    looks.merge(allOut, new Look(false, false), Look::or);
    TellingEvents telling = new TellingEvents(whole);
    Set<Long> near = nets.then().near().stream().map(NetState::at).collect(Collectors.toSet());
    List<SessionEvent> events = whole.events();
    for (int i = 0; i < events.size(); i++) {
      long at = events.get(i).at();
      if (telling.tells(events.get(i)) || near.contains(at)) {
        boolean crowded = i >= CROWDED && allIn < at && at <= allOut;
        looks.merge(crowded ? endOfMinute(at) : at, new Look(false, true), Look::or);
      }
    }
    return looks;
  }

  private long endOfMinute(long at) {
    long allIn = whole.match().allIn();
    return Math.min(
        whole.match().allOut(), allIn - Math.floorDiv(allIn - at, STEP_MILLIS) * STEP_MILLIS);
  }

  private void add(long before, long at, int seen, Look look) {
    Session cut = whole.withEvents(whole.events().subList(0, seen));
    Grade grade = RecordGrade.of(cut);
    Effort effort = Effort.of(cut, settings.handling());
    SentenceText words = new SentenceText(cut, units);
    boolean crossed = false;
    if (at > whole.match().allIn()) {
      // A stay that is still on ends here, as far as is known.
      long end = Math.min(at, whole.match().allOut());
      Effort untilNow = Effort.of(cut.withMatch(cut.match().withAllOut(end)), settings.handling());
      if (look.minute) {
        tellMinute(at, untilNow, grade);
      }
      boolean report = grade == Grade.COUNTS && reported(cut, at);
      if (report || (look.minute && grade != Grade.COUNTS)) {
        crossed = calls.look(at, untilNow, grade);
      }
    }
    List<LineReview> lines = lines(effort);
    if (look.turn || crossed) {
      new TurningPoints(effort, words, nets)
          .gather(lines).stream()
              .filter(t -> !t.hindsight() && t.at() > before && t.at() <= at)
              .forEach(turns::add);
    }
    from.add(at);
    told.add(review(cut, grade, effort, lines));
  }

  private static boolean reported(Session cut, long at) {
    for (int i = cut.events().size() - 1; i >= 0 && cut.events().get(i).at() == at; i--) {
      if (cut.events().get(i) instanceof SessionEvent.Count) {
        return true;
      }
    }
    return false;
  }

  private void tellMinute(long at, Effort untilNow, Grade grade) {
    for (LineEffort line : untilNow.lines()) {
      List<RollingPoint> ofLine = points.get(line.line().id());
      if (ofLine != null) {
        ofLine.add(
            grade == Grade.COUNTS
                ? new RollingPoint(at, 0, Caught.NOTHING, null, null, null)
                : rollingRates.at(
                    at, line, calls.track(untilNow, line, grade).bunchingInTime().at(at)));
      }
    }
    if (grade != Grade.COUNTS && at < whole.match().allOut()) {
      Pace now = new PaceForecast(untilNow, settings, whole.match()).at(at);
      if (now != null) {
        pace.add(now);
      }
    }
  }

  private List<LineReview> lines(Effort effort) {
    FirstBites firstBites = new FirstBites(effort);
    List<LineReview> lines = new ArrayList<>();
    for (LineEffort line : effort.lines()) {
      lines.add(
          new LineReview(
              line.line(),
              line.spells(),
              line.spells().stream().map(Spell::caught).reduce(Caught.NOTHING, Caught::plus),
              Rates.ofLine(line, effort.unassigned()),
              firstBites.of(line),
              calls.of(line)));
    }
    return lines;
  }

  private Review review(Session cut, Grade grade, Effort effort, List<LineReview> lines) {
    List<Rolling> rolling = new ArrayList<>();
    for (LineReview line : lines) {
      String id = line.line().id();
      List<RollingPoint> ofLine = points.getOrDefault(id, List.of());
      rolling.add(new Rolling(id, ofLine, untold(effort, id, ofLine)));
    }
    Caught total = lines.stream().map(LineReview::caught).reduce(Caught.NOTHING, Caught::plus);
    double unassigned = effort.unassigned().stream().mapToDouble(u -> u.span().hours() * 60).sum();
    Summary summary =
        new Summary(
            total,
            Reviewer.weightFrom(cut),
            grade,
            RecordGrade.clockPrecisionSeconds(cut),
            unassigned);
    Course course =
        new Course(rolling, pace, sorted(turns), List.of(), List.of(), List.of(), nets.then());
    return new Review(whole, settings, summary, lines, List.of(), course);
  }

  private static List<TurningPoint> sorted(List<TurningPoint> turns) {
    return turns.stream().sorted(Comparator.comparingLong(TurningPoint::at)).toList();
  }

  /** While nothing told that the line had been left, its rate was told all the same. */
  private static List<Untold> untold(Effort effort, String line, List<RollingPoint> points) {
    List<Untold> untold = new ArrayList<>();
    for (Unassigned gap : effort.unassigned()) {
      if (gap.before().equals(line)) {
        TimeSpan span = gap.span();
        List<RollingPoint> inside =
            points.stream().filter(p -> p.at() >= span.from() && p.at() < span.to()).toList();
        untold.add(new Untold(span, gap.after(), inside));
      }
    }
    return untold;
  }

  /** Compares what two entries draw. */
  private static final class SameDrawing {
    private final long[] from;
    private final List<Review> told;

    SameDrawing(long[] from, List<Review> told) {
      this.from = from;
      this.told = told;
    }

    int[] last() {
      int[] last = new int[told.size()];
      int group = told.size() - 1;
      for (int i = told.size() - 1; i >= 0; i--) {
        if (!drawn(told.get(i), from[i]).equals(drawn(told.get(group), from[i]))) {
          group = i;
        }
        last[i] = group;
      }
      return last;
    }

    /** What had been fished and had come of it by an instant, as a review draws it. */
    private static List<Object> drawn(Review review, long at) {
      List<Object> all = new ArrayList<>();
      for (LineReview line : review.lines()) {
        List<Untold> untold = untoldOf(review, line.line().id());
        for (Spell spell : line.spells()) {
          if (spell.span().from() <= at) {
            all.add(spellBy(spell, untold, at));
          }
        }
        untold.stream().map(Untold::span).filter(s -> s.to() <= at).forEach(all::add);
      }
      return all;
    }

    private static List<Untold> untoldOf(Review review, String line) {
      return review.course().rolling().stream()
          .filter(r -> r.lineId().equals(line))
          .flatMap(r -> r.untold().stream())
          .toList();
    }

    private static List<Object> spellBy(Spell spell, List<Untold> untold, long at) {
      List<TimeSpan> fished = new ArrayList<>();
      boolean over = spell.span().to() <= at;
      for (TimeSpan span : spell.fishedSpans()) {
        long to = span.to();
        for (Untold each : untold) {
          if (each.span().from() == to && each.span().to() > at) {
            to = each.span().to();
            over = false;
          }
        }
        if (span.from() <= at) {
          fished.add(new TimeSpan(span.from(), Math.min(to, at)));
        }
      }
      @Nullable Caught caught = over ? spell.caught() : null;
      return Arrays.asList(spell.lineId(), spell.span().from(), fished, caught);
    }
  }
}
