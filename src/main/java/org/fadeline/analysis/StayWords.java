package org.fadeline.analysis;

import java.util.HashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.TreeSet;
import java.util.stream.Collectors;
import org.fadeline.analysis.StayOrGo.Gain;
import org.fadeline.analysis.StayOrGo.OtherLine;
import org.fadeline.analysis.StayOrGo.PastPlain;
import org.fadeline.analysis.StayOrGo.Source;
import org.fadeline.analysis.StayOrGo.Verdict;
import org.fadeline.analysis.StayOrGo.Wording;
import org.fadeline.model.EventKind;
import org.fadeline.model.Line;
import org.fadeline.model.SessionEvent;
import org.jspecify.annotations.Nullable;

/** The words of a stay: what was seen and how sure, never blame. */
final class StayWords {
  /** Leaving within this many minutes of the plain moment is leaving in time. */
  private static final double IN_TIME_MINUTES = 5;

  private final SentenceText words;
  private final Effort effort;
  private final long allOut;

  /** Instants of the feeds of each spot. */
  private final Map<String, TreeSet<Long>> feeds = new HashMap<>();

  StayWords(SentenceText words, Effort effort) {
    this.words = words;
    this.effort = effort;
    this.allOut = effort.session().match().allOut();
    Map<String, String> spots =
        effort.session().lines().stream()
            .collect(Collectors.toMap(Line::id, Line::spot, (a, b) -> a));
    for (SessionEvent event : effort.session().events()) {
      String spot = event.kind() == EventKind.FED ? spots.get(event.lineId()) : null;
      if (spot != null) {
        feeds.computeIfAbsent(spot, s -> new TreeSet<>()).add(event.at());
      }
    }
  }

  Wording of(
      Spell spell,
      LineReview.Rates paid,
      @Nullable Fade fade,
      @Nullable PastPlain past,
      List<OtherLine> others) {
    StringBuilder text = new StringBuilder(paid(spell, paid));
    Verdict verdict;
    boolean toTheEnd = spell.span().to() >= allOut;
    String left = toTheEnd ? "Stayed to all out" : "Left " + words.clock(spell.span().to());
    if (fade == null) {
      text.append(" Too little to judge a fade by. ").append(left).append('.');
      verdict = Verdict.CANNOT_TELL;
    } else {
      text.append(' ').append(fade.verdict()).append('.');
      if (past != null) {
        text.append(" Plain by ").append(words.clock(past.plainAt())).append(". ").append(left);
        text.append(", ").append(SentenceText.minutes(past.minutes())).append(" after.");
        text.append(' ').append(asked(past, others, spell.span().to()));
        verdict =
            toTheEnd
                ? Verdict.STAYED_TO_ALL_OUT
                : past.minutes() <= IN_TIME_MINUTES
                    ? Verdict.LEFT_IN_TIME
                    : Verdict.STAYED_PAST_PLAIN;
      } else {
        text.append(' ').append(left).append(notPlain(fade, toTheEnd));
        verdict = verdictWithoutPlain(fade, toTheEnd);
      }
    }
    text.append(after(others, spell.span().to()));
    return new Wording(verdict, text.toString());
  }

  private String paid(Spell spell, LineReview.Rates paid) {
    StringBuilder text = new StringBuilder();
    text.append(words.clocks(spell.span().from(), spell.span().to())).append(": ");
    text.append(SentenceText.fish(spell.caught().landed()));
    if (spell.caught().weightG() > 0) {
      text.append(", ").append(words.weight(spell.caught().weightG()));
    }
    text.append(" in ").append(SentenceText.minutes(spell.fishedHours() * 60)).append(" fished");
    if (paid.weight() != null) {
      text.append(", ").append(words.weightRate(paid.weight()));
    } else if (paid.fish() != null && paid.fish().perHour() == 0) {
      text.append(
          String.format(Locale.ROOT, ": up to %.1f an hour is not ruled out", paid.fish().high()));
    } else if (paid.fish() != null) {
      text.append(", ").append(SentenceText.rate(paid.fish()));
    }
    return text.append('.').toString();
  }

  private static String notPlain(Fade fade, boolean toTheEnd) {
    if (cameGood(fade)) {
      return "; it had looked faded and came back.";
    }
    if (fade.probability() >= ReviewSettings.PROBABLE_FROM) {
      return toTheEnd ? "; it was never plain before then." : " before it was plain.";
    }
    return ".";
  }

  private static Verdict verdictWithoutPlain(Fade fade, boolean toTheEnd) {
    if (cameGood(fade)) {
      return Verdict.STAYED_AND_CAME_GOOD;
    }
    if (toTheEnd) {
      return Verdict.STAYED_TO_ALL_OUT;
    }
    if (fade.probability() >= ReviewSettings.PROBABLE_FROM) {
      return Verdict.LEFT_IN_TIME;
    }
    return fade.probability() < ReviewSettings.NO_SIGN_BELOW
        ? Verdict.LEFT_BEFORE_ANY_SIGN
        : Verdict.CANNOT_TELL;
  }

