package org.fadeline.io.store;

import java.io.IOException;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.List;
import org.fadeline.io.FileText;
import org.fadeline.io.Problem;
import org.fadeline.io.ReadOptions;
import org.fadeline.io.ReadResult;
import org.fadeline.io.SessionReader;
import org.fadeline.io.SessionWriter;
import org.fadeline.model.Document;
import org.fadeline.model.Session;

/** The file of a document: reading it, and replacing it so that it is always whole. */
final class DocumentFile {
  private final StoreSettings settings;
  private final Storage storage;
  private final StoreFiles files;
  private final Backups backups;
  private volatile String hash = "";
  private volatile String attempted = "";
  private volatile long sequence;

  DocumentFile(StoreSettings settings, StoreFiles files) {
    this.settings = settings;
    this.storage = settings.storage();
    this.files = files;
    this.backups = new Backups(storage, files.backups());
  }

  Path path() {
    return files.document();
  }

  /** Returns the SHA-256 of the file as read or saved last. */
  String savedHash() {
    return hash;
  }

  /** Returns the sequence of the document as read or saved last. */
  long savedSequence() {
    return sequence;
  }

  List<Path> backups() throws IOException {
    return backups.newestFirst();
  }

  ReadResult read() throws IOException {
    String name = FileText.nameOf(files.document());
    byte[] bytes;
    try {
      bytes = storage.read(files.document());
    } catch (IOException e) {
      return ReadResult.refused(
          Problem.ofFile(name, String.valueOf(e.getMessage()), "choose another file"));
    }
    if (bytes == null) {
      return ReadResult.refused(
          Problem.ofFile(name, "there is no such file", "check its name and folder"));
    }
    ReadResult result = SessionReader.parse(name, bytes, ReadOptions.DEFAULT);
    hash = SessionWriter.hashOf(bytes);
    sequence = result.session().map(s -> s.document().sequence()).orElse(0L);
    return result;
  }

  boolean isChangedOutside() throws IOException {
    byte[] now = storage.read(files.document());
    if (now == null) {
      return true;
    }
    String found = SessionWriter.hashOf(now);
    // A save may report a fault after the file was replaced all the same.
    return !found.equals(hash) && !found.equals(attempted);
  }

  /** Writes a first state, without journal. */
  void replaceWith(Session session) throws IOException {
    byte[] bytes = bytesOf(session);
    prepare(bytes);
    commit(bytes, session.document());
  }

  SaveResult save(Session session, Journal journal, boolean overwrite) {
    byte[] bytes;
    try {
      bytes = bytesOf(session);
      if (!overwrite && isChangedOutside()) {
        return new SaveResult(
            SaveResult.Status.CHANGED_OUTSIDE,
            "The file was changed outside Fadeline. Save under another name, or replace it (a copy"
                + " is kept among the backups).");
      }
      prepare(bytes);
      // With this record on the disk a new file is known as ours, should all stop before the
      // journal is renewed.
      journal.append(
          JournalRecord.save(
              session.document().sequence(),
              settings.clock().millis(),
              SessionWriter.hashOf(bytes)));
      commit(bytes, session.document());
    } catch (IOException e) {
      return new SaveResult(
          SaveResult.Status.FAILED,
          "The file could not be written ("
              + e.getMessage()
              + "). It is as it was, and the edits are in the journal. Free some space, or save"
              + " under another name.");
    }
    renew(session, journal);
    return new SaveResult(SaveResult.Status.SAVED, "");
  }

  /** The file is safe already: what fails here is put right by the next save or opening. */
  private void renew(Session session, Journal journal) {
    try {
      journal.rebase(
          new Journal.Header(session.document().id(), session.document().sequence(), hash));
      backups.prune(settings.clock().millis());
    } catch (IOException ignored) {
      // The old journal goes on: it names this save, and what the file holds is skipped.
    }
  }

  private static byte[] bytesOf(Session session) throws IOException {
    byte[] bytes = SessionWriter.toBytes(session);
    ReadResult back = SessionReader.parse("the file", bytes, ReadOptions.DEFAULT);
    boolean same =
        back.session().isPresent()
            && Arrays.equals(SessionWriter.toBytes(back.session().get()), bytes);
    if (!same) {
      String why =
          back.report().problems().stream()
              .filter(Problem::isError)
              .findFirst()
              .map(Problem::toString)
              .orElse("it does not read back as it is");
      throw new IOException("the session cannot be kept: " + why);
    }
    return bytes;
  }

  /** Writes and verifies the new file beside the old one, and keeps copies of both. */
  private void prepare(byte[] bytes) throws IOException {
    long now = settings.clock().millis();
    byte[] old = storage.read(files.document());
    if (old != null) {
      backups.add(old, now);
    }
    try (Storage.Out out = storage.create(files.temporary())) {
      out.write(bytes);
      out.force(true);
    }
    byte[] written = storage.read(files.temporary());
    if (written == null || !Arrays.equals(written, bytes)) {
      throw new IOException("what was written does not read back");
    }
    backups.add(bytes, now);
  }

  private void commit(byte[] bytes, Document document) throws IOException {
    attempted = SessionWriter.hashOf(bytes);
    storage.moveAtomically(files.temporary(), files.document());
    hash = SessionWriter.hashOf(bytes);
    sequence = document.sequence();
    storage.forceFolder(files.folder());
  }
}
