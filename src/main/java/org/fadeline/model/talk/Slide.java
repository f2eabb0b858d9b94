package org.fadeline.model.talk;

import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * One slide of a talk: one message.
 *
 * @param title the message
 * @param words a paragraph each
 * @param picture the picture, or null
 * @param notes what the speaker says
 * @param ground what this slide stands on, or null for the talk's own
 */
public record Slide(
    String title,
    List<String> words,
    @Nullable Picture picture,
    String notes,
    Look.@Nullable Ground ground) {
  /** A slide with nothing on it. */
  public static final Slide EMPTY = new Slide("", List.of(), null, "", null);

  /** Copies the list. */
  public Slide {
    words = List.copyOf(words);
  }

  /** Returns this slide with another title. */
  public Slide withTitle(String newTitle) {
    return new Slide(newTitle, words, picture, notes, ground);
  }

  /** Returns this slide with other words. */
  public Slide withWords(List<String> newWords) {
    return new Slide(title, newWords, picture, notes, ground);
  }

  /** Returns this slide with another picture, or none. */
  public Slide withPicture(@Nullable Picture newPicture) {
    return new Slide(title, words, newPicture, notes, ground);
  }

  /** Returns this slide with other notes. */
  public Slide withNotes(String newNotes) {
    return new Slide(title, words, picture, newNotes, ground);
  }

  /** Returns this slide on another ground, or the talk's own. */
  public Slide withGround(Look.@Nullable Ground newGround) {
    return new Slide(title, words, picture, notes, newGround);
  }
}
