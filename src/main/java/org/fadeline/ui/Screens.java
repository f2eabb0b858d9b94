package org.fadeline.ui;

import java.util.List;
import org.fadeline.ui.compare.CompareScreen;
import org.fadeline.ui.control.Navigation;
import org.fadeline.ui.control.PathChooser;
import org.fadeline.ui.control.Screen;
import org.fadeline.ui.imports.ImportScreen;
import org.fadeline.ui.log.LogScreen;
import org.fadeline.ui.replay.ReplayScreen;
import org.fadeline.ui.review.ReviewScreen;
import org.fadeline.ui.season.SeasonScreen;
import org.fadeline.ui.setup.SetupScreen;
import org.fadeline.ui.state.PreferenceStore;
import org.fadeline.ui.state.Workbench;
import org.fadeline.ui.talk.TalkScreen;
import org.fadeline.ui.weighin.WeighInScreen;

/** Every screen of the window, in the order of the tabs. */
final class Screens {
  private Screens() {}

  /** Returns the screens, where {@code paths} answers which file or folder is meant. */
  static List<Screen> of(
      Workbench bench, PreferenceStore preferences, Navigation navigation, PathChooser paths) {
    return List.of(
        new ReplayScreen(bench, preferences, paths),
        new ReviewScreen(bench, preferences, navigation, paths),
        new CompareScreen(bench, preferences, paths),
        new LogScreen(bench, preferences, paths),
        new SetupScreen(bench, preferences, paths),
        new ImportScreen(bench, preferences, navigation, paths),
        new WeighInScreen(bench, preferences),
        new TalkScreen(bench, preferences, paths),
        new SeasonScreen(bench, preferences, navigation, paths));
  }
}
