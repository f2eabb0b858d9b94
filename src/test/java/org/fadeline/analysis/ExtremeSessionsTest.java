package org.fadeline.analysis;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static org.junit.jupiter.api.Assertions.fail;

import java.lang.reflect.RecordComponent;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import org.fadeline.model.Fish;
import org.fadeline.model.Match;
import org.fadeline.model.Session;
import org.fadeline.model.SessionEvent;
import org.fadeline.model.Stamp;
import org.fadeline.report.ReviewJson;
import org.jspecify.annotations.Nullable;
import org.junit.jupiter.api.Test;

/** Records at the edge of what can be logged: every number of the review is finite or absent. */
class ExtremeSessionsTest {
  private static Review review(Session session) {
    Review review = Reviewer.review(session, ReviewSettings.DEFAULT);
    assertTrue(finite("review", review) > 0);
    String json = ReviewJson.toJson(review);
    assertFalse(json.contains("NaN") || json.contains("Infinity"), json);
    return review;
  }

  /** Visits every number of a record and returns how many there were. */
  private static int finite(String where, @Nullable Object value) {
    if (value instanceof Double number) {
      if (Double.isNaN(number) || Double.isInfinite(number)) {
        return fail(where + " is " + number);
      }
      return 1;
    }
    int seen = 0;
    if (value instanceof List<?> list) {
      for (int i = 0; i < list.size(); i++) {
        seen += finite(where + "[" + i + "]", list.get(i));
      }
    } else if (value instanceof String text) {
      assertTrue(!text.contains("NaN") && !text.contains("Infinity"), () -> where + ": " + text);
    } else if (value instanceof Record record && !(value instanceof Session)) {
      for (RecordComponent part : record.getClass().getRecordComponents()) {
        try {
          part.getAccessor().setAccessible(true);
          seen += finite(where + "." + part.getName(), part.getAccessor().invoke(record));
        } catch (ReflectiveOperationException e) {
          throw new IllegalStateException(e);
        }
      }
    }
    return seen;
  }

  @Test
  void nothingLogged() {
    assertEquals(0, review(Log.from("10:00", "15:00").session()).stays().size());
  }

  @Test
  void noExposure() {
    Review review =
        review(Log.from("10:00", "15:00").fed("10:00", "short").fed("10:05", "short").session());
    assertEquals(0, review.lines().get(0).fishedHours());
  }

  @Test
  void aSpellOfNoLength() {
    review(Log.from("10:00", "15:00").cast("10:00", "short").move("10:00", "short").session());
  }

  @Test
  void oneMinuteOnALine() {
    Log log = Log.from("10:00", "15:00").cast("10:00", "short");
    log.landed("10:00:30", "short", 500).move("10:01", "short");
    assertEquals(1 / 60.0, review(log.session()).lines().get(0).fishedHours(), 1e-9);
  }

  @Test
  void noFish() {
    Log log = Log.from("10:00", "15:00");
    for (int minute = 0; minute < 60; minute++) {
      log.cast(String.format(Locale.ROOT, "11:%02d", minute), "short");
    }
    assertEquals(0, review(log.session()).lines().get(0).caught().landed());
  }

  private static Session with(List<SessionEvent> events) {
    Session session = Log.from("10:00", "15:00").cast("10:00", "a").session();
    List<SessionEvent> all = new ArrayList<>(session.events());
    all.addAll(events);
    return session.withEvents(all);
  }

  private static Stamp stamp(int i, long at) {
    return new Stamp("x" + i, at, "a", null);
  }

  @Test
  void tenThousandBitesAtOneInstant() {
    List<SessionEvent> events = new ArrayList<>();
    for (int i = 0; i < 10_000; i++) {
      events.add(new SessionEvent.Bite(stamp(i, Log.millis("11:00"))));
    }
    assertEquals(10_000, review(with(events)).lines().get(0).caught().bites());
  }

  @Test
  void tenThousandFishAtOneInstant() {
    List<SessionEvent> events = new ArrayList<>();
    for (int i = 0; i < 10_000; i++) {
      events.add(
          new SessionEvent.Landed(stamp(i, Log.millis("11:00")), new Fish(1, null, 20.0, false)));
    }
    assertEquals(10_000, review(with(events)).lines().get(0).caught().landed());
  }

  @Test
  void twentyFiveThousandFishInOneCount() {
    Review review =
        review(
            with(
                List.of(
                    new SessionEvent.Landed(
                        stamp(1, Log.millis("12:00")), new Fish(25_000, null, 5e5, false)))));
    assertEquals(25_000, review.lines().get(0).caught().landed());
    review(Log.from("10:00", "15:00").count("12:00", "a", 25_000, 5e5).session());
  }

  @Test
  void aThousandAnHour() {
    List<SessionEvent> events = new ArrayList<>();
    for (int i = 0; i < 5_000; i++) {
      events.add(new SessionEvent.Bite(stamp(i, Log.millis("10:00") + 3_600L * i)));
    }
    Rate bite = review(with(events)).lines().get(0).rates().bite();
    assertTrue(bite != null && Math.abs(bite.perHour() - 1000) < 1);
  }

  @Test
  void oneInAHundredHours() {
    Session session =
        with(
            List.of(
                new SessionEvent.Landed(
                    stamp(1, Log.millis("12:00")), new Fish(1, null, null, false))));
    Match match = session.match();
    Session hundredHours =
        new Session(
            session.document(),
            session.occasion(),
            new Match(match.allIn(), match.allIn() + 360_000_000L, match.rules()),
            session.lines(),
            session.events(),
            session.outcome());
    Rate fish = review(hundredHours).lines().get(0).rates().fish();
    assertTrue(fish != null && Math.abs(fish.perHour() - 0.01) < 1e-9);
  }
}
