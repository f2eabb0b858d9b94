package org.fadeline.ui.control.form;

import java.util.ArrayList;
import java.util.List;
import java.util.function.Consumer;
import java.util.function.Function;
import javafx.scene.control.ToggleButton;
import javafx.scene.control.ToggleGroup;
import javafx.scene.layout.HBox;
import javafx.scene.layout.Region;

/**
 * A choice of one among a few, side by side.
 *
 * @param <T> type of the values
 */
public class Segments<T> extends HBox {
  private final List<T> values;
  private final List<ToggleButton> buttons = new ArrayList<>();

  /**
   * Makes the choice.
   *
   * @param words what is chosen, for the screen reader
   * @param label the text of a value
   * @param choose is told when the user chooses
   */
  public Segments(String words, List<T> values, Function<T, String> label, Consumer<T> choose) {
    this.values = List.copyOf(values);
    getStyleClass().add("segments");
    setMaxHeight(Region.USE_PREF_SIZE);
    setMinWidth(Region.USE_PREF_SIZE);
    setMaxWidth(Region.USE_PREF_SIZE);
    ToggleGroup group = new ToggleGroup();
    for (T value : values) {
      ToggleButton button = new ToggleButton(label.apply(value));
      button.getStyleClass().setAll("segment");
      button.setAccessibleText(words + ": " + label.apply(value));
      button.setToggleGroup(group);
      button.setMinWidth(Region.USE_PREF_SIZE);
      button.setOnAction(
          e -> {
            // A second press must not leave nothing chosen.
            button.setSelected(true);
            choose.accept(value);
          });
      buttons.add(button);
      getChildren().add(button);
    }
  }

  /** Shows a value as chosen; one that is not among them chooses nothing. */
  public final void choose(T value) {
    int index = values.indexOf(value);
    for (int i = 0; i < buttons.size(); i++) {
      buttons.get(i).setSelected(i == index);
    }
  }

  /** Returns the button of a value. */
  public final ToggleButton button(T value) {
    return buttons.get(values.indexOf(value));
  }
}
