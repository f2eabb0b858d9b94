package org.fadeline.ui.control;

import java.util.List;
import java.util.function.Function;
import java.util.function.Supplier;
import javafx.geometry.Point2D;
import javafx.scene.Node;
import javafx.scene.control.ContextMenu;
import javafx.scene.control.MenuItem;
import javafx.scene.input.ContextMenuEvent;
import javafx.scene.input.KeyCode;
import javafx.scene.input.KeyCombination;
import javafx.scene.input.KeyEvent;

/** A menu on a node, asked for by the pointer, by Shift+F10 or by the menu key. */
public final class NodeMenu {
  private static final KeyCombination SHIFT_F10 = KeyCombination.valueOf("Shift+F10");

  private final Node node;
  private final Function<Asked, List<MenuItem>> items;
  private final Supplier<Point2D> byKeys;
  private final ContextMenu menu = new ContextMenu();

  private NodeMenu(Node node, Function<Asked, List<MenuItem>> items, Supplier<Point2D> byKeys) {
    this.node = node;
    this.items = items;
    this.byKeys = byKeys;
  }

  /**
   * Where a menu was asked for.
   *
   * @param x on the node
   * @param y on the node
   * @param pointer whether by the pointer
   */
  public record Asked(double x, double y, boolean pointer) {}

  /**
   * Offers a menu on a node.
   *
   * @param items the entries, made anew each time; none where there is nothing to offer
   * @param byKeys where on the node it opens when asked for by keys
   */
  public static void on(
      Node node, Function<Asked, List<MenuItem>> items, Supplier<Point2D> byKeys) {
    NodeMenu made = new NodeMenu(node, items, byKeys);
    node.addEventHandler(ContextMenuEvent.CONTEXT_MENU_REQUESTED, made::asked);
    // Not every platform makes a request of the keys.
    node.addEventHandler(
        KeyEvent.KEY_PRESSED,
        e -> {
          if (e.getCode() == KeyCode.CONTEXT_MENU || SHIFT_F10.match(e)) {
            made.showByKeys();
            e.consume();
          }
        });
  }

  /** Offers a menu in the middle of a node when asked for by keys. */
  public static void on(Node node, Function<Asked, List<MenuItem>> items) {
    on(
        node,
        items,
        () ->
            new Point2D(node.getLayoutBounds().getCenterX(), node.getLayoutBounds().getCenterY()));
  }

  /** Returns an entry that does something. */
  public static MenuItem item(String words, Runnable action) {
    MenuItem item = new MenuItem(words);
    item.setOnAction(e -> action.run());
    return item;
  }

  private void asked(ContextMenuEvent e) {
    if (!e.isKeyboardTrigger()) {
      show(new Asked(e.getX(), e.getY(), true), e.getScreenX(), e.getScreenY());
    } else if (!menu.isShowing()) {
      showByKeys();
    }
    e.consume();
  }

  private void showByKeys() {
    Point2D place = byKeys.get();
    Point2D screen = node.localToScreen(place);
    show(new Asked(place.getX(), place.getY(), false), screen.getX(), screen.getY());
  }

  private void show(Asked asked, double screenX, double screenY) {
    menu.hide();
    menu.getItems().setAll(items.apply(asked));
    if (!menu.getItems().isEmpty()) {
      menu.show(node, screenX, screenY);
    }
  }
}
