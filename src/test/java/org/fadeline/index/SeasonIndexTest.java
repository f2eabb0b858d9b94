package org.fadeline.index;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertNotNull;
import static org.junit.jupiter.api.Assertions.assertNotSame;
import static org.junit.jupiter.api.Assertions.assertSame;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.io.RandomAccessFile;
import java.nio.ByteBuffer;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.nio.file.attribute.FileTime;
import java.time.LocalDate;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.concurrent.CancellationException;
import java.util.concurrent.atomic.AtomicInteger;
import java.util.zip.CRC32C;
import org.fadeline.analysis.FeedPut;
import org.fadeline.analysis.Grade;
import org.fadeline.analysis.Review.WeightFrom;
import org.fadeline.analysis.ReviewSettings;
import org.fadeline.analysis.season.SessionSummary;
import org.fadeline.demo.DemoMatch;
import org.fadeline.demo.DemoWaters;
import org.fadeline.index.SeasonIndex.Depth;
import org.fadeline.index.SeasonIndex.Watcher;
import org.fadeline.io.ReadOptions;
import org.fadeline.io.SessionWriter;
import org.fadeline.model.Document;
import org.fadeline.model.Feed;
import org.fadeline.model.Session;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** A folder of sessions: broken files aside, only changes read again. */
class SeasonIndexTest {
  @TempDir Path folder;

  private final AtomicInteger told = new AtomicInteger();

  @BeforeEach
  void threeFiles() throws IOException {
    write("one.session.json", DemoMatch.generate(DemoWaters.waterA(), DemoWaters.planA(), 1));
    write("deep/two.session.json", DemoMatch.generate(DemoWaters.waterB(), DemoWaters.planB(), 2));
    Files.writeString(folder.resolve("broken.session.json"), "{ \"format\": \"fade");
    Files.writeString(folder.resolve("shopping.txt"), "corn");
  }

  private void write(String name, Session session) throws IOException {
    Path file = folder.resolve(name);
    Files.createDirectories(file.getParent());
    Files.writeString(file, SessionWriter.toJson(session));
  }

  private SeasonIndex index() {
    return new SeasonIndex(folder, ReadOptions.DEFAULT, ReviewSettings.DEFAULT);
  }

  private SessionSummary kept(SeasonIndex index, String name) {
    KeptSummary kept = index.keptOf(folder.resolve(name));
    assertNotNull(kept);
    return kept.summary();
  }

  @Test
  void brokenFilesAreListedAndNeverInTheWay() throws IOException {
    SeasonFolder found =
        index()
            .read(
                Depth.WITHOUT_FADES,
                (done, of) -> {
                  told.incrementAndGet();
                  return of == 3;
                });
    assertEquals(3, told.get());
    assertEquals(2, found.entries().size());
    assertEquals(1, found.broken().size());
    assertEquals(folder.resolve("broken.session.json"), found.broken().get(0).file());
    assertFalse(found.broken().get(0).problems().isEmpty());
    assertFalse(found.summaries().get(0).hasFades());
  }

  @Test
  void brokenFilesStayListedWhileTheRestIsRead() throws IOException {
    SeasonIndex index = index();
    SeasonFolder whole = index.read(Depth.WITHOUT_FADES, Watcher.NONE);
    assertEquals(whole, index.soFar());
    Files.copy(
        folder.resolve("one.session.json"),
        folder.resolve("broken.session.json"),
        StandardCopyOption.REPLACE_EXISTING);
    index.read(Depth.WITHOUT_FADES, Watcher.NONE);
    assertEquals(List.of(), index.soFar().broken(), "mended");
  }

  @Test
  void onlyChangedFilesAreReadAgain() throws IOException {
    SeasonIndex index = index();
    index.read(Depth.WITHOUT_FADES, Watcher.NONE);
    SessionSummary one = kept(index, "one.session.json");
    SessionSummary two = kept(index, "deep/two.session.json");
    Path second = folder.resolve("deep/two.session.json");
    // Other bytes: read again. Touched alone: the same bytes, the same summary kept.
    Files.writeString(
        second, Files.readString(second).replace("\"title\": \"", "\"title\": \"Changed "));
    Files.setLastModifiedTime(second, FileTime.fromMillis(1_000_000));
    Files.setLastModifiedTime(folder.resolve("one.session.json"), FileTime.fromMillis(2_000_000));
    index.read(Depth.WITHOUT_FADES, Watcher.NONE);
    assertSame(one, kept(index, "one.session.json"));
    assertNotSame(two, kept(index, "deep/two.session.json"));
    assertTrue(kept(index, "deep/two.session.json").about().title().startsWith("Changed"));
    Files.delete(second);
    assertEquals(1, index.read(Depth.WITHOUT_FADES, Watcher.NONE).entries().size());
    assertEquals(1, index.known());
  }

