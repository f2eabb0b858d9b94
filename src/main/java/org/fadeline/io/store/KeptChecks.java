package org.fadeline.io.store;

import java.util.HashSet;
import java.util.Set;
import org.fadeline.io.Json;
import org.fadeline.io.JsonText;
import org.fadeline.model.Line;
import org.fadeline.model.Session;
import org.fadeline.model.SessionEvent;

/** What must hold of an edit before it is acknowledged: that it can be read back. */
final class KeptChecks {
  private KeptChecks() {}

  /** Refuses a session whose ids could not tell its parts apart when it is read again. */
  static void checkSession(Session session) {
    Set<String> ids = new HashSet<>();
    for (SessionEvent event : session.events()) {
      if (event.id().isEmpty() || !ids.add(event.id())) {
        throw new IllegalArgumentException("two events have the id \"" + event.id() + "\"");
      }
    }
    ids.clear();
    for (Line line : session.lines()) {
      if (line.id().isEmpty() || !ids.add(line.id())) {
        throw new IllegalArgumentException("two lines have the id \"" + line.id() + "\"");
      }
    }
  }

  /** What is not read back as it was written must not be acknowledged. */
  static void checkRecord(JournalRecord record) {
    byte[] line = JournalLine.bytes(record.toJson());
    Json.Obj object = JournalLine.read(line, 0, line.length);
    JournalRecord back = object == null ? null : JournalRecord.read(object);
    if (back == null
        || !JsonText.compact(back.toJson()).equals(JsonText.compact(record.toJson()))) {
      throw new IllegalArgumentException(
          "the edit holds text or a number that a session file cannot hold");
    }
  }
}
