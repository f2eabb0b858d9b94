package org.fadeline.ui.window;

import java.nio.file.Path;
import javafx.scene.Node;
import org.fadeline.io.SessionNames;
import org.fadeline.ui.control.file.PathChooser;
import org.fadeline.ui.control.file.PathChooser.Kind;
import org.fadeline.ui.control.file.PathChooser.Question;
import org.fadeline.ui.state.OpenSession;
import org.fadeline.ui.state.PreferenceStore;
import org.fadeline.ui.state.Workbench;

/** Asks for the file a match is opened from or saved to. */
final class MatchChooser {

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
    Path chosen =
        paths.open(
            Question.of("Open a match", owner)
                .near(preferences.get().recentFolder())
                .ofKinds(Kind.SESSIONS_AND_TABLES, Kind.ALL));
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
                .named(open.source().name() + SessionNames.ENDING)
                .ofKinds(Kind.SESSIONS),
            SessionNames.ENDING);
    if (chosen != null) {
      bench.editing().saveAs(chosen);
    }
  }
}
