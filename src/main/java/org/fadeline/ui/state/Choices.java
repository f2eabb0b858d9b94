package org.fadeline.ui.state;

import java.util.Set;
import org.fadeline.analysis.ReviewSettings;
import org.fadeline.model.Units;
import org.jspecify.annotations.Nullable;

/**
 * What is chosen about how a session is looked at.
 *
 * @param hindsight whether what came after the playhead is shown; otherwise nothing of it is
 * @param settings what the review rests on
 * @param units in which the review words its findings
 * @param hiddenLines ids of lines not shown on the timeline
 * @param logging whether the match is being logged as it happens
 * @param teaching the other sessions that reviews learn from, or null
 */
public record Choices(
    boolean hindsight,
    ReviewSettings settings,
    Units units,
    Set<String> hiddenLines,
    boolean logging,
    @Nullable Teaching teaching) {
  /** As known then, default settings, every line shown. */
  public static final Choices DEFAULT =
      new Choices(false, ReviewSettings.DEFAULT, Units.LB_OZ_AND_METRES, Set.of(), false, null);

  /** Copies the set. */
  public Choices {
    hiddenLines = Set.copyOf(hiddenLines);
  }

  /** Returns these choices with the other knowledge. */
  public Choices withHindsight(boolean newHindsight) {
    return new Choices(newHindsight, settings, units, hiddenLines, logging, teaching);
  }

  /** Returns these choices with other settings. */
  public Choices withSettings(ReviewSettings newSettings) {
    return new Choices(hindsight, newSettings, units, hiddenLines, logging, teaching);
  }

  /** Returns these choices in other units. */
  public Choices withUnits(Units newUnits) {
    return new Choices(hindsight, settings, newUnits, hiddenLines, logging, teaching);
  }

  /** Returns these choices with other lines hidden. */
  public Choices withHiddenLines(Set<String> newHidden) {
    return new Choices(hindsight, settings, units, newHidden, logging, teaching);
  }

  /** Returns these choices with the match being logged as it happens, or not. */
  public Choices withLogging(boolean newLogging) {
    return new Choices(hindsight, settings, units, hiddenLines, newLogging, teaching);
  }

  /** Returns these choices with other sessions to learn from, or none. */
  public Choices withTeaching(@Nullable Teaching newTeaching) {
    return new Choices(hindsight, settings, units, hiddenLines, logging, newTeaching);
  }
}
