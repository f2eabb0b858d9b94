package org.fadeline.ui.window;

import java.nio.file.Path;
import java.util.List;
import java.util.function.Consumer;
import java.util.function.Function;
import javafx.scene.control.CheckMenuItem;
import javafx.scene.control.Menu;
import javafx.scene.control.MenuButton;
import javafx.scene.control.MenuItem;
import javafx.scene.control.RadioMenuItem;
import javafx.scene.control.SeparatorMenuItem;
import javafx.scene.control.ToggleGroup;
import org.fadeline.io.SessionNames;
import org.fadeline.io.open.SampleSessions;
import org.fadeline.model.Units;
import org.fadeline.ui.control.Say;
import org.fadeline.ui.control.Watch;
import org.fadeline.ui.control.command.Command;
import org.fadeline.ui.state.PreferenceStore;
import org.fadeline.ui.state.Preferences;
import org.fadeline.ui.state.Workbench;

/** The menu in the header. */
final class WindowMenu {
  private final Workbench bench;
  private final WindowCommands commands;
  private final PreferenceStore preferences;

  WindowMenu(Workbench bench, WindowCommands commands, PreferenceStore preferences) {
    this.bench = bench;
    this.commands = commands;
    this.preferences = preferences;
  }

  void fill(MenuButton menu) {
    menu.getItems()
        .addAll(
            item(commands.open, "Open a match…"),
            recent(),
            samples(),
            item(commands.save, "Save"),
            item(commands.saveAs, "Save as…"),
            item(commands.close, "Close the match"),
            new SeparatorMenuItem(),
            choice(
                "Weights in",
                List.of(Units.Weight.values()),
                w -> w == Units.Weight.KG ? "Kilograms" : "Pounds and ounces",
                p -> p.units().weight(),
                w -> preferences.change(p -> p.withUnits(p.units().withWeight(w)))),
            choice(
                "Distances in",
                List.of(Units.Length.values()),
                l -> l == Units.Length.M ? "Metres" : "Feet",
                p -> p.units().length(),
                l -> preferences.change(p -> p.withUnits(p.units().withLength(l)))),
            choice(
                "Theme",
                List.of(Preferences.Look.values()),
                Preferences.Look::label,
                Preferences::look,
                commands::look),
            choice(
                "Text size",
                List.of(90, 100, 115, 130, 150, 175, 200),
                percent -> percent + "%",
                Preferences::textPercent,
                percent -> preferences.change(p -> p.withTextPercent(percent))),
            motion(),
            new SeparatorMenuItem(),
            item(commands.help, "Help"),
            item(commands.keys, "List of keys"),
            item(commands.about, "About Fadeline"));
  }

  private static MenuItem item(Command command, String title) {
    MenuItem item = new MenuItem(title);
    item.setOnAction(e -> command.action().run());
    if (!command.keys().isEmpty()) {
      // Shown only: the keys themselves are taken by the key desk.
      item.setText(title + "\t" + command.keys().get(0).getDisplayText());
    }
    return item;
  }

  private Menu recent() {
    Menu menu = new Menu("Opened lately");
    Watch.part(
        preferences.property(),
        Preferences::recent,
        paths -> {
          menu.getItems().setAll(paths.stream().map(p -> file(Path.of(p))).toList());
          menu.setDisable(paths.isEmpty());
        });
    return menu;
  }

  private Menu samples() {
    Menu menu = new Menu("Samples");
    menu.getItems().add(new MenuItem("Looking…"));
    menu.setOnShowing(
        e -> {
          List<MenuItem> found =
              SampleSessions.find().stream().map(s -> file(s, Say.title(s))).toList();
          menu.getItems().setAll(found.isEmpty() ? List.of(new MenuItem("None found")) : found);
        });
    return menu;
  }

  private MenuItem file(Path path) {
    return file(path, SessionNames.bare(path));
  }

  private MenuItem file(Path path, String title) {
    MenuItem item = new MenuItem(title);
    item.setMnemonicParsing(false);
    item.setOnAction(e -> bench.open(path));
    return item;
  }

  private <T> Menu choice(
      String title,
      List<T> values,
      Function<T, String> label,
      Function<Preferences, T> now,
      Consumer<T> choose) {
    Menu menu = new Menu(title);
    ToggleGroup group = new ToggleGroup();
    for (T value : values) {
      RadioMenuItem item = new RadioMenuItem(label.apply(value));
      item.setToggleGroup(group);
      item.setOnAction(e -> choose.accept(value));
      Watch.part(preferences.property(), p -> now.apply(p).equals(value), item::setSelected);
      menu.getItems().add(item);
    }
    return menu;
  }

  private CheckMenuItem motion() {
    CheckMenuItem item = new CheckMenuItem("Let landed fish arrive");
    Watch.part(preferences.property(), Preferences::motion, item::setSelected);
    item.setOnAction(e -> preferences.change(p -> p.withMotion(item.isSelected())));
    return item;
  }
}
