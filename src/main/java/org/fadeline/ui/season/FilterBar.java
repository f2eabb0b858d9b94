package org.fadeline.ui.season;

import java.time.Month;
import java.time.format.TextStyle;
import java.util.HashSet;
import java.util.List;
import java.util.Locale;
import java.util.Set;
import java.util.function.Consumer;
import javafx.collections.ListChangeListener;
import javafx.geometry.Pos;
import javafx.scene.Node;
import javafx.scene.control.Button;
import javafx.scene.control.ComboBox;
import javafx.scene.layout.FlowPane;
import org.controlsfx.control.CheckComboBox;
import org.fadeline.analysis.season.SeasonFilter;
import org.fadeline.analysis.season.SeasonFilter.Span;
import org.fadeline.analysis.season.SeasonFilter.WindWanted;
import org.fadeline.ui.control.Say;
import org.fadeline.ui.control.form.Worded;
import org.jspecify.annotations.Nullable;

/** The choice of sessions and lines; offers only what the folder holds. */
final class FilterBar {
  private final CheckComboBox<String> waters = box("season-waters", "water");
  private final CheckComboBox<Integer> months = box("season-months", "month");
  private final CheckComboBox<String> lines = box("season-lines", "line");
  private final ComboBox<Warmth> warmth = new ComboBox<>();
  private final ComboBox<Wind> wind = new ComboBox<>();
  private final FlowPane view = new FlowPane(8, 6);
  private final Consumer<SeasonFilter> chosen;
  private boolean filling;

  FilterBar(Consumer<SeasonFilter> chosen) {
    this.chosen = chosen;
    waters.setConverter(new Worded<>(Say::capital));
    months.setConverter(new Worded<>(m -> Month.of(m).getDisplayName(TextStyle.FULL, Locale.UK)));
    lines.setConverter(new Worded<>(Say::capital));
    follow(waters, "water");
    follow(months, "month");
    follow(lines, "line");
    warmth.getItems().setAll(Warmth.values());
    warmth.setValue(Warmth.ANY);
    warmth.setConverter(new Worded<>(w -> w.label));
    warmth.setAccessibleText("Water temperature");
    warmth.setId("season-warmth");
    warmth.setOnAction(e -> tell());
    wind.getItems().setAll(Wind.values());
    wind.setValue(Wind.ANY);
    wind.setConverter(new Worded<>(w -> w.label));
    wind.setAccessibleText("Wind");
    wind.setId("season-wind");
    wind.setOnAction(e -> tell());
    Button all = new Button("Clear the filters");
    all.setId("season-everything");
    all.setAccessibleText("Take every filter away");
    all.getStyleClass().add("flat");
    all.setOnAction(e -> clear());
    view.setAlignment(Pos.CENTER_LEFT);
    view.getChildren().addAll(waters, months, lines, warmth, wind, all);
  }

  /** Ranges of water temperature, °C. */
  enum Warmth {
    ANY("Any temperature", -5, 45),
    COLD("Water below 8 °C", -5, 8),
    COOL("Water 8–14 °C", 8, 14),
    WARM("Water 14–20 °C", 14, 20),
    HOT("Water above 20 °C", 20, 45);

    private final String label;
    private final double low;
    private final double high;

    Warmth(String label, double low, double high) {
      this.label = label;
      this.low = low;
      this.high = high;
    }

    private @Nullable Span wanted() {
      return this == ANY ? null : new Span(low, high);
    }
  }

  /** Winds. */
  enum Wind {
    ANY("Any wind"),
    LIGHT("Light wind (0–2)"),
    FRESH("Wind 3 and more"),
    NORTH("North wind"),
    EAST("East wind"),
    SOUTH("South wind"),
    WEST("West wind");

    private final String label;

    Wind(String label) {
      this.label = label;
    }

    private @Nullable WindWanted wanted() {
      return switch (this) {
        case ANY -> null;
        case LIGHT -> new WindWanted(new Span(0, 2), null);
        case FRESH -> new WindWanted(new Span(3, 12), null);
        case NORTH -> new WindWanted(null, 0.0);
        case EAST -> new WindWanted(null, 90.0);
        case SOUTH -> new WindWanted(null, 180.0);
        case WEST -> new WindWanted(null, 270.0);
      };
    }
  }

  Node view() {
    return view;
  }

  private static <T> CheckComboBox<T> box(String id, String what) {
    CheckComboBox<T> box = new CheckComboBox<>();
    box.setId(id);
    box.setTitle("Any " + what);
    box.setAccessibleText(Say.capital(what));
    box.setStyle("-fx-pref-width: 10.8em;");
    return box;
  }

  /** Offers what the sessions hold; what is checked and still there stays checked. */
  void offer(FilterOffers offers) {
    filling = true;
    boolean lost = fill(waters, offers.waters());
    lost |= fill(months, offers.months());
    lost |= fill(lines, offers.lines());
    filling = false;
    if (lost) {
      // What was checked is in no session any more: it must not go on filtering unseen.
      tell();
    }
  }

  /** Returns whether something checked is gone. */
  private static <T> boolean fill(CheckComboBox<T> box, Set<T> values) {
    boolean lost = false;
    if (!List.copyOf(values).equals(box.getItems())) {
      Set<T> checked = new HashSet<>(box.getCheckModel().getCheckedItems());
      box.getCheckModel().clearChecks();
      box.getItems().setAll(values);
      checked.stream().filter(values::contains).forEach(box.getCheckModel()::check);
      lost = !values.containsAll(checked);
    }
    return lost;
  }

  void clear() {
    filling = true;
    waters.getCheckModel().clearChecks();
    months.getCheckModel().clearChecks();
    lines.getCheckModel().clearChecks();
    warmth.setValue(Warmth.ANY);
    wind.setValue(Wind.ANY);
    filling = false;
    tell();
  }

  private <T> void follow(CheckComboBox<T> box, String what) {
    ListChangeListener<T> listener =
        change -> {
          boolean any = box.getCheckModel().isEmpty();
          box.setTitle(any ? "Any " + what : Say.capital(what));
          box.setShowCheckedCount(!any);
          tell();
        };
    box.getCheckModel().getCheckedItems().addListener(listener);
  }

  private void tell() {
    if (!filling) {
      chosen.accept(
          new SeasonFilter(
              Set.copyOf(waters.getCheckModel().getCheckedItems()),
              Set.copyOf(months.getCheckModel().getCheckedItems()),
              Set.copyOf(lines.getCheckModel().getCheckedItems()),
              warmth.getValue().wanted(),
              wind.getValue().wanted()));
    }
  }
}
