package org.fadeline.analysis;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import org.fadeline.analysis.Effort.LineEffort;
import org.fadeline.analysis.LineOrWater.Against;
import org.fadeline.analysis.LineOrWater.Part;
import org.fadeline.analysis.LineOrWater.Source;
import org.fadeline.analysis.LineOrWater.Verdict;
import org.fadeline.model.SessionEvent;
import org.fadeline.model.WeatherNote;
import org.fadeline.stats.RateRatio;
import org.jspecify.annotations.Nullable;

/**
 * Asks of each fade whether the line went quiet or the whole water.
 *
 * <p>A fade is a drop to half or less. So a source points to the line where it rules out a halving
 * elsewhere (the lower limit of the ratio lies above a half), and to the water where a drop is
 * shown elsewhere too (the upper limit lies below 1); exact limits at 95%, counts divided by the
 * line's bunching. Everything else cannot tell. Where sources disagree, the whole cannot tell.
 */
final class LineOrWaterReview {
  /** How long after leaving the other lines are looked at. */
  private static final long AFTER_MILLIS = 3_600_000;

  /** How far back the line and the neighbours are looked at. */
  private static final long BEFORE_MILLIS = 3_600_000;

  private static final long LEAST_STRETCH_MILLIS = 1_200_000;
  private static final double LEAST_BAIT_HOURS = 0.25;
  private static final int LEAST_NEIGHBOUR_FISH = 4;

  private final Effort effort;
  private final Grade grade;
  private final SentenceText words;

  LineOrWaterReview(Effort effort, Grade grade, SentenceText words) {
    this.effort = effort;
    this.grade = grade;
    this.words = words;
  }

  /** Returns the answer for a spell, or null where no fade was found in it. */
  @Nullable LineOrWater of(Spell spell, @Nullable Fade fade) {
    Fade.Moment moment = fade == null ? null : fade.moment();
    // A count tells nothing of the minutes between two readings.
    if (fade == null
        || moment == null
        || fade.probability() < ReviewSettings.PROBABLE_FROM
        || grade == Grade.COUNTS) {
      return null;
    }
    long faded = moment.at();
    long left = spell.span().to();
    List<Part> parts =
        List.of(
            otherLines(spell, faded, fade.strength().bunching()),
            neighbours(faded, left),
            hour(faded, left));
    Verdict verdict = together(parts);
    return new LineOrWater(faded, left, verdict, parts, sentence(spell, verdict, parts));
  }

  private static Verdict together(List<Part> parts) {
    boolean line = parts.stream().anyMatch(p -> p.verdict() == Verdict.LINE);
    boolean water = parts.stream().anyMatch(p -> p.verdict() == Verdict.WATER);
    return line == water ? Verdict.CANNOT_TELL : line ? Verdict.LINE : Verdict.WATER;
  }

  private String sentence(Spell spell, Verdict verdict, List<Part> parts) {
    String line = words.line(spell.lineId());
    return switch (verdict) {
      case LINE ->
          "As far as this record shows, it was " + line + " that went quiet, not the water.";
      case WATER ->
          "As far as this record shows, the water as a whole went quiet, not " + line + " alone.";
      case CANNOT_TELL ->
          parts.stream().anyMatch(p -> p.verdict() != Verdict.CANNOT_TELL)
              ? "The signs disagree on whether it was " + line + " or the whole water."
              : "This record cannot tell whether it was " + line + " or the whole water.";
    };
  }

  private Part otherLines(Spell spell, long faded, double bunching) {
    long left = spell.span().to();
    long until = Math.min(left + AFTER_MILLIS, effort.session().match().allOut());
    int after = 0;
    double hours = 0;
    for (LineEffort other : effort.lines()) {
      if (!other.line().id().equals(spell.lineId())) {
        after += bites(other, left, until);
        hours += baitHours(other, left, until);
      }
    }
    LineEffort line = effort.line(spell.lineId()).orElseThrow();
    long from = Math.max(spell.span().from(), faded - BEFORE_MILLIS);
    int before = bites(line, from, faded);
    double hoursBefore = baitHours(line, from, faded);
    if (hours < LEAST_BAIT_HOURS || hoursBefore < LEAST_BAIT_HOURS) {
      String why =
          hours == 0
              ? "No other line was fished in the hour after it was left."
              : "The other lines were fished too briefly in the hour after it was left to compare.";
      return new Part(Source.OTHER_LINES, Verdict.CANNOT_TELL, null, why);
    }
    Against against = against(after, hours, before, hoursBefore, bunching);
    Verdict verdict = verdict(against);
    String text =
        "From leaving to "
            + words.clock(until)
            + " the other lines, rested and fed meanwhile, gave "
            + SentenceText.bites(after)
            + " in "
            + SentenceText.minutes(hours * 60)
            + baits()
            + "; this one had given "
            + SentenceText.bites(before)
            + " in "
            + SentenceText.minutes(hoursBefore * 60)
            + " before it faded"
            + compared(against)
            + switch (verdict) {
              case LINE -> ". That they gave half or less is ruled out.";
              case WATER -> ". They gave less, too.";
              case CANNOT_TELL -> ". That settles neither.";
            };
    return new Part(Source.OTHER_LINES, verdict, against, text);
  }

