package org.fadeline.io.notes;

import java.util.List;
import org.fadeline.io.ImportReport;

/**
 * Captions of a recording.
 *
 * @param cues in file order; empty where the file cannot be used
 * @param report every problem with its place; a cue that was left out is a warning that holds its
 *     text
 */
record Captions(List<Cue> cues, ImportReport report) {
  /** Copies the list. */
  Captions {
    cues = List.copyOf(cues);
  }
}
