package org.fadeline.figure;

import org.jspecify.annotations.Nullable;

/**
 * From which moment a match is looked at.
 *
 * @param at last instant known, epoch milliseconds, included; null in hindsight
 */
public record Knowledge(@Nullable Long at) {
  private static final Knowledge HINDSIGHT = new Knowledge(null);

  /** Returns the view from afterwards: everything is known. */
  public static Knowledge hindsight() {
    return HINDSIGHT;
  }

  /**
   * Returns the view from an instant: nothing that came later is known, no fish, no total, no fade.
   *
   * @param at epoch milliseconds
   */
  public static Knowledge asKnownAt(long at) {
    return new Knowledge(at);
  }

  /** Returns whether everything is known. */
  public boolean isHindsight() {
    return at == null;
  }

  /** Returns whether what happened at an instant (epoch milliseconds) is known. */
  public boolean knows(long instant) {
    return at == null || instant <= at;
  }

  /** Returns the earlier of an instant and the last one known. */
  public long until(long instant) {
    return at == null ? instant : Math.min(instant, at);
  }
}
