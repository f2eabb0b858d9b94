package org.fadeline.index;

import java.nio.file.Path;
import java.nio.file.attribute.BasicFileAttributes;
import java.util.List;
import org.fadeline.analysis.season.SessionSummary;

/**
 * What is kept of one file.
 *
 * @param size bytes
 * @param changed when it was last changed, epoch milliseconds
 * @param hash SHA-256 of its bytes, hexadecimal
 * @param sequence how many edits the session had seen
 * @param summary what a season needs of it
 * @param warnings what was assumed in reading it
 */
record KeptSummary(
    long size,
    long changed,
    String hash,
    long sequence,
    SessionSummary summary,
    List<String> warnings) {
  /** Returns whether a file is as it was, by its size and time of change. */
  boolean isOf(BasicFileAttributes attributes) {
    return size == attributes.size() && changed == attributes.lastModifiedTime().toMillis();
  }

  /** Returns whether the summary is worked out as deep as asked. */
  boolean tells(SeasonIndex.Depth depth) {
    return depth == SeasonIndex.Depth.WITHOUT_FADES || summary.hasFades();
  }

  /** Returns the file as one that holds a session. */
  SeasonFolder.Good good(Path file) {
    return new SeasonFolder.Good(file, summary, sequence, warnings);
  }
}
