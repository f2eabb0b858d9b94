package org.fadeline.ui.control;

import java.util.Objects;
import java.util.function.Consumer;
import java.util.function.Function;
import javafx.beans.value.ObservableValue;

/** Follows a part of a state, so that a view is told only of what concerns it. */
public final class Watch {
  private Watch() {}

  /**
   * Hands on a part of a property's value now and whenever that part changes.
   *
   * @param property the whole
   * @param part picks the part; equal parts count as unchanged
   * @param view is told
   */
  public static <S, P> void part(
      ObservableValue<S> property, Function<S, P> part, Consumer<P> view) {
    view.accept(part.apply(property.getValue()));
    property.addListener(
        (whole, before, after) -> {
          P now = part.apply(after);
          if (!Objects.equals(part.apply(before), now)) {
            view.accept(now);
          }
        });
  }
}
