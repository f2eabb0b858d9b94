package org.fadeline.ui.compare;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import javafx.geometry.Pos;
import javafx.scene.Node;
import javafx.scene.control.Button;
import javafx.scene.control.Label;
import javafx.scene.control.MenuButton;
import javafx.scene.control.MenuItem;
import javafx.scene.control.SeparatorMenuItem;
import javafx.scene.layout.Region;
import javafx.scene.layout.StackPane;
import javafx.scene.layout.VBox;
import org.fadeline.io.open.SampleSessions;
import org.fadeline.ui.control.Labels;
import org.fadeline.ui.control.NodeMenu;
import org.fadeline.ui.control.Say;
import org.fadeline.ui.control.file.FileDrops;
import org.fadeline.ui.control.file.PathChooser;
import org.fadeline.ui.control.file.PathChooser.Kind;
import org.fadeline.ui.control.file.PathChooser.Question;
import org.fadeline.ui.state.OpenSession;
import org.fadeline.ui.state.PreferenceStore;
import org.fadeline.ui.state.Workbench;

/** Chooses the second match: a file, a recent one, a sample, or one dropped here. */
final class SecondChooser {
  private static final int MOST = 6;

  private final Workbench bench;
  private final PreferenceStore preferences;
  private final CompareBench compare;
  private final PathChooser paths;

  SecondChooser(
      Workbench bench, PreferenceStore preferences, CompareBench compare, PathChooser paths) {
    this.bench = bench;
    this.preferences = preferences;
    this.compare = compare;
    this.paths = paths;
  }

  /** Asks for a file. */
  void choose(Node owner) {
    Path chosen =
        paths.open(
            Question.of("Choose the second match", owner)
                .near(preferences.get().recentFolder())
                .ofKinds(Kind.SESSIONS_AND_TABLES, Kind.ALL));
    if (chosen != null) {
      compare.open(chosen);
    }
  }

  /** Returns recent matches and samples but for the one in hand. */
  private List<Path> offered() {
    List<Path> all = new ArrayList<>();
    preferences.get().recent().stream().map(Path::of).limit(MOST).forEach(all::add);
    all.addAll(SampleSessions.find());
    OpenSession open = bench.state().open();
    Path inHand =
        open == null || open.source().path() == null
            ? null
            : Objects.requireNonNull(open.source().path()).toAbsolutePath();
    return all.stream()
        .map(Path::toAbsolutePath)
        .filter(path -> !path.equals(inHand))
        .filter(Files::isRegularFile)
        .distinct()
        .limit(2L * MOST)
        .toList();
  }

  /** Returns the menu of the head; its items are made when it opens. */
  MenuButton menu() {
    MenuButton menu = new MenuButton("Second match");
    menu.setId("second-match");
    menu.setAccessibleText("Choose the second match, exchange or put it away");
    menu.setMinWidth(Region.USE_PREF_SIZE);
    menu.getItems().add(new MenuItem("…"));
    menu.setOnShowing(e -> menu.getItems().setAll(items(menu)));
    return menu;
  }

  private List<MenuItem> items(Node owner) {
    List<MenuItem> items = new ArrayList<>();
    items.add(NodeMenu.item("From a file…", () -> choose(owner)));
    items.add(new SeparatorMenuItem());
    List<Path> known = offered();
    if (!known.isEmpty()) {
      known.forEach(path -> items.add(NodeMenu.item(Say.title(path), () -> compare.open(path))));
      items.add(new SeparatorMenuItem());
    }
    items.add(NodeMenu.item("Put the second match away", compare::close));
    return items;
  }

  /** Returns what is shown while there is no second match. */
  VBox invitation() {
    return invitation(offered());
  }

  VBox invitation(List<Path> known) {
    Label title = Labels.line("Set another match beside this one", "title");
    Label what =
        Labels.wrapped(
            "Both on one axis and replayed together: what each line paid an hour and how sure the"
                + " difference is, first bites after feeding, feed, spells, fades and stays, and"
                + " what differed most. Two days differ in more than this: weather, peg, fish and"
                + " company.");
    Button file = new Button("Choose the second match…");
    file.setId("choose-second");
    file.getStyleClass().add("main-button");
    file.setOnAction(e -> choose(file));
    Label drop =
        Labels.line(
            known.isEmpty()
                ? "or drop its file here"
                : "or drop its file here, or take one of these:",
            "quiet");
    VBox rows = new VBox(2);
    for (Path path : known) {
      Button row = new Button(Say.title(path));
      row.getStyleClass().add("row-button");
      row.setAccessibleHelp(path.toString());
      row.setOnAction(e -> compare.open(path));
      rows.getChildren().add(row);
    }
    VBox card = new VBox(12, title, what, file, drop);
    if (!known.isEmpty()) {
      card.getChildren().add(rows);
    }
    card.getStyleClass().add("sheet");
    card.setMaxSize(560, Region.USE_PREF_SIZE);
    card.setAlignment(Pos.CENTER_LEFT);
    return card;
  }

  /** Takes a file dropped on the screen as the second match. */
  void acceptDrops(StackPane screen) {
    FileDrops.on(screen, file -> true, compare::open);
  }
}
