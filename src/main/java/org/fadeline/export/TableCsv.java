package org.fadeline.export;

import java.io.IOException;
import java.io.OutputStreamWriter;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import org.apache.commons.csv.CSVFormat;
import org.apache.commons.csv.CSVPrinter;
import org.fadeline.io.WholeFile;
import org.jspecify.annotations.Nullable;

/**
 * Writes tables as CSV (RFC 4180, UTF-8). No text cell can be taken for a formula by a spreadsheet
 * (OWASP; CWE-1236): one that starts like one gets an apostrophe in front.
 */
public final class TableCsv {
  private static final String SIGNS = "=+-@\t\r\n\0";

  private TableCsv() {}

  /**
   * Writes a table.
   *
   * @throws IOException if the file cannot be written; nothing is then left behind
   */
  public static void write(Table table, Path file) throws IOException {
    WholeFile.write(
        file,
        out -> {
          OutputStreamWriter writer = new OutputStreamWriter(out, StandardCharsets.UTF_8);
          CSVPrinter printer = new CSVPrinter(writer, CSVFormat.RFC4180);
          printer.printRecord(table.columns().stream().map(TableCsv::guarded).toList());
          for (List<@Nullable Object> row : table.rows()) {
            List<@Nullable Object> cells = new ArrayList<>();
            for (Object cell : row) {
              cells.add(cell instanceof String text ? guarded(text) : cell);
            }
            printer.printRecord(cells);
          }
          printer.flush();
        });
  }

  private static String guarded(String text) {
    int from = 0;
    while (from < text.length() && text.charAt(from) == '\'') {
      from++;
    }
    boolean formula = from < text.length() && SIGNS.indexOf(text.charAt(from)) >= 0;
    return formula ? "'" + text : text;
  }
}
