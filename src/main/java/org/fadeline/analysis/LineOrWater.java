package org.fadeline.analysis;

import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * Whether a line went quiet or the whole water did, as far as the record can say.
 *
 * @param fadedAt when the line faded, epoch milliseconds
 * @param left when it was left, epoch milliseconds
 * @param verdict what the parts say together
 * @param parts what the other lines, the neighbours and the hour say, in that order
 * @param text one sentence for the whole
 */
public record LineOrWater(long fadedAt, long left, Verdict verdict, List<Part> parts, String text) {
  /** Copies the list. */
  public LineOrWater {
    parts = List.copyOf(parts);
  }

  /** What a part, or all of them together, point to. */
  public enum Verdict {
    /** The line: elsewhere fish fed on. */
    LINE("line"),
    /** The whole water: elsewhere it went quiet too. */
    WATER("water"),
    /** The record cannot tell. */
    CANNOT_TELL("cannot-tell");

    private final String word;

    Verdict(String word) {
      this.word = word;
    }

    /** Returns the word used in files. */
    public String word() {
      return word;
    }
  }

  /** Where a part comes from. */
  public enum Source {
    /** The lines fished after this one was left. */
    OTHER_LINES("other-lines"),
    /** What other pegs were seen to catch. */
    NEIGHBOURS("neighbours"),
    /** The time of the match: what is usual at that hour, and the weather noted. */
    HOUR("hour");

    private final String word;

    Source(String word) {
      this.word = word;
    }

    /** Returns the word used in files. */
    public String word() {
      return word;
    }
  }

  /**
   * What one source says.
   *
   * @param source where it comes from
   * @param verdict what it points to
   * @param against the comparison it rests on, or null where there is too little for one
   * @param text whole sentences with their figures
   */
  public record Part(Source source, Verdict verdict, @Nullable Against against, String text) {}

  /**
   * A count over time set against another.
   *
   * @param count events while or after it was quiet
   * @param hours their exposure
   * @param before events while the line still gave
   * @param hoursBefore their exposure
   * @param ratio rate while or after it was quiet over the rate before, or null where both are 0
   * @param low lower limit
   * @param high upper limit; +∞ where there is none
   * @param level of the limits, in (0, 1)
   */
  public record Against(
      int count,
      double hours,
      int before,
      double hoursBefore,
      @Nullable Double ratio,
      double low,
      double high,
      double level) {}
}
