package org.fadeline.export;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import org.fadeline.analysis.Caught;
import org.fadeline.analysis.Course.Lesson;
import org.fadeline.analysis.LineReview;
import org.fadeline.analysis.Rate;
import org.fadeline.analysis.Review;
import org.fadeline.analysis.StayOrGo;
import org.fadeline.analysis.compare.Comparison;
import org.fadeline.figure.DayAxis;
import org.fadeline.model.Session;
import org.fadeline.model.Units;
import org.fadeline.model.WeightText;
import org.fadeline.model.talk.Discretion;
import org.fadeline.model.talk.Look;
import org.fadeline.model.talk.Picture;
import org.fadeline.model.talk.Slide;
import org.fadeline.model.talk.Source;
import org.fadeline.model.talk.Talk;
import org.jspecify.annotations.Nullable;

/** Makes the first draft of a talk from reviews: one message a slide. */
public final class TalkDraft {
  /** Lines on one slide; more would not be read. */
  private static final int MOST_LINES = 5;

  private static final String PLAIN_TITLE = "A match, line by line";

  private final String source;
  private final Review review;
  private final Units units;
  private final boolean named;

  private TalkDraft(String source, Review review, Units units, boolean named) {
    this.source = source;
    this.review = review;
    this.units = units;
    this.named = named;
  }

  /**
   * Returns a draft: match, peg, lines, first bites, the stay that cost most, lessons, thanks; and
   * where there are further sessions, each set beside the first.
   *
   * @param sources the sessions, the first being the one the talk is about
   * @param material a review for each of them
   * @param named whether slides may name the session and its water
   */
  public static Talk of(List<Source> sources, TalkMaterial material, Look look, boolean named) {
    String first = sources.get(0).id();
    TalkDraft draft = new TalkDraft(first, material.review(first), look.units(), named);
    List<Slide> slides = new ArrayList<>(draft.slides());
    for (Source other : sources.subList(1, sources.size())) {
      slides.add(draft.beside(other.id(), material));
    }
    slides.addAll(draft.lessons());
    slides.add(thanks());
    return new Talk(draft.title(), sources, look, new Discretion(!named, List.of()), slides);
  }

  /** Returns slides on a season, by the id of its source. */
  public static List<Slide> season(String id) {
    return List.of(
        slide(
            "What an hour on each line gave, hour by hour",
            List.of(),
            Picture.of(Picture.Kind.SEASON_HOURS, id),
            "Each row is a kind of line over all the matches, each column an hour since all in."),
        slide(
            "How soon the first bite came after feeding",
            List.of(),
            Picture.of(Picture.Kind.SEASON_FIRST_BITE_LINE, id),
            "Each curve is a kind of line over all the matches."));
  }

  private String title() {
    String title = review.session().occasion().title();
    return named && !title.isBlank() ? title : PLAIN_TITLE;
  }

  private List<Slide> slides() {
    List<Slide> slides = new ArrayList<>();
    slides.add(opening());
    slides.add(match());
    slides.add(peg());
    slides.add(lines());
    if (review.summary().caught().weightG() > 0) {
      slides.add(weight());
    }
    if (review.lines().stream().anyMatch(l -> !l.firstBite().rows().isEmpty())) {
      slides.add(firstBites());
    }
    longestStay().ifPresent(slides::add);
    return slides;
  }

  private static Slide slide(
      String title, List<String> words, @Nullable Picture picture, String notes) {
    return new Slide(title, words, picture, notes, null);
  }

  private Picture picture(Picture.Kind kind) {
    return Picture.of(kind, source);
  }

  /** The two timelines are too low on a slide to be read; what they tell goes into the notes. */
  private Slide beside(String other, TalkMaterial material) {
    Picture catches = Picture.of(Picture.Kind.COMPARE_CATCH, source, other);
    Comparison comparison = material.comparison(catches, units);
    List<String> notes = new ArrayList<>();
    notes.add(comparison.setup().alignment().stated());
    comparison.findings().sentences().forEach(finding -> notes.add(finding.text()));
    notes.add(comparison.findings().caution());
    return slide("How the two catches grew", List.of(), catches, String.join(" ", notes));
  }

