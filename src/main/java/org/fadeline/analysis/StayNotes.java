package org.fadeline.analysis;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import org.fadeline.analysis.Effort.LineEffort;
import org.fadeline.analysis.StayOrGo.OtherLine;
import org.fadeline.analysis.StayOrGo.PastPlain;
import org.fadeline.stats.RateRatio;
import org.jspecify.annotations.Nullable;

/** What else is to know of a stay, for who looks closer: what bears a finding out, or limits it. */
final class StayNotes {
  /** Bait minutes that must follow the moment before "it had faded" is said. */
  private static final double VERIFY_MINUTES = 20;

  /**
   * Bait minutes on either side that show a halving of one bite an hour four times in five: 300 at
   * 8 an hour, and inversely as the rate.
   */
  private static final double HALVING_MINUTES = 2400;

  /** How many of 100 lines that had not faded yet were called, on simulated ones: by level. */
  private static final Map<Double, String> FALSE_CALLS =
      Map.of(ReviewSettings.PROBABLE_FROM, "16 to 22", ReviewSettings.MARKED_FROM, "3 to 4");

  private final SentenceText words;
  private final Fades fades;

  StayNotes(SentenceText words, Fades fades) {
    this.words = words;
    this.fades = fades;
  }

  /**
   * Returns the notes on a stay, each a sentence or two.
   *
   * @param again what it gave beside a faded stay before it, which is then what counts, or null
   */
  List<String> of(
      LineEffort line,
      Spell spell,
      @Nullable Fade fade,
      @Nullable PastPlain past,
      List<OtherLine> others,
      @Nullable Recovery again) {
    List<String> notes = new ArrayList<>();
    if (fade != null && fade.probability() >= ReviewSettings.PROBABLE_FROM) {
      verify(notes, fade);
      call(notes, fade);
    } else if (fade != null && again == null) {
      halving(notes, line, spell, fade);
    }
    if (past != null && others.isEmpty()) {
      notes.add("Nothing in this record says what another line gave.");
    }
    return notes;
  }

  private static void verify(List<String> notes, Fade fade) {
    long minutes = Math.round(fade.strength().baitMinutesAfter());
    if (fade.strength().baitMinutesAfter() < VERIFY_MINUTES) {
      notes.add(
          "Only "
              + minutes
              + " bait minutes followed that moment: whether it stayed faded was not seen.");
    } else if (fade.probability() >= ReviewSettings.MARKED_FROM) {
      notes.add("It had faded: the " + minutes + " bait minutes that followed bear it out.");
    } else {
      notes.add(minutes + " bait minutes followed that moment.");
    }
  }

  private void call(List<String> notes, Fade fade) {
    Long plain = fade.call().plainAt();
    Fade.Moment moment = fade.moment();
    if (plain == null) {
      return;
    }
    if (moment != null && plain < moment.at()) {
      notes.add(
          "An early call: it looked plain by "
              + words.clock(plain)
              + ", before the moment that hindsight settles on.");
    } else {
      notes.add("It took until then to be plain because few bites say little: that is no fault.");
    }
    notes.add(falseCalls(fade.call().level()));
  }

  /** Watched to their change minute by minute, as the methods document tells. */
  private static String falseCalls(double level) {
    String tried = FALSE_CALLS.get(level);
    return "Looking again every minute finds more that is not there than looking once: of simulated"
        + " lines that had not faded yet, "
        + (tried == null
            ? String.format(
                Locale.ROOT,
                "%s in 100 were called at 50%% and %s at 80%%; at %.0f%% it was not tried.",
                FALSE_CALLS.get(ReviewSettings.PROBABLE_FROM),
                FALSE_CALLS.get(ReviewSettings.MARKED_FROM),
                100 * level)
            : tried + " in 100 were called.");
  }

