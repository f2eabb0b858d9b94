package org.fadeline.log;

import java.util.Optional;
import org.fadeline.model.Edit;
import org.fadeline.model.Feed;
import org.fadeline.model.Session;
import org.fadeline.model.SessionEvent;

/** Feeding that repeats itself, such as six pellets every 40 s. */
public final class FeedPatterns {
  private FeedPatterns() {}

  /**
   * Returns the feed whose pattern runs on a line at an instant: the last one there, where it
   * repeats and has not ended.
   *
   * @param at epoch milliseconds
   */
  public static Optional<SessionEvent.Fed> running(Session session, String lineId, long at) {
    SessionEvent.Fed last = null;
    for (SessionEvent event : session.events()) {
      if (event.at() > at) {
        break;
      }
      if (event instanceof SessionEvent.Fed fed && lineId.equals(fed.lineId())) {
        last = fed;
      }
    }
    Feed.Pattern pattern = last == null ? null : last.feed().pattern();
    boolean runs = pattern != null && (pattern.until() == null || pattern.until() > at);
    return runs ? Optional.ofNullable(last) : Optional.empty();
  }

  /**
   * Returns the edit that ends a pattern.
   *
   * @param at its last instant, epoch milliseconds
   * @throws IllegalArgumentException if the feed has no pattern
   */
  public static Edit end(Session session, SessionEvent.Fed fed, long at) {
    Feed feed = fed.feed();
    Feed.Pattern pattern = feed.pattern();
    if (pattern == null) {
      throw new IllegalArgumentException("the feed does not repeat");
    }
    Feed ended =
        new Feed(
            feed.bait(),
            feed.amount(),
            feed.method(),
            new Feed.Pattern(pattern.everySeconds(), Math.max(at, fed.at())));
    return Edit.replace("End feeding pattern", session, new SessionEvent.Fed(fed.stamp(), ended));
  }
}
