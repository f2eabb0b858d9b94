package org.fadeline.ui.talk;

import java.time.ZoneId;
import java.time.ZoneOffset;
import java.util.Optional;
import java.util.function.Consumer;
import javafx.css.PseudoClass;
import javafx.scene.Node;
import javafx.scene.control.TextField;
import org.fadeline.model.Session;
import org.fadeline.ui.control.Say;
import org.jspecify.annotations.Nullable;

/** A clock time of a match, or none. */
final class TimeField {
  private static final PseudoClass ERROR = PseudoClass.getPseudoClass("error");

  private final TextField field = new TextField();
  private final Consumer<@Nullable Long> choose;
  private final Node view;
  private ZoneId zone = ZoneOffset.UTC;
  private long near;
  private String shown = "";

  /**
   * Makes a field.
   *
   * @param none what an empty field means
   */
  TimeField(String name, String none, Consumer<@Nullable Long> choose) {
    this.choose = choose;
    field.setPromptText(none);
    field.setPrefColumnCount(7);
    field.setAccessibleText(name + ", a clock time; empty means " + none);
    field.setOnAction(e -> take());
    field
        .focusedProperty()
        .addListener(
            (p, before, focused) -> {
              if (!focused) {
                take();
              }
            });
    view = Fields.labelled(name, field);
  }

  Node view() {
    return view;
  }

  void show(@Nullable Long at, @Nullable Session session) {
    if (session != null) {
      zone = session.occasion().zone();
      near = session.match().allIn() + session.match().lengthMillis() / 2;
    }
    String before = shown;
    shown = at == null ? "" : at % 60_000 == 0 ? Say.shortClock(at, zone) : Say.clock(at, zone);
    if (field.isFocused() && shown.equals(before) && !field.getText().equals(shown)) {
      // Something else has changed or been drawn while a time is being typed here.
      return;
    }
    field.setText(shown);
    field.pseudoClassStateChanged(ERROR, false);
  }

  private void take() {
    String text = field.getText().strip();
    if (text.equals(shown)) {
      field.pseudoClassStateChanged(ERROR, false);
      return;
    }
    Optional<Long> at = Say.typedTime(text, near, zone);
    field.pseudoClassStateChanged(ERROR, at.isEmpty() && !text.isEmpty());
    if (at.isPresent() || text.isEmpty()) {
      choose.accept(at.orElse(null));
    }
  }
}
