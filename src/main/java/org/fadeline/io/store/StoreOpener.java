package org.fadeline.io.store;

import java.io.IOException;
import java.nio.file.Path;
import java.util.Optional;
import org.fadeline.io.ReadResult;
import org.fadeline.model.Session;

/** Opens and creates documents: lock, file and journal brought together. */
final class StoreOpener {
  private StoreOpener() {}

  static SessionStore.Opened open(Path document, StoreSettings settings) throws IOException {
    StoreFiles files = StoreFiles.of(document, settings);
    DocumentFile file = new DocumentFile(settings, files);
    ReadResult first = file.read();
    if (first.session().isEmpty()) {
      return new SessionStore.Opened(Optional.empty(), first, Optional.empty());
    }
    Storage.Lock lock = settings.storage().lock(files.lock());
    boolean opened = false;
    try {
      // Once more under the lock: whoever held it may have saved in between.
      ReadResult read = file.read();
      Session saved = read.session().orElse(null);
      if (saved == null) {
        return new SessionStore.Opened(Optional.empty(), read, Optional.empty());
      }
      String reason = read.readOnlyReason().orElse(null);
      if (lock == null) {
        reason = "This match is open elsewhere. It opens here for reading only.";
      }
      byte[] journal = settings.storage().read(files.journal());
      if (reason == null && journal != null && JournalContent.isNewer(journal)) {
        reason =
            "The journal beside this match was written by a newer version of Fadeline. The match"
                + " opens for reading only, without what that journal holds.";
      }
      Recovery.Result state =
          reason == null
              ? new Recovery(settings.storage(), files).recover(saved, file.savedHash())
              : new Recovery.Result(
                  saved,
                  Journal.fresh(
                      settings.storage(), files, new Journal.Header("", 0, file.savedHash())),
                  new History(),
                  null);
      SessionStore store = new SessionStore(settings, file, state, lock, reason);
      opened = true;
      return new SessionStore.Opened(Optional.of(store), read, Optional.ofNullable(state.found()));
    } finally {
      if (!opened && lock != null) {
        lock.close();
      }
    }
  }

  static SessionStore create(Path document, Session session, StoreSettings settings)
      throws IOException {
    StoreFiles files = StoreFiles.of(document, settings);
    Storage.Lock lock = settings.storage().lock(files.lock());
    if (lock == null) {
      throw new IOException(files.document() + " is open elsewhere; choose another name");
    }
    boolean created = false;
    try {
      KeptChecks.checkSession(session);
      DocumentFile file = new DocumentFile(settings, files);
      Recovery recovery = new Recovery(settings.storage(), files);
      recovery.setAside();
      file.replaceWith(session);
      Recovery.Result state = recovery.recover(session, file.savedHash());
      SessionStore store = new SessionStore(settings, file, state, lock, null);
      created = true;
      return store;
    } finally {
      if (!created) {
        lock.close();
      }
    }
  }
}