  private String baits() {
    return grade == Grade.FULL ? " with a bait in" : " fished";
  }

  private static int bites(LineEffort line, long from, long to) {
    return line.bitesAt(from + 1, to).size();
  }

  private static double baitHours(LineEffort line, long from, long to) {
    return line.baitMillis(from, to) / TimeSpan.MILLIS_PER_HOUR;
  }

  private static Against against(
      int count, double hours, int before, double hoursBefore, double bunching) {
    RateRatio ratio =
        RateRatio.of(
            count / bunching,
            hours / bunching,
            before / bunching,
            hoursBefore / bunching,
            ReviewSettings.LEVEL);
    return new Against(
        count,
        hours,
        before,
        hoursBefore,
        ratio.ratio(),
        ratio.limits().low(),
        ratio.limits().high(),
        ReviewSettings.LEVEL);
  }

  private static Verdict verdict(Against against) {
    if (against.low() > ReviewSettings.FADED_SHARE) {
      return Verdict.LINE;
    }
    return against.high() < 1 ? Verdict.WATER : Verdict.CANNOT_TELL;
  }

  private static String compared(Against against) {
    Double ratio = against.ratio();
    if (ratio == null || Double.isInfinite(ratio)) {
      return "";
    }
    String high = Double.isInfinite(against.high()) ? "no upper limit" : number(against.high());
    return ", "
        + number(ratio)
        + " times as many an hour ("
        + number(against.low())
        + "–"
        + high
        + ")";
  }

  private static String number(double value) {
    return String.format(Locale.ROOT, value < 9.95 ? "%.1f" : "%.0f", value);
  }

  private Part neighbours(long faded, long left) {
    long stretch = Math.max(LEAST_STRETCH_MILLIS, left - faded);
    long to = Math.min(faded + stretch, effort.session().match().allOut());
    long from = Math.max(effort.session().match().allIn(), faded - (to - faded));
    List<SessionEvent.Neighbour> seen = new ArrayList<>();
    for (SessionEvent event : effort.session().events()) {
      if (event instanceof SessionEvent.Neighbour neighbour) {
        seen.add(neighbour);
      }
    }
    int before = fish(seen, from, faded);
    int during = fish(seen, faded, to);
    if (before + during < LEAST_NEIGHBOUR_FISH || to <= faded || from >= faded) {
      String why =
          seen.isEmpty()
              ? "No neighbour's fish are noted."
              : "Too few of the neighbours' fish are noted around it ("
                  + (before + during)
                  + ") to compare.";
      return new Part(Source.NEIGHBOURS, Verdict.CANNOT_TELL, null, why);
    }
    Against against =
        against(
            during,
            (to - faded) / TimeSpan.MILLIS_PER_HOUR,
            before,
            (faded - from) / TimeSpan.MILLIS_PER_HOUR,
            1);
    Verdict verdict = verdict(against);
    String text =
        "The neighbours were seen to catch "
            + SentenceText.fish(during)
            + " in the "
            + SentenceText.minutes((to - faded) / TimeSpan.MILLIS_PER_MINUTE)
            + " after it faded and "
            + SentenceText.fish(before)
            + " in the "
            + SentenceText.minutes((faded - from) / TimeSpan.MILLIS_PER_MINUTE)
            + " before"
            + compared(against)
            + switch (verdict) {
              case LINE -> ". That theirs halved is ruled out";
              case WATER -> ". Theirs dropped, too";
              case CANNOT_TELL -> ". That settles neither";
            }
            + "; only what was noticed and noted counts.";
    return new Part(Source.NEIGHBOURS, verdict, against, text);
  }

  private static int fish(List<SessionEvent.Neighbour> seen, long from, long to) {
    return seen.stream()
        .filter(n -> n.at() > from && n.at() <= to)
        .mapToInt(n -> n.fish().count())
        .sum();
  }

  /** One match says nothing of what is usual at an hour; what was noted is told, not weighed. */
  private Part hour(long faded, long left) {
    StringBuilder text =
        new StringBuilder("What is usual at this hour cannot be seen from one match.");
    List<String> noted = noted(faded - LEAST_STRETCH_MILLIS, left);
    if (!noted.isEmpty()) {
      text.append(" Noted around then: ").append(String.join("; ", noted)).append('.');
    }
    return new Part(Source.HOUR, Verdict.CANNOT_TELL, null, text.toString());
  }

  private List<String> noted(long from, long to) {
    List<String> noted = new ArrayList<>();
    for (WeatherNote note : effort.session().occasion().weather()) {
      if (note.at() >= from && note.at() <= to && note.note() != null) {
        noted.add(words.clock(note.at()) + " " + note.note());
      }
    }
    int signs = 0;
    for (SessionEvent event : effort.session().events()) {
      if (event.at() < from || event.at() > to) {
        continue;
      }
      String said = event.note();
      if (event instanceof SessionEvent.Weather && said != null) {
        noted.add(words.clock(event.at()) + " " + said);
      } else if (event instanceof SessionEvent.Sign) {
        signs++;
      }
    }
    if (signs > 0) {
      noted.add(signs == 1 ? "fish showing once" : "fish showing " + signs + " times");
    }
    return noted;
  }
}
