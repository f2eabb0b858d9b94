package org.fadeline.analysis;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.function.Function;
import java.util.stream.Collectors;
import org.fadeline.analysis.Effort.LineEffort;
import org.fadeline.analysis.Fade.Call;
import org.fadeline.analysis.Fade.Crossing;
import org.fadeline.analysis.Fade.Mass;
import org.fadeline.analysis.Fade.Moment;
import org.fadeline.analysis.Fade.Strength;
import org.fadeline.model.Line;
import org.fadeline.model.Session;
import org.fadeline.stats.FadeCrossing;
import org.fadeline.stats.FadeMoment;
import org.fadeline.stats.FadeOptions;
import org.fadeline.stats.FadePosterior;
import org.fadeline.stats.FadeRecord;
import org.jspecify.annotations.Nullable;

/** Finds whether and when each line faded, and puts it back on the clock. */
final class Fades {
  private final ReviewSettings settings;
  private final Grade grade;
  private final FadeWords words;
  private final Map<String, FadeTrack> tracks;
  private final List<Map<String, FadeTrack>> imputed;

  Fades(Effort effort, ReviewSettings settings, Grade grade, double precision, SentenceText words) {
    this.settings = settings;
    this.grade = grade;
    this.words = new FadeWords(words);
    this.tracks = tracks(effort);
    this.imputed = new ArrayList<>();
    for (Session session : Imputation.of(effort.session(), precision, settings.seed())) {
      imputed.add(tracks(Effort.of(session, settings.handling())));
    }
  }

  private Map<String, FadeTrack> tracks(Effort effort) {
    return effort.lines().stream()
        .collect(
            Collectors.toMap(
                l -> l.line().id(),
                l -> new FadeTrack(effort.session(), l, settings.measure(), grade),
                (a, b) -> a,
                LinkedHashMap::new));
  }

  private FadeTrack track(LineEffort line) {
    FadeTrack track = tracks.get(line.line().id());
    if (track == null) {
      throw new IllegalArgumentException("no line " + line.line().id());
    }
    return track;
  }

  /** Returns one entry for each spell of at least 20 bait minutes, in order. */
  List<Fade> of(LineEffort line) {
    FadeTrack track = track(line);
    FadeOptions options = options(settings, line.line());
    List<Found> imputations = new ArrayList<>();
    for (Map<String, FadeTrack> other : imputed) {
      FadeTrack sameLine = other.get(line.line().id());
      if (sameLine != null) {
        // Only where a fade lies is put together; when it was plain is read off the record.
        imputations.addAll(found(sameLine, t -> FadePosterior.atEnd(t, options)));
      }
    }
    Map<Integer, List<Found>> bySpell =
        imputations.stream().collect(Collectors.groupingBy(f -> f.posterior.spell()));
    List<Fade> fades = new ArrayList<>();
    for (Found found : found(track, t -> FadePosterior.review(t, options))) {
      int spell = found.posterior.spell();
      fades.add(fade(line.spells().get(track.spellIndex(spell)), found, bySpell.get(spell)));
    }
    return fades;
  }

  /** Returns the record of a line, and where its clock is coarse the draws of it after that. */
  List<FadeTrack> tracks(LineEffort line) {
    List<FadeTrack> all = new ArrayList<>(List.of(track(line)));
    for (Map<String, FadeTrack> other : imputed) {
      FadeTrack sameLine = other.get(line.line().id());
      if (sameLine != null) {
        all.add(sameLine);
      }
    }
    return all;
  }

  /** Returns the bites of a spell in a stretch of clock, and how long a bait was in then. */
  Recovery.Stretch counted(LineEffort line, Spell spell, long from, long to) {
    return track(line).counted(spell, from, to);
  }

  /** Returns the bunching expected of a line beforehand. */
  double bunchingBefore(Line line) {
    return bunchingBefore(settings, line);
  }

  private static double bunchingBefore(ReviewSettings settings, Line line) {
    LearnedPriors learned = settings.learned();
    LearnedPriors.Kind kind = learned == null ? null : learned.of(line);
    return kind == null ? 1 : kind.bunching();
  }

  /** Returns what counts as a fade on a line. */
  static FadeOptions options(ReviewSettings settings, Line line) {
    return FadeOptions.DEFAULT
        .withHazard(settings.changeHazard())
        .withCallLevel(settings.callLevel())
        .withSeed(settings.seed())
        .withBunching(bunchingBefore(settings, line));
  }

