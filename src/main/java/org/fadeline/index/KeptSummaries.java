package org.fadeline.index;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.LinkedHashMap;
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

  private static final SmileMapper MAPPER = SmileMapper.builder().build();

  private KeptSummaries() {}

  /**
   * The file as it is written.
   *
   * @param format always {@code fadeline-index}
   * @param version of this file
   * @param basis what the summaries rest on besides the files
   * @param files by path below the folder, with forward slashes
   */
  record Kept(String format, int version, String basis, Map<String, KeptSummary> files) {}

  static void write(Path file, Path folder, String basis, Map<Path, KeptSummary> kept)
      throws IOException {
    TreeMap<String, KeptSummary> files = new TreeMap<>();
    kept.forEach(
        (path, summary) ->
            files.put(folder.relativize(path).toString().replace('\\', '/'), summary));
    Kept all = new Kept(FORMAT, VERSION, basis, files);
    WholeFile.write(file, out -> out.write(MAPPER.writeValueAsBytes(all)));
  }

  static Map<Path, KeptSummary> read(Path file, Path folder, String basis) {
    Map<Path, KeptSummary> kept = new LinkedHashMap<>();
    try {
      Kept all = MAPPER.readValue(Files.readAllBytes(file), Kept.class);
      if (FORMAT.equals(all.format) && all.version == VERSION && basis.equals(all.basis)) {
        all.files.forEach((name, summary) -> kept.put(folder.resolve(name), summary));
      }
      return kept;
    } catch (IOException | JacksonException | NullPointerException passedOver) {
      return Map.of();
    }
  }
}
