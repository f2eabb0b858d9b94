package org.fadeline.ui.talk;

import java.util.List;
import java.util.function.Consumer;
import java.util.function.Function;
import javafx.scene.Node;
import javafx.scene.control.ComboBox;
import javafx.util.StringConverter;
import org.jspecify.annotations.Nullable;

/**
 * A choice of one, with its name above it; what the program shows in it is not told back.
 *
 * @param <T> type of the values
 */
final class Choice<T> {
  private final ComboBox<T> box = new ComboBox<>();
  private final Node view;
  private boolean filling;

  Choice(String name, Function<T, String> label, Consumer<T> choose) {
    box.setAccessibleText(name);
    box.setConverter(
        new StringConverter<>() {
          @Override
          public String toString(T value) {
            // Null is also what the box holds before anything is chosen.
            return value == null && !box.getItems().contains(value) ? "" : label.apply(value);
          }

          @Override
          public T fromString(String text) {
            throw new UnsupportedOperationException("chosen, never typed");
          }
        });
    box.setOnAction(
        e -> {
          if (!filling) {
            choose.accept(box.getValue());
          }
        });
    view = Fields.labelled(name, box);
  }

  Node view() {
    return view;
  }

  ComboBox<T> box() {
    return box;
  }

  void offer(List<T> values) {
    if (!box.getItems().equals(values)) {
      filling = true;
      box.getItems().setAll(values);
      filling = false;
    }
  }

  void show(@Nullable T value) {
    filling = true;
    box.getSelectionModel().select(value);
    box.setValue(value);
    filling = false;
  }
}
