package org.fadeline.ui.window;

import java.util.ArrayList;
import java.util.List;
import org.fadeline.ui.control.Screen;
import org.fadeline.ui.control.command.Command;
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
  final Command keys;
  final Command about;
  final Command save;
  final Command saveAs;
  final Command larger;
  final Command smaller;

  WindowCommands(
      MainWindow window, MatchChooser chooser, Workbench bench, PreferenceStore preferences) {
    this.window = window;
    this.bench = bench;
    this.preferences = preferences;
    open = Command.everywhere(GROUP, "Open a match", chooser::open, "Shortcut+O");
    save = Command.everywhere(GROUP, "Save", chooser::save, "Shortcut+S");
    saveAs = Command.everywhere(GROUP, "Save as", chooser::saveAs, "Shortcut+Shift+S");
    close = Command.everywhere(GROUP, "Close the match", bench::closeSession, "Shortcut+W");
    help = Command.everywhere(GROUP, "Help", window::help, "F1");
    keys = Command.everywhere(GROUP, "List of keys", window::keys, "Shift+Slash");
    about = Command.everywhere(GROUP, "About Fadeline", window::about);
    larger = Command.everywhere(GROUP, "Larger text", () -> text(10), "Shortcut+Shift+PERIOD");
    smaller = Command.everywhere(GROUP, "Smaller text", () -> text(-10), "Shortcut+Shift+COMMA");
  }

  void onMenu(Runnable show) {
    menu = show;
  }

  List<Command> all(List<Screen> screens) {
    List<Command> all =
        new ArrayList<>(
            List.of(
                open,
                save,
                saveAs,
                close,
                Command.everywhere(GROUP, "Menu", () -> menu.run(), "F10"),
                Command.everywhere(GROUP, "Next theme", this::nextLook, "Shortcut+T"),
                larger,
                smaller,
                help,
                keys,
                about,
                Command.everywhere(GROUP, "Matches", this::showStart, "Shortcut+M")));
    for (Screen screen : screens.subList(0, Math.min(9, screens.size()))) {
      String key = "Shortcut+" + (screens.indexOf(screen) + 1);
      all.add(Command.everywhere(GROUP, screen.title(), () -> show(screen), key));
    }
    return all;
  }

  void show(Screen screen) {
    window.show(screen);
  }

  void showStart() {
    window.showStart();
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
