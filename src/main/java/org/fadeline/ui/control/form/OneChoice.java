package org.fadeline.ui.control.form;

import java.util.Objects;
import java.util.function.Consumer;
import javafx.scene.control.ComboBox;
import javafx.scene.control.Skin;
import javafx.scene.control.skin.ComboBoxListViewSkin;
import javafx.scene.input.KeyCode;
import javafx.scene.input.KeyEvent;
import org.jspecify.annotations.Nullable;

/**
 * A box in which one gesture is one choice: what the arrows pass over in its list is not chosen,
 * what the list is closed on is, and Esc chooses nothing.
 */
public final class OneChoice<T> {
  private final ComboBox<T> box;
  private final Consumer<@Nullable T> chosen;
  private @Nullable T before;
  private boolean goingBack;

  private OneChoice(ComboBox<T> box, Consumer<@Nullable T> chosen) {
    this.box = box;
    this.chosen = chosen;
  }

  /** Tells of each choice in a box, the list of which may be open or closed. */
  public static <T> void of(ComboBox<T> box, Consumer<@Nullable T> chosen) {
    OneChoice<T> choice = new OneChoice<>(box, chosen);
    box.setOnAction(e -> choice.changed());
    box.showingProperty().addListener((p, was, showing) -> choice.opened(showing));
    box.addEventFilter(KeyEvent.KEY_PRESSED, choice::key);
    box.skinProperty().addListener((p, old, skin) -> choice.listenIn(skin));
  }

  private void listenIn(@Nullable Skin<?> skin) {
    if (skin instanceof ComboBoxListViewSkin<?> list) {
      // The open list has the keys before the box does.
      list.getPopupContent().addEventFilter(KeyEvent.KEY_PRESSED, this::key);
    }
  }

  private void key(KeyEvent key) {
    if (box.isShowing()) {
      goingBack |= key.getCode() == KeyCode.ESCAPE;
    } else if (key.getCode() == KeyCode.UP || key.getCode() == KeyCode.DOWN) {
      // On a closed box each press would choose.
      box.show();
      key.consume();
    }
  }

  private void opened(boolean showing) {
    if (showing) {
      before = box.getValue();
      goingBack = false;
    } else if (goingBack) {
      box.setValue(before);
      goingBack = false;
    } else if (!Objects.equals(before, box.getValue())) {
      chosen.accept(box.getValue());
    }
  }

  private void changed() {
    if (!box.isShowing() && !goingBack) {
      chosen.accept(box.getValue());
    }
  }
}
