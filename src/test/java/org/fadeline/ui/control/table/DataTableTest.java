package org.fadeline.ui.control.table;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.text.Collator;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.concurrent.Callable;
import java.util.concurrent.TimeUnit;
import java.util.concurrent.TimeoutException;
import java.util.concurrent.atomic.AtomicInteger;
import javafx.application.Platform;
import javafx.beans.Observable;
import javafx.geometry.Bounds;
import javafx.scene.Node;
import javafx.scene.Scene;
import javafx.scene.control.ComboBox;
import javafx.scene.control.IndexedCell;
import javafx.scene.control.Label;
import javafx.scene.control.TextField;
import javafx.scene.layout.StackPane;
import javafx.scene.text.Text;
import javafx.stage.Stage;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.extension.ExtendWith;
import org.testfx.api.FxRobot;
import org.testfx.api.FxToolkit;
import org.testfx.framework.junit5.ApplicationExtension;
import org.testfx.framework.junit5.Start;
import org.testfx.util.WaitForAsyncUtils;

/** Sorting by value, filtering by word, copying with the heading. */
// TestFX calls start before each test, which sets every field.
@SuppressWarnings("NullAway.Init")
@ExtendWith(ApplicationExtension.class)
class DataTableTest {
  private record Row(String name, double value) {}

  private Stage window;

  private DataTable<Row> table;

  @Start
  void start(Stage stage) {
    window = stage;
    table =
        new DataTable<Row>("Rows", "None")
            .words("Name", 100, Row::name)
            .numbers("Value", 100, r -> r.value() < 0 ? null : r.value(), r -> r.value() + " lb");
    table.show(List.of(new Row("a", 9), new Row("b", 10), new Row("c\td", -1)));
    stage.setScene(new Scene(table, 700, 300));
    stage.show();
  }

  @AfterEach
  void closeWindows() throws Exception {
    FxToolkit.cleanupStages();
  }

  private List<String> names() {
    return table.table().getItems().stream().map(Row::name).toList();
  }

  @Test
  void numbersSortByValueNotByTheirWords(FxRobot robot) {
    robot.interact(() -> table.table().getSortOrder().add(table.table().getColumns().get(1)));
    assertEquals(List.of("c\td", "a", "b"), names(), "9 comes before 10");
  }

  @Test
  void aWordFilters(FxRobot robot) {
    TextField filter = robot.lookup(".text-field").query();
    robot.interact(() -> filter.setText("10.0 L"));
    assertEquals(List.of("b"), names());
    robot.interact(() -> filter.setText(""));
    assertEquals(3, names().size());
  }

  @Test
  void aWordThatNoRowHoldsIsNotToldAsARecordWithout(FxRobot robot) {
    TextField filter = robot.lookup(".text-field").query();
    Label said = (Label) table.table().getPlaceholder();
    robot.interact(() -> filter.setText("pike"));
    assertEquals(List.of(), names());
    assertEquals("No row holds “pike”.", said.getText());
    robot.interact(() -> table.show(List.of()));
    assertEquals("None", said.getText(), "there is none, whatever is asked for");
  }

  /** More rows than are looked at in a frame come in order too, and what is picked stays picked. */
  @Test
  void thousandsOfRowsAreSortedAndFilteredFrameByFrame(FxRobot robot) throws Exception {
    List<Row> many = new ArrayList<>();
    for (int i = 0; i < 3 * TableRows.AT_ONCE + 7; i++) {
      many.add(new Row((i % 2 == 0 ? "Édge " : "edge ") + (i * 7919 % 6007), i % 10));
    }
    robot.interact(() -> table.show(many));
    robot.interact(() -> table.table().getSelectionModel().select(42));
    robot.interact(() -> table.table().getSortOrder().add(table.table().getColumns().get(0)));
    Collator alphabet = Collator.getInstance();
    List<String> wanted = new ArrayList<>(many.stream().map(Row::name).toList());
    wanted.sort(alphabet);
    waitFor(() -> names().equals(wanted));
    assertEquals(many.get(42), table.table().getSelectionModel().getSelectedItem());
    TextField filter = robot.lookup(".text-field").query();
    robot.interact(() -> filter.setText("9.0 LB"));
    List<String> nines =
        many.stream().filter(r -> r.value() == 9).map(Row::name).sorted(alphabet).toList();
    waitFor(() -> names().equals(nines));
    robot.interact(() -> table.table().getSortOrder().clear());
    robot.interact(() -> filter.setText(""));
    waitFor(() -> table.table().getItems().equals(many));
  }

