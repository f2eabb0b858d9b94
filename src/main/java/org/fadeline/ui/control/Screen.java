package org.fadeline.ui.control;

import java.util.List;
import javafx.scene.Node;
import org.fadeline.ui.control.command.Command;

/** One screen of the window. */
public interface Screen {
  /** Returns what the window must know of it; always the same. */
  ScreenFacts facts();

  /** Returns its name, as on its tab. */
  default String title() {
    return facts().title();
  }

  /** Returns what it shows; always the same node. */
  Node view();

  /** Returns its commands, for the keyboard and the list of keys. */
  List<Command> commands();

  /** Takes the keyboard's focus to where the screen's keys work. */
  void takeFocus();

  /** Is told when the window is closed for good. */
  default void close() {}

  /** Is told when the screen is shown or put away; a hidden screen need not draw. */
  default void shown(boolean shown) {}
}