  private static boolean cameGood(Fade fade) {
    return fade.probability() < ReviewSettings.PROBABLE_FROM
        && fade.call().crossings().stream().anyMatch(c -> c.up());
  }

  /** Says what another line had to give to beat staying. */
  private String asked(PastPlain past, List<OtherLine> others, long left) {
    Caught caught = past.caught();
    String gave =
        "In those minutes it gave "
            + SentenceText.fish(caught.landed())
            + (caught.weightG() > 0 ? ", " + words.weight(caught.weightG()) : "");
    if (caught.landed() == 0) {
      return gave + ": any fish would have beaten it.";
    }
    if (past.breakEvenPerHour() == null) {
      return gave + "; a move would have taken up the time that was left.";
    }
    String who =
        others.stream()
            .filter(OtherLine::nextFished)
            .findFirst()
            .map(o -> words.line(o.lineId()))
            .orElse("another line");
    String rate =
        past.breakEvenGPerHour() == null
            ? SentenceText.rate(past.breakEvenPerHour()) + " fish an hour"
            : words.roughWeight(past.breakEvenGPerHour())
                + " an hour ("
                + SentenceText.rate(past.breakEvenPerHour())
                + " fish)";
    return gave + ": " + who + " had to give " + rate + " to beat that." + claim(others, left);
  }

  /**
   * Says how the line fished next stands to that, by its catches on both sides: a claim only at the
   * probability shown calibrated by simulation, never what it would have given.
   */
  private String claim(List<OtherLine> others, long left) {
    for (OtherLine other : others) {
      Gain gain = other.gain();
      if (!other.nextFished() || gain == null) {
        continue;
      }
      double above = gain.probabilityBetter();
      if (above < GainEstimate.CLAIMED_FROM && above > 1 - GainEstimate.CLAIMED_FROM) {
        return " It could have gone either way.";
      }
      boolean better = above >= GainEstimate.CLAIMED_FROM;
      return String.format(
          Locale.ROOT,
          " By its catches before and after, its rate was %s that: %s (%s over those minutes)%s.",
          better ? "above" : "below",
          chances(better ? above : 1 - above),
          fishRange(gain),
          meanwhile(other.lineId(), left));
    }
    return " It could have gone either way.";
  }

  private static String chances(double probability) {
    if (probability >= 0.95) {
      return "more than 9 chances in 10";
    }
    return probability >= 0.85 ? "9 chances in 10" : "8 chances in 10";
  }

  /** Returns the limits of a gain: "0.3 to 4.6 fish more", "from 1.2 fewer to 2.0 fish more". */
  private static String fishRange(Gain gain) {
    double low = gain.low();
    double high = gain.high();
    if (low >= 0) {
      return String.format(Locale.ROOT, "%.1f to %.1f fish more", low, high);
    }
    if (high <= 0) {
      return String.format(Locale.ROOT, "%.1f to %.1f fish fewer", -high, -low);
    }
    return String.format(Locale.ROOT, "from %.1f fewer to %.1f fish more", -low, high);
  }

  /** Says what the line fished next gave. */
  private String after(List<OtherLine> others, long left) {
    for (OtherLine other : others) {
      if (other.nextFished() && other.source() == Source.LATER && other.evidence().fish() == 0) {
        return String.format(
            Locale.ROOT,
            " Afterwards %s gave no fish in %s, up to %.1f an hour not ruled out%s.",
            words.line(other.lineId()),
            SentenceText.minutes(other.evidence().fishedMinutes()),
            other.evidence().rate().high(),
            meanwhile(other.lineId(), left));
      }
      if (other.nextFished() && other.source() == Source.LATER) {
        String gave =
            other.weight() != null
                ? words.weightRate(other.weight())
                : SentenceText.rate(other.evidence().rate());
        return " Afterwards "
            + words.line(other.lineId())
            + " gave "
            + gave
            + ", "
            + SentenceText.fish(other.evidence().fish())
            + " in "
            + SentenceText.minutes(other.evidence().fishedMinutes())
            + meanwhile(other.lineId(), left)
            + ".";
      }
    }
    return "";
  }

  /** Says whether the line had been rested and fed before it was fished again. */
  private String meanwhile(String lineId, long left) {
    Effort.LineEffort line = effort.line(lineId).orElseThrow();
    long restedFrom = effort.session().match().allIn();
    long again = Long.MAX_VALUE;
    boolean fishedBefore = false;
    for (Spell spell : line.spells()) {
      if (spell.span().from() >= left) {
        again = Math.min(again, spell.span().from());
      } else {
        restedFrom = Math.max(restedFrom, spell.span().to());
        fishedBefore = true;
      }
    }
    Long fedAt = feeds.getOrDefault(line.line().spot(), new TreeSet<>()).ceiling(restedFrom);
    boolean fed = fedAt != null && fedAt <= again;
    String before = fishedBefore ? ", rested" : ", not fished before";
    return before + (fed ? " and fed meanwhile" : "");
  }
}
