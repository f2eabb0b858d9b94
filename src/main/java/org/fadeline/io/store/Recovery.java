package org.fadeline.io.store;

import java.io.IOException;
import java.nio.file.Path;
import java.time.Instant;
import java.time.format.DateTimeFormatter;
import java.util.Arrays;
import java.util.HashMap;
import java.util.HashSet;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import org.fadeline.io.ReadOptions;
import org.fadeline.io.SessionReader;
import org.fadeline.model.Edit;
import org.fadeline.model.Session;
import org.jspecify.annotations.Nullable;

/** Puts the edits of a journal back on the document it belongs to. */
final class Recovery {
  private static final DateTimeFormatter CLOCK =
      DateTimeFormatter.ofPattern("HH:mm:ss", Locale.ROOT);

  private final Storage storage;
  private final StoreFiles files;

  Recovery(Storage storage, StoreFiles files) {
    this.storage = storage;
    this.files = files;
  }

  /**
   * A document with its journal.
   *
   * @param session after the edits that were put back
   * @param journal to go on with
   * @param history what can be undone
   * @param found what happened, or null where there was nothing to tell
   */
  record Result(Session session, Journal journal, History history, @Nullable Recovered found) {}

  /**
   * Reads the journal of a document.
   *
   * @param saved the document as it stands in its file
   * @param hash of that file
   */
  Result recover(Session saved, String hash) throws IOException {
    Journal.Header header =
        new Journal.Header(saved.document().id(), saved.document().sequence(), hash);
    byte[] bytes = storage.read(files.journal());
    if (bytes == null) {
      return new Result(saved, Journal.fresh(storage, files, header), new History(), null);
    }
    JournalContent content = JournalContent.read(bytes);
    Journal.Header found = content.header();
    boolean belongs = found != null && belongs(content, found, saved, hash);
    if (!belongs && content.isSaved()) {
      // The file was put there by somebody else. Steps of what it held before fit it no more, and
      // no edit is lost with them.
      drop();
      return new Result(saved, Journal.fresh(storage, files, header), new History(), null);
    }
    if (found == null || !found.document().equals(saved.document().id())) {
      return aside(saved, header, bytes, false, Optional.empty());
    }
    if (!belongs) {
      return aside(saved, header, bytes, true, other(content, found));
    }
    History history = new History();
    int usable = content.records().size();
    Session session = saved;
    int edits = 0;
    long lastAt = 0;
    Map<Long, Edit> seen = new HashMap<>();
    for (int i = 0; i < usable; i++) {
      JournalRecord record = content.records().get(i);
      Session next = step(session, record, seen);
      if (next == null) {
        usable = i;
        break;
      }
      if (next.document().sequence() != session.document().sequence()) {
        edits++;
        lastAt = record.at();
      }
      session = next;
      history.note(record);
    }
    JournalContent used = content.first(usable);
    Optional<Path> kept = Optional.empty();
    if (used.isDamaged()) {
      kept = Optional.of(keep(used.rest()));
      truncate(used.good());
    }
    Recovered recovered =
        edits == 0 && kept.isEmpty()
            ? null
            : new Recovered(
                edits, edits == 0 ? null : clock(saved, lastAt), kept, false, Optional.empty());
    if (used.lastSequence() != session.document().sequence()) {
      // Damage among what is saved already: going on behind it would leave a gap, so a new journal
      // starts, and what came before cannot be undone any more.
      return new Result(session, Journal.fresh(storage, files, header), new History(), recovered);
    }
    return new Result(session, Journal.goOn(storage, files, found, used), history, recovered);
  }

  private static boolean belongs(
      JournalContent content, Journal.Header header, Session saved, String hash) {
    return header.document().equals(saved.document().id())
        && basesOf(content, header).contains(hash);
  }

  private static String clock(Session session, long at) {
    return CLOCK.format(Instant.ofEpochMilli(at).atZone(session.occasion().zone()));
  }

  /** Hashes of documents that the journal goes on from: its base, and each save it announced. */
  private static Set<String> basesOf(JournalContent content, Journal.Header header) {
    Set<String> bases = new HashSet<>();
    bases.add(header.hash());
    for (JournalRecord record : content.records()) {
      String hash = record.hash();
      // Saves before the base are history: an old copy put back by hand is a change outside.
      if (hash != null && record.sequence() >= header.base()) {
        bases.add(hash);
      }
    }
    return bases;
  }

  /** Returns the session after a record, or null where the record does not fit. */
  private static @Nullable Session step(
      Session session, JournalRecord record, Map<Long, Edit> seen) {
    Edit edit = record.edit();
    if (edit != null) {
      seen.put(record.sequence(), edit);
    }
    long sequence = session.document().sequence();
    if (record.act() == JournalRecord.Act.SAVE || record.sequence() <= sequence) {
      return session;
    }
    Edit of = edit == null ? seen.get(record.of()) : edit;
    if (of == null || record.sequence() != sequence + 1) {
      return null;
    }
    try {
      Edit applied = record.act() == JournalRecord.Act.UNDO ? of.inverse() : of;
      return SessionStore.next(applied.apply(session));
    } catch (IllegalArgumentException doesNotFit) {
      return null;
    }
  }

  /** Works out the record as the journal has it, from the backup it started from. */
  private Optional<Session> other(JournalContent content, Journal.Header header)
      throws IOException {
    Optional<byte[]> base = new Backups(storage, files.backups()).withHash(header.hash());
    if (base.isEmpty()) {
      return Optional.empty();
    }
    Session session =
        SessionReader.parse("backup", base.get(), ReadOptions.DEFAULT).session().orElse(null);
    Map<Long, Edit> seen = new HashMap<>();
    for (JournalRecord record : content.records()) {
      Session next = session == null ? null : step(session, record, seen);
      if (next == null) {
        break;
      }
      session = next;
    }
    return Optional.ofNullable(session);
  }

  /** Keeps a journal that is there under another name, unless all it holds is saved. */
  void setAside() throws IOException {
    byte[] bytes = storage.read(files.journal());
    if (bytes != null) {
      if (!JournalContent.read(bytes).isSaved()) {
        Path unused = keep(bytes);
      }
      drop();
    }
  }

  private void drop() throws IOException {
    storage.delete(files.journal());
    storage.forceFolder(files.side());
  }

  private Result aside(
      Session saved,
      Journal.Header header,
      byte[] bytes,
      boolean changedOutside,
      Optional<Session> other)
      throws IOException {
    Path kept = keep(bytes);
    drop();
    return new Result(
        saved,
        Journal.fresh(storage, files, header),
        new History(),
        new Recovered(0, null, Optional.of(kept), changedOutside, other));
  }

  /** Keeps bytes in a file of their own, once. */
  private Path keep(byte[] bytes) throws IOException {
    for (int number = 1; ; number++) {
      Path file = files.damaged(number);
      byte[] there = storage.read(file);
      if (there != null && Arrays.equals(there, bytes)) {
        return file;
      }
      if (there == null || there.length == 0) {
        try (Storage.Out out = storage.create(file)) {
          out.write(bytes);
          out.force(true);
        }
        storage.forceFolder(files.side());
        return file;
      }
    }
  }

  private void truncate(int length) throws IOException {
    try (Storage.Out out = storage.append(files.journal())) {
      out.truncate(length);
      out.force(true);
    }
  }
}
