package org.fadeline.ui.season;

import java.nio.file.Path;
import java.util.List;
import java.util.Objects;
import java.util.function.Consumer;
import javafx.scene.control.Label;
import javafx.scene.control.ListCell;
import javafx.scene.control.ListView;
import javafx.scene.input.KeyCode;
import javafx.scene.layout.Priority;
import javafx.scene.layout.Region;
import javafx.scene.layout.VBox;
import org.fadeline.analysis.season.SessionSummary;
import org.fadeline.ui.control.Say;
import org.jspecify.annotations.Nullable;

/** The sessions that a figure rests on; each opens. */
final class SessionsBehind {
  private final Label heading = new Label("Matches behind it");
  private final ListView<Row> list = new ListView<>();
  private final VBox view;

  /** A session and where it is. */
  private record Row(SessionSummary session, Path file) {}

  SessionsBehind(Consumer<Path> open) {
    heading.getStyleClass().add("strong");
    list.setId("season-behind");
    list.setAccessibleText("Matches behind the figure chosen; Enter opens one");
    list.setCellFactory(l -> new Cell());
    Label none = new Label("Choose a row or a cell to see the matches it rests on.");
    none.setWrapText(true);
    none.getStyleClass().add("quiet");
    list.setPlaceholder(none);
    list.setOnMouseClicked(
        e -> {
          if (e.getClickCount() == 2) {
            open(open);
          }
        });
    list.setOnKeyPressed(
        e -> {
          if (e.getCode() == KeyCode.ENTER) {
            open(open);
            e.consume();
          }
        });
    Label how = new Label("Double-click or Enter opens one in the replay");
    how.getStyleClass().add("quiet");
    how.setWrapText(true);
    how.setMinHeight(Region.USE_PREF_SIZE);
    VBox.setVgrow(list, Priority.ALWAYS);
    view = new VBox(8, heading, list, how);
    view.getStyleClass().add("panel");
    view.setStyle("-fx-padding: 0.9em;");
    view.setMinWidth(220);
    view.setPrefWidth(220);
    view.setMaxWidth(220);
  }

  Region view() {
    return view;
  }

  private void open(Consumer<Path> open) {
    Row row = list.getSelectionModel().getSelectedItem();
    if (row != null) {
      open.accept(row.file());
    }
  }

  void show(List<Integer> sessions, SeasonShown shown) {
    List<SessionSummary> all = shown.season().sessions();
    list.getItems()
        .setAll(
            sessions.stream()
                .filter(i -> i >= 0 && i < all.size())
                .map(all::get)
                .filter(shown.files()::containsKey)
                .map(s -> new Row(s, Objects.requireNonNull(shown.files().get(s))))
                .toList());
    int n = list.getItems().size();
    heading.setText(n == 0 ? "Matches behind it" : Say.count(n, "session") + " behind it");
  }

  /** A session in two rows. */
  private static final class Cell extends ListCell<Row> {
    private final Label day = new Label();
    private final Label title = new Label();
    // The list measures a cell before a padding of its own counts; that of its content it sees.
    private final VBox rows = new VBox(day, title);

    Cell() {
      rows.setStyle("-fx-padding: 0.4em 0.3em 0.4em 0.3em;");
      title.setWrapText(true);
      // As wide as the list, so that a long title wraps and nothing scrolls sideways.
      setPrefWidth(0);
    }

    @Override
    protected void updateItem(@Nullable Row row, boolean empty) {
      super.updateItem(row, empty);
      if (row == null || empty) {
        setGraphic(null);
        return;
      }
      day.setText(SeasonTables.day(row.session()));
      title.setText(row.session().about().title());
      setGraphic(rows);
    }
  }
}
