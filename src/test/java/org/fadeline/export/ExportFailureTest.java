package org.fadeline.export;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import java.util.concurrent.CancellationException;
import java.util.function.IntUnaryOperator;
import org.fadeline.analysis.Review;
import org.fadeline.figure.FigureStyle;
import org.fadeline.figure.Fixtures;
import org.fadeline.figure.Theme;
import org.fadeline.io.DiskFault;
import org.fadeline.io.FullDisk;
import org.fadeline.model.Units;
import org.fadeline.model.talk.Look;
import org.fadeline.model.talk.Picture;
import org.fadeline.model.talk.Slide;
import org.fadeline.model.talk.Source;
import org.fadeline.model.talk.Talk;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.TestInstance;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;

/** An export that fails or is given up leaves what was there before, and nothing else. */
@TestInstance(TestInstance.Lifecycle.PER_CLASS)
// BeforeAll sets every field.
@SuppressWarnings("NullAway.Init")
class ExportFailureTest {
  private static final FigureStyle STYLE = FigureStyle.of(Theme.LIGHT, Units.KG_AND_METRES);

  private Talk talk;
  private TalkMaterial material;

  /** Everything a talk can be written as. */
  enum Kind {
    PPTX,
    PDF,
    PNG_AND_SVG,
    GIF,
    TABLES;

    boolean isFolder() {
      return this == PNG_AND_SVG || this == TABLES;
    }
  }

  @BeforeAll
  void aTalkOfTwoMatches() {
    Review first = Fixtures.springMatch();
    Review second = Fixtures.winterMatch();
    material = new TalkMaterial(Map.of("s1", first, "s2", second));
    talk =
        Talk.EMPTY
            .withSources(List.of(new Source("s1", Path.of("a")), new Source("s2", Path.of("b"))))
            .withSlides(
                List.of(
                    Slide.EMPTY.withTitle("Welcome"),
                    Slide.EMPTY
                        .withTitle("The weight")
                        .withPicture(Picture.of(Picture.Kind.WEIGHT, "s1")),
                    Slide.EMPTY
                        .withTitle("Both")
                        .withPicture(Picture.of(Picture.Kind.COMPARE_CATCH, "s1", "s2"))));
  }

  private void write(Kind kind, Path target, ExportMonitor monitor) throws IOException {
    switch (kind) {
      case PPTX -> TalkExport.pptx(talk, material, target, monitor);
      case PDF -> TalkExport.pdf(talk, material, target, monitor);
      case PNG_AND_SVG ->
          TalkExport.pictures(
              talk,
              material,
              target,
              new TalkExport.Pictures(
                  Set.of(TalkExport.Picture.PNG, TalkExport.Picture.SVG),
                  TalkExport.Size.usual(Look.Shape.WIDE)),
              monitor);
      case GIF -> {
        var match = material.review("s1").session().match();
        ReplayGif.write(
            material.review("s1"),
            STYLE,
            new ReplayGif.Film(match.allIn(), match.allOut(), 4, 4, 426, 240),
            target,
            monitor);
      }
      case TABLES -> TalkExport.tables(talk, material, target, monitor);
    }
  }

  /** What is in a folder: names, and what the files hold. */
  private static Map<String, String> content(Path folder) throws IOException {
    Map<String, String> found = new TreeMap<>();
    try (var files = Files.walk(folder)) {
      for (Path file : files.toList()) {
        String name = folder.relativize(file).toString();
        found.put(
            name,
            Files.isDirectory(file)
                ? "folder"
                : new String(Files.readAllBytes(file), StandardCharsets.ISO_8859_1));
      }
    }
    return found;
  }

  /** Makes what was there before: an old file, or an empty folder to write into. */
  private static void before(Kind kind, Path folder) throws IOException {
    if (kind.isFolder()) {
      Files.createDirectory(folder.resolve("target"));
      Files.writeString(folder.resolve("beside"), "old");
    } else {
      Files.writeString(folder.resolve("target"), "old");
    }
  }

  @ParameterizedTest
  @EnumSource
  void aFullDiskLeavesWhatWasThereAndIsToldWithTheFile(Kind kind, @TempDir Path folder)
      throws IOException {
    Path whole = FullDisk.folder(folder, Long.MAX_VALUE).resolve("whole");
    write(kind, whole, ExportMonitor.NONE);
    long size = FullDisk.written(whole);
    assertTrue(size > 1000, "it was written through this disk: " + size);
    Path other = Files.createDirectory(folder.resolve("other"));
    before(kind, other);
    Map<String, String> was = content(other);
    for (long room : new long[] {0, size / 3, size * 9 / 10}) {
      Path target = FullDisk.folder(other, room).resolve("target");
      IOException fault =
          assertThrows(IOException.class, () -> write(kind, target, ExportMonitor.NONE));
      String told = DiskFault.of(target, fault);
      assertTrue(told.startsWith(target + ": No space left on device"), told);
      assertTrue(String.valueOf(fault.getMessage()).contains(target.toString()), fault::toString);
      assertFalse(told.contains(".fadeline-"), told);
      assertEquals(was, content(other), "room for " + room);
    }
    // With the room it needs it is written; times inside make a file a few bytes longer or shorter.
    write(kind, FullDisk.folder(other, size + size / 10).resolve("target"), ExportMonitor.NONE);
    assertFalse(was.equals(content(other)));
  }

  /** Stops at a step; counts them all. */
  private static final class Stop implements ExportMonitor {
    private final int at;
    private int asked;

    Stop(int at) {
      this.at = at;
    }

    @Override
    public void progress(double share) {}

    @Override
    public boolean isCancelled() {
      return asked++ == at;
    }
  }

  @ParameterizedTest
  @EnumSource
  void givenUpAtAnyStepItLeavesWhatWasThere(Kind kind, @TempDir Path folder) throws IOException {
    Stop never = new Stop(-1);
    write(kind, Files.createDirectory(folder.resolve("whole")).resolve("target"), never);
    assertTrue(never.asked >= 3, "it can be given up midway: " + never.asked);
    Path other = Files.createDirectory(folder.resolve("other"));
    before(kind, other);
    Map<String, String> was = content(other);
    // The last step of one file comes when it is on the disk already.
    IntUnaryOperator last = n -> kind == Kind.PPTX || kind == Kind.PDF ? n - 1 : n;
    for (int step = 0; step < last.applyAsInt(never.asked); step++) {
      Stop stop = new Stop(step);
      assertThrows(CancellationException.class, () -> write(kind, other.resolve("target"), stop));
      assertEquals(was, content(other), "step " + step);
    }
  }
}
