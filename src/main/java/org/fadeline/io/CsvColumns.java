package org.fadeline.io;

import java.util.List;
import java.util.stream.Stream;

/** Names of the event CSV's columns. */
final class CsvColumns {
  /** The columns always written, in order. */
  static final List<String> WRITTEN =
      List.of(
          "id",
          "time",
          "event",
          "line",
          "count",
          "amount",
          "unit",
          "bait",
          "method",
          "every_s",
          "until",
          "species",
          "weight_g",
          "weighed",
          "reason",
          "note");

  /** Columns written only where they are used. */
  static final List<String> WRITTEN_IF_USED = List.of("peg", "line_id", "other");

  /**
   * Columns that can be read besides: a date beside a clock time, and weights as pounds and ounces
   * or as anglers write them.
   */
  static final List<String> READ_TOO =
      List.of("date", "weight", "weight_kg", "weight_lb", "weight_oz", "weight_dr");

  /** All columns that can be read. */
  static final List<String> ALL =
      Stream.of(WRITTEN, WRITTEN_IF_USED, READ_TOO).flatMap(List::stream).toList();

  private CsvColumns() {}
}
