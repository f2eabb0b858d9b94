package org.fadeline.ui.control;

import javafx.geometry.Pos;
import javafx.scene.control.Button;
import javafx.scene.control.Label;
import javafx.scene.layout.Region;
import javafx.scene.layout.StackPane;
import javafx.scene.layout.VBox;

/** What stands where there is nothing to show yet: what will be there, and how to begin. */
public final class Invitation extends StackPane {
  /**
   * Makes the invitation.
   *
   * @param title what will be here
   * @param words what it tells, in a sentence or two
   * @param begin buttons that begin, if they do not stand elsewhere in sight
   */
  public Invitation(String title, String words, Button... begin) {
    Label head = new Label(title);
    head.getStyleClass().add("title");
    head.setWrapText(true);
    Label text = Labels.wrapped(words, "quiet");
    VBox box = new VBox(10, head, text);
    box.getChildren().addAll(begin);
    box.getStyleClass().add("invitation");
    box.setAlignment(Pos.CENTER_LEFT);
    box.setMaxSize(Region.USE_PREF_SIZE, Region.USE_PREF_SIZE);
    getChildren().add(box);
    setMinSize(0, 0);
  }
}
