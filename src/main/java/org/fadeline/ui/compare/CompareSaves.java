package org.fadeline.ui.compare;

import java.nio.file.Path;
import java.util.List;
import java.util.function.Supplier;
import javafx.scene.Node;
import javafx.scene.control.MenuButton;
import javafx.scene.control.MenuItem;
import javafx.scene.layout.Region;
import org.fadeline.analysis.compare.Comparison;
import org.fadeline.export.CompareFigureSet;
import org.fadeline.export.PictureMaker;
import org.fadeline.figure.FigureSheet;
import org.fadeline.figure.FigureStyle;
import org.fadeline.figure.Theme;
import org.fadeline.io.WholeFile;
import org.fadeline.model.talk.Picture;
import org.fadeline.report.CompareJson;
import org.fadeline.report.CompareText;
import org.fadeline.ui.control.NodeMenu;
import org.fadeline.ui.control.file.PathChooser;
import org.fadeline.ui.control.file.PathChooser.Question;
import org.fadeline.ui.control.picture.Looks;
import org.fadeline.ui.control.picture.PictureSave;
import org.fadeline.ui.state.PreferenceStore;
import org.fadeline.ui.state.Workbench;

/** Saves a comparison as figures, JSON or text, in the background. */
final class CompareSaves {
  private static final String SAVING = "compare-save";

  private final Workbench bench;
  private final PreferenceStore preferences;
  private final CompareBench compare;
  private final PathChooser paths;
  private final Supplier<String> shown;

  CompareSaves(
      Workbench bench,
      PreferenceStore preferences,
      CompareBench compare,
      PathChooser paths,
      Supplier<String> shown) {
    this.paths = paths;
    this.shown = shown;
    this.bench = bench;
    this.preferences = preferences;
    this.compare = compare;
  }

  /**
   * Returns the menu that saves.
   *
   * @param putOnTalk puts the figure shown on the talk
   */
  MenuButton menu(Runnable putOnTalk) {
    MenuButton menu = new MenuButton("Save");
    menu.setId("save-comparison");
    menu.setAccessibleText("Save the comparison");
    menu.setMinWidth(Region.USE_PREF_SIZE);
    menu.getItems()
        .addAll(
            NodeMenu.item("This figure on the talk", putOnTalk),
            NodeMenu.item("This figure…", () -> one(menu)),
            NodeMenu.item("Figures as PNG and SVG…", () -> chooseFolder(menu)),
            NodeMenu.item("Everything as JSON…", () -> chooseFile(menu, "json")),
            NodeMenu.item("In words…", () -> chooseFile(menu, "txt")));
    List<String> names = menu.getItems().stream().map(MenuItem::getText).toList();
    menu.setOnShowing(
        e -> {
          for (int i = 0; i < names.size(); i++) {
            menu.getItems().get(i).setText(named(names.get(i)));
          }
        });
    return menu;
  }

  /** What leaves here holds both whole matches: said where the screen shows less than that. */
  private String named(String what) {
    if (bench.state().choices().hindsight()) {
      return what;
    }
    String plain = what.replace("…", "");
    return plain + ", with hindsight" + what.substring(plain.length());
  }

  /** Saves the figure of the page shown, or says why it cannot be. */
  void one(Node owner) {
    Comparison comparison = compare.state().work().comparison();
    Picture.Kind kind = ComparePictures.kind(shown.get()).orElse(null);
    if (comparison == null || kind == null) {
      bench.tell("There is no picture here to save");
      return;
    }
    Path file = PictureSave.ask(paths, owner, named(kind.label()));
    if (file != null) {
      FigureStyle style = Looks.saved(preferences.get());
      PictureSave.write(
          bench,
          file,
          () -> FigureSheet.of(PictureMaker.compared(kind, comparison, style), comparison));
    }
  }

  private void chooseFolder(Node owner) {
    Path folder = paths.folder(Question.of("Folder for the figures", owner));
    if (folder != null) {
      figures(folder);
    }
  }

  private void chooseFile(Node owner, String ending) {
    Path file =
        paths.save(
            Question.of("Save the comparison", owner).named("comparison." + ending), "." + ending);
    if (file != null) {
      words(file, ending.equals("json"));
    }
  }

  /** Writes every figure into a folder, in the light theme. */
  void figures(Path folder) {
    Comparison comparison = compare.state().work().comparison();
    if (comparison != null) {
      FigureStyle style = FigureStyle.of(Theme.LIGHT, preferences.get().units());
      bench.write(SAVING, folder, to -> CompareFigureSet.write(comparison, style, to));
    }
  }

  /** Writes everything as JSON, or as text. */
  void words(Path file, boolean json) {
    Comparison comparison = compare.state().work().comparison();
    if (comparison != null) {
      var units = preferences.get().units();
      bench.write(
          SAVING,
          file,
          to ->
              WholeFile.write(
                  to,
                  json ? CompareJson.toJson(comparison) : CompareText.toText(comparison, units)));
    }
  }
}
