package org.fadeline.log;

import static org.fadeline.ui.HandMade.minute;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNull;

import java.util.List;
import org.fadeline.model.EventKind;
import org.fadeline.model.Session;
import org.fadeline.model.SessionEvent;
import org.fadeline.ui.HandMade;
import org.junit.jupiter.api.Test;

/** What a press of a pad makes of the record. */
class PressTest {
  private static final int SHALLOW = 0;
  private static final int SHORT = 1;

  private Session session = HandMade.of(List.of());

  private SessionEvent press(EventKind kind, int line, double minute) {
    Press press = Press.of(session, new Pad(kind, line), minute(minute));
    session = press.edit().apply(session);
    return event(press.eventId());
  }

  private SessionEvent event(String id) {
    return session.events().stream().filter(e -> e.id().equals(id)).findFirst().orElseThrow();
  }

  private List<String> words() {
    return session.events().stream().map(e -> e.kind().word()).toList();
  }

  @Test
  void aPressLogsItsKindOnItsLineAtTheClocksTime() {
    SessionEvent bite = press(EventKind.BITE, SHORT, 12);
    assertEquals(EventKind.BITE, bite.kind());
    assertEquals("short", bite.lineId());
    assertEquals(minute(12), bite.at());
  }

  @Test
  void theStepIsNamedForTheKindAndTheLine() {
    Press press = Press.of(session, new Pad(EventKind.LANDED, SHALLOW), minute(1));
    assertEquals("Log landed on Shallow", press.edit().name());
  }

  @Test
  void pressesAtOneInstantStayInTheOrderPressed() {
    press(EventKind.HOOKED, SHORT, 5);
    press(EventKind.LANDED, SHORT, 5);
    press(EventKind.FED, SHORT, 5);
    press(EventKind.CAST, SHORT, 4);
    assertEquals(List.of("cast", "hooked", "landed", "fed"), words());
  }

  @Test
  void whatHappensToTheRigHappensOnTheLineBeingFished() {
    assertNull(press(EventKind.OFF, Pad.AROUND, 1).lineId(), "nothing is being fished yet");
    press(EventKind.CAST, SHORT, 2);
    assertEquals("short", press(EventKind.OFF, Pad.AROUND, 3).lineId());
    assertEquals("short", press(EventKind.CHANGE, Pad.AROUND, 4).lineId(), "the rig is out");
    assertNull(press(EventKind.WEATHER, Pad.AROUND, 4).lineId());
    press(EventKind.MOVE, SHORT, 5);
    assertNull(press(EventKind.OFF, Pad.AROUND, 6).lineId(), "the line was left");
  }

  @Test
  void stoppedIsAlsoTheWayOn() {
    press(EventKind.STOPPED, Pad.AROUND, 10);
    press(EventKind.STOPPED, Pad.AROUND, 20);
    press(EventKind.STOPPED, Pad.AROUND, 30);
    assertEquals(List.of("stopped", "resumed", "stopped"), words());
  }

  @Test
  void netsCountOnFromTheLastOneBefore() {
    assertEquals(2, ((SessionEvent.Net) press(EventKind.NET, Pad.AROUND, 60)).net());
    assertEquals(3, ((SessionEvent.Net) press(EventKind.NET, Pad.AROUND, 120)).net());
    assertEquals(2, ((SessionEvent.Net) press(EventKind.NET, Pad.AROUND, 30)).net());
  }

  @Test
  void theClickerCountsUpWhileItIsClickedAndStartsAnewLater() {
    press(EventKind.CAST, SHORT, 1);
    press(EventKind.COUNT, Pad.AROUND, 10);
    SessionEvent second = press(EventKind.COUNT, Pad.AROUND, 10.25);
    assertEquals(2, second.fishOrNull() == null ? 0 : second.fishOrNull().count());
    assertEquals(minute(10), second.at());
    press(EventKind.COUNT, Pad.AROUND, 11);
    assertEquals(List.of("cast", "count", "count"), words());
    press(EventKind.BITE, SHORT, 11.1);
    press(EventKind.COUNT, Pad.AROUND, 11.2);
    assertEquals(
        List.of("cast", "count", "count", "bite", "count"), words(), "something else between");
  }

  @Test
  void everyPadMakesAnEventThatTakesItselfBack() {
    for (Pad pad : Pad.all(2)) {
      Session before = session;
      Press press = Press.of(session, pad, minute(3));
      session = press.edit().apply(session);
      assertEquals(pad.kind(), event(press.eventId()).kind());
      assertEquals(before, press.edit().inverse().apply(session));
      session = before;
    }
  }
}
