package org.fadeline.ui.replay;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.function.UnaryOperator;
import javafx.scene.control.CheckMenuItem;
import javafx.scene.control.Menu;
import javafx.scene.control.MenuButton;
import javafx.scene.control.MenuItem;
import javafx.scene.control.TextInputDialog;
import org.fadeline.model.Line;
import org.fadeline.model.Session;
import org.fadeline.ui.control.NodeMenu;
import org.fadeline.ui.control.Say;
import org.fadeline.ui.control.Watch;
import org.fadeline.ui.state.Workbench;
import org.fadeline.ui.state.WorkbenchState;

/** The lanes: which are shown, in what order, and what they are called. */
final class LinesMenu {
  private final Workbench bench;
  private final MenuButton view = new MenuButton("Lines");

  LinesMenu(Workbench bench) {
    this.bench = bench;
    view.setId("lines-menu");
    view.getStyleClass().add("flat");
    view.setAccessibleText("Lines: show, hide, order, rename");
    view.setMinWidth(MenuButton.USE_PREF_SIZE);
    Watch.part(
        bench.stateProperty(),
        s -> List.of(linesOf(s), s.choices().hiddenLines(), bench.editing().allowed()),
        shown -> fill());
  }

  MenuButton view() {
    return view;
  }

  private static List<Line> linesOf(WorkbenchState state) {
    return state.open() == null ? List.of() : state.open().session().lines();
  }

  private void fill() {
    List<Line> lines = linesOf(bench.state());
    List<MenuItem> items = new ArrayList<>();
    for (int i = 0; i < lines.size(); i++) {
      items.add(menu(lines, i));
    }
    view.getItems().setAll(items);
    long hidden = bench.state().choices().hiddenLines().size();
    view.setText(hidden == 0 ? "Lines" : "Lines, " + hidden + " hidden");
  }

  private Menu menu(List<Line> lines, int index) {
    Line line = lines.get(index);
    Menu menu = new Menu(Say.capital(line.name()));
    menu.setMnemonicParsing(false);
    CheckMenuItem shown = new CheckMenuItem("Shown");
    shown.setSelected(!bench.state().choices().hiddenLines().contains(line.id()));
    shown.setOnAction(e -> bench.showLine(line.id(), shown.isSelected()));
    MenuItem up = NodeMenu.item("Move up", () -> order(index, index - 1, line));
    up.setDisable(index == 0 || !bench.editing().allowed());
    MenuItem down = NodeMenu.item("Move down", () -> order(index, index + 1, line));
    down.setDisable(index == lines.size() - 1 || !bench.editing().allowed());
    MenuItem rename = NodeMenu.item("Rename…", () -> rename(line));
    rename.setDisable(!bench.editing().allowed());
    menu.getItems().addAll(shown, up, down, rename);
    return menu;
  }

  private void order(int from, int to, Line line) {
    bench
        .editing()
        .edit(
            "Move " + line.name(),
            lines(
                l -> {
                  Collections.swap(l, from, to);
                  return l;
                }));
  }

  private void rename(Line line) {
    TextInputDialog dialog = new TextInputDialog(line.name());
    dialog.initOwner(view.getScene().getWindow());
    dialog.setTitle("Rename a line");
    dialog.setHeaderText(null);
    dialog.setGraphic(null);
    dialog.setContentText("Name of the line");
    dialog
        .showAndWait()
        .ifPresent(name -> bench.editing().edit("Rename " + line.name(), renamed(line, name)));
  }

  /**
   * Returns the change that gives a line another name; a blank one is no name and changes nothing.
   */
  static UnaryOperator<Session> renamed(Line line, String name) {
    return lines(
        all -> {
          if (!name.isBlank()) {
            all.replaceAll(l -> l.id().equals(line.id()) ? l.withName(name.strip()) : l);
          }
          return all;
        });
  }

  private static UnaryOperator<Session> lines(UnaryOperator<List<Line>> change) {
    return session -> session.withLines(change.apply(new ArrayList<>(session.lines())));
  }
}
