package org.fadeline.ui.control;

import javafx.geometry.Insets;
import javafx.geometry.Pos;
import javafx.scene.Node;
import javafx.scene.control.Button;
import javafx.scene.control.Label;
import javafx.scene.input.KeyCode;
import javafx.scene.input.KeyEvent;
import javafx.scene.layout.HBox;
import javafx.scene.layout.Priority;
import javafx.scene.layout.Region;
import javafx.scene.layout.StackPane;
import javafx.scene.layout.VBox;
import org.jspecify.annotations.Nullable;

/**
 * A sheet that lies over the window until it is closed: by its button, Escape or a click beside.
 */
public final class Overlay {
  private final StackPane view = new StackPane();
  private final double width;
  private @Nullable Node before;

  /**
   * Makes a sheet that is not shown.
   *
   * @param width its greatest width, in pixels
   */
  public Overlay(double width) {
    this.width = width;
    view.getStyleClass().add("veil");
    view.setVisible(false);
    view.setOnMouseClicked(
        e -> {
          if (e.getTarget() == view) {
            hide();
          }
        });
    // A list in focus would keep Escape to itself.
    view.addEventFilter(
        KeyEvent.KEY_PRESSED,
        e -> {
          if (e.getCode() == KeyCode.ESCAPE) {
            e.consume();
            hide();
          }
        });
  }

  /** Returns the veil and what lies on it. */
  public Region view() {
    return view;
  }

  /** Returns whether it is shown. */
  public boolean isShown() {
    return view.isVisible();
  }

  /** Puts it away. */
  public void hide() {
    view.setVisible(false);
    view.getChildren().clear();
    if (before != null) {
      before.requestFocus();
      before = null;
    }
  }

  /**
   * Shows content under a title.
   *
   * @param beside what stands at the foot, beside the button that closes
   */
  public void show(String title, Node content, Node... beside) {
    Label heading = Labels.line(title, "title");
    Button close = new Button("Close");
    close.getStyleClass().add("main-button");
    close.setCancelButton(true);
    close.setDefaultButton(true);
    close.setOnAction(e -> hide());
    HBox foot = new HBox(10, beside);
    foot.getChildren().add(close);
    foot.setAlignment(Pos.CENTER_RIGHT);
    VBox sheet = new VBox(heading, content, foot);
    VBox.setVgrow(content, Priority.ALWAYS);
    sheet.getStyleClass().add("sheet");
    sheet.setMaxSize(width, Region.USE_PREF_SIZE);
    StackPane.setMargin(sheet, new Insets(30));
    if (!isShown() && view.getScene() != null) {
      before = view.getScene().getFocusOwner();
    }
    view.getChildren().setAll(sheet);
    view.setVisible(true);
    close.requestFocus();
  }
}
