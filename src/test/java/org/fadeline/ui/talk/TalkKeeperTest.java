package org.fadeline.ui.talk;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import org.fadeline.model.talk.Slide;
import org.fadeline.model.talk.Talk;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class TalkKeeperTest {
  /** More than any process number of the systems we run on. */
  private static final long ENDED = 1L << 40;

  @TempDir Path folder;

  private final Talk talk = Talk.EMPTY.withTitle("T").withSlides(List.of(Slide.EMPTY));

  private List<String> names() throws IOException {
    try (var files = Files.list(folder)) {
      return files.map(f -> f.getFileName().toString()).toList();
    }
  }

  @Test
  void whatAnEndedProgramLeftIsTakenUpOnce() throws IOException {
    new TalkKeeper(folder, ENDED).keep(talk);
    TalkKeeper next = new TalkKeeper(folder, ProcessHandle.current().pid());
    assertEquals(Optional.of(talk), next.recover());
    assertEquals(List.of("unsaved-" + ProcessHandle.current().pid() + ".talk.json"), names());
    assertEquals(Optional.empty(), new TalkKeeper(folder, ENDED + 1).recover());
    next.keep(null);
    assertEquals(List.of(), names());
  }

  @Test
  void theDraftOfAProgramThatRunsIsLeftAlone() throws IOException {
    new TalkKeeper(folder, ProcessHandle.current().pid()).keep(talk);
    assertEquals(Optional.empty(), new TalkKeeper(folder, ENDED).recover());
    assertEquals(1, names().size());
  }

  @Test
  void aDamagedDraftIsPassedOverAndStays() throws IOException {
    Files.writeString(folder.resolve("unsaved-" + ENDED + ".talk.json"), "{");
    assertEquals(Optional.empty(), new TalkKeeper(folder, 1).recover());
    assertTrue(names().contains("unsaved-" + ENDED + ".talk.json"));
    assertEquals(Optional.empty(), new TalkKeeper(folder.resolve("none"), 1).recover());
  }
}
