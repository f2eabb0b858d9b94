package org.fadeline.analysis;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertNotNull;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Locale;
import org.fadeline.analysis.StayOrGo.OtherLine;
import org.fadeline.analysis.StayOrGo.PastPlain;
import org.fadeline.analysis.StayOrGo.Verdict;
import org.fadeline.model.Units;
import org.jspecify.annotations.Nullable;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/**
 * The sentences of a stay, word for word: what was seen and how sure. Their pattern is the
 * product's own: "Faded around 11:42 (11:36–11:51). Plain by 11:58. Left 12:16, 18 min after. In
 * those minutes it gave one fish, 3 lb: the short line had to give 3.3 an hour to beat that. It
 * gave 7.1 an hour (4.1–11.4) from 12:20, rested and fed meanwhile."
 */
class StayWordsTest {
  private static final double THREE_POUNDS = 3 * 453.59237;

  private static Log match() {
    return Log.from("10:00", "15:00")
        .cast("10:00", "short")
        .move("10:25", "short")
        .cast("10:30", "shallow")
        .landed("12:05", "shallow", THREE_POUNDS)
        .fed("11:50", "short")
        .move("12:16", "shallow")
        .cast("12:20", "short");
  }

  private static Fade fade(double probability, @Nullable String plainAt, boolean calledBefore) {
    Fade.Moment moment =
        new Fade.Moment(
            Log.millis("11:42"), Log.millis("11:36"), Log.millis("11:51"), 0.9, List.of());
    Fade.Strength strength = new Fade.Strength(20.0, 4.0, 1, Fade.Shape.STEP, 31);
    List<Fade.Crossing> crossings =
        calledBefore ? List.of(new Fade.Crossing(Log.millis("11:20"), true, null)) : List.of();
    SentenceText words = new SentenceText(match().session(), Units.LB_OZ_AND_METRES);
    return new Fade(
        0,
        probability,
        moment,
        new Fade.Call(plainAt == null ? null : Log.millis(plainAt), 0.8, crossings),
        strength,
        new FadeWords(words).of(probability, moment, strength, 0));
  }

  private static PastPlain past(int fish, double grams, @Nullable Double gramsPerHour) {
    Caught caught = new Caught(fish, fish, 0, 0, grams);
    return new PastPlain(Log.millis("11:58"), 18, caught, fish / 0.3, gramsPerHour);
  }

  private static StayOrGo.Wording say(
      Log log, @Nullable Fade fade, @Nullable PastPlain past, List<OtherLine> others) {
    Effort effort = log.effort();
    Spell spell = effort.line("shallow").orElseThrow().spells().get(0);
    SentenceText words = new SentenceText(log.session(), Units.LB_OZ_AND_METRES);
    return new StayWords(words, effort).of(spell, LineReview.Rates.NOT_FISHED, fade, past, others);
  }

  /** 17 fish in 144 min: 7.1 an hour, 4.1 to 11.3 by the exact limits of Garwood 1936. */
  private static List<OtherLine> shortLine() {
    Rate rate = Rates.perHour(17, 2.4);
    assertNotNull(rate);
    return List.of(
        new OtherLine(
            "short",
            StayOrGo.Source.LATER,
            true,
            new StayOrGo.Evidence(144, 17, rate),
            null,
            null));
  }

  @Test
  void aStayPastPlainSaysWhenThenWhatItGaveThenWhatTheOtherLineHadToGive() {
    StayOrGo.Wording wording =
        say(match(), fade(0.9, "11:58", false), past(1, THREE_POUNDS, null), shortLine());
    assertEquals(
        "10:30–12:16: one fish, 3 lb in 1 h 46 min fished."
            + " Faded around 11:42 (11:36–11:51). Plain by 11:58. Left 12:16, 18 min after."
            + " In those minutes it gave one fish, 3 lb:"
            + " the short line had to give 3.3 fish an hour to beat that."
            + " It could have gone either way."
            + " Afterwards the short line gave 7.1 an hour (4.1–11.3), 17 fish in 2 h 24 min,"
            + " rested and fed meanwhile.",
        wording.text());
    assertEquals(Verdict.STAYED_PAST_PLAIN, wording.verdict());
  }

