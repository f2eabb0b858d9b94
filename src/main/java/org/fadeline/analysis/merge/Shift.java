package org.fadeline.analysis.merge;

import org.fadeline.model.Feed;
import org.fadeline.model.SessionEvent;

/** Moves an event in time, the end of a feeding pattern with it. */
final class Shift {
  private Shift() {}

  static SessionEvent by(SessionEvent event, long millis) {
    SessionEvent moved = event.withStamp(event.stamp().withAt(event.at() + millis));
    if (!(moved instanceof SessionEvent.Fed fed)) {
      return moved;
    }
    Feed feed = fed.feed();
    Feed.Pattern pattern = feed.pattern();
    if (pattern == null || pattern.until() == null) {
      return moved;
    }
    Feed.Pattern later = new Feed.Pattern(pattern.everySeconds(), pattern.until() + millis);
    return new SessionEvent.Fed(
        fed.stamp(), new Feed(feed.bait(), feed.amount(), feed.method(), later));
  }
}
