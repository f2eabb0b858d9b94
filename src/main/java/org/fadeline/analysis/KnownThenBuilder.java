package org.fadeline.analysis;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.SortedMap;
import java.util.TreeMap;
import java.util.concurrent.CancellationException;
import java.util.function.BooleanSupplier;
import java.util.function.DoubleConsumer;
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

/** Goes through a match once, and at each telling instant reviews the record cut there. */
final class KnownThenBuilder {
  private static final long STEP_MILLIS = 60_000;

  /** From this many events on, what one of them tells is told at the end of its minute. */
  static final int CROWDED = 5_000;

  private final Session whole;
  private final ReviewSettings settings;
  private final SentenceText words;
  private final RecordSoFar record;
  private final RollingRates rollingRates;
  private final LiveTracks tracks;
  private final LiveCalls calls;
  private final PaceRuns paceRuns = new PaceRuns();
  private final TurningPoints.Nets nets;
  private final Map<String, List<RollingPoint>> points = new HashMap<>();
  private final List<Pace> pace = new ArrayList<>();
  private final List<TurningPoint> turns = new ArrayList<>();
  private final List<Review> told = new ArrayList<>();
  private final List<Long> from = new ArrayList<>();

  KnownThenBuilder(Session whole, ReviewSettings settings, Units units) {
    this.whole = whole;
    this.settings = settings;
    this.words = new SentenceText(whole, units);
    this.record = new RecordSoFar(whole, settings.handling());
    this.rollingRates = new RollingRates(whole.match(), settings);
    this.tracks = new LiveTracks(settings);
    this.calls = new LiveCalls(settings, tracks);
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

  KnownThen build(DoubleConsumer progress, BooleanSupplier cancelled) {
    long before = Long.MIN_VALUE;
    add(before, before, new Look(false, false));
    SortedMap<Long, Look> looks = looks();
    int done = 0;
    for (Map.Entry<Long, Look> each : looks.entrySet()) {
      if (cancelled.getAsBoolean()) {
        throw new CancellationException();
      }
      progress.accept(done++ / (double) looks.size());
      long at = each.getKey();
      add(before, at, each.getValue());
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

  private void add(long before, long at, Look look) {
    record.readTo(at);
    Grade grade = record.grade();
    long allOut = whole.match().allOut();
    boolean crossed = false;
    if (at > whole.match().allIn()) {
      // A stay that is still on ends here, as far as is known.
      Effort untilNow = record.effort(Math.min(at, allOut));
      if (look.minute) {
        tellMinute(at, untilNow, grade);
      }
      boolean report = grade == Grade.COUNTS && record.countedAt(at);
      if (report || (look.minute && grade != Grade.COUNTS)) {
        crossed = calls.look(at, untilNow, record);
      }
    }
    Effort effort = record.effort(allOut);
    boolean turn = look.turn || crossed;
    List<LineReview> lines = lines(effort, turn && grade != Grade.COUNTS);
    if (turn) {
      new TurningPoints(effort, words, nets)
          .knownThen(lines).stream()
              .filter(t -> t.at() > before && t.at() <= at)
              .forEach(turns::add);
    }
    from.add(at);
    told.add(review(grade, effort, lines));
  }

  private void tellMinute(long at, Effort untilNow, Grade grade) {
    for (LineEffort line : untilNow.lines()) {
      List<RollingPoint> ofLine = points.get(line.line().id());
      if (ofLine != null) {
        ofLine.add(
            grade == Grade.COUNTS
                ? new RollingPoint(at, 0, Caught.NOTHING, null, null, null)
                : rollingRates.at(
                    at, line, tracks.of(untilNow.session(), line, grade).bunchingInTime().at(at)));
      }
    }
    if (grade != Grade.COUNTS && at < whole.match().allOut()) {
      Pace now = new PaceForecast(untilNow, settings, whole.match(), paceRuns).at(at);
      if (now != null) {
        pace.add(now);
      }
    }
  }

  private List<LineReview> lines(Effort effort, boolean withFirstBites) {
    FirstBites firstBites = withFirstBites ? new FirstBites(effort) : null;
    List<LineReview> lines = new ArrayList<>();
    for (LineEffort line : effort.lines()) {
      lines.add(
          new LineReview(
              line.line(),
              line.spells(),
              line.caught(),
              LineReview.Rates.NOT_FISHED,
              firstBites == null ? FirstBite.NONE : firstBites.stretchesOf(line),
              calls.of(line),
              null));
    }
    return lines;
  }

  private Review review(Grade grade, Effort effort, List<LineReview> lines) {
    List<Rolling> rolling = new ArrayList<>();
    for (LineReview line : lines) {
      String id = line.line().id();
      List<RollingPoint> ofLine = points.getOrDefault(id, List.of());
      rolling.add(new Rolling(id, ofLine, untold(effort, id, ofLine)));
    }
    Caught total = lines.stream().map(LineReview::caught).reduce(Caught.NOTHING, Caught::plus);
    double unassigned = effort.unassigned().stream().mapToDouble(u -> u.span().hours() * 60).sum();
    Summary summary =
        new Summary(total, record.weightFrom(), grade, record.clockPrecisionSeconds(), unassigned);
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
}
