package org.fadeline.ui.control.command;

import javafx.scene.Node;
import javafx.scene.control.Button;
import javafx.scene.control.ToggleButton;
import javafx.scene.input.MouseEvent;

/**
 * Buttons that, pressed by the pointer, do not keep the keys: Space then plays, and does not press
 * the button again. Reached by Tab they keep them.
 */
public final class KeysBack {
  private KeysBack() {}

  /**
   * Lets the buttons of a bar give the keys back after a click.
   *
   * @param keysBack takes the focus to where the keys belong
   */
  public static void afterClicksOn(Node bar, Runnable keysBack) {
    // Buttons consume clicks: nothing of them comes up to the bar.
    bar.addEventFilter(
        MouseEvent.MOUSE_CLICKED,
        e -> {
          Node focus = bar.getScene() == null ? null : bar.getScene().getFocusOwner();
          if ((focus instanceof Button || focus instanceof ToggleButton) && isWithin(focus, bar)) {
            keysBack.run();
          }
        });
  }

  private static boolean isWithin(Node node, Node bar) {
    for (Node at = node; at != null; at = at.getParent()) {
      if (at == bar) {
        return true;
      }
    }
    return false;
  }
}