  private static void waitFor(Callable<Boolean> condition) throws TimeoutException {
    WaitForAsyncUtils.waitFor(
        30, TimeUnit.SECONDS, () -> WaitForAsyncUtils.asyncFx(condition).get());
  }

  @Test
  void aNarrowTableSetsHeadingsAndTextsInRowsSoThatNothingIsScrolledSideways(FxRobot robot) {
    DataTable<Row> rates =
        new DataTable<Row>("Rates", "None")
            .words("Line", 100, Row::name)
            .numbers("Weight an hour", 100, Row::value, r -> r.value() + " lb (12.5–163.5 lb)")
            .numbers("Bites an hour", 100, Row::value, r -> r.value() + " (1.25–2.75)");
    List<Row> rows = List.of(new Row("the left edge by the reeds", 18), new Row("short", 2));
    robot.interact(
        () -> {
          rates.show(rows);
          window.getScene().setRoot(new StackPane(rates));
        });
    WaitForAsyncUtils.waitForFxEvents();
    assertFalse(isWrapped(rates), "there is room for one row");
    robot.interact(() -> rates.setMaxWidth(330));
    WaitForAsyncUtils.waitForFxEvents();
    assertTrue(isWrapped(rates), "there is room only for several rows");
    double columns = rates.table().getColumns().stream().mapToDouble(c -> c.getWidth()).sum();
    assertTrue(columns <= rates.table().getWidth(), columns + " of " + rates.table().getWidth());
    for (Row row : rows) {
      robot.lookup((Text t) -> t.getText().equals(row.value() + " lb\n(12.5–163.5 lb)")).query();
    }
    robot.interact(() -> rates.setMaxWidth(700));
    WaitForAsyncUtils.waitForFxEvents();
    assertFalse(isWrapped(rates), "there is room again");
  }

  @Test
  void whereNoColumnsFitEachRowIsACardThatNamesWhatItHolds(FxRobot robot) {
    DataTable<Row> rates =
        new DataTable<Row>("Rates", "None")
            .words("Line", 100, Row::name)
            .numbers("Weight an hour", 100, Row::value, r -> r.value() + " lb (12.5–163.5 lb)")
            .numbers("Bites an hour", 100, r -> -r.value(), r -> r.value() + " (1.25–2.75)");
    robot.interact(
        () -> {
          rates.setMaxWidth(200);
          window.getScene().setRoot(new StackPane(rates));
          rates.show(List.of(new Row("left edge", 18), new Row("short", 2)));
        });
    WaitForAsyncUtils.waitForFxEvents();
    assertTrue(rates.table().getStyleClass().contains("cards"));
    double columns =
        rates.table().getVisibleLeafColumns().stream().mapToDouble(c -> c.getWidth()).sum();
    assertTrue(columns <= rates.table().getWidth(), columns + " of " + rates.table().getWidth());
    assertEquals(
        List.of(
            "left edge. Weight an hour 18.0 lb (12.5–163.5 lb)   Bites an hour 18.0 (1.25–2.75)",
            "short. Weight an hour 2.0 lb (12.5–163.5 lb)   Bites an hour 2.0 (1.25–2.75)"),
        cards(rates));
    for (Node flow : rates.table().lookupAll(".card-heading")) {
      Bounds place = rates.table().sceneToLocal(flow.localToScene(flow.getBoundsInLocal()));
      assertTrue(place.getMaxX() <= rates.table().getWidth(), "within the table: " + place);
    }
    ComboBox<String> sort = robot.lookup(".combo-box").queryComboBox();
    robot.interact(() -> sort.getSelectionModel().select("Weight an hour"));
    WaitForAsyncUtils.waitForFxEvents();
    assertTrue(cards(rates).get(0).startsWith("short."), "sorted without headings to click");
    robot.interact(() -> rates.setMaxWidth(700));
    WaitForAsyncUtils.waitForFxEvents();
    assertEquals(3, rates.table().getVisibleLeafColumns().size(), "there is room for columns");
    assertFalse(sort.isVisible());
  }

