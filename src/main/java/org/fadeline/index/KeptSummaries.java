package org.fadeline.index;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import org.fadeline.index.SeasonIndex.KeptSummary;
import org.fadeline.io.WholeFile;
import tools.jackson.core.JacksonException;
import tools.jackson.dataformat.smile.SmileMapper;

/**
 * The file that keeps summaries between runs, in Smile: JSON's content in fewer bytes, read faster.
 */
final class KeptSummaries {
  private static final String FORMAT = "fadeline-index";

  /** Goes up whenever a summary holds or means something else. */
  private static final int VERSION = 3;

  /** Summaries of a part. */
  private static final int PART = 250;

  private static final SmileMapper MAPPER = SmileMapper.builder().build();

  private KeptSummaries() {}

  /**
   * The file as it is written.
   *
   * @param format always {@code fadeline-index}
   * @param version of this file
   * @param basis what the summaries rest on besides the files
   * @param parts each a {@link Part} by itself, so that all cores can read them
   */
  record Kept(String format, int version, String basis, List<byte[]> parts) {}

  /**
   * Some of the summaries.
   *
   * @param files by path below the folder, with forward slashes
   */
  record Part(Map<String, KeptSummary> files) {}

  static void write(Path file, Path folder, String basis, Map<Path, KeptSummary> kept)
      throws IOException {
    TreeMap<String, KeptSummary> files = new TreeMap<>();
    kept.forEach(
        (path, summary) ->
            files.put(folder.relativize(path).toString().replace('\\', '/'), summary));
    List<byte[]> parts = new ArrayList<>();
    Map<String, KeptSummary> part = new LinkedHashMap<>();
    for (Map.Entry<String, KeptSummary> entry : files.entrySet()) {
      part.put(entry.getKey(), entry.getValue());
      if (part.size() == PART) {
        parts.add(MAPPER.writeValueAsBytes(new Part(part)));
        part.clear();
      }
    }
    parts.add(MAPPER.writeValueAsBytes(new Part(part)));
    byte[] all = MAPPER.writeValueAsBytes(new Kept(FORMAT, VERSION, basis, parts));
    WholeFile.write(file, out -> out.write(all));
  }

  static Map<Path, KeptSummary> read(Path file, Path folder, String basis) {
    Map<Path, KeptSummary> kept = new LinkedHashMap<>();
    try {
      Kept all = MAPPER.readValue(Files.readAllBytes(file), Kept.class);
      if (FORMAT.equals(all.format) && all.version == VERSION && basis.equals(all.basis)) {
        all.parts.parallelStream()
            .map(part -> MAPPER.readValue(part, Part.class))
            .toList()
            .forEach(
                part ->
                    part.files.forEach((name, summary) -> kept.put(folder.resolve(name), summary)));
      }
      return kept;
    } catch (IOException | JacksonException | NullPointerException passedOver) {
      return Map.of();
    }
  }
}
