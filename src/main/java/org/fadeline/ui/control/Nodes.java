package org.fadeline.ui.control;

import javafx.scene.Node;
import javafx.scene.control.ScrollPane;
import javafx.scene.layout.HBox;
import javafx.scene.layout.Priority;
import javafx.scene.layout.Region;

/** What is done with nodes of every kind. */
public final class Nodes {
  private Nodes() {}

  /** Shows a node, or hides it so that it takes no room either. */
  public static void show(Node node, boolean shown) {
    node.setVisible(shown);
    node.setManaged(shown);
  }

  /** Returns a gap in a row that takes the room left over. */
  public static Region gap() {
    Region gap = new Region();
    HBox.setHgrow(gap, Priority.ALWAYS);
    return gap;
  }

  /** Lets content scroll up and down on the ground it lies on, as wide as the room. */
  public static ScrollPane scroll(Node content) {
    ScrollPane scroll = new ScrollPane(content);
    scroll.setFitToWidth(true);
    scroll.getStyleClass().add("plain-scroll");
    return scroll;
  }

  /** As {@link #scroll}, and content that is lower than the room fills it. */
  public static ScrollPane scrollFilled(Node content) {
    ScrollPane scroll = scroll(content);
    scroll.setFitToHeight(true);
    return scroll;
  }
}
