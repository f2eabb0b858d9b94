package org.fadeline.io;

import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.regex.Pattern;
import org.fadeline.io.Problem.Severity;
import org.jspecify.annotations.Nullable;

/** The cells of one row, read by column name, each checked and every problem placed. */
final class CsvRow {
  private static final Pattern NUMBER =
      Pattern.compile("[+-]?\\d{1,32}(?:\\.\\d{1,32})?(?:[eE][+-]?\\d{1,3})?");

  private final CsvTable table;
  private final CsvTable.Row row;
  private final boolean decimalComma;
  private final ImportReport.Collector problems;
  private final Set<String> asked = new HashSet<>();
  private boolean bad;

  CsvRow(CsvTable table, CsvTable.Row row, boolean decimalComma, ImportReport.Collector problems) {
    this.table = table;
    this.row = row;
    this.decimalComma = decimalComma;
    this.problems = problems;
  }

  List<String> cells() {
    return row.cells();
  }

  /** Returns whether something in the row cannot be used. */
  boolean isBad() {
    return bad;
  }

  void markBad() {
    bad = true;
  }

  private String cell(String name) {
    Integer column = table.columns().get(name);
    return column == null || column >= row.cells().size() ? "" : row.cells().get(column);
  }

  /** Returns whether a cell says anything. */
  boolean has(String name) {
    return !cell(name).isBlank();
  }

  /** Returns a cell of words or figures without outer white space, or null where blank. */
  @Nullable String plain(String name) {
    asked.add(name);
    String cell = cell(name).strip();
    return cell.isEmpty() ? null : cell;
  }

  /** Returns a text with its guard taken off, or null where blank. */
  @Nullable String text(String name) {
    asked.add(name);
    String cell = cell(name);
    // A lone tab or line end may be guarded text; other blank cells say nothing.
    if (cell.isBlank()) {
      return null;
    }
    if (cell.length() > JsonParse.LONGEST_TEXT) {
      error(
          name,
          "the text is longer than " + JsonParse.LONGEST_TEXT + " characters",
          "shorten it, or look for a quotation mark that is not closed");
      return null;
    }
    if (cell.startsWith("=") || cell.startsWith("@")) {
      warning(
          name,
          Shown.value(cell) + " starts like a spreadsheet formula",
          "nothing need be done; it is kept as text");
    }
    return CsvText.unguard(cell);
  }

  /** Reads a number from low to high, as {@link JsonFields#number} does. */
  @Nullable Double number(String name, double low, double high) {
    String cell = plain(name);
    if (cell == null) {
      return null;
    }
    String digits = cell;
    if (cell.indexOf(',') >= 0) {
      if (!decimalComma) {
        error(
            name,
            Shown.value(cell) + " has a comma in it",
            "write a decimal point, or give a mapping with decimalComma");
        return null;
      }
      digits = cell.replace(',', '.');
    }
    if (!NUMBER.matcher(digits).matches()) {
      error(name, Shown.value(cell) + " is not a number", "write figures only");
      return null;
    }
    double read = Double.parseDouble(digits) + 0.0;
    if (!(read >= low && read <= high)) {
      error(name, digits + " is outside " + Shown.range(low, high), "correct the number");
      return null;
    }
    return read;
  }

  /** Reads a whole number from low to high. */
  @Nullable Integer whole(String name, int low, int high) {
    Double read = number(name, low, high);
    if (read == null) {
      return null;
    }
    if (read != Math.rint(read)) {
      error(name, cell(name).strip() + " is not a whole number", "write a whole number");
      return null;
    }
    return (int) read.doubleValue();
  }

  /** Warns of filled cells nobody asked for, and refuses cells beyond the header. */
  void checkRest(String kind) {
    for (Map.Entry<String, Integer> column : table.columns().entrySet()) {
      String name = column.getKey();
      if (!asked.contains(name) && has(name)) {
        warning(
            name,
            Shown.value(cell(name)) + " is not used: " + kind + " has no " + name,
            "move it to the note if it matters");
      }
    }
    List<String> cells = row.cells();
    for (int i = table.header().size(); i < cells.size(); i++) {
      if (!cells.get(i).isBlank()) {
        bad = true;
        problems.add(
            new Problem(
                table.file(),
                row.number(),
                i + 1,
                null,
                Severity.ERROR,
                "the row has more cells than the header",
                "put a text that holds commas in quotation marks"));
        return;
      }
    }
  }

  void error(String name, String what, String whatToDo) {
    bad = true;
    problems.add(problem(name, Severity.ERROR, what, whatToDo));
  }

  private void warning(String name, String what, String whatToDo) {
    problems.add(problem(name, Severity.WARNING, what, whatToDo));
  }

  Problem problem(String name, Severity severity, String what, String whatToDo) {
    Integer column = table.columns().get(name);
    return new Problem(
        table.file(),
        row.number(),
        column == null ? 1 : column + 1,
        name,
        severity,
        what,
        whatToDo);
  }
}
