package org.fadeline.io;

import java.util.Optional;
import org.fadeline.model.Session;

/**
 * What reading a file gave.
 *
 * @param session the session, or empty where the file cannot be used
 * @param report every problem with its place
 * @param readOnlyReason why the session may be looked at but not saved over its file, in words for
 *     the screen, or empty where it may be saved
 */
public record ReadResult(
    Optional<Session> session, ImportReport report, Optional<String> readOnlyReason) {
  /** Returns a result without session. */
  public static ReadResult refused(ImportReport report) {
    return new ReadResult(Optional.empty(), report, Optional.empty());
  }

  /** Returns a result without session, for one problem. */
  public static ReadResult refused(Problem problem) {
    return refused(ImportReport.of(problem));
  }
}