  /** A page loses its bar by the lower cards, and with it the table gains a little width. */
  @Test
  void aTableOnAPageWhoseBarComesAndGoesSettles(FxRobot robot) {
    DataTable<Row> rates =
        new DataTable<Row>("Rates", "None")
            .words("Line", 100, Row::name)
            .numbers("Weight an hour", 100, Row::value, r -> r.value() + " lb (12.5–163.5 lb)");
    robot.interact(
        () -> {
          window.getScene().setRoot(new StackPane(rates));
          rates.show(List.of(new Row("left edge", 18), new Row("short", 2)));
        });
    double width = 700;
    while (!rates.table().getStyleClass().contains("cards") && width > 0) {
      width -= 4;
      double narrower = width;
      robot.interact(() -> rates.setMaxWidth(narrower));
      WaitForAsyncUtils.waitForFxEvents();
    }
    double cardsCame = width;
    assertTrue(cardsCame > 50, "cards came at " + cardsCame);
    AtomicInteger changes = new AtomicInteger();
    rates
        .table()
        .getStyleClass()
        .addListener(
            (Observable styles) -> {
              boolean cards = rates.table().getStyleClass().contains("cards");
              double next = cards ? cardsCame + 20 : cardsCame;
              if (rates.getMaxWidth() != next && changes.incrementAndGet() < 40) {
                Platform.runLater(() -> rates.setMaxWidth(next));
              }
            });
    robot.interact(() -> rates.setMaxWidth(cardsCame + 20));
    WaitForAsyncUtils.waitForFxEvents(100);
    assertTrue(changes.get() <= 2, changes + " changes between cards and columns");
  }

  private static List<String> cards(DataTable<?> table) {
    return table.table().lookupAll(".table-row-cell").stream()
        .map(n -> (IndexedCell<?>) n)
        .filter(row -> !row.isEmpty())
        .sorted(Comparator.comparingInt(IndexedCell::getIndex))
        .map(row -> row.lookup(".table-cell").getAccessibleText())
        .toList();
  }

  private static boolean isWrapped(DataTable<?> table) {
    return table.table().getStyleClass().contains("wrapped");
  }

  @Test
  void anEmptyTableThatWasTooNarrowShowsItsColumnsOnceThereAreRowsAndRoom(FxRobot robot) {
    DataTable<Row> rates = new DataTable<>("Rates", "None");
    for (String heading : List.of("Where", "Wrong", "Remedy", "Field", "Number", "Reason")) {
      rates.words(heading, 100, Row::name);
    }
    robot.interact(
        () -> {
          rates.setMaxWidth(20);
          window.getScene().setRoot(new StackPane(rates));
          rates.show(List.of());
        });
    WaitForAsyncUtils.waitForFxEvents();
    robot.interact(
        () -> {
          rates.setMaxWidth(690);
          rates.show(List.of(new Row("short", 2)));
        });
    WaitForAsyncUtils.waitForFxEvents();
    double width = rates.table().getColumns().get(0).getWidth();
    assertTrue(width > 30 && width < 200, "wide enough for its words: " + width);
  }

  @Test
  void wordsTooLongForAColumnAreReadBelowFilteredAndCopied(FxRobot robot) {
    robot.interact(
        () -> table.detail("Told", r -> "row " + r.name(), r -> "All about " + r.name() + "."));
    Label words = robot.lookup((Label l) -> l.getText().startsWith("All about")).query();
    assertEquals("All about a.", words.getText(), "of the first row while none is picked");
    robot.interact(() -> table.table().getSelectionModel().select(1));
    assertEquals("All about b.", words.getText());
    assertEquals(
        "Name\tValue\tTold\na\t9.0 lb\tAll about a.", table.asText(List.of(new Row("a", 9))));
    TextField filter = robot.lookup(".text-field").query();
    robot.interact(() -> filter.setText("about b"));
    assertEquals(List.of("b"), names());
  }

  @Test
  void copiesWithTheHeadingAndWithoutStrayTabs() {
    assertEquals(
        "Name\tValue\na\t9.0 lb\nc d\t",
        table.asText(List.of(new Row("a", 9), new Row("c\td", -1))));
  }
}
