package org.fadeline.analysis;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import org.fadeline.analysis.Course.Lesson;
import org.fadeline.analysis.StayOrGo.PastPlain;
import org.jspecify.annotations.Nullable;

/** At most three sentences, each with its figures and linked to its minute. */
final class Lessons {
  private static final int MOST = 3;
  private static final int LEAST_FISH = 5;
  private static final int LEAST_BITES = 8;
  private static final double LEAST_MINUTES = 20;
  private static final double STAY_WORTH_TELLING_MINUTES = 5;

  private final SentenceText words;
  private final Grade grade;

  Lessons(SentenceText words, Grade grade) {
    this.words = words;
    this.grade = grade;
  }

  List<Lesson> draw(List<LineReview> lines, List<StayOrGo> stays) {
    List<Lesson> lessons = new ArrayList<>();
    addIfThere(lessons, longestStay(stays));
    addIfThere(lessons, bestLine(lines));
    addIfThere(lessons, quickestBite(lines));
    addIfThere(lessons, leftWithoutSign(stays));
    if (lessons.isEmpty()) {
      addIfThere(lessons, cannotTell(stays));
    }
    return lessons.size() > MOST ? lessons.subList(0, MOST) : lessons;
  }

  private static void addIfThere(List<Lesson> lessons, @Nullable Lesson lesson) {
    if (lesson != null) {
      lessons.add(lesson);
    }
  }

  private @Nullable Lesson longestStay(List<StayOrGo> stays) {
    StayOrGo longest = null;
    double minutes = STAY_WORTH_TELLING_MINUTES;
    for (StayOrGo stay : stays) {
      PastPlain past = stay.past();
      if (past != null && past.minutes() > minutes) {
        minutes = past.minutes();
        longest = stay;
      }
    }
    if (longest == null || longest.past() == null) {
      return null;
    }
    PastPlain past = longest.past();
    Caught caught = past.caught();
    String gave =
        caught.landed() == 0
            ? "nothing"
            : SentenceText.fish(caught.landed())
                + (caught.weightG() > 0 ? ", " + words.weight(caught.weightG()) : "");
    return new Lesson(
        past.plainAt(),
        longest.spell().lineId(),
        "The longest stay past plain was on "
            + words.line(longest.spell().lineId())
            + ": plain by "
            + words.clock(past.plainAt())
            + ", fished until "
            + words.clock(longest.spell().span().to())
            + ", and those "
            + SentenceText.minutes(past.minutes())
            + " gave "
            + gave
            + ".");
  }

  private @Nullable Lesson bestLine(List<LineReview> lines) {
    LineReview best =
        lines.stream()
            .filter(l -> l.rates().weight() != null || l.rates().fish() != null)
            .filter(Lessons::fishedEnough)
            .max(Comparator.comparingDouble(Lessons::worth))
            .orElse(null);
    if (best == null) {
      return null;
    }
    // A line left out for its few fish may show a higher rate beside this sentence.
    double most = worth(best);
    boolean beaten = lines.stream().anyMatch(l -> worth(l) > most);
    String ofThose =
        beaten
            ? "of the lines with "
                + LEAST_FISH
                + " fish and "
                + SentenceText.minutes(LEAST_MINUTES)
                + " or more, "
            : "";
    double all = lines.stream().mapToDouble(LineReview::fishedHours).sum();
    Rate weight = best.rates().weight();
    Rate fish = best.rates().fish();
    String paid =
        weight != null ? words.weightRate(weight) : fish == null ? "" : SentenceText.rate(fish);
    return new Lesson(
        best.spells().get(0).span().from(),
        best.line().id(),
        SentenceText.sentence(ofThose + words.line(best.line().id()))
            + " paid most for its time: "
            + paid
            + ", on "
            + SentenceText.fish(best.caught().landed())
            + "; it was fished for "
            + SentenceText.minutes(best.fishedHours() * 60)
            + " of "
            + SentenceText.minutes(all * 60)
            + ".");
  }

  private static boolean fishedEnough(LineReview line) {
    return line.caught().landed() >= LEAST_FISH && line.fishedHours() * 60 >= LEAST_MINUTES;
  }

  private static double worth(LineReview line) {
    Rate weight = line.rates().weight();
    Rate fish = line.rates().fish();
    return weight != null ? weight.perHour() : fish == null ? 0 : fish.perHour();
  }

  private @Nullable Lesson quickestBite(List<LineReview> lines) {
    LineReview quickest = null;
    double least = Double.POSITIVE_INFINITY;
    for (LineReview line : lines) {
      FirstBite.Median median = line.firstBite().median();
      if (median != null && median.minutes() < least) {
        least = median.minutes();
        quickest = line;
      }
    }
    if (quickest == null || quickest.firstBite().median() == null) {
      return null;
    }
    FirstBite.Median median = quickest.firstBite().median();
    String limits =
        median.low() == null
            ? ""
            : " ("
                + Math.round(median.low())
                + "–"
                + (median.high() == null ? "not reached" : Math.round(median.high()))
                + ")";
    FirstBite.Stretch first = quickest.firstBite().rows().get(0);
    return new Lesson(
        first.episodeAt(),
        quickest.line().id(),
        "After feeding, half the first bites on "
            + words.line(quickest.line().id())
            + " had come in "
            + SentenceText.minutes(median.minutes())
            + limits
            + ", from "
            + quickest.firstBite().tally().episodes()
            + " feeds fished over.");
  }

  private @Nullable Lesson leftWithoutSign(List<StayOrGo> stays) {
    for (StayOrGo stay : stays) {
      if (stay.wording().verdict() == StayOrGo.Verdict.LEFT_BEFORE_ANY_SIGN
          && stay.spell().caught().bites() >= LEAST_BITES) {
        return new Lesson(
            stay.spell().span().to(),
            stay.spell().lineId(),
            SentenceText.sentence(words.line(stay.spell().lineId()))
                + " was left at "
                + words.clock(stay.spell().span().to())
                + " with no sign of fading: "
                + SentenceText.bites(stay.spell().caught().bites())
                + " in "
                + SentenceText.minutes(stay.spell().baitHours() * 60)
                + " with a bait in.");
      }
    }
    return null;
  }

  private @Nullable Lesson cannotTell(List<StayOrGo> stays) {
    if (stays.isEmpty()) {
      return null;
    }
    return new Lesson(
        stays.get(0).spell().span().from(),
        null,
        "This record cannot tell more than its totals: no line gave enough fish to judge ("
            + grade.label()
            + ").");
  }
}
