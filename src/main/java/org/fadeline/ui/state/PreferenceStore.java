package org.fadeline.ui.state;

import java.util.function.Consumer;
import java.util.function.UnaryOperator;
import javafx.beans.property.ReadOnlyObjectProperty;
import javafx.beans.property.ReadOnlyObjectWrapper;

/** The preferences as one property; each change is handed on to be kept. */
public final class PreferenceStore {
  private final ReadOnlyObjectWrapper<Preferences> preferences;
  private final Consumer<Preferences> keeper;

  /**
   * Starts from the given preferences.
   *
   * @param keeper is told of every change
   */
  public PreferenceStore(Preferences start, Consumer<Preferences> keeper) {
    this.preferences = new ReadOnlyObjectWrapper<>(start);
    this.keeper = keeper;
  }

  /** Returns the preferences as a property that only {@link #change} changes. */
  public ReadOnlyObjectProperty<Preferences> property() {
    return preferences.getReadOnlyProperty();
  }

  /** Returns the preferences. */
  public Preferences get() {
    return preferences.get();
  }

  /** Changes the preferences. */
  public void change(UnaryOperator<Preferences> step) {
    Preferences after = step.apply(preferences.get());
    if (!after.equals(preferences.get())) {
      preferences.set(after);
      keeper.accept(after);
    }
  }
}