  /** A quiet record of a slow line says little either way. */
  private void halving(List<String> notes, LineEffort line, Spell spell, Fade fade) {
    BaitClock clock = new BaitClock(line);
    double minutes = clock.spellEnd(spell.index());
    Double going = fade.strength().before();
    if (going == null || going <= 0 || going * minutes / 2 >= HALVING_MINUTES) {
      return;
    }
    notes.add(
        String.format(
            Locale.ROOT,
            "This record could not show a halving: at %s bites an hour that takes about %s with a"
                + " bait in before it and as much after, and there were %s in all.",
            SentenceText.rate(going),
            SentenceText.minutes(HALVING_MINUTES / going),
            SentenceText.minutes(minutes)));
  }

  /**
   * Returns what a stay gave beside the end of the stay before it on the line, where that had
   * faded; null where it had not, or where neither says anything.
   *
   * @param before the fade found in the line's stay before, or null
   */
  @Nullable Recovery recovery(LineEffort line, Spell spell, @Nullable Fade before) {
    Fade.Moment moment = before == null ? null : before.moment();
    if (before == null
        || moment == null
        || before.probability() < ReviewSettings.PROBABLE_FROM
        || spell.index() == 0) {
      return null;
    }
    Spell faded = line.spells().get(spell.index() - 1);
    BaitClock clock = new BaitClock(line);
    long until =
        Math.min(
            spell.span().to(),
            clock.startOf(clock.spellStart(spell.index()) + Recovery.LONGEST_MINUTES));
    Recovery.Stretch low = fades.counted(line, faded, moment.at(), faded.span().to());
    Recovery.Stretch again = fades.counted(line, spell, spell.span().from(), until);
    if (low.baitMinutes() <= 0 || again.baitMinutes() <= 0 || low.bites() + again.bites() == 0) {
      return null;
    }
    RateRatio ratio =
        RateRatio.of(
            again.bites(),
            again.baitMinutes() / 60,
            low.bites(),
            low.baitMinutes() / 60,
            ReviewSettings.LEVEL);
    Double estimate = low.bites() == 0 ? null : ratio.ratio();
    Double high = low.bites() == 0 ? null : (Double) ratio.limits().high();
    double away = new TimeSpan(faded.span().to(), spell.span().from()).minutes();
    return new Recovery(
        low,
        again,
        away,
        estimate,
        ratio.limits().low(),
        high,
        ReviewSettings.LEVEL,
        before.strength().before(),
        wording(low, again, away, ratio, before.strength().before()));
  }

  private static String wording(
      Recovery.Stretch low,
      Recovery.Stretch again,
      double away,
      RateRatio ratio,
      @Nullable Double going) {
    StringBuilder text = new StringBuilder();
    text.append("Come back to after ")
        .append(SentenceText.minutes(away))
        .append(": ")
        .append(in(again))
        .append(" with a bait in, against ")
        .append(in(low))
        .append(" after it had faded");
    if (low.bites() > 0) {
      text.append(
          String.format(
              Locale.ROOT,
              ", %.1f times as many an hour (%.1f–%.1f)",
              again.bites() / again.baitMinutes() * low.baitMinutes() / low.bites(),
              ratio.limits().low(),
              ratio.limits().high()));
    }
    text.append(": ").append(verdict(ratio)).append('.');
    if (going != null) {
      text.append(" Before the fade it went at ")
          .append(SentenceText.rate(going))
          .append(" an hour; what followed the fade was picked for being low.");
    }
    return text.toString();
  }

  private static String in(Recovery.Stretch stretch) {
    return SentenceText.bites(stretch.bites())
        + " in "
        + SentenceText.minutes(stretch.baitMinutes());
  }

  private static String verdict(RateRatio ratio) {
    if (ratio.limits().low() > 1) {
      return "more than before it was left";
    }
    if (ratio.limits().high() < 1) {
      return "less than before it was left";
    }
    Double estimate = ratio.ratio();
    return estimate != null && estimate > 1
        ? "looks better, not shown"
        : "no better as far as this shows";
  }
}
