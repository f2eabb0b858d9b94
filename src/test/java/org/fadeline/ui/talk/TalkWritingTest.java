package org.fadeline.ui.talk;

import static java.util.Objects.requireNonNull;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNull;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.concurrent.CancellationException;
import org.fadeline.analysis.Review;
import org.fadeline.analysis.ReviewSettings;
import org.fadeline.analysis.Reviewer;
import org.fadeline.export.ExportMonitor;
import org.fadeline.export.TalkDraft;
import org.fadeline.export.TalkMaterial;
import org.fadeline.io.ReadOptions;
import org.fadeline.io.open.SessionFiles;
import org.fadeline.model.talk.Discretion;
import org.fadeline.model.talk.Look;
import org.fadeline.model.talk.Source;
import org.fadeline.model.talk.Talk;
import org.fadeline.ui.state.DirectTaskService;
import org.fadeline.ui.state.FakeDesk;
import org.fadeline.ui.state.TaskService;
import org.fadeline.ui.state.Workbench;
import org.junit.jupiter.api.Assertions;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;

/** What the Talk screen writes once it was told where. */
class TalkWritingTest {
  private static final Path SESSION =
      Path.of("sample-sessions/evening-moves-and-fish.session.json").toAbsolutePath();

  @TempDir Path folder;

  private final Workbench bench =
      new Workbench(new FakeDesk(), Reviewer::review, new DirectTaskService(), () -> {});
  private final TalkWriting writing = new TalkWriting(bench, new SlideWork());

  private static Talk draft() {
    Review review =
        Reviewer.review(
            SessionFiles.read(SESSION, ReadOptions.DEFAULT).session().orElseThrow(),
            ReviewSettings.DEFAULT);
    return TalkDraft.of(
        List.of(new Source("s1", SESSION)),
        new TalkMaterial(Map.of("s1", review)),
        Look.USUAL,
        true);
  }

  private Path write(Talk talk, Writing.Output output) {
    Path target = folder.resolve("out" + (output.isFolder() ? "" : "." + output.ending()));
    // A replay of the slide's whole match in a few pictures.
    writing.write(new TalkWriting.Order(talk, 1, new Writing(output, 640, 96, 7200), target), null);
    return target;
  }

  private List<Path> left() throws IOException {
    try (var files = Files.walk(folder)) {
      return files.filter(Files::isRegularFile).toList();
    }
  }

  @ParameterizedTest
  @EnumSource(mode = EnumSource.Mode.EXCLUDE, names = "PRINT")
  void everyKindIsWrittenAndTold(Writing.Output output) throws IOException {
    Path target = write(draft(), output);
    assertNull(bench.state().activity().trouble());
    assertEquals(
        target.getFileName() + " is written", bench.state().activity().message(), output.name());
    if (output.isFolder()) {
      assertTrue(left().size() > 3, left().toString());
    } else {
      assertEquals(List.of(target), left());
      String start =
          new String(Files.readAllBytes(target), 0, 60, StandardCharsets.ISO_8859_1)
              .toLowerCase(Locale.ROOT);
      assertTrue(start.contains(magic(output)), start);
    }
  }

  /** How files of a kind begin, by their standards. */
  private static String magic(Writing.Output output) {
    return switch (output) {
      case PPTX -> "pk";
      case PDF, PRINT -> "%pdf-";
      case ONE_PNG -> "png\r\n";
      case ONE_SVG -> "<?xml";
      case GIF -> "gif89a";
      case PICTURES, TABLES -> "";
    };
  }

  @Test
  void namesLeftOutAreNotInTheFile() throws IOException {
    Talk unnamed = draft().withDiscretion(new Discretion(true, List.of()));
    Path svg = write(unnamed, Writing.Output.ONE_SVG);
    assertTrue(!Files.readString(svg).contains("Tanglewick"));
    Files.delete(svg);
    assertTrue(Files.readString(write(draft(), Writing.Output.ONE_SVG)).contains("title"));
  }

  @Test
  void aMatchThatIsGoneIsToldAndNothingIsLeft() throws IOException {
    Talk gone = draft().withSources(List.of(new Source("s1", folder.resolve("gone.session.json"))));
    write(gone, Writing.Output.PPTX);
    var trouble = requireNonNull(bench.state().activity().trouble());
    assertTrue(trouble.title().contains("was not written"), trouble.title());
    assertTrue(trouble.problems().get(0).place().contains("gone.session.json"));
    assertEquals(List.of(), left());
  }

  @Test
  void aFolderInUseIsToldAndKeepsItsFiles() throws IOException {
    Path mine = Files.writeString(Files.createDirectory(folder.resolve("out")).resolve("a"), "x");
    write(draft(), Writing.Output.PICTURES);
    assertTrue(
        requireNonNull(bench.state().activity().trouble()).title().contains("was not written"));
    assertEquals(List.of(mine), left());
  }

  @Test
  void whatIsGivenUpStopsAtTheNextStep() {
    TaskService.Progress cancelled =
        new TaskService.Progress() {
          @Override
          public void report(double done) {}

          @Override
          public boolean cancelled() {
            return true;
          }
        };
    ExportMonitor monitor = TalkWriting.monitor(cancelled);
    Assertions.assertThrows(CancellationException.class, () -> monitor.step(0.5));
  }
}
