package org.fadeline.io.store;

import java.io.IOException;
import java.nio.file.Path;
import java.time.Instant;
import java.time.LocalDate;
import java.time.ZoneOffset;
import java.time.format.DateTimeFormatter;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.Set;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.fadeline.io.FileText;
import org.fadeline.io.ReadOptions;
import org.fadeline.io.SessionReader;
import org.fadeline.io.SessionWriter;

/**
 * Copies of what was saved: the last ten, and the last of each day for fourteen days. The newest
 * that reads without error is never deleted.
 */
final class Backups {
  private static final int LAST = 10;
  private static final int DAYS = 14;
  private static final DateTimeFormatter STAMP =
      DateTimeFormatter.ofPattern("uuuu-MM-dd'T'HHmmss.SSS", Locale.ROOT).withZone(ZoneOffset.UTC);
  private static final Pattern NAME =
      Pattern.compile("(\\d{4}-\\d{2}-\\d{2})T\\d{6}\\.\\d{3}-([0-9a-f]{12})\\.session\\.json");

  private final Storage storage;
  private final Path folder;

  Backups(Storage storage, Path folder) {
    this.storage = storage;
    this.folder = folder;
  }

  /** Returns the backups, newest first. */
  List<Path> newestFirst() throws IOException {
    List<Path> files = new ArrayList<>();
    for (Path file : storage.list(folder)) {
      if (NAME.matcher(FileText.nameOf(file)).matches()) {
        files.add(0, file);
      }
    }
    return files;
  }

  /** Returns the content of the backup with a hash, or empty. */
  Optional<byte[]> withHash(String hash) throws IOException {
    for (Path file : newestFirst()) {
      if (FileText.nameOf(file).contains("-" + hash.substring(0, 12))) {
        byte[] bytes = storage.read(file);
        if (bytes != null && SessionWriter.hashOf(bytes).equals(hash)) {
          return Optional.of(bytes);
        }
      }
    }
    return Optional.empty();
  }

  /** Keeps a copy, unless the same content is there already. */
  void add(byte[] content, long at) throws IOException {
    String hash = SessionWriter.hashOf(content);
    if (withHash(hash).isPresent()) {
      return;
    }
    storage.createFolder(folder);
    storage.forceFolder(StoreFiles.parentOf(folder));
    String name =
        STAMP.format(Instant.ofEpochMilli(at)) + "-" + hash.substring(0, 12) + ".session.json";
    try (Storage.Out out = storage.create(folder.resolve(name))) {
      out.write(content);
      out.force(true);
    }
    storage.forceFolder(folder);
  }

  /** Removes backups that are neither among the last ten nor the last of one of fourteen days. */
  void prune(long now) throws IOException {
    LocalDate oldest =
        Instant.ofEpochMilli(now).atOffset(ZoneOffset.UTC).toLocalDate().minusDays(DAYS - 1);
    Set<String> days = new HashSet<>();
    List<Path> kept = new ArrayList<>();
    List<Path> old = new ArrayList<>();
    for (Path file : newestFirst()) {
      Matcher name = NAME.matcher(FileText.nameOf(file));
      String day = name.matches() ? name.group(1) : "";
      boolean lastOfDay = days.add(day) && !LocalDate.parse(day).isBefore(oldest);
      (kept.size() < LAST || lastOfDay ? kept : old).add(file);
    }
    boolean goodKept = false;
    for (int i = 0; !old.isEmpty() && !goodKept && i < kept.size(); i++) {
      goodKept = isGood(kept.get(i));
    }
    for (Path file : old) {
      if (!goodKept && isGood(file)) {
        goodKept = true;
      } else {
        storage.delete(file);
      }
    }
  }

  private boolean isGood(Path file) throws IOException {
    byte[] bytes = storage.read(file);
    return bytes != null
        && SessionReader.parse(FileText.nameOf(file), bytes, ReadOptions.DEFAULT)
            .session()
            .isPresent();
  }
}
