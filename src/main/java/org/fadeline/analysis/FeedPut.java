package org.fadeline.analysis;

import java.util.Collections;
import java.util.EnumMap;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;
import org.fadeline.model.Feed;
import org.fadeline.model.Session;
import org.fadeline.model.SessionEvent;

/**
 * Feed put in on one line before all out.
 *
 * @param feeds how many times, each feed of a pattern counted
 * @param withoutAmount how many of them have no amount
 * @param openPatterns patterns whose end is not logged, counted as one feed each
 * @param amounts total by unit
 * @param baits what was fed, in alphabetical order
 */
public record FeedPut(
    int feeds,
    int withoutAmount,
    int openPatterns,
    Map<Feed.Unit, Double> amounts,
    Set<String> baits) {
  /** Copies the map. */
  public FeedPut {
    amounts = Collections.unmodifiableMap(new TreeMap<>(amounts));
    baits = Collections.unmodifiableSortedSet(new TreeSet<>(baits));
  }

  /** Adds up the feed of one line. */
  public static FeedPut on(Session session, String lineId) {
    int feeds = 0;
    int without = 0;
    int open = 0;
    Map<Feed.Unit, Double> amounts = new EnumMap<>(Feed.Unit.class);
    Set<String> baits = new TreeSet<>();
    for (SessionEvent event : session.events()) {
      if (!(event instanceof SessionEvent.Fed fed)
          || !lineId.equals(fed.lineId())
          || fed.at() >= session.match().allOut()) {
        continue;
      }
      int times = times(fed, session.match().allOut());
      Feed.Pattern pattern = fed.feed().pattern();
      open += pattern != null && pattern.until() == null ? 1 : 0;
      feeds += times;
      Feed.Amount amount = fed.feed().amount();
      if (amount == null) {
        without += times;
      } else {
        amounts.merge(amount.unit(), times * amount.value(), Double::sum);
      }
      String bait = fed.feed().bait();
      if (bait != null) {
        baits.add(bait);
      }
    }
    return new FeedPut(feeds, without, open, amounts, baits);
  }

  /** Returns how often a pattern feeds: at its start and then every so many seconds to its end. */
  private static int times(SessionEvent.Fed fed, long allOut) {
    Feed.Pattern pattern = fed.feed().pattern();
    if (pattern == null || pattern.until() == null) {
      return 1;
    }
    double seconds = (Math.min(pattern.until(), allOut) - fed.at()) / 1000.0;
    return seconds <= 0 ? 1 : 1 + (int) Math.floor(seconds / pattern.everySeconds());
  }
}
