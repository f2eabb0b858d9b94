package org.fadeline.model;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.time.Duration;
import java.util.List;
import java.util.Objects;
import java.util.Set;
import java.util.function.UnaryOperator;
import org.fadeline.ui.HandMade;
import org.junit.jupiter.api.Test;

class EventEditsTest {
  private static final Session MATCH = HandMade.session();
  private static final long START = MATCH.match().allIn();
  private static final long MINUTE = Duration.ofMinutes(1).toMillis();

  /** A feed at minute 10, repeated until minute 30. */
  private static SessionEvent.Fed after(UnaryOperator<Session> change) {
    SessionEvent fed =
        new SessionEvent.Fed(
            new Stamp("f", START + 10 * MINUTE, null, null),
            new Feed(null, null, null, new Feed.Pattern(40, START + 30 * MINUTE)));
    return (SessionEvent.Fed) change.apply(MATCH.withEvents(List.of(fed))).events().get(0);
  }

  private static long endMinute(SessionEvent.Fed fed) {
    Feed.Pattern pattern = Objects.requireNonNull(fed.feed().pattern());
    return (Objects.requireNonNull(pattern.until()) - START) / MINUTE;
  }

  @Test
  void shiftsTheEndOfAFeedingPatternWithItsFeed() {
    SessionEvent.Fed fed = after(EventEdits.shift(Set.of("f"), 5 * MINUTE));
    assertEquals(START + 15 * MINUTE, fed.at());
    assertEquals(35, endMinute(fed));
  }

  @Test
  void stretchesTheEndOfAFeedingPatternWithItsFeed() {
    SessionEvent.Fed fed =
        after(
            EventEdits.stretch(
                Set.of("f"), START, START + 10 * MINUTE, START, START + 20 * MINUTE));
    assertEquals(START + 20 * MINUTE, fed.at());
    assertEquals(60, endMinute(fed));
  }
}