  private Slide opening() {
    Session session = review.session();
    List<String> words = new ArrayList<>();
    if (named) {
      String venue = session.occasion().venue().name();
      String peg = session.occasion().peg().number();
      words.add(
          (venue == null ? "" : venue + ", ")
              + (peg == null ? "" : "peg " + peg + ", ")
              + DayAxis.say(session.occasion().date()));
    }
    words.add(total());
    words.add("What was logged: " + review.summary().grade().label() + ".");
    return slide(title(), words, null, "Say where, when and who, and what the day was like.");
  }

  private String total() {
    Caught caught = review.summary().caught();
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
    return slide(
        "The match in one picture",
        List.of(),
        picture(Picture.Kind.TIMELINE),
        "A lane a line. What went in hangs from the top, what came out stands on the string, the"
            + " curve is fish an hour over the last half hour. Red is where a line faded.");
  }

  private Slide peg() {
    return slide(
        "The peg",
        List.of(),
        picture(Picture.Kind.PEG),
        "To scale, seen from above. The number is fish from that line.");
  }

  private Slide lines() {
    List<LineReview> fished =
        review.lines().stream()
            .filter(l -> l.rates().fish() != null)
            .sorted(Comparator.comparingDouble(TalkDraft::paid).reversed())
            .toList();
    List<String> words = fished.stream().map(this::paidWords).toList();
    int shown = Math.min(MOST_LINES, words.size());
    String rest =
        shown == words.size()
            ? ""
            : " Further: " + String.join("; ", words.subList(shown, words.size())) + ".";
    return slide(
        "What each line paid, by the hour",
        words.subList(0, shown),
        null,
        "Rates are per hour fished on that line. Each was rested and fed while others were fished."
            + rest);
  }

  private String paidWords(LineReview line) {
    Rate weight = line.rates().weight();
    Rate fish = line.rates().fish();
    if (line.caught().landed() == 0) {
      return line.line().name() + ": no fish  (" + Math.round(line.fishedHours() * 60) + " min)";
    }
    String rate =
        weight != null && weight.perHour() > 0
            ? weight(weight.perHour())
            : fish == null ? "" : number(fish.perHour()) + " fish";
    return line.line().name()
        + ": "
        + rate
        + "  ("
        + line.caught().landed()
        + " fish in "
        + Math.round(line.fishedHours() * 60)
        + " min)";
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
    return slide(
        "How the weight came",
        List.of(),
        picture(Picture.Kind.WEIGHT),
        "The hue is the line it came from; behind it the finish as it could be told at that time.");
  }

  private Slide firstBites() {
    return slide(
        "From feeding to the first bite",
        List.of(),
        picture(Picture.Kind.FIRST_BITE),
        "A line fed early and fished late enters late. One left before a bite is not thrown away.");
  }

  private Optional<Slide> longestStay() {
    return review.stays().stream()
        .filter(s -> s.past() != null)
        .max(Comparator.comparingDouble(TalkDraft::minutesPast))
        .map(
            stay ->
                slide(
                    "The longest stay past plain",
                    List.of(),
                    Picture.ofLine(Picture.Kind.RATE, source, stay.spell().lineId()),
                    stay.wording().text()));
  }

  private static double minutesPast(StayOrGo stay) {
    StayOrGo.PastPlain past = stay.past();
    return past == null ? 0 : past.minutes();
  }

  /** One lesson a slide, each with the figures it rests on. */
  private List<Slide> lessons() {
    List<Lesson> lessons = review.course().lessons();
    List<Slide> slides = new ArrayList<>();
    for (Lesson lesson : lessons) {
      String number = lessons.size() == 1 ? "" : " (" + (slides.size() + 1) + ")";
      slides.add(slide("To take home" + number, List.of(lesson.text()), null, ""));
    }
    return slides;
  }

  private static Slide thanks() {
    return slide(
        "Thanks, and take care",
        List.of(
            "Carbon poles conduct: keep at least 30 m from power lines.",
            "Lightning: pole down; wait 30 minutes after the last.",
            "Most drownings begin with a slip: mind the bank.",
            "Fish, nets and aids: your water's rules and the organiser decide."),
        null,
        "30 m: Energy Networks Association. 30 minutes: the 30/30 rule. Slips: National Water"
            + " Safety Forum.");
  }
}