  /** Puts a moment of a track back on the clock, without its density. */
  static @Nullable Moment moment(FadeTrack track, @Nullable FadeMoment moment) {
    return moment == null
        ? null
        : new Moment(
            track.startOf(moment.median()),
            track.startOf(moment.low()),
            track.startOf(moment.high()),
            ReviewSettings.FADE_LEVEL,
            List.of());
  }

  private static List<Found> found(
      FadeTrack track, Function<FadeRecord, List<FadePosterior>> search) {
    if (track.isEmpty()) {
      return List.of();
    }
    return search.apply(track.record()).stream().map(p -> new Found(track, p)).toList();
  }

  /** A posterior and the clock it runs on. */
  private record Found(FadeTrack track, FadePosterior posterior) {
    @Nullable Moment moment(@Nullable FadeMoment moment) {
      return Fades.moment(track, moment);
    }

    List<Mass> masses() {
      double[] probabilities = posterior.momentProbabilities();
      List<Mass> masses = new ArrayList<>();
      for (int i = 0; i < probabilities.length; i++) {
        if (probabilities[i] > 0) {
          TimeSpan span = track.binOnClock(i);
          masses.add(new Mass(span, probabilities[i] * posterior.probability()));
        }
      }
      return masses;
    }
  }

  private Fade fade(Spell spell, Found found, @Nullable List<Found> imputations) {
    FadePosterior posterior = found.posterior;
    FadePosterior.Verdict verdict = posterior.verdict();
    double probability = verdict.probability();
    Moment moment = found.moment(verdict.moment());
    if (moment != null) {
      moment = withDensity(moment, found.masses());
    }
    if (imputations != null && !imputations.isEmpty()) {
      probability =
          imputations.stream().mapToDouble(f -> f.posterior.probability()).average().orElseThrow();
      moment = pooled(imputations, moment);
    }
    Double plain = probability >= ReviewSettings.PROBABLE_FROM ? posterior.plainAt() : null;
    List<Crossing> crossings = new ArrayList<>();
    for (FadeCrossing crossing : posterior.crossings()) {
      crossings.add(
          new Crossing(
              found.track.endOf(crossing.minute(), spell),
              crossing.up(),
              found.moment(crossing.asSeenThen())));
    }
    Call call =
        new Call(
            plain == null ? null : found.track.endOf(plain, spell),
            settings.callLevel(),
            crossings);
    double after = moment == null ? 0 : found.track.minutesFrom(moment.at(), spell);
    Strength strength =
        new Strength(
            verdict.goingRate(),
            verdict.rateAfter(),
            verdict.bunching(),
            Fade.Shape.valueOf(verdict.shape().name()),
            after);
    return new Fade(
        spell.index(),
        probability,
        moment,
        call,
        strength,
        words.of(probability, moment, strength, verdict.notComeBack()));
  }

  private static Moment withDensity(Moment moment, List<Mass> masses) {
    return new Moment(moment.at(), moment.low(), moment.high(), moment.level(), masses);
  }

  /** Returns the moment over all imputations: the quantiles of their masses put together. */
  private static @Nullable Moment pooled(List<Found> imputations, @Nullable Moment given) {
    List<Mass> all = new ArrayList<>();
    for (Found found : imputations) {
      for (Mass mass : found.masses()) {
        all.add(new Mass(mass.span(), mass.probability() / imputations.size()));
      }
    }
    double total = all.stream().mapToDouble(Mass::probability).sum();
    if (!(total > 0)) {
      return null;
    }
    all.sort(Comparator.comparingLong(m -> m.span().from()));
    double tail = (1 - ReviewSettings.FADE_LEVEL) / 2;
    Function<Double, Long> quantile =
        p -> {
          double sum = 0;
          for (Mass mass : all) {
            sum += mass.probability();
            if (sum >= p * total) {
              return mass.span().from();
            }
          }
          return all.get(all.size() - 1).span().from();
        };
    List<Mass> density = given == null ? all : given.density();
    return new Moment(
        quantile.apply(0.5),
        quantile.apply(tail),
        quantile.apply(1 - tail),
        ReviewSettings.FADE_LEVEL,
        density);
  }

  /** Returns how much the bites of a line bunch, as known at each instant. */
  RollingRates.BunchingInTime bunchingInTime(LineEffort line) {
    return track(line).bunchingInTime();
  }
}