  @Test
  void whatIsKeptComesBackEqualFadesAndAll() throws IOException {
    Path file = folder.resolve(".index");
    SeasonIndex first = index();
    SeasonFolder whole = first.read(Depth.WITH_FADES, Watcher.NONE);
    assertTrue(whole.summaries().get(0).hasFades());
    first.save(file);
    SeasonIndex second = index();
    second.load(file);
    assertEquals(2, second.known());
    SessionSummary loaded = kept(second, "one.session.json");
    assertEquals(whole, second.read(Depth.WITH_FADES, Watcher.NONE));
    assertSame(loaded, kept(second, "one.session.json"), "read again though kept");
    // Other settings, or a torn file: everything is worked out again.
    SeasonIndex other =
        new SeasonIndex(folder, ReadOptions.DEFAULT, ReviewSettings.DEFAULT.withCallLevel(0.5));
    other.load(file);
    assertEquals(0, other.known());
    byte[] sound = Files.readAllBytes(file);
    byte[] damaged = sound.clone();
    damaged[sound.length / 2] ^= 1;
    for (byte[] bad : List.of(Arrays.copyOf(sound, 500), Arrays.copyOf(sound, 7), damaged)) {
      Files.write(file, bad);
      SeasonIndex torn = index();
      torn.load(file);
      assertEquals(0, torn.known());
    }
    SeasonIndex none = index();
    none.load(folder.resolve("none"));
    assertEquals(0, none.known());
  }

  @Test
  void whatIsMissingComesBackMissing() throws IOException {
    SessionSummary.LineSummary bare =
        new SessionSummary.LineSummary(
            "Línea ß", null, List.of(), List.of(), new FeedPut(0, 0, 0, Map.of(), Set.of()), null);
    SessionSummary.LineSummary full =
        new SessionSummary.LineSummary(
            "short",
            "short",
            List.of(new SessionSummary.Hour(4, 12.5, 3, 0.1)),
            List.of(
                new SessionSummary.FirstBiteRow(null, 0, 1 / 3.0, true, true),
                new SessionSummary.FirstBiteRow("corn", 2, 2, false, false)),
            new FeedPut(3, 1, 1, Map.of(Feed.Unit.BALLS, 2.5), Set.of("corn", "pellet")),
            new SessionSummary.Behind(
                List.of(
                    new SessionSummary.FadeFound(0.3, null, null, 200, null),
                    new SessionSummary.FadeFound(
                        0.9, 100.25, 130.0, 150, new SessionSummary.PastPlain(20, 2, 700))),
                List.of(-1.5, -2.0),
                new SessionSummary.BunchingFound(2.25, 7)));
    SessionSummary summary =
        new SessionSummary(
            new SessionSummary.About(
                "id",
                "",
                LocalDate.of(2026, 2, 28),
                true,
                null,
                300,
                new SessionSummary.Day(4.5, null, 359.0, null)),
            new SessionSummary.Result(
                Grade.FULL,
                3,
                1234.5,
                new SessionSummary.Weights(WeightFrom.ESTIMATED, 2, 1.05),
                List.of(500.0, 750.0),
                new SessionSummary.Placing(null, 20)),
            List.of(bare, full));
    Map<Path, KeptSummary> kept =
        Map.of(
            folder.resolve("deep/a.csv"),
            new KeptSummary(1L << 40, -5, "0f", 9, summary, List.of("row 3: x")));
    Path file = folder.resolve(".index");
    KeptSummaries.write(file, folder, "basis", kept);
    assertEquals(kept, KeptSummaries.read(file, folder, "basis"));
    assertEquals(Map.of(), KeptSummaries.read(file, folder, "another basis"));
  }

