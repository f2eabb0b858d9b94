package org.fadeline.export;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.stream.Stream;
import org.fadeline.analysis.Course.Lesson;
import org.fadeline.analysis.LineReview;
import org.fadeline.analysis.Rate;
import org.fadeline.analysis.Review;
import org.fadeline.analysis.StayOrGo;
import org.fadeline.model.Session;
import org.fadeline.model.Units;
import org.fadeline.model.WeightText;

/** Makes the first draft of a talk from a review: one message a slide. */
public final class TalkDraft {
  private final Review review;
  private final Units units;

  private TalkDraft(Review review, Units units) {
    this.review = review;
    this.units = units;
  }

  /** Returns a draft: match, peg, lines, first bites, the stay that cost most, lessons, thanks. */
  public static Talk of(Review review, Talk.Look look, boolean named) {
    TalkDraft draft = new TalkDraft(review, look.units());
    String title = named ? review.session().occasion().title() : "A match, line by line";
    List<Slide> slides = new ArrayList<>();
    slides.add(draft.opening(title, named));
    slides.add(draft.match());
    slides.add(draft.peg());
    slides.add(draft.lines());
    slides.add(draft.weight());
    slides.add(draft.firstBites());
    draft.longestStay().ifPresent(slides::add);
    draft.lessons().ifPresent(slides::add);
    slides.add(thanks());
    return new Talk(title, slides, look, named);
  }

  private Slide opening(String title, boolean named) {
    Session session = review.session();
    List<String> words = new ArrayList<>();
    if (named) {
      String venue = session.occasion().venue().name();
      String peg = session.occasion().peg().number();
      words.add(
          (venue == null ? "" : venue + ", ")
              + (peg == null ? "" : "peg " + peg + ", ")
              + session.occasion().date());
    }
    words.add(total());
    words.add("The record: " + review.summary().grade().label() + ".");
    return new Slide(title, words, null, "Say where, when and who, and what the day was like.");
  }

  private String total() {
    var caught = review.summary().caught();
    return (caught.weightG() > 0
            ? weight(caught.weightG()) + " " + review.summary().weightFrom().word() + ", "
            : "")
        + caught.landed()
        + " fish.";
  }

  private String weight(double grams) {
    return WeightText.format(grams, units.weight());
  }

  private Slide match() {
    return new Slide(
        "The match in one picture",
        List.of(),
        FigureChoice.of(FigureChoice.Kind.TIMELINE),
        "A lane a line. What went in hangs from the top, what came out stands on the string, the"
            + " curve is fish an hour over the last half hour. Red is where a line faded.");
  }

  private Slide peg() {
    return new Slide(
        "The peg",
        List.of(),
        FigureChoice.of(FigureChoice.Kind.PEG),
        "To scale, seen from above. The number is fish from that line.");
  }

  private Slide lines() {
    List<LineReview> fished =
        review.lines().stream()
            .filter(l -> l.rates().fish() != null)
            .sorted(Comparator.comparingDouble(TalkDraft::paid).reversed())
            .toList();
    List<String> words = new ArrayList<>();
    for (LineReview line : fished.subList(0, Math.min(7, fished.size()))) {
      Rate weight = line.rates().weight();
      Rate fish = line.rates().fish();
      String rate =
          weight != null && weight.perHour() > 0
              ? weight(weight.perHour()) + " an hour"
              : fish == null ? "" : number(fish.perHour()) + " fish an hour";
      words.add(
          line.line().name()
              + ": "
              + rate
              + ", "
              + line.caught().landed()
              + " fish in "
              + Math.round(line.fishedHours() * 60)
              + " min");
    }
    return new Slide(
        "What each line paid",
        words,
        null,
        "Rates are per hour fished on that line. Each was rested and fed while others were fished.");
  }

  private static double paid(LineReview line) {
    Rate weight = line.rates().weight();
    Rate fish = line.rates().fish();
    if (weight != null && weight.perHour() > 0) {
      return weight.perHour();
    }
    return fish == null ? 0 : fish.perHour();
  }

  private static String number(double value) {
    return String.format(Locale.ROOT, "%.1f", value);
  }

  private Slide weight() {
    return new Slide(
        "How the weight came",
        List.of(),
        FigureChoice.of(FigureChoice.Kind.WEIGHT),
        "The hue is the line it came from; behind it the finish as it could be told at that time.");
  }

  private Slide firstBites() {
    return new Slide(
        "How long after feeding the first bite came",
        List.of(),
        FigureChoice.of(FigureChoice.Kind.FIRST_BITE),
        "A line fed early and fished late enters late. One left before a bite is not thrown away.");
  }

  private java.util.Optional<Slide> longestStay() {
    return review.stays().stream()
        .filter(s -> s.past() != null)
        .max(Comparator.comparingDouble(TalkDraft::minutesPast))
        .map(
            stay ->
                new Slide(
                    "The longest stay past plain",
                    List.of(),
                    FigureChoice.of(FigureChoice.Kind.RATE, stay.spell().lineId()),
                    stay.wording().text()));
  }

  private static double minutesPast(StayOrGo stay) {
    StayOrGo.PastPlain past = stay.past();
    return past == null ? 0 : past.minutes();
  }

  private java.util.Optional<Slide> lessons() {
    List<String> words = review.course().lessons().stream().map(Lesson::text).toList();
    return words.isEmpty()
        ? java.util.Optional.empty()
        : java.util.Optional.of(new Slide("What to take home", words, null, ""));
  }

  private static Slide thanks() {
    return new Slide(
        "Thanks, and take care",
        Stream.of(
                "Carbon poles conduct: keep at least 30 m from power lines.",
                "Lightning: pole down; wait 30 minutes after the last.",
                "Most drownings begin with a slip: mind the bank.",
                "Your water's rules and the organiser decide.")
            .toList(),
        null,
        "30 m: Energy Networks Association. 30 minutes: the 30/30 rule. Slips: National Water"
            + " Safety Forum.");
  }
}
