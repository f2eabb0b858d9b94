package org.fadeline.ui.control.form;

import java.util.Locale;
import java.util.function.BiFunction;
import java.util.function.Function;
import org.fadeline.model.Units;
import org.jspecify.annotations.Nullable;

/**
 * One thing of a record that can be typed: how it reads, and what the record is with another text.
 * Pure, so that every field is tested without a window.
 *
 * @param id of its field
 * @param label what it is called
 * @param prompt what stands in the empty field: an example
 * @param shows how it reads
 * @param takes what a typed text makes of the record
 * @param <T> the record
 */
public record Entry<T>(String id, String label, String prompt, Shows<T> shows, Takes<T> takes) {
  /**
   * How a value reads.
   *
   * @param <T> the record
   */
  @FunctionalInterface
  public interface Shows<T> {
    /** Returns the text of the value; empty where there is none. */
    String text(T of, Units units);
  }

  /**
   * What a typed text makes of a record.
   *
   * @param <T> the record
   */
  @FunctionalInterface
  public interface Takes<T> {
    /**
     * Returns the record with the typed value; a blank text means none.
     *
     * @throws IllegalArgumentException if the text cannot be used; the message is read beside the
     *     field
     */
    T with(T of, String text, Units units);
  }

  /** Returns an entry of words. */
  public static <T> Entry<T> words(
      String id,
      String label,
      String prompt,
      Function<T, @Nullable String> get,
      BiFunction<T, @Nullable String, T> set) {
    return new Entry<>(
        id,
        label,
        prompt,
        (t, units) -> orEmpty(get.apply(t)),
        (t, text, units) -> set.apply(t, orNull(text)));
  }

  /** Returns an entry of a plain number in the unit that its label names. */
  public static <T> Entry<T> number(
      String id,
      String label,
      String prompt,
      Function<T, @Nullable Double> get,
      BiFunction<T, @Nullable Double, T> set) {
    return new Entry<>(
        id,
        label,
        prompt,
        (t, units) -> plain(get.apply(t)),
        (t, text, units) -> set.apply(t, number(text)));
  }

  /** Returns an entry of a whole number, such as a place in the section. */
  public static <T> Entry<T> whole(
      String id,
      String label,
      String prompt,
      Function<T, @Nullable Integer> get,
      BiFunction<T, @Nullable Integer, T> set) {
    return new Entry<>(
        id,
        label,
        prompt,
        (t, units) -> get.apply(t) == null ? "" : String.valueOf(get.apply(t)),
        (t, text, units) -> set.apply(t, whole(text)));
  }

  /**
   * Returns this entry as one of a larger record.
   *
   * @param get the part of the whole that it is of
   * @param set the whole with another part
   * @param <S> the whole
   */
  public <S> Entry<S> within(Function<S, T> get, BiFunction<S, T, S> set) {
    return new Entry<>(
        id,
        label,
        prompt,
        (s, units) -> shows.text(get.apply(s), units),
        (s, text, units) -> set.apply(s, takes.with(get.apply(s), text, units)));
  }

  /** Returns the name of the step that sets it. */
  public String step() {
    return "Set " + label.toLowerCase(Locale.ROOT);
  }

  private static String orEmpty(@Nullable String text) {
    return text == null ? "" : text;
  }

  /** Returns a typed text without white space round it, or null where nothing is left. */
  public static @Nullable String orNull(String text) {
    return text.isBlank() ? null : text.strip();
  }

  private static String plain(@Nullable Double value) {
    return value == null
        ? ""
        : value == Math.rint(value) ? String.valueOf(value.longValue()) : String.valueOf(value);
  }

  /** Returns a typed number, with a point or a comma, or null for a blank text. */
  public static @Nullable Double number(String text) {
    String typed = text.strip().replace(',', '.').replace('−', '-');
    if (typed.isEmpty()) {
      return null;
    }
    if (!typed.matches("-?\\d{1,6}(?:\\.\\d{1,8})?")) {
      throw new IllegalArgumentException("“" + text.strip() + "” is no number");
    }
    return Double.valueOf(typed);
  }

  private static @Nullable Integer whole(String text) {
    String typed = text.strip();
    if (typed.isEmpty()) {
      return null;
    }
    if (!typed.matches("\\d{1,6}") || Integer.parseInt(typed) < 1) {
      throw new IllegalArgumentException("“" + typed + "” is no whole number from 1 up");
    }
    return Integer.valueOf(typed);
  }
}
