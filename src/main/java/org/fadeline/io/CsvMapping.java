package org.fadeline.io;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import org.fadeline.model.EventKind;
import org.jspecify.annotations.Nullable;

/**
 * How the CSV of somebody else is laid out: its column names, its way of writing dates and numbers,
 * its words for events.
 *
 * @param columns our column names, such as {@code weight_lb}, to theirs
 * @param events their words for events, in lower case, to ours
 * @param dateOrder order of day, month and year in dates that are not ISO 8601, or null
 * @param delimiter between cells, or null to find out
 * @param decimalComma whether numbers have a decimal comma
 */
public record CsvMapping(
    Map<String, String> columns,
    Map<String, EventKind> events,
    @Nullable DateOrder dateOrder,
    @Nullable Character delimiter,
    boolean decimalComma) {
  /** The columns of the format itself. */
  public static final CsvMapping NONE = new CsvMapping(Map.of(), Map.of(), null, null, false);

  /** Value of the field {@code format} of a mapping file. */
  public static final String FORMAT = "fadeline-csv-mapping";

  private static final String KIND = "CSV mapping";

  /** Copies the maps, in order of their names. */
  public CsvMapping {
    columns = Collections.unmodifiableMap(new TreeMap<>(columns));
    events = Collections.unmodifiableMap(new TreeMap<>(events));
  }

  /** Order of day, month and year, such as 15/08/2026. */
  public enum DateOrder {
    /** 15/08/2026. */
    DAY_MONTH_YEAR("day-month-year"),
    /** 08/15/2026. */
    MONTH_DAY_YEAR("month-day-year"),
    /** 2026/08/15. */
    YEAR_MONTH_DAY("year-month-day");

    private final String word;

    DateOrder(String word) {
      this.word = word;
    }

    /** Returns the word used in files. */
    public String word() {
      return word;
    }

    static Optional<DateOrder> ofWord(String word) {
      for (DateOrder order : values()) {
        if (order.word.equals(word)) {
          return Optional.of(order);
        }
      }
      return Optional.empty();
    }
  }

  /**
   * What reading a mapping gave.
   *
   * @param mapping or empty where the file cannot be used
   * @param report every problem with its place
   */
  public record Loaded(Optional<CsvMapping> mapping, ImportReport report) {}

  /** Returns the mapping as JSON text, the same for equal mappings. */
  public String toJson() {
    Json.Obj columnsOut = Json.Obj.make();
    columns.forEach(columnsOut::put);
    Json.Obj eventsOut = Json.Obj.make();
    events.forEach((theirs, kind) -> eventsOut.put(theirs, kind.word()));
    Json.Obj out =
        Json.Obj.make()
            .put("format", FORMAT)
            .put("version", 1L)
            .put("columns", columnsOut)
            .put("events", eventsOut)
            .put("dateOrder", dateOrder == null ? null : dateOrder.word())
            .put("delimiter", delimiter == null ? null : delimiter.toString())
            .put("decimalComma", decimalComma);
    return JsonText.pretty(out);
  }

  /** Reads a mapping file. */
  public static Loaded load(Path file) {
    ImportReport.Collector problems = new ImportReport.Collector();
    String text = FileText.read(file, problems);
    return text == null
        ? new Loaded(Optional.empty(), problems.report())
        : parse(FileText.nameOf(file), text, problems);
  }

  /**
   * Reads a mapping from text.
   *
   * @param name of the file, for messages
   */
  public static Loaded parse(String name, String text) {
    return parse(name, text, new ImportReport.Collector());
  }

  private static Loaded parse(String name, String text, ImportReport.Collector problems) {
    Json.Obj root = JsonParse.object(name, text, KIND, problems);
    CsvMapping mapping = root == null ? null : read(JsonFields.of(name, root, problems));
    return new Loaded(
        problems.errors() > 0 ? Optional.empty() : Optional.ofNullable(mapping), problems.report());
  }

  private static CsvMapping read(JsonFields fields) {
    Integer version = fields.version(FORMAT, KIND);
    if (version != null && version > 1) {
      fields.error(
          "version",
          "the mapping is of the newer format " + version,
          "use it with a newer version of Fadeline, or save it here anew");
    }
    String order = fields.text("dateOrder");
    DateOrder dateOrder = order == null ? null : DateOrder.ofWord(order).orElse(null);
    if (order != null && dateOrder == null) {
      fields.error(
          "dateOrder",
          Shown.value(order) + " is no order of dates",
          "write day-month-year, month-day-year or year-month-day");
    }
    String delimiter = fields.text("delimiter");
    if (delimiter != null && !List.of(",", ";", "\t", "|").contains(delimiter)) {
      fields.error(
          "delimiter",
          Shown.value(delimiter) + " cannot stand between cells",
          "write a comma, a semicolon, a tab (\\t) or an upright stroke");
    }
    CsvMapping mapping =
        new CsvMapping(
            columns(fields.object("columns")),
            events(fields.object("events")),
            dateOrder,
            delimiter == null || delimiter.length() != 1 ? null : delimiter.charAt(0),
            fields.flag("decimalComma", false));
    fields.keepRest("");
    return mapping;
  }

  private static Map<String, String> columns(@Nullable JsonFields fields) {
    Map<String, String> columns = new LinkedHashMap<>();
    if (fields != null) {
      List<String> theirs = new ArrayList<>();
      for (String ours : CsvColumns.ALL) {
        String name = fields.text(ours);
        if (name != null) {
          columns.put(ours, name);
          if (theirs.contains(name)) {
            fields.error(ours, Shown.value(name) + " is named twice", "map each column once");
          }
          theirs.add(name);
        }
      }
      fields.keepRest("/columns");
    }
    return columns;
  }

  private static Map<String, EventKind> events(@Nullable JsonFields fields) {
    Map<String, EventKind> events = new LinkedHashMap<>();
    if (fields != null) {
      for (String theirs : fields.names()) {
        String word = fields.text(theirs);
        Optional<EventKind> kind = word == null ? Optional.empty() : EventKind.ofWord(word);
        if (kind.isPresent()) {
          events.put(theirs.strip().toLowerCase(Locale.ROOT), kind.get());
        } else if (word != null) {
          fields.error(
              theirs,
              Shown.value(word) + " is no kind of event",
              "write one of " + EventJson.words());
        }
      }
    }
    return events;
  }
}
