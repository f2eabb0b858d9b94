package org.fadeline.ui.imports;

import java.time.DateTimeException;
import java.time.LocalDate;
import java.time.ZoneId;
import java.util.List;
import java.util.function.Consumer;
import java.util.function.UnaryOperator;
import javafx.geometry.Pos;
import javafx.scene.Node;
import javafx.scene.control.CheckBox;
import javafx.scene.control.ComboBox;
import javafx.scene.control.Control;
import javafx.scene.control.Label;
import javafx.scene.control.TextField;
import javafx.scene.layout.FlowPane;
import javafx.scene.layout.HBox;
import org.fadeline.io.ClockChange;
import org.fadeline.io.CsvMapping;
import org.fadeline.io.CsvMapping.DateOrder;
import org.fadeline.io.ReadOptions;
import org.fadeline.model.Occasion;
import org.fadeline.ui.control.Labels;
import org.jspecify.annotations.Nullable;

/** How a table is written, and what becomes of rows that cannot be used. */
final class TableChoices {
  private static final List<String> DELIMITERS = List.of(",", ";", "\t", "|");
  private static final List<String> DELIMITER_WORDS =
      List.of("commas", "semicolons", "tabs", "upright strokes");
  private static final String ISO = "2026-08-15";
  private static final List<String> ORDERS = List.of(ISO, "15/08/2026", "08/15/2026", "2026/08/15");
  private static final List<String> CHANGES =
      List.of("not taken until told", "by the clock before it", "by the clock after it");
  private static final List<DateOrder> DATE_ORDERS =
      List.of(DateOrder.DAY_MONTH_YEAR, DateOrder.MONTH_DAY_YEAR, DateOrder.YEAR_MONTH_DAY);
  private static final List<ClockChange> READINGS =
      List.of(ClockChange.REFUSE, ClockChange.BEFORE, ClockChange.AFTER);
  private static final List<String> BAD = List.of("take all or nothing", "leave bad rows out");

  private final FlowPane view = new FlowPane(14, 8);
  private final Consumer<UnaryOperator<ReadOptions>> change;
  private final ComboBox<String> delimiter = box("import-delimiter", DELIMITER_WORDS);
  private final CheckBox comma = new CheckBox("Decimal comma");
  private final ComboBox<String> order = box("import-order", ORDERS);
  private final TextField date = new TextField();
  private final TextField zone = new TextField();
  private final ComboBox<String> clock = box("import-clock", CHANGES);
  private final ComboBox<String> bad = box("import-bad", BAD);
  private boolean showing;

  /**
   * Makes the choices.
   *
   * @param change is told what is chosen otherwise
   */
  TableChoices(Consumer<UnaryOperator<ReadOptions>> change) {
    this.change = change;
    date.setId("import-date");
    date.setPromptText(ISO);
    date.setPrefColumnCount(8);
    zone.setId("import-zone");
    zone.setPrefColumnCount(12);
    view.getChildren()
        .addAll(
            named("Cells between", delimiter),
            comma,
            named("Dates like", order),
            named("Date of all in", date),
            named("Time zone", zone),
            named("Times made twice or skipped by a clock change", clock),
            named("Rows that cannot be used", bad));
    delimiter.setOnAction(
        e -> mapping(m -> of(m, DELIMITERS.get(index(delimiter)).charAt(0), m.decimalComma())));
    comma.setOnAction(e -> mapping(m -> of(m, m.delimiter(), comma.isSelected())));
    order.setOnAction(e -> mapping(m -> ordered(m, index(order))));
    clock.setOnAction(e -> tell(o -> o.withClockChange(READINGS.get(index(clock)))));
    bad.setOnAction(e -> tell(o -> o.withSkipBad(index(bad) == 1)));
    date.setOnAction(e -> date());
    zone.setOnAction(e -> zone());
  }

  Node view() {
    return view;
  }

  private static ComboBox<String> box(String id, List<String> values) {
    ComboBox<String> box = new ComboBox<>();
    box.setId(id);
    box.getItems().setAll(values);
    return box;
  }

  private static HBox named(String words, Control control) {
    Label label = Labels.line(words, "quiet");
    label.setLabelFor(control);
    control.setAccessibleText(words);
    HBox pair = new HBox(6, label, control);
    pair.setAlignment(Pos.CENTER_LEFT);
    return pair;
  }

  /** Returns the options a new file starts with: of the match in hand where there is one. */
  ReadOptions fresh(@Nullable Occasion occasion) {
    LocalDate day = occasion == null ? null : occasion.date();
    ZoneId place = occasion == null ? ZoneId.systemDefault() : occasion.zone();
    return ReadOptions.of(day, place).withSkipBad(index(bad) == 1);
  }

  /** Shows options as chosen. */
  void show(ReadOptions options) {
    showing = true;
    CsvMapping mapping = options.mapping() == null ? CsvMapping.NONE : options.mapping();
    Character cut = mapping.delimiter();
    pick(delimiter, Math.max(0, DELIMITERS.indexOf(cut == null ? "," : cut.toString())));
    comma.setSelected(mapping.decimalComma());
    DateOrder dates = mapping.dateOrder();
    pick(order, dates == null ? 0 : DATE_ORDERS.indexOf(dates) + 1);
    date.setText(options.date() == null ? "" : options.date().toString());
    zone.setText(options.zone() == null ? "" : options.zone().getId());
    pick(clock, READINGS.indexOf(options.clockChange()));
    pick(bad, options.skipBad() ? 1 : 0);
    showing = false;
  }

  private static void pick(ComboBox<String> box, int index) {
    box.getSelectionModel().select(index);
  }

  private static int index(ComboBox<String> box) {
    return Math.max(0, box.getSelectionModel().getSelectedIndex());
  }

  private void tell(UnaryOperator<ReadOptions> step) {
    if (!showing) {
      change.accept(step);
    }
  }

  private void mapping(UnaryOperator<CsvMapping> step) {
    tell(o -> o.withMapping(step.apply(o.mapping() == null ? CsvMapping.NONE : o.mapping())));
  }

  private static CsvMapping of(CsvMapping m, @Nullable Character cut, boolean decimalComma) {
    return new CsvMapping(m.columns(), m.events(), m.dateOrder(), cut, decimalComma);
  }

  private static CsvMapping ordered(CsvMapping m, int index) {
    DateOrder dates = index == 0 ? null : DATE_ORDERS.get(index - 1);
    return new CsvMapping(m.columns(), m.events(), dates, m.delimiter(), m.decimalComma());
  }

  private void date() {
    String typed = date.getText().strip();
    try {
      LocalDate day = typed.isEmpty() ? null : LocalDate.parse(typed);
      tell(o -> o.withDate(day));
    } catch (DateTimeException notADate) {
      date.setText("");
      date.setPromptText("write " + ISO);
    }
  }

  private void zone() {
    try {
      ZoneId place = ZoneId.of(zone.getText().strip());
      tell(o -> o.withZone(place));
    } catch (DateTimeException notAZone) {
      zone.setText("");
      zone.setPromptText("such as Europe/London");
    }
  }
}