  @Test
  void aFolderThatCannotBeFollowedIsListedNotInTheWay() throws IOException {
    Files.createSymbolicLink(folder.resolve("deep/loop"), folder);
    SeasonFolder found = index().read(Depth.WITHOUT_FADES, Watcher.NONE);
    assertEquals(2, found.entries().size());
    assertTrue(
        found.broken().stream().anyMatch(b -> b.file().endsWith("loop")),
        found.broken().toString());
  }

  @Test
  void nothingIsWrittenWhereNothingIsNew() throws IOException {
    Path file = folder.resolve(".index");
    SeasonIndex index = index();
    index.read(Depth.WITHOUT_FADES, Watcher.NONE);
    index.save(file);
    FileTime early = FileTime.fromMillis(1_000_000);
    Files.setLastModifiedTime(file, early);
    SeasonIndex again = index();
    again.load(file);
    again.read(Depth.WITHOUT_FADES, Watcher.NONE);
    again.save(file);
    assertEquals(early, Files.getLastModifiedTime(file));
    Files.delete(folder.resolve("one.session.json"));
    again.read(Depth.WITHOUT_FADES, Watcher.NONE);
    again.save(file);
    assertTrue(Files.getLastModifiedTime(file).compareTo(early) > 0);
  }

  @Test
  void quickSummariesAreDeepenedNotTakenForWhole() throws IOException {
    SeasonIndex index = index();
    index.read(Depth.WITHOUT_FADES, Watcher.NONE);
    assertTrue(index.read(Depth.WITH_FADES, Watcher.NONE).summaries().get(0).hasFades());
    // And a later quick look does not throw fades away.
    assertTrue(index.read(Depth.WITHOUT_FADES, Watcher.NONE).summaries().get(0).hasFades());
  }

  @Test
  void ofTwoCopiesTheOneEditedLastIsUsed() throws IOException {
    Session session = DemoMatch.generate(DemoWaters.waterA(), DemoWaters.planA(), 1);
    write("a-copy.session.json", session.withDocument(Document.of(session.document().id(), 5)));
    SeasonFolder found = index().read(Depth.WITHOUT_FADES, Watcher.NONE);
    assertEquals(2, found.entries().size());
    assertEquals(folder.resolve("one.session.json"), found.copies().get(0).file());
    assertEquals(folder.resolve("a-copy.session.json"), found.copies().get(0).used());
  }

  @Test
  void aReadingCanBeCancelledAndTakenUpAgain() throws IOException {
    SeasonIndex index = index();
    assertThrows(
        CancellationException.class, () -> index.read(Depth.WITHOUT_FADES, (done, of) -> false));
    assertEquals(2, index.read(Depth.WITHOUT_FADES, Watcher.NONE).entries().size());
  }

  @Test
  void aMissingFolderIsAFault() {
    SeasonIndex none =
        new SeasonIndex(folder.resolve("none"), ReadOptions.DEFAULT, ReviewSettings.DEFAULT);
    assertThrows(IOException.class, () -> none.read(Depth.WITHOUT_FADES, Watcher.NONE));
  }

  @Test
  void aFileTooLargeToReadIsListedNotInTheWay() throws IOException {
    Path huge = folder.resolve("huge.csv");
    try (RandomAccessFile file = new RandomAccessFile(huge.toFile(), "rw")) {
      // Mostly a hole: it takes no room on the disk.
      file.setLength(3L << 30);
    }
    SeasonFolder found = index().read(Depth.WITHOUT_FADES, Watcher.NONE);
    assertEquals(2, found.entries().size());
    SeasonFolder.Broken broken =
        found.broken().stream().filter(b -> b.file().equals(huge)).findFirst().orElseThrow();
    assertTrue(broken.problems().get(0).what().contains("larger than"), broken.toString());
  }

  @Test
  void aKeptFileThatMeansSomethingElseIsPassedOver() throws IOException {
    Path file = folder.resolve(".index");
    KeptSummaries.write(file, folder, "basis", Map.of());
    byte[] bytes = Files.readAllBytes(file);
    // One summary more than there are bytes for, under a check sum that is right.
    byte[] longer = Arrays.copyOf(bytes, bytes.length + 4);
    CRC32C sum = new CRC32C();
    sum.update(longer, 20, longer.length - 20);
    ByteBuffer.wrap(longer).putLong(12, sum.getValue());
    Files.write(file, longer);
    assertEquals(Map.of(), KeptSummaries.read(file, folder, "basis"));
  }
}
