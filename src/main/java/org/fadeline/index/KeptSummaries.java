package org.fadeline.index;

import java.io.ByteArrayInputStream;
import java.io.ByteArrayOutputStream;
import java.io.DataInputStream;
import java.io.DataOutputStream;
import java.io.IOException;
import java.nio.ByteBuffer;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.HashMap;
import java.util.Map;
import java.util.TreeMap;
import java.util.zip.CRC32C;
import org.fadeline.io.WholeFile;

/**
 * The file that keeps summaries between runs: a head, a check sum, the summaries in plain numbers.
 * JSON in any form was several times slower to read in a fresh process.
 */
final class KeptSummaries {
  private static final long FORMAT = 0x4661_6465_6c69_6e65L;

  /** Goes up whenever a summary holds or means something else. */
  private static final int VERSION = 6;

  private static final int HEAD = Long.BYTES + Integer.BYTES + Long.BYTES;

  private KeptSummaries() {}

  static void write(Path file, Path folder, String basis, Map<Path, KeptSummary> kept)
      throws IOException {
    TreeMap<String, KeptSummary> files = new TreeMap<>();
    kept.forEach(
        (path, summary) ->
            files.put(folder.relativize(path).toString().replace('\\', '/'), summary));
    SummaryWriter summaries = new SummaryWriter();
    for (Map.Entry<String, KeptSummary> entry : files.entrySet()) {
      summaries.add(entry.getKey(), entry.getValue());
    }
    ByteArrayOutputStream body = new ByteArrayOutputStream();
    DataOutputStream out = new DataOutputStream(body);
    out.writeUTF(basis);
    summaries.writeTo(out);
    byte[] bytes = body.toByteArray();
    ByteBuffer head = ByteBuffer.allocate(HEAD);
    head.putLong(FORMAT).putInt(VERSION).putLong(sum(bytes, 0));
    WholeFile.write(
        file,
        target -> {
          target.write(head.array());
          target.write(bytes);
        });
  }

  private static long sum(byte[] bytes, int from) {
    CRC32C sum = new CRC32C();
    sum.update(bytes, from, bytes.length - from);
    return sum.getValue();
  }

  /** Reads what was kept; nothing where there is none, or of another version, basis or damaged. */
  static Map<Path, KeptSummary> read(Path file, Path folder, String basis) {
    try {
      byte[] all = Files.readAllBytes(file);
      ByteBuffer head = ByteBuffer.wrap(all);
      if (all.length < HEAD
          || head.getLong() != FORMAT
          || head.getInt() != VERSION
          || head.getLong() != sum(all, HEAD)) {
        return Map.of();
      }
      DataInputStream in =
          new DataInputStream(new ByteArrayInputStream(all, HEAD, all.length - HEAD));
      if (!basis.equals(in.readUTF())) {
        return Map.of();
      }
      int read = all.length - in.available();
      Map<Path, KeptSummary> kept = new HashMap<>();
      new SummaryReader(ByteBuffer.wrap(all, read, all.length - read))
          .readAll((name, summary) -> kept.put(folder.resolve(name), summary));
      return kept;
    } catch (IOException | RuntimeException passedOver) {
      return Map.of();
    }
  }
}
