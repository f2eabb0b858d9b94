package org.fadeline.ui.control.form;

import java.util.function.UnaryOperator;
import javafx.css.PseudoClass;
import javafx.scene.control.Label;
import javafx.scene.control.TextField;
import javafx.scene.layout.VBox;
import org.fadeline.model.Units;
import org.fadeline.ui.control.Labels;
import org.fadeline.ui.control.Nodes;
import org.fadeline.ui.control.Say;
import org.jspecify.annotations.Nullable;

/**
 * A field with its name above and, where the text cannot be used, what is wrong below. What is
 * typed becomes a change of the record when Enter is pressed or the field is left.
 *
 * @param <T> the record
 */
public final class EntryBox<T> extends VBox {
  private static final PseudoClass ERROR = PseudoClass.getPseudoClass("error");

  private final Entry<T> entry;
  private final Commit<T> commit;
  private final TextField field = new TextField();
  private final Label error = new Label();
  private @Nullable T subject;
  private Units units = Units.LB_OZ_AND_METRES;
  private String shown = "";

  /**
   * Takes a change of the record.
   *
   * @param <T> the record
   */
  @FunctionalInterface
  public interface Commit<T> {
    /** Changes the record; {@code name} is that of the step. */
    void change(String name, UnaryOperator<T> change);
  }

  /** Makes an empty field with its name above. */
  public EntryBox(Entry<T> entry, Commit<T> commit) {
    this(entry, commit, true);
  }

  /**
   * Makes an empty field.
   *
   * @param named whether its name stands above it; in a table its column says it
   */
  public EntryBox(Entry<T> entry, Commit<T> commit, boolean named) {
    this.entry = entry;
    this.commit = commit;
    Label label = Labels.line(entry.label(), "quiet");
    label.setLabelFor(field);
    label.setWrapText(true);
    label.setMinHeight(USE_PREF_SIZE);
    field.setId(entry.id());
    field.setPromptText(entry.prompt());
    field.setAccessibleText(entry.label());
    field.setPrefColumnCount(6);
    field.setMaxWidth(Double.MAX_VALUE);
    error.getStyleClass().add("warning-text");
    error.setId(entry.id() + "-error");
    error.setWrapText(true);
    error.setMinHeight(USE_PREF_SIZE);
    tell(null);
    setSpacing(2);
    setMaxWidth(Double.MAX_VALUE);
    getChildren().addAll(field, error);
    if (named) {
      getChildren().add(0, label);
    }
    field.setOnAction(e -> take());
    field.focusedProperty().addListener((p, before, now) -> leave(now));
  }

  private void leave(boolean focused) {
    if (!focused) {
      take();
    }
  }

  /** Shows the value of a record; a text that could not be used gives way to it. */
  public void show(T newSubject, Units newUnits, boolean editable) {
    boolean same = newSubject.equals(subject) && newUnits.equals(units);
    subject = newSubject;
    units = newUnits;
    field.setEditable(editable);
    if (same) {
      return;
    }
    String text = entry.shows().text(newSubject, newUnits);
    if (!text.equals(shown) || !field.isFocused()) {
      shown = text;
      field.setText(text);
      tell(null);
    }
  }

  private void take() {
    T now = subject;
    String typed = field.getText();
    if (now == null || !field.isEditable() || typed.equals(shown)) {
      tell(null);
      return;
    }
    Units in = units;
    try {
      // Tried first, so that what is wrong is said here and not over the whole window.
      T after = entry.takes().with(now, typed, in);
      tell(null);
      shown = typed;
      if (after.equals(now)) {
        shown = entry.shows().text(now, in);
        field.setText(shown);
      } else {
        commit.change(entry.step(), of -> entry.takes().with(of, typed, in));
      }
    } catch (IllegalArgumentException wrong) {
      tell(String.valueOf(wrong.getMessage()));
    }
  }

  private void tell(@Nullable String wrong) {
    error.setText(wrong == null ? "" : Say.capital(wrong) + ".");
    Nodes.show(error, wrong != null);
    field.pseudoClassStateChanged(ERROR, wrong != null);
    field.setAccessibleHelp(wrong);
  }

  /** Returns the field itself. */
  public TextField field() {
    return field;
  }
}
