package org.fadeline.io;

import java.nio.file.Path;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import org.jspecify.annotations.Nullable;

/**
 * A CSV as it stands in the file, before anything is made of it: for choosing what each column is.
 *
 * @param delimiter between cells
 * @param header cells of the first row
 * @param rows the other rows, in file order; the first is row 2 as a spreadsheet counts
 */
public record CsvPreview(char delimiter, List<String> header, List<List<String>> rows) {
  /** What people call our columns, in the form of {@link CsvTable#normal}. */
  private static final Map<String, List<String>> ALSO_CALLED =
      Map.ofEntries(
          Map.entry("time", List.of("clock", "when", "at", "clock_time", "time_of_day")),
          Map.entry("date", List.of("day")),
          Map.entry("event", List.of("what", "kind", "action", "happened", "what_happened")),
          Map.entry("line", List.of("swim", "where", "line_name", "spot")),
          Map.entry("count", List.of("fish", "number", "no_of_fish", "how_many")),
          Map.entry("species", List.of("fish_species", "kind_of_fish")),
          Map.entry("amount", List.of("quantity", "how_much")),
          Map.entry("unit", List.of("units", "measure")),
          Map.entry("bait", List.of("hookbait", "feed", "fed_with")),
          Map.entry("method", List.of("how", "how_fed", "fed_by")),
          Map.entry("every_s", List.of("every", "seconds")),
          Map.entry("weight", List.of("wt", "weighs")),
          Map.entry("weight_g", List.of("g", "grams", "weight_(g)", "gram")),
          Map.entry("weight_kg", List.of("kg", "kilos", "weight_(kg)", "kilograms")),
          Map.entry("weight_lb", List.of("lb", "lbs", "pounds")),
          Map.entry("weight_oz", List.of("oz", "ounces")),
          Map.entry("weight_dr", List.of("dr", "drams")),
          Map.entry("weighed", List.of("on_scales", "scaled")),
          Map.entry("reason", List.of("why")),
          Map.entry("note", List.of("notes", "comment", "comments", "remarks")),
          Map.entry("peg", List.of("peg_no", "peg_number")));

  /** Copies the lists. */
  public CsvPreview {
    header = List.copyOf(header);
    rows = List.copyOf(rows);
  }

  /**
   * Reads a file into cells.
   *
   * @param delimiter between cells, or null for the one that gives the most columns
   * @return empty where the file cannot be read as a table; {@link EventCsv#read} says why
   */
  public static Optional<CsvPreview> read(Path file, @Nullable Character delimiter) {
    String text = FileText.read(file, new ImportReport.Collector());
    return text == null ? Optional.empty() : of(text, delimiter);
  }

  /** As {@link #read}, from text. */
  private static Optional<CsvPreview> of(String text, @Nullable Character delimiter) {
    char cut = delimiter == null ? widest(text) : delimiter;
    List<CsvTable.Row> rows = CsvTable.rows("", text, cut, new ImportReport.Collector());
    return rows.isEmpty()
        ? Optional.empty()
        : Optional.of(
            new CsvPreview(
                cut,
                rows.get(0).cells(),
                rows.subList(1, rows.size()).stream().map(CsvTable.Row::cells).toList()));
  }

  private static char widest(String text) {
    // The first of equals: a comma before a semicolon.
    return CsvTable.DELIMITERS.stream()
        .max(
            Comparator.<Character>comparingInt(c -> CsvTable.firstRow(text, c).size())
                .thenComparing(c -> -CsvTable.DELIMITERS.indexOf(c)))
        .orElse(',');
  }

  /** Returns every column that can be read, by our name. */
  public static List<String> columns() {
    return CsvColumns.ALL;
  }

  /** Returns our column names to those of this file, as far as its header lets one guess. */
  public Map<String, String> guesses() {
    Map<String, String> guesses = new LinkedHashMap<>();
    Map<String, String> byName = new TreeMap<>();
    ALSO_CALLED.forEach((ours, others) -> others.forEach(other -> byName.put(other, ours)));
    for (String theirs : header) {
      String name = CsvTable.normal(theirs);
      if (CsvColumns.ALL.contains(name)) {
        guesses.put(name, theirs);
      }
    }
    for (String theirs : header) {
      String ours = byName.get(CsvTable.normal(theirs));
      if (ours != null && !guesses.containsValue(theirs)) {
        guesses.putIfAbsent(ours, theirs);
      }
    }
    return guesses;
  }
}
