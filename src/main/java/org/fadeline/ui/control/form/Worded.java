package org.fadeline.ui.control.form;

import java.util.function.Function;
import javafx.util.StringConverter;
import org.jspecify.annotations.Nullable;

/**
 * How a box from which values are chosen, never typed, words them.
 *
 * @param <T> type of the values
 */
public final class Worded<T> extends StringConverter<T> {
  private final Function<T, String> words;

  /** Words values; no value is an empty text. */
  public Worded(Function<T, String> words) {
    this.words = words;
  }

  @Override
  public String toString(@Nullable T value) {
    return value == null ? "" : words.apply(value);
  }

  @Override
  public T fromString(String text) {
    throw new UnsupportedOperationException("chosen, never typed");
  }
}
