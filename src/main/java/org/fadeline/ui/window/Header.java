package org.fadeline.ui.window;

import java.util.ArrayList;
import java.util.List;
import javafx.beans.binding.Bindings;
import javafx.geometry.Pos;
import javafx.scene.control.Label;
import javafx.scene.control.MenuButton;
import javafx.scene.control.OverrunStyle;
import javafx.scene.control.ToggleButton;
import javafx.scene.control.ToggleGroup;
import javafx.scene.layout.HBox;
import javafx.scene.layout.Region;
import javafx.scene.layout.VBox;
import org.fadeline.ui.control.Icon;
import org.fadeline.ui.control.Labels;
import org.fadeline.ui.control.Nodes;
import org.fadeline.ui.control.Say;
import org.fadeline.ui.control.Screen;
import org.fadeline.ui.control.Watch;
import org.fadeline.ui.state.OpenSession;
import org.fadeline.ui.state.PreferenceStore;
import org.fadeline.ui.state.Workbench;
import org.jspecify.annotations.Nullable;

/** The top of the window: name, tabs of the screens, the match in hand, the menu. */
final class Header {
  private final HBox view = new HBox(14);
  private final List<ToggleButton> tabs = new ArrayList<>();
  private final ToggleButton start;
  private final List<Screen> screens;
  private final Label title = new Label();
  private final Label kept = new Label();
  private final Label day = new Label();

  Header(
      Workbench bench, List<Screen> screens, WindowCommands commands, PreferenceStore preferences) {
    this.screens = screens;
    Label name = Labels.line("Fadeline", "wordmark");
    name.setMinWidth(Region.USE_PREF_SIZE);
    HBox nav = new HBox();
    nav.getStyleClass().add("nav");
    nav.setAlignment(Pos.CENTER_LEFT);
    start = tab("Matches", commands::showStart);
    for (Screen screen : screens) {
      tabs.add(tab(screen.title(), () -> commands.show(screen)));
    }
    nav.getChildren().add(start);
    nav.getChildren().addAll(tabs);
    ToggleGroup group = new ToggleGroup();
    group.getToggles().add(start);
    group.getToggles().addAll(tabs);
    Region space = Nodes.gap();
    title.getStyleClass().add("strong");
    title.setTextOverrun(OverrunStyle.ELLIPSIS);
    title.setMinWidth(0);
    day.getStyleClass().add("quiet");
    kept.setId("kept");
    kept.getStyleClass().add("quiet");
    kept.setMinWidth(Region.USE_PREF_SIZE);
    kept.managedProperty().bind(kept.textProperty().isNotEmpty());
    for (Label label : List.of(title, day)) {
      // Of a title squeezed to nothing beside large tabs not even the dots are shown.
      label
          .opacityProperty()
          .bind(Bindings.when(label.widthProperty().lessThan(60)).then(0).otherwise(1));
    }
    MenuButton menu = Icon.MENU.on(new MenuButton(), "Menu", "F10");
    new WindowMenu(bench, commands, preferences).fill(menu);
    HBox below = new HBox(10, kept, day);
    below.setAlignment(Pos.CENTER_RIGHT);
    VBox match = new VBox(title, below);
    match.setAlignment(Pos.CENTER_RIGHT);
    match.getStyleClass().add("match-in-hand");
    view.getChildren().addAll(name, nav, space, match, menu);
    view.setAlignment(Pos.CENTER_LEFT);
    view.getStyleClass().add("header");
    Watch.part(bench.stateProperty(), s -> s.open(), this::show);
    Watch.part(
        bench.stateProperty(),
        s -> List.of(s.open() != null, s.figuresBarred()),
        with -> offer(with.get(0), with.get(1)));
    commands.onMenu(menu::show);
  }

  HBox view() {
    return view;
  }

  private static ToggleButton tab(String title, Runnable show) {
    ToggleButton tab = new ToggleButton(title);
    tab.setMinWidth(Region.USE_PREF_SIZE);
    tab.setOnAction(
        e -> {
          // A click on the tab shown must not lift it.
          tab.setSelected(true);
          show.run();
        });
    return tab;
  }

  /** Marks the tab of the screen shown; none of them is the first screen. */
  void mark(@Nullable Screen screen) {
    (screen == null ? start : tabs.get(screens.indexOf(screen))).setSelected(true);
  }

  /** Returns what to call a session. */
  static String title(OpenSession open) {
    String title = open.session().occasion().title();
    return title.isBlank() ? open.source().name() : title;
  }

  private void offer(boolean isOpen, boolean barred) {
    for (int i = 0; i < tabs.size(); i++) {
      Screen screen = screens.get(i);
      boolean away = barred && screen.facts().judges();
      tabs.get(i).setDisable(away || (!isOpen && screen.facts().needsSession()));
      tabs.get(i)
          .setAccessibleHelp(
              away ? "Put away while the match is logged as it happens; see the Log" : null);
    }
  }

  private void show(@Nullable OpenSession open) {
    title.setText(open == null ? "" : title(open));
    day.setText(open == null ? "" : Say.day(open.session().occasion().date()));
    kept.setText(open == null ? "" : kept(open));
  }

  private static String kept(OpenSession open) {
    if (open.source().readOnly() != null) {
      return "read-only";
    }
    return open.history().unsaved() ? "not saved" : "";
  }
}
