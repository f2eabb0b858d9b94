package org.fadeline.ui.control;

import java.util.function.Consumer;

/** Lets one screen send the user to another without knowing it. */
public final class Navigation {
  private Consumer<String> target = title -> {};

  /** Makes a navigation that leads nowhere yet. */
  public Navigation() {}

  /** Sets who shows the screen of a given title. */
  public void leadTo(Consumer<String> newTarget) {
    target = newTarget;
  }

  /** Shows the screen of the given title; an unknown one does nothing. */
  public void show(String title) {
    target.accept(title);
  }
}
