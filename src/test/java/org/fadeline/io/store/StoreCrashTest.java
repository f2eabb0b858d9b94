package org.fadeline.io.store;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import org.fadeline.io.ReadOptions;
import org.fadeline.io.SessionReader;
import org.fadeline.io.store.SimulatedDisk.Crash;
import org.fadeline.io.store.SimulatedDisk.Leaves;
import org.fadeline.model.Edit;
import org.fadeline.model.Outcome;
import org.fadeline.model.Session;
import org.junit.jupiter.api.Test;

/**
 * The machine stops at every single operation of a piece of work, leaving of the unforced writes
 * nothing, all, a prefix, a torn prefix or any of them: what was acknowledged is there again.
 */
class StoreCrashTest {
  /** Seeds a mode that draws; more with {@code -Dcrash.seeds=20}. */
  private static final int SEEDS = Integer.getInteger("crash.seeds", 2);

  private static int operationsOfTheWork() throws IOException {
    SimulatedDisk disk = new SimulatedDisk();
    new StoreScript(disk).run();
    return disk.operations();
  }

  private static StoreScript workUntil(SimulatedDisk disk) throws IOException {
    StoreScript work = new StoreScript(disk);
    try {
      work.run();
    } catch (Crash stopped) {
      // as meant
    }
    return work;
  }

  @Test
  void nothingAcknowledgedIsLostWhereverTheMachineStops() throws IOException {
    int operations = operationsOfTheWork();
    assertTrue(operations > 80, "the work has " + operations + " operations");
    int tried = 0;
    for (int stop = 0; stop < operations; stop++) {
      for (Leaves leaves : Leaves.values()) {
        int seeds = leaves == Leaves.NONE || leaves == Leaves.ALL ? 1 : SEEDS;
        for (int seed = 0; seed < seeds; seed++) {
          SimulatedDisk disk = new SimulatedDisk();
          disk.stopAt(stop, (stop + tried) % 2 == 0);
          StoreScript work = workUntil(disk);
          assertTrue(disk.isStopped());
          check(disk.afterCrash(leaves, seed), work, leaves + " at " + stop + " seed " + seed);
          if (tried++ % 5 == 0) {
            checkGoesOn(disk.afterCrash(leaves, seed), leaves + " at " + stop + " seed " + seed);
          }
        }
      }
    }
    assertEquals(operations * (2 + 3 * SEEDS), tried);
  }

  @Test
  void aSecondStopDuringRecoveryLosesNothingEither() throws IOException {
    int operations = operationsOfTheWork();
    for (int stop = 3; stop < operations; stop += 5) {
      SimulatedDisk disk = new SimulatedDisk();
      disk.stopAt(stop, stop % 2 == 0);
      StoreScript work = workUntil(disk);
      Leaves leaves = stop % 2 == 0 ? Leaves.REORDERED : Leaves.TORN;
      SimulatedDisk found = disk.afterCrash(leaves, stop);
      for (int second = 0; ; second++) {
        SimulatedDisk again = disk.afterCrash(leaves, stop);
        again.stopAt(second, second % 2 == 0);
        try {
          StoreOpener.open(StoreScript.FILE, StoreScript.settings(again));
        } catch (Crash stopped) {
          // as meant
        }
        if (!again.isStopped()) {
          break;
        }
        check(again.afterCrash(Leaves.REORDERED, second), work, stop + " then " + second);
      }
      check(found, work, "once at " + stop);
    }
  }

  private static void check(SimulatedDisk disk, StoreScript work, String when) throws IOException {
    SessionStore.Opened opened = StoreOpener.open(StoreScript.FILE, StoreScript.settings(disk));
    if (work.acknowledged < 0 && opened.store().isEmpty()) {
      return;
    }
    assertTrue(opened.store().isPresent(), () -> when + ": " + opened.read().report().problems());
    SessionStore store = opened.store().get();
    Session session = store.session();
    long sequence = session.document().sequence();
    assertTrue(
        sequence >= work.acknowledged, () -> when + ": " + sequence + " < " + work.acknowledged);
    assertEquals(work.states.get(sequence), session, when);
    assertFalse(
        opened.recovered().map(Recovered::changedOutside).orElse(false),
        when + ": taken for a change outside");
  }

  /** One more edit, another stop, a save. */
  private static void checkGoesOn(SimulatedDisk disk, String when) throws IOException {
    SessionStore store =
        StoreOpener.open(StoreScript.FILE, StoreScript.settings(disk)).store().orElse(null);
    if (store == null) {
      return;
    }
    Session before = store.session();
    store
        .append(
            Edit.between(
                "Title",
                before,
                before.withOutcome(Outcome.UNKNOWN).withEvents(before.events().subList(1, 3))))
        .join();
    Session after = store.session();
    SimulatedDisk later = disk.afterCrash(Leaves.NONE, 0);
    SessionStore second =
        StoreOpener.open(StoreScript.FILE, StoreScript.settings(later)).store().orElseThrow();
    assertEquals(after, second.session(), when + ": after going on");
    assertTrue(second.save(false).join().isSaved(), when);
    second.close();
    assertEquals(
        after,
        SessionReader.parse("x", bytes(later), ReadOptions.DEFAULT).session().orElseThrow(),
        when);
    SessionStore third =
        StoreOpener.open(StoreScript.FILE, StoreScript.settings(later)).store().orElseThrow();
    assertEquals(after, third.session(), when);
    third.undo().orElseThrow().join();
    assertEquals(before.events(), third.session().events(), when + ": taken back once saved");
  }

  private static byte[] bytes(SimulatedDisk disk) {
    byte[] bytes = disk.read(StoreScript.FILE);
    if (bytes == null) {
      throw new AssertionError("no document");
    }
    return bytes;
  }
}
