package org.fadeline.io;

import org.jspecify.annotations.Nullable;

/**
 * One thing wrong with a file: where it is, what it is and what to do about it.
 *
 * @param file name of the file
 * @param row line of a JSON file, row of a CSV file (the header is row 1), from 1
 * @param column character of the line, or number of the CSV column, from 1
 * @param field name of the CSV column, or JSON Pointer (RFC 6901) of the value; null for the whole
 *     file
 * @param severity whether the value can be used
 * @param what what is wrong
 * @param whatToDo what the reader of the message can do
 */
public record Problem(
    String file,
    int row,
    int column,
    @Nullable String field,
    Severity severity,
    String what,
    String whatToDo) {
  /** How bad a problem is. */
  public enum Severity {
    /** The value cannot be used. */
    ERROR,
    /** The value is used, but the angler should know. */
    WARNING
  }

  /** Returns a warning of a row, from 1, as a whole. */
  public static Problem warning(String file, int row, String what, String whatToDo) {
    return new Problem(file, row, 1, null, Severity.WARNING, what, whatToDo);
  }

  /**
   * Returns a problem of a JSON value.
   *
   * @param at the value, or null for one that should be there and is not
   * @param pointer JSON Pointer of the value
   */
  static Problem at(
      String file,
      @Nullable Json at,
      String pointer,
      Severity severity,
      String what,
      String whatToDo) {
    int row = at == null ? 1 : Math.max(1, at.line());
    int column = at == null ? 1 : Math.max(1, at.column());
    return new Problem(file, row, column, pointer, severity, what, whatToDo);
  }

  /** Returns a problem of the file as a whole that keeps it from being used. */
  public static Problem ofFile(String file, String what, String whatToDo) {
    return new Problem(file, 1, 1, null, Severity.ERROR, what, whatToDo);
  }

  /** Returns whether the value cannot be used. */
  public boolean isError() {
    return severity == Severity.ERROR;
  }

  /** Returns where it is in words: {@code file, row 3, field}. */
  public String place() {
    return file + ", row " + row + (field == null || field.isEmpty() ? "" : ", " + field);
  }

  /** Returns {@code file:row:column: what is wrong; what to do}. */
  @Override
  public String toString() {
    String place = field == null || field.isEmpty() ? "" : field + ": ";
    String grade = severity == Severity.WARNING ? "warning: " : "";
    return Shown.line(
        file + ":" + row + ":" + column + ": " + grade + place + what + "; " + whatToDo);
  }
}
