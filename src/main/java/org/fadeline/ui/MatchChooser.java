package org.fadeline.ui;

import java.io.File;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Locale;
import javafx.stage.FileChooser;
import javafx.stage.FileChooser.ExtensionFilter;
import javafx.stage.Window;
import org.fadeline.ui.state.OpenSession;
import org.fadeline.ui.state.PreferenceStore;
import org.fadeline.ui.state.Workbench;

/** Asks for the file a match is opened from or saved to. */
final class MatchChooser {
  private static final String ENDING = ".session.json";

  private final Window owner;
  private final Workbench bench;
  private final PreferenceStore preferences;

  MatchChooser(Window owner, Workbench bench, PreferenceStore preferences) {
    this.owner = owner;
    this.bench = bench;
    this.preferences = preferences;
  }

  /** Lets the user choose a file to open, beginning in the folder used last. */
  void open() {
    FileChooser chooser = new FileChooser();
    chooser.setTitle("Open a match");
    chooser
        .getExtensionFilters()
        .addAll(
            new ExtensionFilter("Sessions and event tables", "*" + ENDING, "*.csv"),
            new ExtensionFilter("All files", "*"));
    preferences.get().recent().stream()
        .map(path -> Path.of(path).getParent())
        .filter(folder -> folder != null && Files.isDirectory(folder))
        .findFirst()
        .ifPresent(folder -> chooser.setInitialDirectory(folder.toFile()));
    File chosen = chooser.showOpenDialog(owner);
    if (chosen != null) {
      bench.open(chosen.toPath());
    }
  }

  /** Saves the match to its file, or asks for a name where it has none. */
  void save() {
    if (bench.state().open() != null && !bench.editing().save(false)) {
      saveAs();
    }
  }

  /** Asks for a name and saves the match there. */
  void saveAs() {
    OpenSession open = bench.state().open();
    if (open == null) {
      return;
    }
    FileChooser chooser = new FileChooser();
    chooser.setTitle("Save the match");
    chooser.getExtensionFilters().add(new ExtensionFilter("Sessions", List.of("*" + ENDING)));
    chooser.setInitialFileName(open.source().name() + ENDING);
    File chosen = chooser.showSaveDialog(owner);
    if (chosen != null) {
      boolean whole = chosen.getName().toLowerCase(Locale.ROOT).endsWith(ENDING);
      bench.editing().saveAs(whole ? chosen.toPath() : Path.of(chosen.getPath() + ENDING));
    }
  }
}
