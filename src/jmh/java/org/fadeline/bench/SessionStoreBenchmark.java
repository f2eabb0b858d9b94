package org.fadeline.bench;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.concurrent.TimeUnit;
import org.fadeline.demo.LargeSessions;
import org.fadeline.io.store.SaveResult;
import org.fadeline.io.store.SessionStore;
import org.fadeline.model.Edit;
import org.fadeline.model.Session;
import org.fadeline.model.SessionEvent;
import org.fadeline.model.Stamp;
import org.openjdk.jmh.annotations.Benchmark;
import org.openjdk.jmh.annotations.BenchmarkMode;
import org.openjdk.jmh.annotations.Mode;
import org.openjdk.jmh.annotations.OutputTimeUnit;
import org.openjdk.jmh.annotations.Param;
import org.openjdk.jmh.annotations.Scope;
import org.openjdk.jmh.annotations.Setup;
import org.openjdk.jmh.annotations.State;
import org.openjdk.jmh.annotations.TearDown;

/** An edit until the disk has it, an edit taken back, and a save, on a session with its journal. */
@State(Scope.Benchmark)
@BenchmarkMode(Mode.SampleTime)
@OutputTimeUnit(TimeUnit.MILLISECONDS)
public class SessionStoreBenchmark {
  /** Events of the session. */
  @Param({"1000", "10000"})
  public int events;

  private Path folder = Path.of("");

  @SuppressWarnings("NullAway.Init") // set up before each run
  private SessionStore store;

  /** Makes the session's file. */
  @Setup
  public void make() throws IOException {
    folder = Files.createTempDirectory("fadeline-bench");
    Session session = LargeSessions.of(events, 1);
    store = SessionStore.create(folder.resolve("x.session.json"), session, folder);
  }

  /** Takes the files away. */
  @TearDown
  public void clean() throws IOException {
    store.close();
    TemporaryFolder.remove(folder);
  }

  /** Changes the words on one event, until the disk has it. */
  @Benchmark
  public Long edit() {
    return store.append(changed()).join();
  }

  /** Changes the words on one event and takes that back, until the disk has both. */
  @Benchmark
  public Long editAndUndo() throws IOException {
    store.append(changed()).join();
    return store.undo().orElseThrow().join();
  }

  /** Saves after one edit. */
  @Benchmark
  public SaveResult save() {
    store.append(changed()).join();
    return store.save(false).join();
  }

  private Edit changed() {
    Session now = store.session();
    SessionEvent event = now.events().get(now.events().size() / 2);
    Stamp stamp = event.stamp();
    String note = "edit " + now.document().sequence();
    return Edit.replace(
        "Note on event",
        now,
        event.withStamp(new Stamp(stamp.id(), stamp.at(), stamp.lineId(), note)));
  }
}
