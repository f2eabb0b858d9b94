package org.fadeline.io.store;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.Map;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.fadeline.io.ReadOptions;
import org.fadeline.io.SessionReader;
import org.fadeline.io.SessionWriter;
import org.fadeline.io.Sessions;
import org.fadeline.model.Document;
import org.fadeline.model.Edit;
import org.fadeline.model.Outcome;
import org.fadeline.model.Session;
import org.junit.jupiter.api.Test;

/** A journal cut at, and flipped in, every byte; gaps; journals of other documents. */
class JournalDamageTest {
  private static final Path JOURNAL = StoreScript.FILE.resolveSibling("match.session.json.journal");
  private static final Path DAMAGED =
      StoreScript.FILE.resolveSibling("match.session.json.journal.damaged");

  /** The CRC-32C of 32 zero bytes, RFC 3720, appendix B.4: aa 36 91 8a, least byte first. */
  @Test
  void theChecksumIsThatOfThePublishedExample() {
    assertEquals("8a9136aa", JournalLine.checksum(new byte[32], 0, 32));
    byte[] ones = new byte[32];
    Arrays.fill(ones, (byte) 0xFF);
    assertEquals("62a8ab43", JournalLine.checksum(ones, 0, 32));
  }

  private static Map<Path, byte[]> filesOf(StoreScript work, SimulatedDisk disk)
      throws IOException {
    work.run();
    return disk.files();
  }

  private static SimulatedDisk diskWith(Map<Path, byte[]> files, byte[] journal) {
    SimulatedDisk disk = new SimulatedDisk();
    files.forEach(disk::put);
    disk.put(JOURNAL, journal);
    return disk;
  }

  private static byte[] journalOf(Map<Path, byte[]> files) {
    byte[] journal = files.get(JOURNAL);
    if (journal == null) {
      throw new AssertionError("no journal among " + StoreScript.names(files));
    }
    return journal;
  }

  private static SessionStore.Opened open(SimulatedDisk disk) throws IOException {
    return StoreOpener.open(StoreScript.FILE, StoreScript.settings(disk));
  }

  /** Returns the sequence of the last record whose line ends at or before a position, or 0. */
  private static long lastWhole(byte[] journal, int position) {
    String whole = new String(journal, 0, position, StandardCharsets.UTF_8);
    long last = 0;
    for (String line : whole.substring(0, whole.lastIndexOf('\n') + 1).split("\n", -1)) {
      Matcher sequence =
          Pattern.compile("\"do\":\"(?:edit|undo|redo)\",\"seq\":(\\d+)").matcher(line);
      last = sequence.find() ? Long.parseLong(sequence.group(1)) : last;
    }
    return last;
  }

  /** Opens, checks that the state is one that was, goes on, and opens once more. */
  private static void check(SimulatedDisk disk, StoreScript work, long least, String when)
      throws IOException {
    SessionStore.Opened opened = open(disk);
    SessionStore store = opened.store().orElseThrow(() -> new AssertionError(when));
    long sequence = store.session().document().sequence();
    assertEquals(work.states.get(sequence), store.session(), when);
    assertTrue(sequence >= least, () -> when + ": " + sequence + " < " + least);
    Session before = store.session();
    store
        .append(Edit.between("x", before, before.withEvents(before.events().subList(0, 1))))
        .join();
    Session after = store.session();
    assertEquals(after, open(disk).store().orElseThrow().session(), when + ", after going on");
  }

  @Test
  void aJournalCutAtAnyByteGivesTheStateOfItsLastWholeRecord() throws IOException {
    SimulatedDisk disk = new SimulatedDisk();
    StoreScript work = new StoreScript(disk);
    work.runShort();
    Map<Path, byte[]> files = disk.files();
    byte[] journal = journalOf(files);
    for (int length = 0; length < journal.length; length++) {
      long least = lastWhole(journal, length);
      check(diskWith(files, Arrays.copyOf(journal, length)), work, least, "cut at " + length);
    }
  }

  @Test
  void aJournalFlippedInAnyByteNeverGivesAStateThatWasNot() throws IOException {
    SimulatedDisk disk = new SimulatedDisk();
    StoreScript work = new StoreScript(disk);
    work.runShort();
    Map<Path, byte[]> files = disk.files();
    byte[] journal = journalOf(files);
    for (int at = 0; at < journal.length; at++) {
      byte[] flipped = journal.clone();
      flipped[at] ^= (byte) (1 << (at % 8));
      check(diskWith(files, flipped), work, lastWhole(journal, at), "flipped at " + at);
    }
  }

