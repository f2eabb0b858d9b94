package org.fadeline.analysis;

import java.util.ArrayList;
import java.util.List;
import org.fadeline.analysis.Course.Rolling;
import org.fadeline.analysis.Course.Warning;
import org.fadeline.analysis.Effort.LineEffort;
import org.fadeline.analysis.Review.Summary;
import org.fadeline.analysis.Review.WeightFrom;
import org.fadeline.model.Session;
import org.fadeline.model.Units;
import org.jspecify.annotations.Nullable;

/** Reviews a session: a pure function of the record, the settings and the units of the words. */
public final class Reviewer {
  private final Session session;
  private final ReviewSettings settings;
  private final Effort effort;
  private final Grade grade;
  private final double precision;
  private final SentenceText words;

  private Reviewer(Session session, ReviewSettings settings, Units units) {
    this.session = session;
    this.settings = settings;
    this.effort = Effort.of(session, settings.handling());
    this.grade = RecordGrade.of(session);
    this.precision = RecordGrade.clockPrecisionSeconds(session);
    this.words = new SentenceText(session, units);
  }

  /** Reviews a session with weights told in pounds and ounces. */
  public static Review review(Session session, ReviewSettings settings) {
    return review(session, settings, Units.LB_OZ_AND_METRES);
  }

  /**
   * Reviews a session.
   *
   * @param session the record
   * @param settings what the numbers rest on
   * @param units of the weights in the words; no number depends on them
   */
  public static Review review(Session session, ReviewSettings settings, Units units) {
    return new Reviewer(session, settings, units).review();
  }

  private Review review() {
    Fades fades = new Fades(effort, settings, grade, precision, words);
    LeavingRules leaving = new LeavingRules(settings, grade, fades, words);
    FirstBites firstBites = new FirstBites(effort);
    RollingRates rollingRates = new RollingRates(session.match(), settings);
    List<LineReview> lines = new ArrayList<>();
    List<Rolling> rolling = new ArrayList<>();
    Caught total = Caught.NOTHING;
    for (LineEffort line : effort.lines()) {
      Caught caught = line.caught();
      total = total.plus(caught);
      lines.add(
          new LineReview(
              line.line(),
              line.spells(),
              caught,
              Rates.ofLine(line, effort.unassigned()),
              // Counts tell no first bite finer than the time between two of them.
              grade == Grade.COUNTS ? FirstBite.NONE : firstBites.of(line),
              fades.of(line),
              leaving.of(line)));
      // Counts tell nothing finer than the time between two of them.
      if (grade != Grade.COUNTS) {
        rolling.add(rollingRates.of(line, effort.unassigned(), fades.bunchingInTime(line)));
      }
    }
    StayReview stayReview = new StayReview(effort, settings, grade, fades, words);
    List<StayOrGo> stays = stayReview.review(spell -> fadeOf(lines, spell));
    EstimateError error = settings.estimates();
    NetCourse then = NetCourse.asKnownThen(session, error);
    NetCourse byScales = NetCourse.byScales(session);
    TurningPoints.Nets nets = new TurningPoints.Nets(then, byScales, error);
    Course course =
        new Course(
            rolling,
            grade == Grade.COUNTS ? List.of() : new PaceForecast(effort, settings).everyMinute(),
            new TurningPoints(effort, words, nets).gather(lines),
            Quarters.of(effort),
            new Lessons(words, grade).draw(lines, stays),
            warnings(),
            byScales == null ? then : byScales);
    return new Review(session, settings, summary(total), lines, stays, course);
  }

  private static @Nullable Fade fadeOf(List<LineReview> lines, Spell spell) {
    for (LineReview line : lines) {
      if (line.line().id().equals(spell.lineId())) {
        return line.fades().stream()
            .filter(f -> f.spell() == spell.index())
            .findFirst()
            .orElse(null);
      }
    }
    return null;
  }

  private Summary summary(Caught total) {
    double unassigned = effort.unassigned().stream().mapToDouble(u -> u.span().hours() * 60).sum();
    return new Summary(total, weightFrom(session), grade, precision, unassigned);
  }

  /** Returns where the weights of a session come from. */
  public static WeightFrom weightFrom(Session session) {
    WeightSource source = new WeightSource();
    session.events().forEach(source::add);
    return source.from();
  }

  private List<Warning> warnings() {
    List<Warning> all = new ArrayList<>();
    LearnedPriors learned = settings.learned();
    if (learned != null) {
      all.add(new Warning(null, learned.inWords()));
    }
    all.addAll(effort.warnings());
    all.addAll(new LogWarnings(effort, grade, precision, settings.handling(), words).list());
    return all;
  }
}
