package org.fadeline.analysis;

import java.util.ArrayList;
import java.util.List;
import org.fadeline.analysis.Effort.FishMark;
import org.fadeline.analysis.Effort.LineEffort;
import org.fadeline.analysis.StayOrGo.Evidence;
import org.fadeline.analysis.StayOrGo.OtherLine;
import org.fadeline.analysis.StayOrGo.PastPlain;
import org.fadeline.analysis.StayOrGo.Source;
import org.jspecify.annotations.Nullable;

/** Looks at every spell both ways: left too soon, in time, or late, and what staying asked. */
final class StayReview {
  private final Effort effort;
  private final ReviewSettings settings;
  private final List<Spell> spells;
  private final Grade grade;
  private final StayWords words;
  private final StayNotes notes;
  private final LineOrWaterReview lineOrWater;

  StayReview(Effort effort, ReviewSettings settings, Grade grade, Fades fades, SentenceText words) {
    this.effort = effort;
    this.settings = settings;
    this.spells = effort.spells();
    this.grade = grade;
    this.words = new StayWords(words, effort);
    this.notes = new StayNotes(words, fades);
    this.lineOrWater = new LineOrWaterReview(effort, grade, words);
  }

  /** Looks up the fade found in a spell. */
  interface FadeOf {
    /** Returns the fade, or null where the spell is too short or thin to tell. */
    @Nullable Fade of(Spell spell);
  }

  /** Returns one entry for every spell, in time order. */
  List<StayOrGo> review(FadeOf fades) {
    List<StayOrGo> stays = new ArrayList<>();
    for (int i = 0; i < spells.size(); i++) {
      Spell spell = spells.get(i);
      LineEffort line = effort.line(spell.lineId()).orElseThrow();
      Fade fade = fades.of(spell);
      Spell next = i + 1 < spells.size() ? spells.get(i + 1) : null;
      PastPlain past = past(line, spell, fade, next);
      List<OtherLine> others = others(spell, next, past);
      LineReview.Rates paid = Rates.ofSpell(line, spell);
      Recovery again = recovery(line, spell, fades);
      stays.add(
          new StayOrGo(
              spell,
              paid,
              fade,
              past,
              others,
              lineOrWater.of(spell, fade),
              words.of(spell, paid, fade, past, others),
              notes.of(line, spell, fade, past, others, again),
              again));
    }
    return stays;
  }

  /** Counts tell nothing as fine as the half hour after coming back. */
  private @Nullable Recovery recovery(LineEffort line, Spell spell, FadeOf fades) {
    return grade == Grade.COUNTS || spell.index() == 0
        ? null
        : notes.recovery(line, spell, fades.of(line.spells().get(spell.index() - 1)));
  }

  private @Nullable PastPlain past(
      LineEffort line, Spell spell, @Nullable Fade fade, @Nullable Spell next) {
    Long plainAt = fade == null ? null : fade.call().plainAt();
    long left = spell.span().to();
    if (plainAt == null || plainAt >= left) {
      return null;
    }
    Caught caught = line.caught(plainAt, left);
    double minutes = (left - plainAt) / TimeSpan.MILLIS_PER_MINUTE;
    boolean moved = next != null && !next.lineId().equals(spell.lineId());
    double hours = (minutes - (moved ? 0 : settings.moveCostMinutes())) / 60;
    boolean weights = line.fish().stream().allMatch(f -> f.grams() != null);
    return new PastPlain(
        plainAt,
        minutes,
        caught,
        hours > 0 ? caught.landed() / hours : null,
        hours > 0 && weights ? caught.weightG() / hours : null);
  }

  private List<OtherLine> others(Spell spell, @Nullable Spell next, @Nullable PastPlain past) {
    List<OtherLine> others = new ArrayList<>();
    long left = spell.span().to();
    for (LineEffort other : effort.lines()) {
      if (other.line().id().equals(spell.lineId())) {
        continue;
      }
      boolean nextFished = next != null && next.lineId().equals(other.line().id());
      List<Spell> later = other.spells().stream().filter(s -> s.span().from() >= left).toList();
      List<Spell> earlier =
          other.spells().stream().filter(s -> s.span().to() <= spell.span().from()).toList();
      StayOrGo.Gain gain =
          past == null
              ? null
              : GainEstimate.of(
                  other, earlier, later, past, left, nextFished ? 0 : settings.moveCostMinutes());
      add(others, other, later, Source.LATER, nextFished, gain);
      add(others, other, earlier, Source.EARLIER, nextFished, gain);
      if (later.isEmpty() && earlier.isEmpty()) {
        OtherLine season = fromSeason(other, nextFished);
        if (season != null) {
          others.add(season);
        }
      }
    }
    return others;
  }

  /** What lines of its kind gave in other sessions, where this one says nothing of it. */
  private @Nullable OtherLine fromSeason(LineEffort line, boolean nextFished) {
    LearnedPriors learned = settings.learned();
    LearnedPriors.Kind kind = learned == null ? null : learned.of(line.line());
    if (kind == null || kind.pool() == null) {
      return null;
    }
    LearnedPriors.Given given = kind.given();
    return new OtherLine(
        line.line().id(),
        Source.SEASON,
        nextFished,
        new Evidence(given.fishedHours() * 60, given.fish(), Rates.expected(kind.pool())),
        null,
        null);
  }

  private static void add(
      List<OtherLine> others,
      LineEffort line,
      List<Spell> spells,
      Source source,
      boolean nextFished,
      StayOrGo.@Nullable Gain gain) {
    double hours = spells.stream().mapToDouble(Spell::fishedHours).sum();
    List<FishMark> fish = line.fishOf(spells);
    Rate rate = Rates.perHour(fish.size(), hours);
    if (rate != null) {
      others.add(
          new OtherLine(
              line.line().id(),
              source,
              nextFished,
              new Evidence(hours * 60, fish.size(), rate),
              Rates.gramsPerHour(fish, hours),
              gain));
    }
  }
}
