package org.fadeline.ui.control;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.List;
import javafx.scene.Scene;
import javafx.scene.control.TextField;
import javafx.stage.Stage;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.extension.ExtendWith;
import org.testfx.api.FxRobot;
import org.testfx.api.FxToolkit;
import org.testfx.framework.junit5.ApplicationExtension;
import org.testfx.framework.junit5.Start;

/** Sorting by value, filtering by word, copying with the heading. */
// TestFX calls start before each test, which sets every field.
@SuppressWarnings("NullAway.Init")
@ExtendWith(ApplicationExtension.class)
class DataTableTest {
  private record Row(String name, double value) {}

  private DataTable<Row> table;

  @Start
  void start(Stage stage) {
    table =
        new DataTable<Row>("Rows", "None")
            .words("Name", 100, Row::name)
            .numbers("Value", 100, r -> r.value() < 0 ? null : r.value(), r -> r.value() + " lb");
    table.show(List.of(new Row("a", 9), new Row("b", 10), new Row("c\td", -1)));
    stage.setScene(new Scene(table, 400, 300));
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
  void copiesWithTheHeadingAndWithoutStrayTabs() {
    assertEquals(
        "Name\tValue\na\t9.0 lb\nc d\t",
        table.asText(List.of(new Row("a", 9), new Row("c\td", -1))));
  }
}
