package org.fadeline.ui.talk;

import java.util.ArrayList;
import java.util.List;
import javafx.geometry.Pos;
import javafx.scene.Node;
import javafx.scene.control.Label;
import javafx.scene.control.ListCell;
import javafx.scene.control.ListView;
import javafx.scene.input.ClipboardContent;
import javafx.scene.input.DataFormat;
import javafx.scene.input.DragEvent;
import javafx.scene.input.Dragboard;
import javafx.scene.input.TransferMode;
import javafx.scene.layout.HBox;
import javafx.scene.layout.Priority;
import javafx.scene.layout.VBox;
import javafx.scene.text.Text;
import org.fadeline.model.talk.Picture;
import org.fadeline.model.talk.Slide;
import org.jspecify.annotations.Nullable;

/** The slides in order; a slide is dragged to another place. */
final class SlideList {
  private static final DataFormat SLIDE = slideFormat();

  private final ListView<Row> list = new ListView<>();
  private final TalkModel model;
  private boolean filling;

  /** A slide with its number, so that equal slides are told apart. */
  private record Row(int number, Slide slide) {}

  private static DataFormat slideFormat() {
    DataFormat known = DataFormat.lookupMimeType("application/x-fadeline-slide");
    return known == null ? new DataFormat("application/x-fadeline-slide") : known;
  }

  SlideList(TalkModel model) {
    this.model = model;
    list.setId("slides");
    list.setAccessibleText("Slides of the talk, in order");
    Label empty = new Label("No slides yet.\nDraft them from the review, or add one.");
    empty.getStyleClass().add("quiet");
    empty.setWrapText(true);
    list.setPlaceholder(empty);
    list.setCellFactory(view -> new SlideCell());
    list.getSelectionModel()
        .selectedIndexProperty()
        .addListener(
            (p, before, after) -> {
              if (!filling && after.intValue() >= 0) {
                model.choose(after.intValue());
              }
            });
  }

  Node view() {
    return list;
  }

  void takeFocus() {
    list.requestFocus();
  }

  void show(TalkModel.State state) {
    List<Row> rows = new ArrayList<>();
    for (Slide slide : state.talk().slides()) {
      rows.add(new Row(rows.size() + 1, slide));
    }
    filling = true;
    for (int i = 0; i < rows.size(); i++) {
      if (i >= list.getItems().size()) {
        list.getItems().add(rows.get(i));
      } else if (!list.getItems().get(i).equals(rows.get(i))) {
        list.getItems().set(i, rows.get(i));
      }
    }
    if (list.getItems().size() > rows.size()) {
      list.getItems().remove(rows.size(), list.getItems().size());
    }
    if (state.chosen() >= 0) {
      list.getSelectionModel().clearAndSelect(state.chosen());
      list.getFocusModel().focus(state.chosen());
      list.scrollTo(Math.max(0, state.chosen() - 2));
    }
    filling = false;
  }

  /** One slide of the list. */
  private final class SlideCell extends ListCell<Row> {
    private final Label number = new Label();
    private final Text title = new Text();
    private final Text shows = new Text();

    /** Width beside the words of a row: its number, the padding, the bar; pixels. */
    private static final double BESIDE = 84;

    private final HBox box = new HBox(9, number, new VBox(1, title, shows));

    SlideCell() {
      number.getStyleClass().addAll("quiet", "slide-number");
      title.getStyleClass().add("strong");
      shows.getStyleClass().add("quiet");
      for (Text text : List.of(title, shows)) {
        // The list asks for the height of a row before the row knows its width.
        text.wrappingWidthProperty().bind(list.widthProperty().subtract(BESIDE));
      }
      box.getStyleClass().add("slide-words");
      box.getStyleClass().add("turning-cell");
      box.setAlignment(Pos.TOP_LEFT);
      HBox.setHgrow(box.getChildren().get(1), Priority.ALWAYS);
      box.setMaxWidth(Double.MAX_VALUE);
      box.prefWidthProperty().bind(list.widthProperty().subtract(22));
      setOnDragDetected(
          e -> {
            if (getItem() != null) {
              Dragboard board = startDragAndDrop(TransferMode.MOVE);
              ClipboardContent content = new ClipboardContent();
              content.put(SLIDE, getItem().number() - 1);
              board.setContent(content);
              e.consume();
            }
          });
      setOnDragOver(
          e -> {
            if (getItem() != null && dragged(e) != null) {
              e.acceptTransferModes(TransferMode.MOVE);
              mark(true);
              e.consume();
            }
          });
      setOnDragExited(e -> mark(false));
      setOnDragDropped(
          e -> {
            Integer from = dragged(e);
            mark(false);
            if (getItem() != null && from != null) {
              model.move(from, getItem().number() - 1);
              e.setDropCompleted(true);
            }
            e.consume();
          });
    }

    private void mark(boolean on) {
      box.getStyleClass().remove("drop-place");
      if (on) {
        box.getStyleClass().add("drop-place");
      }
    }

    private static @Nullable Integer dragged(DragEvent e) {
      return e.getDragboard().getContent(SLIDE) instanceof Integer from ? from : null;
    }

    @Override
    protected void updateItem(@Nullable Row row, boolean empty) {
      super.updateItem(row, empty);
      setText(null);
      if (row == null || empty) {
        setGraphic(null);
        return;
      }
      Picture picture = row.slide().picture();
      number.setText(String.valueOf(row.number()));
      title.setText(row.slide().title().isBlank() ? "untitled" : row.slide().title());
      shows.setText(picture == null ? "words" : picture.kind().label());
      setAccessibleText(row.number() + ", " + title.getText() + ", " + shows.getText());
      setGraphic(box);
    }
  }
}
