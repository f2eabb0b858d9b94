package org.fadeline.ui;

import java.util.List;
import org.fadeline.ui.control.Command;
import org.fadeline.ui.state.PreferenceStore;
import org.fadeline.ui.state.Preferences;
import org.fadeline.ui.state.Workbench;

/** The commands that every screen has. */
final class WindowCommands {
  private static final String GROUP = "Window";

  private final MainWindow window;
  private final Workbench bench;
  private final PreferenceStore preferences;
  private Runnable menu = () -> {};

  final Command open;
  final Command close;
  final Command help;
  final Command save;
  final Command saveAs;
  final Command larger;
  final Command smaller;

  WindowCommands(MainWindow window, Workbench bench, PreferenceStore preferences) {
    this.window = window;
    this.bench = bench;
    this.preferences = preferences;
    open = Command.everywhere(GROUP, "Open a match", window::choose, "Shortcut+O");
    save = Command.everywhere(GROUP, "Save", window::save, "Shortcut+S");
    saveAs = Command.everywhere(GROUP, "Save as", window::saveAs, "Shortcut+Shift+S");
    close = Command.everywhere(GROUP, "Close the match", bench::closeSession, "Shortcut+W");
    help = Command.everywhere(GROUP, "List of keys", window::keys, "F1", "Shift+Slash");
    larger = Command.everywhere(GROUP, "Larger text", () -> text(10), "Shortcut+Shift+PERIOD");
    smaller = Command.everywhere(GROUP, "Smaller text", () -> text(-10), "Shortcut+Shift+COMMA");
  }

  void onMenu(Runnable show) {
    menu = show;
  }

  List<Command> all() {
    return List.of(
        open,
        save,
        saveAs,
        close,
        Command.everywhere(GROUP, "Menu", () -> menu.run(), "F10"),
        Command.everywhere(GROUP, "Next theme", this::nextLook, "Shortcut+T"),
        larger,
        smaller,
        help,
        Command.everywhere(GROUP, "Replay", () -> showScreen(0), "Shortcut+1"),
        Command.everywhere(GROUP, "Review", () -> showScreen(1), "Shortcut+2"));
  }

  void showScreen(int index) {
    window.showScreen(index);
  }

  void text(int percent) {
    preferences.change(p -> p.withTextPercent(p.textPercent() + percent));
  }

  void look(Preferences.Look look) {
    preferences.change(p -> p.withLook(look));
  }

  private void nextLook() {
    List<Preferences.Look> looks = List.of(Preferences.Look.values());
    look(looks.get((looks.indexOf(preferences.get().look()) + 1) % looks.size()));
  }

  Workbench bench() {
    return bench;
  }
}
