package org.fadeline.ui.help;

import java.net.URL;
import javafx.scene.control.ListCell;
import javafx.scene.control.ListView;
import javafx.scene.control.ScrollPane;
import javafx.scene.layout.HBox;
import javafx.scene.layout.Priority;
import org.fadeline.ui.control.Overlay;

/** The manual in the window: its pages at the left, the one chosen beside them. */
public final class HelpSheet {
  private static final double TALL = 620;

  private final Manual manual;
  private final ListView<Manual.Page> pages = new ListView<>();
  private final ScrollPane page = new ScrollPane();

  private HelpSheet(Manual manual) {
    this.manual = manual;
    pages.getItems().setAll(manual.pages());
    pages.setCellFactory(list -> new Title());
    pages.setAccessibleText("Pages of the manual");
    pages.getStyleClass().add("help-pages");
    pages.setStyle("-fx-pref-width: 16em; -fx-min-width: 15em;");
    page.setFitToWidth(true);
    page.getStyleClass().add("manual-page");
    HBox.setHgrow(page, Priority.ALWAYS);
    pages
        .getSelectionModel()
        .selectedItemProperty()
        .addListener((property, before, chosen) -> turnTo(chosen));
  }

  /**
   * Shows the manual over the window.
   *
   * @param about the title of the screen it is opened from
   */
  public static void show(Overlay overlay, String about) {
    HelpSheet sheet = new HelpSheet(new Manual());
    HBox content = new HBox(16, sheet.pages, sheet.page);
    content.setPrefHeight(TALL);
    overlay.show("Help", content);
    sheet.pages.getSelectionModel().select(sheet.manual.about(about));
    sheet.pages.requestFocus();
  }

  private void turnTo(Manual.Page chosen) {
    MarkdownView view =
        new MarkdownView(path -> manual.picture(path).map(URL::toExternalForm), this::follow);
    page.setContent(view.of(chosen.markdown()));
    page.setVvalue(0);
  }

  private void follow(String target) {
    int mark = target.indexOf('#');
    manual
        .page(mark < 0 ? target : target.substring(0, mark))
        .ifPresent(p -> pages.getSelectionModel().select(p));
  }

  /** A page by its title. */
  private static final class Title extends ListCell<Manual.Page> {
    @Override
    protected void updateItem(Manual.Page item, boolean empty) {
      super.updateItem(item, empty);
      setText(empty || item == null ? "" : item.title());
    }
  }
}
