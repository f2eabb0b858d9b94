package org.fadeline.io.store;

import java.io.PrintStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import org.fadeline.io.SessionWriter;
import org.fadeline.model.Edit;
import org.fadeline.model.Session;
import org.fadeline.model.SessionEvent;
import org.fadeline.model.Stamp;

/** A program that edits, saves and undoes for ever, and prints each acknowledged sequence. */
public final class KillChild {
  private KillChild() {}

  /**
   * Runs until it is killed.
   *
   * @param args the document and the app-data folder
   */
  public static void main(String[] args) throws Exception {
    SessionStore store =
        SessionStore.open(Path.of(args[0]), Path.of(args[1])).store().orElseThrow();
    PrintStream out = new PrintStream(System.out, true, StandardCharsets.US_ASCII);
    for (int i = 1; ; i++) {
      if (i % 11 == 0 && store.canUndo()) {
        print(out, store.undo().orElseThrow().join(), store.session());
      }
      if (i % 25 == 0) {
        store.save(false).join();
      }
      Session now = store.session();
      long next = now.document().sequence() + 1;
      Stamp stamp = new Stamp("k" + next, now.match().allIn() + next, null, "edit " + next);
      print(
          out,
          store.append(Edit.add("Add note", now, new SessionEvent.Note(stamp))).join(),
          store.session());
    }
  }

  private static void print(PrintStream out, long sequence, Session session) {
    out.println(sequence + " " + fingerprint(session));
  }

  /** What must be the same when the session is opened again. */
  static String fingerprint(Session session) {
    return SessionWriter.hashOf(SessionWriter.toBytes(session));
  }
}
