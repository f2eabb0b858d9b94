package org.fadeline.export;

import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * One slide of a talk: one message.
 *
 * @param title the message
 * @param words a paragraph each
 * @param figure the picture, or null
 * @param notes what the speaker says
 */
public record Slide(String title, List<String> words, @Nullable FigureChoice figure, String notes) {
  /** Copies the list. */
  public Slide {
    words = List.copyOf(words);
  }
}
