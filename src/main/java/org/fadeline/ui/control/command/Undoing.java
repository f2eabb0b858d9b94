package org.fadeline.ui.control.command;

import java.util.List;
import org.fadeline.ui.state.Workbench;

/** Taking back the last step of the match in hand, on every screen that changes it. */
public final class Undoing {
  private Undoing() {}

  /** Returns undo and redo, for a heading in the list of keys. */
  public static List<Command> of(String group, Workbench bench) {
    return List.of(
        Command.of(group, "Undo", () -> bench.editing().undo(), "Shortcut+Z"),
        Command.of(group, "Redo", () -> bench.editing().redo(), "Shortcut+Shift+Z", "Shortcut+Y"));
  }
}
