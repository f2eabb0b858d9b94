package org.fadeline.demo;

import java.util.List;
import org.fadeline.model.Feed;
import org.jspecify.annotations.Nullable;

/**
 * What the angler decides: where to fish when, and what to feed.
 *
 * @param stays in order, the first at minute 0
 * @param feeds in order of time
 */
public record DemoPlan(List<Stay> stays, List<MainFeed> feeds) {
  /** Copies the lists. */
  public DemoPlan {
    stays = List.copyOf(stays);
    feeds = feeds.stream().sorted((a, b) -> Double.compare(a.minute(), b.minute())).toList();
  }

  /**
   * One stay on a line.
   *
   * @param line id of the line
   * @param minute minutes after all in at which the angler turns to it
   * @param reason why the line before was left, in the angler's words, or null
   */
  public record Stay(String line, double minute, @Nullable String reason) {}

  /**
   * Bait introduced.
   *
   * @param line id of the line
   * @param minute minutes after all in
   * @param feed what and how; a pattern's end is given by {@code untilMinute}
   * @param way whether it stops the fishing
   * @param untilMinute last minute of a pattern, or null for a single feed
   */
  public record MainFeed(
      String line, double minute, Feed feed, Way way, @Nullable Double untilMinute) {}

  /** Whether a feed stops the fishing. */
  public enum Way {
    /** By hand or catapult while another rig may be in the water. */
    LOOSE,
    /** With a cup or ball at pole length: the rig comes out. */
    GAP,
    /** In a feeder, with a cast of its own where the line is being fished, else in a gap. */
    WITH_CAST
  }
}
