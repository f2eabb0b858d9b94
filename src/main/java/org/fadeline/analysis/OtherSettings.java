package org.fadeline.analysis;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Objects;
import org.fadeline.analysis.Effort.LineEffort;
import org.fadeline.analysis.ReviewSettings.Measure;
import org.fadeline.model.Session;
import org.fadeline.model.Units;
import org.jspecify.annotations.Nullable;

/**
 * How the findings move with the settings: every fade looked for again with one setting changed at
 * a time, so that a finding that hangs on a setting can be told from one that does not.
 *
 * @param variants the settings tried, those in force first
 * @param rows one for each spell long enough to look for a fade, in time order
 */
public record OtherSettings(List<Variant> variants, List<Row> rows) {
  /** Moments further apart than this are told as moved. */
  private static final long STEADY_MILLIS = 600_000;

  private static final List<Double> CALL_LEVELS = List.of(0.5, 0.8, 0.95);
  private static final List<Double> HAZARDS = List.of(0.1, 0.25, 0.5);

  /** Copies the lists. */
  public OtherSettings {
    variants = List.copyOf(variants);
    rows = List.copyOf(rows);
  }

  /**
   * One set of settings.
   *
   * @param label what is different from the settings in force
   * @param settings what was used
   */
  public record Variant(String label, ReviewSettings settings) {}

  /**
   * One spell under every variant.
   *
   * @param spell the spell
   * @param found what each variant found, in the order of the variants; null where the spell is too
   *     short to look
   */
  public record Row(Spell spell, List<@Nullable Found> found) {
    /** Copies the list. */
    public Row {
      found = Collections.unmodifiableList(new ArrayList<>(found));
    }

    /**
     * Returns whether every variant says the same: faded or not, at moments at most ten minutes
     * apart.
     */
    public boolean isSteady() {
      List<Found> all = found.stream().filter(Objects::nonNull).toList();
      List<Long> moments = all.stream().map(Found::fadedAt).filter(Objects::nonNull).toList();
      if (moments.isEmpty()) {
        return true;
      }
      return moments.size() == all.size()
          && Collections.max(moments) - Collections.min(moments) <= STEADY_MILLIS;
    }
  }

  /**
   * What one variant found in one spell.
   *
   * @param probability that the line faded, in [0, 1]
   * @param fadedAt median moment, epoch milliseconds; null where the probability is below 0.5
   * @param plainAt when that was plain, or null
   */
  public record Found(double probability, @Nullable Long fadedAt, @Nullable Long plainAt) {}

  /** Looks for the fades of a session again under other settings. */
  public static OtherSettings of(Session session, ReviewSettings inForce) {
    Effort effort = Effort.of(session, inForce.handling());
    Grade grade = RecordGrade.of(session);
    double precision = RecordGrade.clockPrecisionSeconds(session);
    SentenceText words = new SentenceText(session, Units.LB_OZ_AND_METRES);
    List<Variant> variants = variants(inForce, grade);
    List<List<LineFades>> all = new ArrayList<>();
    for (Variant variant : variants) {
      Fades fades = new Fades(effort, variant.settings(), grade, precision, words);
      all.add(effort.lines().stream().map(l -> new LineFades(l, fades.of(l))).toList());
    }
    List<Row> rows = new ArrayList<>();
    for (Spell spell : effort.spells()) {
      List<@Nullable Found> found = new ArrayList<>();
      for (List<LineFades> lines : all) {
        found.add(found(lines, spell));
      }
      if (found.stream().anyMatch(Objects::nonNull)) {
        rows.add(new Row(spell, found));
      }
    }
    return new OtherSettings(variants, rows);
  }

  private record LineFades(LineEffort line, List<Fade> fades) {}

  private static @Nullable Found found(List<LineFades> lines, Spell spell) {
    for (LineFades each : lines) {
      if (each.line().line().id().equals(spell.lineId())) {
        for (Fade fade : each.fades()) {
          Fade.Moment moment = fade.moment();
          if (fade.spell() == spell.index()) {
            Long at =
                moment == null || fade.probability() < ReviewSettings.PROBABLE_FROM
                    ? null
                    : moment.at();
            return new Found(fade.probability(), at, fade.call().plainAt());
          }
        }
      }
    }
    return null;
  }

  private static List<Variant> variants(ReviewSettings now, Grade grade) {
    List<Variant> all = new ArrayList<>();
    all.add(new Variant("As set", now));
    for (double level : CALL_LEVELS) {
      if (level != now.callLevel()) {
        all.add(new Variant("Plain at " + Math.round(level * 100) + "%", now.withCallLevel(level)));
      }
    }
    for (double hazard : HAZARDS) {
      if (hazard != now.changeHazard()) {
        all.add(new Variant(hazard + " changes an hour", now.withChangeHazard(hazard)));
      }
    }
    for (Measure measure : Measure.values()) {
      if (measure.carriedBy(grade) != now.measure().carriedBy(grade)) {
        all.add(new Variant("On " + measure.word(), now.withMeasure(measure)));
      }
    }
    return all;
  }
}
