package org.fadeline.ui.replay;

import java.util.Arrays;
import java.util.Optional;
import java.util.Set;
import java.util.function.LongUnaryOperator;
import org.fadeline.model.Session;
import org.fadeline.model.SessionEvent;

/**
 * What moving some events in time would do to the others, said before it is done.
 *
 * @param moved how many are moved
 * @param crossed how many of them would pass an event that stays
 * @param outside how many would come to lie before all in or after all out, and did not before
 */
record Retimed(int moved, int crossed, int outside) {
  /**
   * Returns what would happen.
   *
   * @param ids of the events that move
   * @param time from the instant of such an event to its new one
   */
  static Retimed of(Session session, Set<String> ids, LongUnaryOperator time) {
    long[] staying =
        session.events().stream()
            .filter(e -> !ids.contains(e.id()))
            .mapToLong(SessionEvent::at)
            .toArray();
    int moved = 0;
    int crossed = 0;
    int outside = 0;
    for (SessionEvent event : session.events()) {
      if (ids.contains(event.id())) {
        long after = time.applyAsLong(event.at());
        moved++;
        crossed += before(staying, event.at()) == before(staying, after) ? 0 : 1;
        outside += isOutside(session, after) && !isOutside(session, event.at()) ? 1 : 0;
      }
    }
    return new Retimed(moved, crossed, outside);
  }

  private static boolean isOutside(Session session, long at) {
    return at < session.match().allIn() || at > session.match().allOut();
  }

  /** Returns how many sorted instants lie before one. */
  private static int before(long[] sorted, long at) {
    int place = Arrays.binarySearch(sorted, at);
    if (place < 0) {
      return -place - 1;
    }
    while (place > 0 && sorted[place - 1] == at) {
      place--;
    }
    return place;
  }

  /** Returns what is to be looked at, in words, or empty where nothing is. */
  Optional<String> words() {
    if (crossed == 0 && outside == 0) {
      return Optional.empty();
    }
    return Optional.of(
        (crossed == 0 ? "" : crossed + " of " + moved + " would pass events that stay")
            + (crossed > 0 && outside > 0 ? "; " : "")
            + (outside == 0 ? "" : outside + " of " + moved + " would leave the match"));
  }
}
