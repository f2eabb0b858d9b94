package org.fadeline.io.store;

import java.time.ZoneOffset;
import org.fadeline.io.ClockTimes;
import org.fadeline.io.ImportReport;
import org.fadeline.io.Json;
import org.fadeline.io.JsonFields;
import org.fadeline.io.Refused;
import org.fadeline.io.SessionWriter;
import org.fadeline.model.Edit;
import org.jspecify.annotations.Nullable;

/**
 * One thing a journal says.
 *
 * @param act edit, undo, redo, or that a save was about to take place
 * @param sequence of the document after it; of the saved document for a save
 * @param at when, epoch milliseconds
 * @param of sequence of the edit undone or redone, else 0
 * @param edit the edit, for an edit
 * @param hash of the file saved, for a save
 */
record JournalRecord(
    Act act, long sequence, long at, long of, @Nullable Edit edit, @Nullable String hash) {
  enum Act {
    EDIT("edit"),
    UNDO("undo"),
    REDO("redo"),
    SAVE("save");

    final String word;

    Act(String word) {
      this.word = word;
    }
  }

  static JournalRecord edit(long sequence, long at, Edit edit) {
    return new JournalRecord(Act.EDIT, sequence, at, 0, edit, null);
  }

  static JournalRecord step(Act act, long sequence, long at, long of) {
    return new JournalRecord(act, sequence, at, of, null, null);
  }

  static JournalRecord save(long sequence, long at, String hash) {
    return new JournalRecord(Act.SAVE, sequence, at, 0, null, hash);
  }

  Json.Obj toJson() {
    Json.Obj out =
        Json.Obj.make()
            .put("do", act.word)
            .put("seq", sequence)
            .put("at", ClockTimes.withOffset(at, ZoneOffset.UTC));
    if (of > 0) {
      out.put("of", of);
    }
    if (edit != null) {
      out.put("edit", EditJson.write(edit));
    }
    return out.put(SessionWriter.HASH, hash);
  }

  /** Returns the record, or null where the object is none. */
  static @Nullable JournalRecord read(Json.Obj object) {
    ImportReport.Collector problems = new ImportReport.Collector();
    JsonFields fields = JsonFields.of("journal", object, problems);
    String word = fields.text("do");
    Long sequence = fields.wholeLong("seq", 0, 1L << 53);
    Long at = fields.instant("at", ZoneOffset.UTC);
    Long of = fields.wholeLong("of", 0, 1L << 53);
    String hash = fields.text(SessionWriter.HASH);
    if (sequence == null || at == null || problems.errors() > 0) {
      return null;
    }
    for (Act act : Act.values()) {
      if (act.word.equals(word)) {
        return read(act, sequence, at, of == null ? 0 : of, object.members().get("edit"), hash);
      }
    }
    return null;
  }

  private static @Nullable JournalRecord read(
      Act act, long sequence, long at, long of, @Nullable Json edit, @Nullable String hash) {
    switch (act) {
      case EDIT -> {
        try {
          return edit instanceof Json.Obj obj ? edit(sequence, at, EditJson.read(obj)) : null;
        } catch (Refused refused) {
          return null;
        }
      }
      case SAVE -> {
        return hash == null ? null : save(sequence, at, hash);
      }
      default -> {
        return of == 0 ? null : step(act, sequence, at, of);
      }
    }
  }
}
