package org.fadeline.io.store;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.channels.ClosedByInterruptException;
import java.nio.file.AccessDeniedException;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.List;
import org.fadeline.model.Session;
import org.jspecify.annotations.Nullable;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;

/**
 * The disk refuses one call, or every call from one on: no acknowledged edit is lost, the document
 * is the old one or a new one, and once the disk works again everything can be saved.
 */
class StoreFaultTest {
  enum Fault {
    NO_SPACE,
    DENIED,
    SHORT_WRITE,
    INTERRUPTED;

    IOException error() {
      return switch (this) {
        case NO_SPACE, SHORT_WRITE -> new IOException("No space left on device");
        case DENIED -> new AccessDeniedException("match.session.json");
        case INTERRUPTED -> new ClosedByInterruptException();
      };
    }
  }

  /** Passes calls on, but fails those from a first to a last. */
  private static final class Faulty implements Storage {
    private final SimulatedDisk disk;
    private final Fault fault;
    private int first = Integer.MAX_VALUE;
    private int last;
    private int calls;

    Faulty(SimulatedDisk disk, Fault fault) {
      this.disk = disk;
      this.fault = fault;
    }

    void fail(int firstCall, int lastCall) {
      first = firstCall;
      last = lastCall;
    }

    void repair() {
      first = Integer.MAX_VALUE;
    }

    private boolean fails() {
      int call = calls++;
      return call >= first && call <= last;
    }

    private void call() throws IOException {
      if (fails()) {
        throw fault.error();
      }
    }

    @Override
    public Path resolve(Path file) {
      return disk.resolve(file);
    }

    @Override
    public boolean isWritable(Path folder) {
      return true;
    }

    @Override
    public byte @Nullable [] read(Path file) throws IOException {
      call();
      return disk.read(file);
    }

    @Override
    public byte[] read(Path file, long offset, int length) throws IOException {
      call();
      return disk.read(file, offset, length);
    }

    @Override
    public Out create(Path file) throws IOException {
      call();
      return new FaultyOut(disk.create(file));
    }

    @Override
    public Out append(Path file) throws IOException {
      call();
      return new FaultyOut(disk.append(file));
    }

    @Override
    public void moveAtomically(Path from, Path to) throws IOException {
      call();
      disk.moveAtomically(from, to);
    }

    @Override
    public void delete(Path file) throws IOException {
      call();
      disk.delete(file);
    }

    @Override
    public List<Path> list(Path folder) throws IOException {
      call();
      return disk.list(folder);
    }

    @Override
    public void createFolder(Path folder) throws IOException {
      call();
    }

    @Override
    public void forceFolder(Path folder) throws IOException {
      call();
      disk.forceFolder(folder);
    }

    @Override
    public Lock lock(Path file) throws IOException {
      call();
      return disk.lock(file);
    }

    private final class FaultyOut implements Out {
      private final Out out;

      FaultyOut(Out out) {
        this.out = out;
      }

      @Override
      public void write(byte[] bytes) throws IOException {
        if (fails()) {
          if (fault == Fault.SHORT_WRITE) {
            out.write(Arrays.copyOf(bytes, bytes.length / 2));
          }
          throw fault.error();
        }
        out.write(bytes);
      }

      @Override
      public void truncate(long length) throws IOException {
        call();
        out.truncate(length);
      }

      @Override
      public void force(boolean metadata) throws IOException {
        call();
        out.force(metadata);
      }

      @Override
      public void close() throws IOException {
        call();
        out.close();
      }
    }
  }

  private static int callsOfTheWork(Fault fault) throws IOException {
    Faulty storage = new Faulty(new SimulatedDisk(), fault);
    new StoreScript(storage).run();
    return storage.calls;
  }

  @ParameterizedTest
  @EnumSource
  void oneRefusedCallLosesNothing(Fault fault) throws IOException {
    int calls = callsOfTheWork(fault);
    for (int call = 0; call < calls; call++) {
      work(fault, call, call);
    }
  }

  @ParameterizedTest
  @EnumSource
  void aDiskThatRefusesFromACallOnLosesNothing(Fault fault) throws IOException {
    int calls = callsOfTheWork(fault);
    for (int call = 0; call < calls; call += 3) {
      work(fault, call, Integer.MAX_VALUE);
    }
  }

  private static void work(Fault fault, int first, int last) throws IOException {
    String when = fault + " from call " + first;
    SimulatedDisk disk = new SimulatedDisk();
    Faulty storage = new Faulty(disk, fault);
    storage.fail(first, last);
    StoreScript work = new StoreScript(storage);
    try {
      work.run();
    } catch (IOException refused) {
      // Creating, or reading an edit back for undo, may refuse: then nothing was changed.
    }
    storage.repair();
    if (work.acknowledged < 0) {
      return;
    }
    // Pulling the plug now leaves what was acknowledged, whatever was refused.
    SessionStore.Opened opened =
        StoreOpener.open(
            StoreScript.FILE, StoreScript.settings(disk.afterCrash(SimulatedDisk.Leaves.NONE, 0)));
    Session found = opened.store().orElseThrow(() -> new AssertionError(when)).session();
    long sequence = found.document().sequence();
    assertTrue(
        sequence >= work.acknowledged, () -> when + ": " + sequence + " < " + work.acknowledged);
    assertEquals(work.states.get(sequence), found, when);
    // The open document holds every edit, acknowledged or not, and can be saved now.
    Session open = work.store().session();
    assertEquals(work.states.get(open.document().sequence()), open, when);
    SaveResult saved = work.store().save(false).join();
    assertTrue(saved.isSaved(), () -> when + ": " + saved.message());
    Session again =
        StoreOpener.open(
                StoreScript.FILE,
                StoreScript.settings(disk.afterCrash(SimulatedDisk.Leaves.NONE, 0)))
            .store()
            .orElseThrow()
            .session();
    assertEquals(open, again, when);
  }
}
