package org.fadeline.ui.start;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.lang.management.ManagementFactory;
import org.junit.jupiter.api.Test;

class ProcessAgeTest {
  private static final String STAT =
      "4242 (a (very) odd name) S 1 2 3 0 -1 4194560 9 0 0 0 1 2 0 0 20 0 30 0 77450 1000 50";

  @Test
  void countsTicksAgainstTheMachinesOwnClock() {
    assertEquals(1_230, ProcessAge.millis(STAT, "775.73 1200.10\n"));
    assertEquals(0, ProcessAge.millis(STAT, "774.50 1200.10\n"));
  }

  @Test
  void refusesWhatIsNoSuchLine() {
    assertThrows(RuntimeException.class, () -> ProcessAge.millis("4242 (short) S 1 2", "1.0 2"));
  }

  @Test
  void agreesWithJavasOwnAge() {
    long java = System.currentTimeMillis() - ManagementFactory.getRuntimeMXBean().getStartTime();
    long told = ProcessAge.millis().orElseThrow();
    // The process is some older than Java in it; by Java's own instant it may be a second older.
    assertTrue(told >= java - 20, told + " ms told, Java runs for " + java + " ms");
  }
}
