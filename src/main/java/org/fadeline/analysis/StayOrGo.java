package org.fadeline.analysis;

import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * One spell looked at both ways: what it paid, whether it faded, what staying asked of another
 * line.
 *
 * @param spell the spell
 * @param paid its rates
 * @param fade the fade found in it, or null where the spell is too short to tell
 * @param past what happened between the plain moment and leaving, or null where it does not apply
 * @param others the evidence for every other line over that stretch; empty where it does not apply
 * @param quiet whether the line went quiet or the whole water, or null where it did not fade
 * @param wording the words, as read on screen
 * @param notes what bears the finding out or limits it, a sentence or two each
 * @param recovery what it gave beside the end of the stay before it on the line, or null where that
 *     had not faded
 */
public record StayOrGo(
    Spell spell,
    LineReview.Rates paid,
    @Nullable Fade fade,
    @Nullable PastPlain past,
    List<OtherLine> others,
    @Nullable LineOrWater quiet,
    Wording wording,
    List<String> notes,
    @Nullable Recovery recovery) {
  /** Copies the lists. */
  public StayOrGo {
    others = List.copyOf(others);
    notes = List.copyOf(notes);
  }

  /** How the leaving stands to the fade. */
  public enum Verdict {
    /** Too short or too thin to tell. */
    CANNOT_TELL,
    /** Left before any sign of fading. */
    LEFT_BEFORE_ANY_SIGN,
    /** Left when or soon after it was plain. */
    LEFT_IN_TIME,
    /** Stayed past plain. */
    STAYED_PAST_PLAIN,
    /** Stayed past plain and it came good. */
    STAYED_AND_CAME_GOOD,
    /** Stayed to all out. */
    STAYED_TO_ALL_OUT
  }

  /**
   * The words.
   *
   * @param verdict the kind of finding
   * @param text whole sentences, with their figures
   */
  public record Wording(Verdict verdict, String text) {}

  /**
   * From the plain moment to leaving.
   *
   * @param plainAt epoch milliseconds
   * @param minutes minutes from then to leaving
   * @param caught what the line gave in them
   * @param breakEvenPerHour fish per hour another line had to give to beat staying; null where no
   *     time is left after the cost of moving
   * @param breakEvenGPerHour the same in grams per hour
   */
  public record PastPlain(
      long plainAt,
      double minutes,
      Caught caught,
      @Nullable Double breakEvenPerHour,
      @Nullable Double breakEvenGPerHour) {}

  /** Where the evidence for another line comes from. */
  public enum Source {
    /** Later in this session. */
    LATER("later"),
    /** Earlier in this session. */
    EARLIER("earlier"),
    /** Other sessions. */
    SEASON("season");

    private final String word;

    Source(String word) {
      this.word = word;
    }

    /** Returns the word used in files and on screen. */
    public String word() {
      return word;
    }
  }

  /**
   * Evidence for one other line.
   *
   * @param lineId the line
   * @param source where the evidence comes from
   * @param nextFished whether it is the line they moved to next
   * @param evidence how much there is and what rate it shows
   * @param weight grams per hour with limits, or null
   * @param gain what moving would have given over staying, or null where no claim is made
   */
  public record OtherLine(
      String lineId,
      Source source,
      boolean nextFished,
      Evidence evidence,
      @Nullable Rate weight,
      @Nullable Gain gain) {}

  /**
   * Fish over time.
   *
   * @param fishedMinutes minutes fished
   * @param fish fish landed in them
   * @param rate fish per hour with exact limits
   */
  public record Evidence(double fishedMinutes, int fish, Rate rate) {}

  /**
   * What moving would have given, in fish.
   *
   * @param mean expected gain
   * @param low lower limit
   * @param high upper limit
   * @param level of the limits, in (0, 1)
   * @param probabilityBetter posterior probability that the gain is above zero
   */
  public record Gain(
      double mean, double low, double high, double level, double probabilityBetter) {}
}