  @Test
  void theDamagedRestIsKeptAndAnnounced() throws IOException {
    SimulatedDisk disk = new SimulatedDisk();
    StoreScript work = new StoreScript(disk);
    Map<Path, byte[]> files = filesOf(work, disk);
    byte[] journal = journalOf(files);
    int lastLine = new String(journal, StandardCharsets.UTF_8).trim().lastIndexOf('\n') + 1;
    byte[] flipped = journal.clone();
    flipped[lastLine + 20] ^= 1;
    SimulatedDisk damaged = diskWith(files, flipped);
    Recovered recovered = open(damaged).recovered().orElseThrow();
    assertEquals(1, recovered.edits());
    assertEquals("13:00:00", recovered.until());
    assertEquals(DAMAGED, recovered.keptAside().orElseThrow());
    assertTrue(
        recovered
            .message()
            .startsWith("1 edit until 13:00:00 had not been saved and is back. Save to keep it."),
        recovered.message());
    assertTrue(recovered.message().contains("match.session.json.journal.damaged"));
    assertArrayEquals(
        Arrays.copyOfRange(flipped, lastLine, flipped.length), damaged.files().get(DAMAGED));
  }

  @Test
  void aMissingRecordStopsTheReplay() throws IOException {
    SimulatedDisk disk = new SimulatedDisk();
    StoreScript work = new StoreScript(disk);
    Map<Path, byte[]> files = filesOf(work, disk);
    String[] lines = new String(journalOf(files), StandardCharsets.UTF_8).split("(?<=\n)", -1);
    StringBuilder gap = new StringBuilder();
    for (int i = 0; i < lines.length; i++) {
      // The two edits after the last save are the last lines: take the first of them out.
      gap.append(i == lines.length - 3 ? "" : lines[i]);
    }
    SessionStore.Opened opened =
        open(diskWith(files, gap.toString().getBytes(StandardCharsets.UTF_8)));
    assertTrue(opened.recovered().orElseThrow().keptAside().isPresent());
    assertEquals(0, opened.recovered().orElseThrow().edits());
  }

  @Test
  void aForeignJournalIsKeptAsideAndNotReplayed() throws IOException {
    SimulatedDisk disk = new SimulatedDisk();
    StoreScript work = new StoreScript(disk);
    Map<Path, byte[]> files = filesOf(work, disk);
    Session other = Sessions.small().withDocument(Document.of("another", 3));
    SimulatedDisk foreign = diskWith(files, journalOf(files));
    foreign.put(StoreScript.FILE, SessionWriter.toBytes(other));
    SessionStore.Opened opened = open(foreign);
    assertEquals(other, opened.store().orElseThrow().session());
    assertArrayEquals(journalOf(files), foreign.files().get(DAMAGED));
  }

  @Test
  void aDocumentChangedOutsideIsNotOverwrittenAndBothAreOffered() throws IOException {
    SimulatedDisk disk = new SimulatedDisk();
    StoreScript work = new StoreScript(disk);
    Map<Path, byte[]> files = filesOf(work, disk);
    SimulatedDisk changed = diskWith(files, journalOf(files));
    Session saved =
        SessionReader.parse(
                "x", files.getOrDefault(StoreScript.FILE, new byte[0]), ReadOptions.DEFAULT)
            .session()
            .orElseThrow();
    Session outside = saved.withOutcome(Outcome.UNKNOWN).withEvents(saved.events().subList(0, 2));
    changed.put(StoreScript.FILE, SessionWriter.toBytes(outside));
    SessionStore.Opened opened = open(changed);
    assertEquals(outside, opened.store().orElseThrow().session());
    Recovered recovered = opened.recovered().orElseThrow();
    assertTrue(recovered.changedOutside());
    assertEquals(work.store().session(), recovered.other().orElseThrow());
  }

  @Test
  void aChangeOutsideWhileOpenIsSeenBeforeSaving() throws IOException {
    SimulatedDisk disk = new SimulatedDisk();
    StoreScript work = new StoreScript(disk);
    work.run();
    byte[] other = "{}".getBytes(StandardCharsets.UTF_8);
    disk.put(StoreScript.FILE, other);
    assertTrue(work.store().isChangedOutside());
    SaveResult result = work.store().save(false).join();
    assertEquals(SaveResult.Status.CHANGED_OUTSIDE, result.status());
    assertArrayEquals(other, disk.files().get(StoreScript.FILE));
    assertTrue(work.store().isUnsaved());
    assertTrue(work.store().save(true).join().isSaved());
    assertTrue(
        work.store().backups().stream().anyMatch(b -> Arrays.equals(other, disk.files().get(b))),
        "the other file is kept among the backups");
  }
}
