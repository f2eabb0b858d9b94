package org.fadeline.io.store;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import org.fadeline.io.ImportReport;
import org.fadeline.io.Json;
import org.fadeline.io.JsonFields;
import org.fadeline.io.SessionWriter;
import org.jspecify.annotations.Nullable;

/**
 * The journal of a document: a header, then one line a gesture, each forced to the disk before it
 * is acknowledged. Used by one thread at a time.
 */
final class Journal {
  static final String FORMAT = "fadeline-journal";

  private final Storage storage;
  private final StoreFiles files;
  private Header header;
  private Storage.@Nullable Out out;
  private boolean exists;
  private boolean doubtful;
  private @Nullable Whole unsettled;
  private long length;
  private int headerLength;
  private final List<Pending> pending = new ArrayList<>();
  private final EditPlaces places = new EditPlaces();

  private Journal(Storage storage, StoreFiles files, Header header) {
    this.storage = storage;
    this.files = files;
    this.header = header;
    this.headerLength = header.bytes().length;
  }

  /**
   * What a journal belongs to.
   *
   * @param document id
   * @param base sequence of the document it starts from
   * @param hash SHA-256 of that document's file
   */
  record Header(String document, long base, String hash) {
    byte[] bytes() {
      return JournalLine.bytes(
          Json.Obj.make()
              .put("format", FORMAT)
              .put("version", 1L)
              .put("id", document)
              .put("base", base)
              .put(SessionWriter.HASH, hash));
    }

    static @Nullable Header read(Json.Obj object) {
      ImportReport.Collector problems = new ImportReport.Collector();
      JsonFields fields = JsonFields.of("journal", object, problems);
      String format = fields.text("format");
      Integer version = fields.whole("version", 1, 1);
      String document = fields.text("id");
      Long base = fields.wholeLong("base", 0, 1L << 53);
      String hash = fields.text(SessionWriter.HASH);
      return FORMAT.equals(format)
              && version != null
              && document != null
              && base != null
              && hash != null
          ? new Header(document, base, hash)
          : null;
    }
  }

  private static final class Pending {
    final JournalRecord record;
    final byte[] line;

    Pending(JournalRecord record) {
      this.record = record;
      this.line = JournalLine.bytes(record.toJson());
    }
  }

  /** A header and the lines after it, to be put in the place of what is there. */
  private static final class Whole {
    final Header header;
    final byte[] body;

    Whole(Header header, byte[] body) {
      this.header = header;
      this.body = body;
    }
  }

  /** Returns a journal that is not on the disk until something is put in it. */
  static Journal fresh(Storage storage, StoreFiles files, Header header) {
    return new Journal(storage, files, header);
  }

  /** Returns the journal that goes on after what was read. */
  static Journal goOn(Storage storage, StoreFiles files, Header header, JournalContent content) {
    Journal journal = new Journal(storage, files, header);
    journal.exists = true;
    journal.length = content.good();
    journal.headerLength = content.startOf(0);
    for (int i = 0; i < content.records().size(); i++) {
      int start = content.startOf(i);
      journal.place(content.records().get(i), start, content.startOf(i + 1) - start);
    }
    return journal;
  }

  /** Notes where an edit stands, counted from the end of the header. */
  private void place(JournalRecord record, long start, int lineLength) {
    if (record.act() == JournalRecord.Act.EDIT) {
      places.put(record.sequence(), start - headerLength, lineLength);
    }
  }

  /**
   * Puts a record at the end and forces it to the disk, with any before it that failed.
   *
   * @throws IOException if it could not be; it is then kept and written with the next one
   */
  void append(JournalRecord record) throws IOException {
    pending.add(new Pending(record));
    flush();
  }

  /** Writes what could not be written before. */
  void flush() throws IOException {
    if (pending.isEmpty() && unsettled == null) {
      return;
    }
    ByteArrayOutputStream lines = new ByteArrayOutputStream();
    for (Pending one : pending) {
      lines.writeBytes(one.line);
    }
    Whole whole = unsettled;
    if (whole != null) {
      replace(whole, lines.toByteArray());
    } else if (exists) {
      appendBytes(lines.toByteArray());
    } else {
      replace(new Whole(header, new byte[0]), lines.toByteArray());
    }
    long start = length - lines.size();
    for (Pending one : pending) {
      place(one.record, start, one.line.length);
      start += one.line.length;
    }
    pending.clear();
  }

  private void appendBytes(byte[] bytes) throws IOException {
    try {
      Storage.Out open = out;
      if (open == null) {
        open = storage.append(files.journal());
        out = open;
      }
      if (doubtful) {
        open.truncate(length);
      }
      // In doubt until forced: a failed write may have left a part of the line.
      doubtful = true;
      open.write(bytes);
      open.force(false);
      doubtful = false;
      length += bytes.length;
    } catch (IOException e) {
      closeQuietly();
      throw e;
    }
  }

  /**
   * Puts a whole new journal in the place of the old one. When that fails once the renaming has
   * begun, nobody can say which of the two the disk will show after a crash; until a later try
   * succeeds, nothing is acknowledged.
   */
  private void replace(Whole whole, byte[] more) throws IOException {
    byte[] start = whole.header.bytes();
    try (Storage.Out made = storage.create(files.newJournal())) {
      made.write(start);
      made.write(whole.body);
      made.write(more);
      made.force(true);
    }
    closeQuietly();
    unsettled = whole;
    storage.moveAtomically(files.newJournal(), files.journal());
    storage.forceFolder(files.side());
    unsettled = null;
    header = whole.header;
    headerLength = start.length;
    length = start.length + (long) whole.body.length + more.length;
    exists = true;
    doubtful = false;
  }

  /** Starts anew from a saved document, keeping the history for undoing. */
  void rebase(Header newHeader) throws IOException {
    flush();
    byte[] body = new byte[0];
    if (exists) {
      body = storage.read(files.journal(), headerLength, (int) (length - headerLength));
    }
    replace(new Whole(newHeader, body), new byte[0]);
  }

  /** Reads back the edit with a sequence. */
  JournalRecord edit(long sequence) throws IOException {
    for (Pending one : pending) {
      if (one.record.sequence() == sequence && one.record.edit() != null) {
        return one.record;
      }
    }
    int place = places.find(sequence);
    if (place < 0) {
      throw new IOException("the journal has no edit " + sequence);
    }
    Whole whole = unsettled;
    byte[] line =
        whole == null
            ? storage.read(
                files.journal(), headerLength + places.start(place), places.length(place))
            : Arrays.copyOfRange(
                whole.body,
                (int) places.start(place),
                (int) places.start(place) + places.length(place));
    Json.Obj object = JournalLine.read(line, 0, line.length);
    JournalRecord record = object == null ? null : JournalRecord.read(object);
    if (record == null || record.sequence() != sequence) {
      throw new IOException("the journal is damaged at edit " + sequence);
    }
    return record;
  }

  /** Returns its length on the disk, bytes. */
  long length() {
    return length;
  }

  /** Removes the journal: everything in it is in the saved document. */
  void remove() throws IOException {
    closeQuietly();
    storage.delete(files.journal());
    unsettled = null;
    exists = false;
  }

  void close() {
    closeQuietly();
  }

  private void closeQuietly() {
    Storage.Out open = out;
    out = null;
    if (open != null) {
      try {
        open.close();
      } catch (IOException ignored) {
        // What counts was forced before; the next write opens it again.
      }
    }
  }
}
