package org.fadeline.io.store;

/**
 * What came of saving.
 *
 * @param status whether the file holds the record now
 * @param message what went wrong and what to do, empty where nothing did
 */
public record SaveResult(Status status, String message) {
  /** Whether the file holds the record. */
  public enum Status {
    /** It does. */
    SAVED,
    /** The file was changed outside since it was read or saved; it was left alone. */
    CHANGED_OUTSIDE,
    /** It could not be written; the old file is whole and the edits are in the journal. */
    FAILED
  }

  /** Returns whether the file holds the record. */
  public boolean isSaved() {
    return status == Status.SAVED;
  }
}
