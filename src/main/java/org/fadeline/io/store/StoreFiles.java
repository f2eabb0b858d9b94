package org.fadeline.io.store;

import java.io.IOException;
import java.nio.file.Path;
import org.fadeline.io.FileText;
import org.fadeline.io.SessionWriter;

/**
 * Names of the files that stand beside a document.
 *
 * @param document the document itself
 * @param side folder of the others: the document's own, or one in the app-data folder
 */
record StoreFiles(Path document, Path side) {
  static StoreFiles of(Path document, StoreSettings settings) throws IOException {
    Path file = settings.storage().resolve(document.toAbsolutePath());
    Path folder = parentOf(file);
    String name = FileText.nameOf(file);
    if (settings.storage().isWritable(folder)) {
      return new StoreFiles(file, folder);
    }
    String hash = SessionWriter.hashOf(file.toString());
    Path side = settings.appData().resolve(name + "-" + hash.substring(0, 12));
    settings.storage().createFolder(side);
    return new StoreFiles(file, side);
  }

  static Path parentOf(Path file) {
    Path parent = file.getParent();
    if (parent == null) {
      throw new IllegalArgumentException("a file needs a folder: " + file);
    }
    return parent;
  }

  private String name() {
    return FileText.nameOf(document);
  }

  Path folder() {
    return parentOf(document);
  }

  Path temporary() {
    return folder().resolve(name() + ".tmp");
  }

  Path journal() {
    return side.resolve(name() + ".journal");
  }

  Path newJournal() {
    return side.resolve(name() + ".journal.tmp");
  }

  Path damaged(int number) {
    return side.resolve(name() + ".journal" + (number == 1 ? "" : "-" + number) + ".damaged");
  }

  Path lock() {
    return side.resolve(name() + ".lock");
  }

  Path backups() {
    return side.resolve(name() + ".backups");
  }
}
