package org.fadeline.ui.talk;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.util.List;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.fadeline.io.TalkReader;
import org.fadeline.io.TalkWriter;
import org.fadeline.model.talk.Talk;
import org.jspecify.annotations.Nullable;

/**
 * Keeps a talk that no file holds in a folder of its own, so that it survives the program's end,
 * however that comes. The draft of a program that still runs is left alone.
 */
final class TalkKeeper {
  private static final Pattern NAME = Pattern.compile("unsaved-(\\d+)\\.talk\\.json");

  private final Path folder;
  private final Path own;

  /**
   * Makes a keeper.
   *
   * @param folder where drafts are kept; made when first needed
   * @param process number of this process
   */
  TalkKeeper(Path folder, long process) {
    this.folder = folder;
    this.own = folder.resolve("unsaved-" + process + ".talk.json");
  }

  /**
   * Keeps a talk, or lets the kept one go where a file holds it.
   *
   * @param talk null where nothing need be kept
   */
  synchronized void keep(@Nullable Talk talk) throws IOException {
    if (talk == null) {
      Files.deleteIfExists(own);
    } else {
      TalkWriter.write(talk, own);
    }
  }

  /** Returns a talk that a program now ended left unsaved, and keeps it as this one's own. */
  synchronized Optional<Talk> recover() throws IOException {
    if (!Files.isDirectory(folder)) {
      return Optional.empty();
    }
    List<Path> drafts;
    try (var files = Files.list(folder)) {
      drafts = files.filter(TalkKeeper::isLeftBehind).sorted().toList();
    }
    for (Path draft : drafts) {
      Optional<Talk> talk = TalkReader.read(draft).talk();
      if (talk.isPresent()) {
        Files.move(draft, own, StandardCopyOption.ATOMIC_MOVE);
        return talk;
      }
    }
    return Optional.empty();
  }

  private static boolean isLeftBehind(Path file) {
    Matcher name = NAME.matcher(String.valueOf(file.getFileName()));
    return name.matches()
        && ProcessHandle.of(Long.parseLong(name.group(1))).map(p -> !p.isAlive()).orElse(true);
  }
}
