package org.fadeline.ui.compare;

import java.io.File;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import javafx.scene.Node;
import javafx.scene.control.MenuButton;
import javafx.scene.control.MenuItem;
import javafx.stage.DirectoryChooser;
import javafx.stage.FileChooser;
import org.fadeline.analysis.compare.Comparison;
import org.fadeline.export.CompareFigureSet;
import org.fadeline.figure.FigureStyle;
import org.fadeline.figure.Theme;
import org.fadeline.io.WholeFile;
import org.fadeline.report.CompareJson;
import org.fadeline.report.CompareText;
import org.fadeline.ui.state.Activity;
import org.fadeline.ui.state.PreferenceStore;
import org.fadeline.ui.state.TaskService;
import org.fadeline.ui.state.Workbench;

/** Saves a comparison as figures, JSON or text, in the background. */
final class CompareSaves {
  private static final String SAVING = "compare-save";

  private final Workbench bench;
  private final PreferenceStore preferences;
  private final CompareBench compare;

  CompareSaves(Workbench bench, PreferenceStore preferences, CompareBench compare) {
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
    menu.setMinWidth(javafx.scene.layout.Region.USE_PREF_SIZE);
    menu.getItems()
        .addAll(
            item("This figure on the talk", putOnTalk),
            item("Figures as PNG and SVG…", () -> chooseFolder(menu)),
            item("Everything as JSON…", () -> chooseFile(menu, "json")),
            item("In words…", () -> chooseFile(menu, "txt")));
    return menu;
  }

  private static MenuItem item(String text, Runnable action) {
    MenuItem item = new MenuItem(text);
    item.setOnAction(e -> action.run());
    return item;
  }

  private void chooseFolder(Node owner) {
    DirectoryChooser chooser = new DirectoryChooser();
    chooser.setTitle("Folder for the figures");
    File folder = chooser.showDialog(owner.getScene().getWindow());
    if (folder != null) {
      figures(folder.toPath());
    }
  }

  private void chooseFile(Node owner, String ending) {
    FileChooser chooser = new FileChooser();
    chooser.setTitle("Save the comparison");
    chooser.setInitialFileName("comparison." + ending);
    File file = chooser.showSaveDialog(owner.getScene().getWindow());
    if (file != null) {
      words(file.toPath(), ending.equals("json"));
    }
  }

  /** Writes every figure into a folder, in the light theme. */
  void figures(Path folder) {
    Comparison comparison = compare.state().work().comparison();
    if (comparison != null) {
      FigureStyle style = FigureStyle.of(Theme.LIGHT, preferences.get().units());
      save(folder, () -> CompareFigureSet.write(comparison, style, folder));
    }
  }

  /** Writes everything as JSON, or as text. */
  void words(Path file, boolean json) {
    Comparison comparison = compare.state().work().comparison();
    if (comparison != null) {
      var units = preferences.get().units();
      save(
          file,
          () -> {
            String text =
                json ? CompareJson.toJson(comparison) : CompareText.toText(comparison, units);
            WholeFile.write(file, out -> out.write(text.getBytes(StandardCharsets.UTF_8)));
          });
    }
  }

  /** Writing that may fail. */
  private interface Step {
    void write() throws Exception;
  }

  private void save(Path target, Step step) {
    bench
        .tasks()
        .submit(
            SAVING,
            "Saving the comparison",
            progress -> {
              step.write();
              return target;
            },
            new TaskService.Answer<>(
                done -> bench.tell("Saved to " + done),
                failure ->
                    bench.report(
                        Activity.Trouble.of(
                            "The comparison was not saved",
                            target + ": " + failure.getMessage() + ". Choose another place."))));
  }
}
