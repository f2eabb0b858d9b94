package org.fadeline.ui;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Locale;
import java.util.Optional;
import org.fadeline.io.FileText;
import org.fadeline.io.Problem;
import org.fadeline.io.ReadOptions;
import org.fadeline.io.ReadResult;
import org.fadeline.io.SessionNames;
import org.fadeline.io.notes.NoteSession;
import org.fadeline.io.open.SessionFiles;
import org.fadeline.io.store.SessionStore;
import org.fadeline.model.Session;
import org.fadeline.ui.state.Activity;
import org.fadeline.ui.state.Activity.Trouble;
import org.fadeline.ui.state.Desk;
import org.fadeline.ui.state.MemoryRecord;
import org.fadeline.ui.state.OpenSession;
import org.fadeline.ui.state.PreferenceFile;
import org.fadeline.ui.state.TaskService;

/**
 * Opens session files: those of the program's own format with their journal, others to be saved.
 */
public final class FileDesk implements Desk {
  private final Path appData;

  /**
   * Makes a desk.
   *
   * @param appData folder for journals of files whose own folder cannot be written
   */
  public FileDesk(Path appData) {
    this.appData = appData;
  }

  /** Returns the desk of the user's files. */
  static FileDesk ofUser() {
    return new FileDesk(PreferenceFile.usualFolder());
  }

  @Override
  public Held open(Path path, TaskService.Progress progress) throws Refusal {
    if (!String.valueOf(path.getFileName()).toLowerCase(Locale.ROOT).endsWith(".json")) {
      ReadResult result = read(path);
      Session session = result.session().orElseThrow(() -> refused(path, result));
      return new MemoryRecord(
          session,
          new OpenSession.Source(
              path, SessionNames.bare(path), result.readOnlyReason().orElse(null)),
          new Notice(Activity.Problem.of(result.report()), null, null));
    }
    try {
      SessionStore.Opened opened = SessionStore.open(path, appData);
      SessionStore store = opened.store().orElseThrow(() -> refused(path, opened.read()));
      String recovered = opened.recovered().map(r -> r.message()).orElse(null);
      Session other = opened.recovered().flatMap(r -> r.other()).orElse(null);
      return new StoredRecord(
          store, new Notice(Activity.Problem.of(opened.read().report()), recovered, other));
    } catch (IOException failure) {
      throw new Refusal(
          Trouble.of(
              SessionNames.bare(path) + " could not be opened",
              "The disk refused: " + failure.getMessage() + ". What was open is unchanged."));
    }
  }

  @Override
  public Held saveAs(Path path, Session session) throws Refusal {
    try {
      return new StoredRecord(SessionStore.create(path, session, appData), Notice.NONE);
    } catch (IOException | IllegalArgumentException failure) {
      throw new Refusal(
          Trouble.of(
              "The match was not saved",
              "It is still open here, unchanged: " + failure.getMessage() + "."));
    }
  }

  @Override
  public Held begin(Path path, Session session) throws Refusal {
    if (Files.exists(path)) {
      throw new Refusal(
          Trouble.of(
              "There is a match of that name already",
              path + " was left alone. Give the new one another name, or open that one."));
    }
    try {
      Path folder = path.toAbsolutePath().getParent();
      if (folder != null) {
        Files.createDirectories(folder);
      }
    } catch (IOException failure) {
      throw new Refusal(
          Trouble.of(
              "The match was not begun",
              "Its folder cannot be made: " + failure.getMessage() + ". Choose another place."));
    }
    return saveAs(path, session);
  }

  @Override
  public Session look(Path path) throws Refusal {
    ReadResult result = read(path);
    return result.session().orElseThrow(() -> refused(path, result));
  }

  @Override
  public Optional<Path> keeping() {
    return Optional.of(appData);
  }

  /** Reads a record; what notes hold are proposals, which somebody must accept first. */
  private static ReadResult read(Path path) {
    ReadResult result = SessionFiles.read(path, ReadOptions.DEFAULT);
    return result.session().isPresent() && NoteSession.isNotes(path)
        ? ReadResult.refused(
            Problem.ofFile(
                FileText.nameOf(path),
                "notes hold only proposed events",
                "bring them in on the Import screen, where each is accepted or refused"))
        : result;
  }

  private static Refusal refused(Path path, ReadResult result) {
    return new Refusal(
        new Trouble(
            SessionNames.bare(path) + " could not be opened",
            "Nothing was changed: neither the file nor what is open here.",
            Activity.Problem.of(result.report()),
            null));
  }
}
