package org.fadeline.io.store;

import java.nio.file.Path;
import java.util.Optional;
import org.fadeline.io.FileText;
import org.fadeline.model.Session;
import org.jspecify.annotations.Nullable;

/**
 * What was found in a journal when its document was opened.
 *
 * @param edits how many unsaved edits were put back
 * @param until clock time of the last of them, in the session's zone, or null where there was none
 * @param keptAside file that keeps what could not be read or does not fit, or empty
 * @param changedOutside whether the document is not the one that the journal belongs to, so that
 *     nothing was put back
 * @param other the record as the journal has it, for choosing between the two, where it could be
 *     worked out
 */
public record Recovered(
    int edits,
    @Nullable String until,
    Optional<Path> keptAside,
    boolean changedOutside,
    Optional<Session> other) {
  /** Returns what happened, in words for the screen. */
  public String message() {
    StringBuilder text = new StringBuilder();
    if (edits > 0) {
      text.append(edits == 1 ? "1 edit" : edits + " edits")
          .append(" until ")
          .append(until)
          .append(" had not been saved and ")
          .append(edits == 1 ? "is back. Save to keep it." : "are back. Save to keep them.");
    }
    if (changedOutside) {
      text.append("The file was changed outside Fadeline since it was last saved here, ")
          .append("so the edits in its journal were not put in.");
    }
    keptAside.ifPresent(
        file ->
            text.append(text.length() == 0 ? "" : " ")
                .append("What could not be used is kept in ")
                .append(FileText.nameOf(file))
                .append('.'));
    return text.toString();
  }
}
