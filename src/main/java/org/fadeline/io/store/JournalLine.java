package org.fadeline.io.store;

import java.nio.charset.StandardCharsets;
import java.util.Locale;
import java.util.zip.CRC32C;
import org.fadeline.io.ImportReport;
import org.fadeline.io.Json;
import org.fadeline.io.JsonParse;
import org.fadeline.io.JsonText;
import org.jspecify.annotations.Nullable;

/**
 * One line of a journal: eight hex digits of the CRC-32C (RFC 3720, appendix B.4) of the JSON's
 * bytes, a blank, the JSON, a line feed.
 */
final class JournalLine {
  private static final int DIGITS = 8;

  private JournalLine() {}

  static byte[] bytes(Json.Obj record) {
    byte[] json = JsonText.compact(record).getBytes(StandardCharsets.UTF_8);
    byte[] line = new byte[DIGITS + 1 + json.length + 1];
    byte[] sum = checksum(json, 0, json.length).getBytes(StandardCharsets.US_ASCII);
    System.arraycopy(sum, 0, line, 0, DIGITS);
    line[DIGITS] = ' ';
    System.arraycopy(json, 0, line, DIGITS + 1, json.length);
    line[line.length - 1] = '\n';
    return line;
  }

  static String checksum(byte[] bytes, int from, int length) {
    CRC32C sum = new CRC32C();
    sum.update(bytes, from, length);
    return String.format(Locale.ROOT, "%08x", sum.getValue());
  }

  /**
   * Returns the position after the line feed that ends the line starting at {@code from}, or -1
   * where there is none.
   */
  static int end(byte[] bytes, int from) {
    for (int i = from; i < bytes.length; i++) {
      if (bytes[i] == '\n') {
        return i + 1;
      }
    }
    return -1;
  }

  /** Returns the record of the line at [from, to), or null where it is damaged. */
  static Json.@Nullable Obj read(byte[] bytes, int from, int to) {
    int json = from + DIGITS + 1;
    if (to - 1 <= json || bytes[json - 1] != ' ' || bytes[to - 1] != '\n') {
      return null;
    }
    String sum = new String(bytes, from, DIGITS, StandardCharsets.US_ASCII);
    if (!sum.equals(checksum(bytes, json, to - 1 - json))) {
      return null;
    }
    String text = new String(bytes, json, to - 1 - json, StandardCharsets.UTF_8);
    return JsonParse.parse("journal", text, new ImportReport.Collector()) instanceof Json.Obj obj
        ? obj
        : null;
  }
}
