package org.fadeline.ui;

import java.nio.file.Files;
import java.nio.file.Path;
import javafx.scene.Node;
import org.fadeline.ui.control.file.PathChooser;
import org.fadeline.ui.control.file.PathChooser.Kind;
import org.fadeline.ui.control.file.PathChooser.Question;
import org.fadeline.ui.state.OpenSession;
import org.fadeline.ui.state.PreferenceStore;
import org.fadeline.ui.state.Workbench;

/** Asks for the file a match is opened from or saved to. */
final class MatchChooser {
  private static final String ENDING = ".session.json";

  private final Node owner;
  private final Workbench bench;
  private final PreferenceStore preferences;
  private final PathChooser paths;

  MatchChooser(Node owner, Workbench bench, PreferenceStore preferences, PathChooser paths) {
    this.owner = owner;
    this.bench = bench;
    this.preferences = preferences;
    this.paths = paths;
  }

  /** Lets the user choose a file to open, beginning in the folder used last. */
  void open() {
    Path near =
        preferences.get().recent().stream()
            .map(path -> Path.of(path).getParent())
            .filter(folder -> folder != null && Files.isDirectory(folder))
            .findFirst()
            .orElse(null);
    Path chosen =
        paths.open(
            Question.of("Open a match", owner)
                .near(near)
                .ofKinds(Kind.of("Sessions and event tables", "*" + ENDING, "*.csv"), Kind.ALL));
    if (chosen != null) {
      bench.open(chosen);
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
    Path chosen =
        paths.save(
            Question.of("Save the match", owner)
                .named(open.source().name() + ENDING)
                .ofKinds(Kind.of("Sessions", "*" + ENDING)),
            ENDING);
    if (chosen != null) {
      bench.editing().saveAs(chosen);
    }
  }
}
