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
 * @param undated whether nothing but the file's last change told the date of the session
 */
public record ReadResult(
    Optional<Session> session,
    ImportReport report,
    Optional<String> readOnlyReason,
    boolean undated) {
  /** Makes a result of a session whose date is known. */
  public ReadResult(
      Optional<Session> session, ImportReport report, Optional<String> readOnlyReason) {
    this(session, report, readOnlyReason, false);
  }

  /** Returns a result without session. */
  public static ReadResult refused(ImportReport report) {
    return new ReadResult(Optional.empty(), report, Optional.empty());
  }

  /** Returns a result without session, for one problem. */
  public static ReadResult refused(Problem problem) {
    return refused(ImportReport.of(problem));
  }
}