  @Test
  void weightComesBeforeFishWhereFishWereWeighed() {
    String text =
        say(
                match(),
                fade(0.9, "11:58", false),
                past(1, THREE_POUNDS, THREE_POUNDS / 0.3),
                List.of())
            .text();
    assertEquals(
        "another line had to give 10 lb an hour (3.3 fish) to beat that.",
        text.substring(text.indexOf("another"), text.indexOf(" It could")));
  }

  /** None in 15 minutes: up to 14.8 an hour by the exact limits of Garwood 1936. */
  @Test
  void noFishIsNotToldAsARateOfNothing() {
    Rate none = Rates.perHour(0, 0.25);
    assertNotNull(none);
    OtherLine other =
        new OtherLine(
            "short", StayOrGo.Source.LATER, true, new StayOrGo.Evidence(15, 0, none), null, null);
    String text = say(match(), fade(0.9, "11:58", false), null, List.of(other)).text();
    assertTrue(
        text.endsWith(
            "Afterwards the short line gave no fish in 15 min, up to 14.8 an hour not ruled out,"
                + " rested and fed meanwhile."),
        text);
  }

  /** 15.5 kg is 34.17 lb, 8.48 kg 18.7 lb and 27.6 kg 60.8 lb (1 lb = 0.45359237 kg). */
  @Test
  void weightRatesAreToldNoFinerThanTheirLimitsKnowThem() {
    OtherLine fish = shortLine().get(0);
    OtherLine weighed =
        new OtherLine(
            "short",
            StayOrGo.Source.LATER,
            true,
            fish.evidence(),
            new Rate(15_500, 8480, 27_600, 0.95),
            null);
    String text =
        say(match(), fade(0.9, "11:58", false), past(1, THREE_POUNDS, 15_500.0), List.of(weighed))
            .text();
    assertTrue(text.contains("had to give 34 lb an hour (3.3 fish) to beat that"), text);
    assertTrue(text.contains("gave 34 lb an hour (19–61 lb), 17 fish"), text);
  }

  @Test
  void withNothingCaughtAnyFishWouldHaveBeatenIt() {
    String text = say(match(), fade(0.9, "11:58", false), past(0, 0, 0.0), List.of()).text();
    assertEquals(
        "In those minutes it gave no fish: any fish would have beaten it.",
        text.substring(text.indexOf("In those")));
  }

  /** Every move both ways: before any sign, in time, never plain, and stays that came good. */
  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "0.1 | false | LEFT_BEFORE_ANY_SIGN | No sign of fading. Left 12:16.",
        "0.3 | false | CANNOT_TELL | Cannot tell whether it faded. Left 12:16.",
        "0.6 | false | LEFT_IN_TIME | Probably faded around 11:42 (11:36–11:51). Left 12:16 before"
            + " it was plain.",
        "0.1 | true | STAYED_AND_CAME_GOOD | No sign of fading. Left 12:16; it had looked faded and"
            + " came back."
      })
  void movesAreLookedAtBothWays(
      double probability, boolean calledBefore, Verdict verdict, String expected) {
    StayOrGo.Wording wording = say(match(), fade(probability, null, calledBefore), null, List.of());
    assertEquals(verdict, wording.verdict());
    assertEquals(expected, wording.text().substring(wording.text().indexOf("fished. ") + 8));
  }

  @Test
  void tooLittleToJudgeIsSaid() {
    StayOrGo.Wording wording = say(match(), null, null, List.of());
    assertEquals(
        "10:30–12:16: one fish, 3 lb in 1 h 46 min fished. Too little to judge a fade by. Left 12:16.",
        wording.text());
    assertEquals(Verdict.CANNOT_TELL, wording.verdict());
  }

  /** Never blame, and never what a line that was not fished would have given. */
  @Test
  void noSentenceBlames() {
    for (String plain : new String[] {"11:58", "12:14"}) {
      String text =
          say(
                  match(),
                  fade(0.9, plain, true),
                  past(1, THREE_POUNDS, THREE_POUNDS / 0.3),
                  shortLine())
              .text()
              .toLowerCase(Locale.ROOT);
      for (String never : List.of("should have", "would have caught", "too late", "mistake")) {
        assertFalse(text.contains(never), text);
      }
    }
  }
}
