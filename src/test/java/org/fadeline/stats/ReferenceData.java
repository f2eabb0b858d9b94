package org.fadeline.stats;

import static java.nio.charset.StandardCharsets.UTF_8;

import java.io.IOException;
import java.io.InputStream;
import java.io.InputStreamReader;
import java.io.UncheckedIOException;
import java.util.List;
import java.util.Objects;
import org.apache.commons.csv.CSVFormat;
import org.apache.commons.csv.CSVParser;
import org.apache.commons.csv.CSVRecord;

/** The reference files under src/test/resources/reference, whose README names their sources. */
public final class ReferenceData {
  private static final CSVFormat FORMAT =
      CSVFormat.DEFAULT.builder().setHeader().setSkipHeaderRecord(true).get();

  private ReferenceData() {}

  /** A row of expected.csv. */
  record Expected(
      String dataset, String quantity, String expected, double tolerance, String source) {
    /** Expected number; NaN stands for "not reached". */
    double number() {
      return expected.equals("NA") ? Double.NaN : Double.parseDouble(expected);
    }

    @Override
    public String toString() {
      return dataset + ": " + quantity;
    }
  }

  public static List<CSVRecord> rows(String file) {
    try (InputStream in =
            Objects.requireNonNull(
                ReferenceData.class.getResourceAsStream("/reference/" + file), file);
        CSVParser parser = FORMAT.parse(new InputStreamReader(in, UTF_8))) {
      return parser.getRecords();
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  static List<Expected> expected() {
    return rows("expected.csv").stream()
        .map(
            r ->
                new Expected(
                    r.get("dataset"),
                    r.get("quantity"),
                    r.get("expected"),
                    Double.parseDouble(r.get("tolerance")),
                    r.get("source")))
        .toList();
  }

  public static double number(CSVRecord row, String column) {
    String text = row.get(column);
    return switch (text) {
      case "NA" -> Double.NaN;
      case "Inf" -> Double.POSITIVE_INFINITY;
      case "-Inf" -> Double.NEGATIVE_INFINITY;
      default -> Double.parseDouble(text);
    };
  }

  public static double[] column(List<CSVRecord> rows, String column) {
    return rows.stream().mapToDouble(r -> number(r, column)).toArray();
  }

  static boolean[] marks(List<CSVRecord> rows, String column, String value) {
    boolean[] marks = new boolean[rows.size()];
    for (int i = 0; i < marks.length; i++) {
      marks[i] = rows.get(i).get(column).equals(value);
    }
    return marks;
  }

  public static List<CSVRecord> where(List<CSVRecord> rows, String column, String value) {
    return rows.stream().filter(r -> r.get(column).equals(value)).toList();
  }
}
