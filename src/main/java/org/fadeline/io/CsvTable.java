package org.fadeline.io;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.Iterator;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import org.apache.commons.csv.CSVFormat;
import org.apache.commons.csv.CSVParser;
import org.apache.commons.csv.CSVRecord;
import org.fadeline.io.Problem.Severity;
import org.jspecify.annotations.Nullable;

/**
 * A CSV file cut into cells (RFC 4180), with its columns found by name.
 *
 * @param file name, for messages
 * @param header cells of the first row
 * @param columns our column names to positions, from 0
 * @param rows the other rows, blank ones left out
 * @param delimiter between cells
 */
record CsvTable(
    String file,
    List<String> header,
    Map<String, Integer> columns,
    List<Row> rows,
    char delimiter) {
  private static final int MOST_ROWS = 200_000;
  private static final int MOST_CELLS_IN_ROW = 500;
  static final List<Character> DELIMITERS = List.of(',', ';', '\t', '|');

  /**
   * One row.
   *
   * @param number as a spreadsheet counts, the header being 1
   * @param cells as they stand in the file
   */
  record Row(int number, List<String> cells) {
    boolean isBlank() {
      return cells.stream().allMatch(String::isBlank);
    }
  }

  /** Returns the table, or null after adding the problems that keep it from being read. */
  static @Nullable CsvTable parse(
      String file, String text, CsvMapping mapping, ImportReport.Collector problems) {
    char delimiter = delimiterOf(text, mapping);
    List<Row> rows = rows(file, text, delimiter, problems);
    if (rows.isEmpty() || rows.get(0).isBlank()) {
      problems.add(
          Problem.ofFile(
              file, "there is no header row", "start with a row that names the columns"));
      return null;
    }
    List<String> header = rows.get(0).cells;
    if (delimiter != ',' && mapping.delimiter() == null) {
      problems.add(
          new Problem(
              file,
              1,
              1,
              null,
              Severity.WARNING,
              "cells are separated by "
                  + (delimiter == ';' ? "semicolons" : "other signs")
                  + " and not by commas",
              "nothing need be done if the numbers look right; it is read so"));
    }
    Map<String, Integer> columns = columns(file, header, mapping, problems);
    for (String needed : List.of("time", "event")) {
      if (!columns.containsKey(needed)) {
        problems.add(
            new Problem(
                file,
                1,
                1,
                needed,
                Severity.ERROR,
                "there is no column "
                    + needed
                    + "; the header reads "
                    + Shown.value(String.join(String.valueOf(delimiter), header)),
                "name the columns as the format does, separated by commas, or give a mapping"));
      }
    }
    List<Row> body = rows.subList(1, rows.size()).stream().filter(r -> !r.isBlank()).toList();
    return columns.containsKey("time") && columns.containsKey("event")
        ? new CsvTable(file, header, columns, body, delimiter)
        : null;
  }

  /** Returns the mapping's delimiter, or the one that makes the header name the columns needed. */
  private static char delimiterOf(String text, CsvMapping mapping) {
    Character given = mapping.delimiter();
    if (given != null) {
      return given;
    }
    for (char delimiter : DELIMITERS) {
      List<String> header = firstRow(text, delimiter);
      Map<String, Integer> columns = columns("", header, mapping, new ImportReport.Collector());
      if (columns.containsKey("time") && columns.containsKey("event")) {
        return delimiter;
      }
    }
    return ',';
  }

  static List<String> firstRow(String text, char delimiter) {
    try (CSVParser parser = CSVParser.parse(text, format(delimiter))) {
      Iterator<CSVRecord> records = parser.iterator();
      return records.hasNext() ? records.next().toList() : List.of();
    } catch (IOException | UncheckedIOException e) {
      return List.of();
    }
  }

  static CSVFormat format(char delimiter) {
    return CSVFormat.RFC4180.builder().setDelimiter(delimiter).setIgnoreEmptyLines(false).get();
  }

  static List<Row> rows(String file, String text, char delimiter, ImportReport.Collector problems) {
    List<Row> rows = new ArrayList<>();
    try (CSVParser parser = CSVParser.parse(text, format(delimiter))) {
      for (CSVRecord record : parser) {
        int number = rows.size() + 1;
        if (number > MOST_ROWS) {
          problems.add(
              new Problem(
                  file,
                  number,
                  1,
                  null,
                  Severity.ERROR,
                  "there are more than " + MOST_ROWS + " rows",
                  "split the file, or check that it is a session at all"));
          break;
        }
        if (record.size() > MOST_CELLS_IN_ROW) {
          problems.add(
              new Problem(
                  file,
                  number,
                  MOST_CELLS_IN_ROW,
                  null,
                  Severity.ERROR,
                  "the row has " + record.size() + " cells",
                  "check that the file is a session at all"));
          break;
        }
        rows.add(new Row(number, record.toList()));
      }
    } catch (IOException | UncheckedIOException e) {
      // Thrown for a quote that is not closed, or text after a closing quote.
      problems.add(
          new Problem(
              file,
              rows.size() + 1,
              1,
              null,
              Severity.ERROR,
              "a quotation mark in this row is not closed, or text follows the closing one",
              "close it; a quotation mark inside a text is written twice"));
    }
    return rows;
  }

  private static Map<String, Integer> columns(
      String file, List<String> header, CsvMapping mapping, ImportReport.Collector problems) {
    Map<String, String> ours = new HashMap<>();
    CsvColumns.ALL.forEach(name -> ours.put(normal(name), name));
    // A mapped column is found under its own name only.
    mapping.columns().keySet().forEach(name -> ours.remove(normal(name)));
    mapping.columns().forEach((name, theirs) -> ours.put(normal(theirs), name));
    Map<String, Integer> columns = new HashMap<>();
    for (int i = 0; i < header.size(); i++) {
      String cell = header.get(i);
      String name = ours.get(normal(cell));
      if (cell.isBlank()) {
        problems.add(
            new Problem(
                file,
                1,
                i + 1,
                null,
                Severity.WARNING,
                "the column has no name",
                "name it, or take it out; it is not read"));
      } else if (name == null) {
        problems.add(
            new Problem(
                file,
                1,
                i + 1,
                null,
                Severity.WARNING,
                "the column " + Shown.value(cell) + " is not known",
                "check its spelling or map it; it is not read"));
      } else if (columns.putIfAbsent(name, i) != null) {
        problems.add(
            new Problem(
                file,
                1,
                i + 1,
                name,
                Severity.ERROR,
                "the column " + Shown.value(cell) + " is there twice",
                "take one out, or name it otherwise"));
      }
    }
    mapping
        .columns()
        .forEach(
            (name, theirs) -> {
              if (!columns.containsKey(name)) {
                problems.add(
                    new Problem(
                        file,
                        1,
                        1,
                        name,
                        Severity.ERROR,
                        "the mapping names the column "
                            + Shown.value(theirs)
                            + ", which is not there",
                        "correct the mapping"));
              }
            });
    return columns;
  }

  static String normal(String name) {
    return name.strip().toLowerCase(Locale.ROOT).replaceAll("[\\s-]+", "_");
  }

  /** Adds a problem of the table as a whole. */
  void addAtTop(
      ImportReport.Collector problems, Problem.Severity severity, String what, String whatToDo) {
    problems.add(new Problem(file, 1, 1, null, severity, what, whatToDo));
  }
}
