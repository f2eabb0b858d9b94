package org.fadeline.analysis;

import java.util.Arrays;
import java.util.List;
import java.util.function.BooleanSupplier;
import java.util.function.DoubleConsumer;
import org.fadeline.model.Session;
import org.fadeline.model.Units;

/**
 * What could be told of a match at each of its moments, from nothing but what had been logged by
 * then: each entry is worked out from the record cut at its instant. The grade of the record, its
 * handling times, what became of a bite and whether a line had been left are those of the cut
 * record too, so that no later habit of the log shows.
 *
 * <p>Rates, pace and calls are told at the whole minutes of the match, and once told they stay:
 * what seemed so at a minute is not corrected by what came later. Moves, first bites and nets are
 * told at the event.
 */
public final class KnownThen {
  private final long[] from;
  private final List<Review> told;
  private final int[] drawnAs;

  /**
   * @param from the instants of the entries, ascending, the first one before any event
   * @param told what could be told from each instant on
   * @param drawnAs for each entry the last one that, up to the entry's instant, draws the same
   */
  KnownThen(long[] from, List<Review> told, int[] drawnAs) {
    this.from = from;
    this.told = List.copyOf(told);
    this.drawnAs = drawnAs;
  }

  /**
   * Works out what could be told at each moment.
   *
   * @param session the whole record
   * @param settings what the numbers rest on
   * @param units of the weights in the words
   * @param cancelled asked now and then; the work stops once it says so
   * @throws java.util.concurrent.CancellationException if it was cancelled
   */
  public static KnownThen of(
      Session session, ReviewSettings settings, Units units, BooleanSupplier cancelled) {
    return of(session, settings, units, share -> {}, cancelled);
  }

  /**
   * Works out what could be told at each moment.
   *
   * @param session the whole record
   * @param settings what the numbers rest on
   * @param units of the weights in the words
   * @param progress is told now and then how much is done, in [0, 1]
   * @param cancelled asked now and then; the work stops once it says so
   * @throws java.util.concurrent.CancellationException if it was cancelled
   */
  public static KnownThen of(
      Session session,
      ReviewSettings settings,
      Units units,
      DoubleConsumer progress,
      BooleanSupplier cancelled) {
    return new KnownThenBuilder(session, settings, units).build(progress, cancelled);
  }

  private int index(long instant) {
    int found = Arrays.binarySearch(from, instant);
    return found >= 0 ? found : Math.max(0, -found - 2);
  }

  /**
   * Returns what could be told at an instant. Of the review only what Replay shows is filled in:
   * spells, what they gave, rolling rates, pace, calls and turning points; its session is the whole
   * one.
   *
   * @param instant epoch milliseconds
   */
  public Review at(long instant) {
    return told.get(index(instant));
  }

  /**
   * Returns the latest review that, up to the given instant, draws the same timeline as that of
   * {@link #at}: a screen that covers what lies ahead need not draw anew for every minute.
   *
   * @param instant epoch milliseconds
   */
  public Review drawnAt(long instant) {
    return told.get(drawnAs[index(instant)]);
  }
}
