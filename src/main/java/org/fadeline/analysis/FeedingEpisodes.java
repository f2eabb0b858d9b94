package org.fadeline.analysis;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.fadeline.model.Feed;
import org.fadeline.model.Line;
import org.fadeline.model.Session;
import org.fadeline.model.SessionEvent;

/**
 * Feeding episodes by spot: feeds at most five minutes apart form one, dated at its first; a
 * feeding pattern is one.
 */
final class FeedingEpisodes {
  private static final long JOIN_MILLIS = 300_000;

  private FeedingEpisodes() {}

  /** Returns where in the log the episodes of every spot begin, in order. */
  static Map<String, List<LogPlace>> bySpot(Session session) {
    Map<String, String> spotOf = new LinkedHashMap<>();
    Map<String, List<LogPlace>> starts = new LinkedHashMap<>();
    Map<String, Long> lastFeed = new LinkedHashMap<>();
    for (Line line : session.lines()) {
      spotOf.put(line.id(), line.spot());
      starts.putIfAbsent(line.spot(), new ArrayList<>());
    }
    for (int i = 0; i < session.events().size(); i++) {
      SessionEvent event = session.events().get(i);
      if (!(event instanceof SessionEvent.Fed fed) || fed.lineId() == null) {
        continue;
      }
      String spot = spotOf.get(fed.lineId());
      if (spot == null || fed.at() >= session.match().allOut()) {
        continue;
      }
      Long last = lastFeed.get(spot);
      if (last == null || fed.at() - last > JOIN_MILLIS) {
        List<LogPlace> list = starts.get(spot);
        if (list != null) {
          list.add(new LogPlace(fed.at(), i));
        }
      }
      long until = lastOf(fed, session.match().allOut());
      lastFeed.merge(spot, until, Math::max);
    }
    return starts;
  }

  private static long lastOf(SessionEvent.Fed fed, long allOut) {
    Feed.Pattern pattern = fed.feed().pattern();
    return pattern == null || pattern.until() == null
        ? fed.at()
        : Math.max(fed.at(), Math.min(pattern.until(), allOut));
  }
}
