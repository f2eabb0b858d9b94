package org.fadeline.ui.control.table;

import java.text.Collator;
import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Collections;
import java.util.Comparator;
import java.util.Deque;
import java.util.IdentityHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Set;
import java.util.function.Function;
import javafx.animation.AnimationTimer;
import javafx.collections.FXCollections;
import javafx.collections.ObservableList;
import javafx.scene.control.TableColumn;
import javafx.scene.control.TableView;
import org.jspecify.annotations.Nullable;

/**
 * The rows of a table: those that hold the word typed, in the order chosen. What a row is sorted by
 * is asked for once; of many rows a few thousand are looked at in each frame, so that neither a
 * letter typed nor a heading clicked holds the window up.
 *
 * @param <R> type of the rows
 */
final class TableRows<R> {
  /** So many rows are looked at within a frame. */
  static final int AT_ONCE = 2000;

  private static final long FRAME_NANOS = 6_000_000;

  private final TableView<R> table;
  private final List<Function<R, String>> texts;
  private final ObservableList<R> shown = FXCollections.observableArrayList();
  private List<R> all = List.of();
  private String word = "";
  private @Nullable Arranging underWay;

  /**
   * Gives a table its rows.
   *
   * @param texts what is said of a row, in which the word is looked for; may still grow
   */
  TableRows(TableView<R> table, List<Function<R, String>> texts) {
    this.table = table;
    this.texts = texts;
    table.setItems(shown);
    table.setSortPolicy(
        sorted -> {
          arrange();
          return true;
        });
  }

  /** Shows other rows. */
  void show(List<R> rows) {
    all = List.copyOf(rows);
    if (all.size() > AT_ONCE || (word.isEmpty() && table.getSortOrder().isEmpty())) {
      // None of those before may be seen or chosen any more.
      shown.setAll(all);
    }
    arrange();
  }

  /** Returns whether there are no rows at all, whatever word is asked for. */
  boolean none() {
    return all.isEmpty();
  }

  /** Shows only rows that hold a word, in capitals or not. */
  void filter(String wanted) {
    word = wanted.strip().toLowerCase(Locale.ROOT);
    arrange();
  }

  private void arrange() {
    Arranging before = underWay;
    if (before != null) {
      before.stop();
    }
    Arranging fresh = new Arranging();
    underWay = fresh;
    if (all.size() > AT_ONCE) {
      fresh.start();
    } else {
      fresh.go(Long.MAX_VALUE);
    }
  }

  private boolean holdsWord(R row) {
    return word.isEmpty()
        || texts.stream().anyMatch(t -> t.apply(row).toLowerCase(Locale.ROOT).contains(word));
  }

  /** Shows rows; what is picked and still there stays picked. */
  private void put(List<R> rows) {
    if (rows.equals(shown)) {
      return;
    }
    var picking = table.getSelectionModel();
    Set<R> picked = Collections.newSetFromMap(new IdentityHashMap<>());
    picked.addAll(picking.getSelectedItems());
    shown.setAll(rows);
    if (!picked.isEmpty()) {
      picking.clearSelection();
      for (int i = 0; i < rows.size(); i++) {
        if (picked.contains(rows.get(i))) {
          picking.select(i);
        }
      }
    }
  }

  /**
   * A row with what it is sorted by.
   *
   * @param place where it stands unsorted, which decides between rows that are alike
   */
  private record Keyed<R>(R row, int place, List<@Nullable Object> keys) {}

  /** Goes through the rows, and on in the next frame where this one is over. */
  private final class Arranging extends AnimationTimer {
    private final List<TableColumn<R, ?>> order = List.copyOf(table.getSortOrder());
    private final Deque<List<Keyed<R>>> sorted = new ArrayDeque<>();
    private final Collator alphabet = Collator.getInstance();
    private List<Keyed<R>> fresh = new ArrayList<>();
    private @Nullable Merge both;
    private int next;

    @Override
    public void handle(long now) {
      go(System.nanoTime() + FRAME_NANOS);
    }

    private void go(long until) {
      while (next < all.size()) {
        R row = all.get(next);
        if (holdsWord(row)) {
          fresh.add(new Keyed<>(row, next, keys(row)));
        }
        next++;
        if (fresh.size() == AT_ONCE || next == all.size()) {
          fresh.sort(this::compare);
          sorted.addLast(fresh);
          fresh = new ArrayList<>();
        }
        if (next % 32 == 0 && System.nanoTime() > until) {
          return;
        }
      }
      while (both != null || sorted.size() > 1) {
        Merge merge = both == null ? new Merge(sorted.removeFirst(), sorted.removeFirst()) : both;
        both = merge.go(until) ? null : merge;
        if (both != null) {
          return;
        }
        sorted.addLast(merge.all);
      }
      stop();
      underWay = null;
      put(sorted.isEmpty() ? List.of() : sorted.getFirst().stream().map(Keyed::row).toList());
    }

    /** Two sorted pieces that become one. */
    private final class Merge {
      private final List<Keyed<R>> one;
      private final List<Keyed<R>> other;
      private final List<Keyed<R>> all;
      private int i;
      private int j;

      Merge(List<Keyed<R>> one, List<Keyed<R>> other) {
        this.one = one;
        this.other = other;
        this.all = new ArrayList<>(one.size() + other.size());
      }

      /** Goes on until it is done, and returns true, or until an instant. */
      boolean go(long until) {
        while (i < one.size() && j < other.size()) {
          all.add(compare(one.get(i), other.get(j)) < 0 ? one.get(i++) : other.get(j++));
          if (all.size() % 128 == 0 && System.nanoTime() > until) {
            return false;
          }
        }
        all.addAll(one.subList(i, one.size()));
        all.addAll(other.subList(j, other.size()));
        return true;
      }
    }

    private List<@Nullable Object> keys(R row) {
      List<@Nullable Object> keys = new ArrayList<>(order.size());
      for (TableColumn<R, ?> column : order) {
        Object value = column.getCellData(row);
        // Words are compared as a reader orders them, which takes long; of keys made for it, not.
        boolean words =
            value instanceof String && column.getComparator() == TableColumn.DEFAULT_COMPARATOR;
        keys.add(words ? alphabet.getCollationKey((String) value) : value);
      }
      return keys;
    }

    // A column compares what it says of rows, whatever that is.
    @SuppressWarnings({"unchecked", "NullAway"})
    private int compare(Keyed<R> one, Keyed<R> other) {
      for (int i = 0; i < order.size(); i++) {
        TableColumn<R, ?> column = order.get(i);
        var by = (Comparator<@Nullable Object>) column.getComparator();
        int found = by.compare(one.keys.get(i), other.keys.get(i));
        if (found != 0) {
          return column.getSortType() == TableColumn.SortType.ASCENDING ? found : -found;
        }
      }
      return Integer.compare(one.place, other.place);
    }
  }
}
