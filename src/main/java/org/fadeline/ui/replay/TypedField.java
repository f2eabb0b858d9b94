package org.fadeline.ui.replay;

import java.util.function.Predicate;
import javafx.application.Platform;
import javafx.css.PseudoClass;
import javafx.scene.control.TextField;
import javafx.scene.input.KeyCode;
import javafx.scene.input.KeyEvent;
import javafx.scene.layout.Region;
import org.fadeline.ui.control.command.OwnKeys;

/**
 * A field in which something of the record stands: what is typed is taken with Enter or when the
 * field is left, and Esc puts back what stood there.
 */
final class TypedField extends TextField implements OwnKeys {
  private static final PseudoClass ERROR = PseudoClass.getPseudoClass("error");

  private final Predicate<String> take;
  private String stands;

  /**
   * Makes a field.
   *
   * @param text what stands in it
   * @param columns its width, in letters
   * @param words what it is, for those who do not see it
   * @param take takes a typed text; returns false where it cannot be used
   */
  TypedField(String text, int columns, String words, Predicate<String> take) {
    super(text);
    this.stands = text;
    this.take = take;
    setPrefColumnCount(columns);
    setMinWidth(Region.USE_PREF_SIZE);
    setAccessibleText(words);
    setOnAction(e -> take());
    // Later: what is typed may change the record, and with it the field that gets the focus now.
    focusedProperty()
        .addListener(
            (p, before, now) -> {
              if (!now) {
                Platform.runLater(this::take);
              }
            });
    addEventFilter(
        KeyEvent.KEY_PRESSED,
        key -> {
          if (uses(key)) {
            setText(stands);
            selectAll();
            key.consume();
          }
        });
    textProperty().addListener((p, before, now) -> pseudoClassStateChanged(ERROR, false));
  }

  @Override
  public boolean uses(KeyEvent key) {
    return key.getCode() == KeyCode.ESCAPE && !getText().equals(stands);
  }

  private void take() {
    String typed = getText();
    if (!typed.equals(stands)) {
      boolean usable = take.test(typed);
      stands = usable ? typed : stands;
      pseudoClassStateChanged(ERROR, !usable);
    }
  }
}
