package org.fadeline.model;

import java.util.Map;

/**
 * Identity of a session record.
 *
 * @param id stable for the life of the record (a UUID for records made here)
 * @param sequence how many edits the record has seen, from 0
 * @param unknown fields of the file that this version does not know, kept to be written back: the
 *     place (such as {@code /venue/owner} or {@code /events/e12/depth}) to its JSON text
 */
public record Document(String id, long sequence, Map<String, String> unknown) {
  /** Checks that the sequence is not negative. */
  public Document {
    if (sequence < 0) {
      throw new IllegalArgumentException("sequence must be 0 or more: " + sequence);
    }
    unknown = Map.copyOf(unknown);
  }

  /** Returns the identity of a record that has no unknown fields. */
  public static Document of(String id, long sequence) {
    return new Document(id, sequence, Map.of());
  }
}
