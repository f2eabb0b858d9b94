package org.fadeline.export;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.HashSet;
import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * A table of a review or of a season.
 *
 * @param name what it holds
 * @param columns headings, units included; each different, so that a program can ask by them
 * @param rows as many cells as headings each: text, a number, or null where nothing is known
 */
public record Table(String name, List<String> columns, List<List<@Nullable Object>> rows) {
  /** Copies the lists and checks the headings and the width of each row. */
  public Table {
    columns = List.copyOf(columns);
    if (new HashSet<>(columns).size() < columns.size()) {
      throw new IllegalArgumentException(name + ": two columns have one heading: " + columns);
    }
    List<List<@Nullable Object>> copy = new ArrayList<>();
    for (List<@Nullable Object> row : rows) {
      if (row.size() != columns.size()) {
        throw new IllegalArgumentException(
            name + ": a row has " + row.size() + " cells, not " + columns.size());
      }
      copy.add(new ArrayList<>(row));
    }
    rows = copy;
  }

  /** Returns the cells of a row. */
  static List<@Nullable Object> row(@Nullable Object... cells) {
    return Arrays.asList(cells);
  }
}
