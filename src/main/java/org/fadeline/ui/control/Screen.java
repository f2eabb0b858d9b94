package org.fadeline.ui.control;

import java.util.List;
import javafx.scene.Node;
import org.fadeline.ui.control.command.Command;
import org.jspecify.annotations.Nullable;

/** One screen of the window. */
public interface Screen {
  /** Returns its name, as on its tab. */
  String title();

  /** Returns what it shows; always the same node. */
  Node view();

  /** Returns its commands, for the keyboard and the list of keys. */
  List<Command> commands();

  /** Takes the keyboard's focus to where the screen's keys work. */
  void takeFocus();

  /** Returns whether it shows the match in hand, and so has nothing to show without one. */
  default boolean needsSession() {
    return true;
  }

  /**
   * Returns whether it says of the match in hand what a match may not allow while it is on: rates,
   * pace, verdicts.
   */
  default boolean judges() {
    return needsSession();
  }

  /**
   * Returns what the first screen offers to begin here, such as "Set up a match", or null where
   * nothing begins here.
   */
  default @Nullable String offer() {
    return null;
  }

  /** Is told when the window is closed for good. */
  default void close() {}

  /** Is told when the screen is shown or put away; a hidden screen need not draw. */
  void shown(boolean shown);
}
