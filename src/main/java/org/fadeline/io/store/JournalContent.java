package org.fadeline.io.store;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import org.fadeline.io.Json;
import org.jspecify.annotations.Nullable;

/** What a journal file holds: its header and its records, up to the first damage. */
final class JournalContent {
  private final Journal.@Nullable Header header;
  private final List<JournalRecord> records;
  private final List<Integer> starts;
  private final int good;
  private final byte[] bytes;

  private JournalContent(
      Journal.@Nullable Header header,
      List<JournalRecord> records,
      List<Integer> starts,
      int good,
      byte[] bytes) {
    this.header = header;
    this.records = records;
    this.starts = starts;
    this.good = good;
    this.bytes = bytes;
  }

  /** Returns the header, or null where even that is damaged. */
  Journal.@Nullable Header header() {
    return header;
  }

  List<JournalRecord> records() {
    return records;
  }

  /** Returns the length of the undamaged part, bytes. */
  int good() {
    return good;
  }

  /**
   * Returns where a record starts, bytes; of the one after the last, where the undamaged part ends.
   */
  int startOf(int index) {
    return index == starts.size() ? good : starts.get(index);
  }

  /** Returns what comes after the undamaged part. */
  byte[] rest() {
    return Arrays.copyOfRange(bytes, good, bytes.length);
  }

  boolean isDamaged() {
    return good < bytes.length;
  }

  /** Returns the sequence of the document after the last record, or -1 without a header. */
  long lastSequence() {
    long last = header == null ? -1 : header.base();
    for (JournalRecord record : records) {
      last = record.act() == JournalRecord.Act.SAVE ? last : record.sequence();
    }
    return last;
  }

  /** Returns whether it is whole and a saved document holds all of it: history, no more. */
  boolean isSaved() {
    return header != null && !isDamaged() && lastSequence() == header.base();
  }

  /** Returns this content with the first records only. */
  JournalContent first(int count) {
    return count == records.size()
        ? this
        : new JournalContent(
            header, records.subList(0, count), starts.subList(0, count), startOf(count), bytes);
  }

  /** Returns whether a journal's header is of a newer version than this program's. */
  static boolean isNewer(byte[] bytes) {
    int end = JournalLine.end(bytes, 0);
    Json.Obj header = end < 0 ? null : JournalLine.read(bytes, 0, end);
    return header != null
        && header.members().get("format") instanceof Json.Text format
        && Journal.FORMAT.equals(format.value())
        && header.members().get("version") instanceof Json.Num version
        && new BigDecimal(version.digits()).compareTo(BigDecimal.ONE) > 0;
  }

  /** Reads a journal to the first bad checksum, gap or line that is no record. */
  static JournalContent read(byte[] bytes) {
    List<JournalRecord> records = new ArrayList<>();
    List<Integer> starts = new ArrayList<>();
    int end = JournalLine.end(bytes, 0);
    Json.Obj first = end < 0 ? null : JournalLine.read(bytes, 0, end);
    Journal.Header header = first == null ? null : Journal.Header.read(first);
    if (header == null) {
      return new JournalContent(null, records, starts, 0, bytes);
    }
    int from = end;
    long last = -1;
    while (from < bytes.length) {
      end = JournalLine.end(bytes, from);
      Json.Obj object = end < 0 ? null : JournalLine.read(bytes, from, end);
      JournalRecord record = object == null ? null : JournalRecord.read(object);
      if (record == null || !follows(record, last, header)) {
        break;
      }
      records.add(record);
      starts.add(from);
      last = record.act() == JournalRecord.Act.SAVE ? last : record.sequence();
      from = end;
    }
    return new JournalContent(header, records, starts, from, bytes);
  }

  /** Whether a record's sequence comes right after the one before it: else some are missing. */
  private static boolean follows(JournalRecord record, long last, Journal.Header header) {
    if (record.act() == JournalRecord.Act.SAVE) {
      return last < 0 || record.sequence() <= last;
    }
    return last < 0 ? record.sequence() <= header.base() + 1 : record.sequence() == last + 1;
  }
}
