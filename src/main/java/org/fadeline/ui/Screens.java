package org.fadeline.ui;

import java.util.ArrayList;
import java.util.List;
import javafx.application.Platform;
import org.fadeline.ui.compare.CompareScreen;
import org.fadeline.ui.control.Navigation;
import org.fadeline.ui.control.Screen;
import org.fadeline.ui.control.file.PathChooser;
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
    return late(bench, preferences, navigation, paths).stream().map(LateScreen::make).toList();
  }

  /** Returns the screens, each to be made once it is wanted. */
  static List<LateScreen> late(
      Workbench bench, PreferenceStore preferences, Navigation navigation, PathChooser paths) {
    return List.of(
        new LateScreen(ReplayScreen.FACTS, () -> new ReplayScreen(bench, preferences, paths)),
        new LateScreen(
            ReviewScreen.FACTS, () -> new ReviewScreen(bench, preferences, navigation, paths)),
        new LateScreen(CompareScreen.FACTS, () -> new CompareScreen(bench, preferences, paths)),
        new LateScreen(LogScreen.FACTS, () -> new LogScreen(bench, preferences, paths)),
        new LateScreen(SetupScreen.FACTS, () -> new SetupScreen(bench, preferences, paths)),
        new LateScreen(
            ImportScreen.FACTS, () -> new ImportScreen(bench, preferences, navigation, paths)),
        new LateScreen(WeighInScreen.FACTS, () -> new WeighInScreen(bench, preferences)),
        new LateScreen(TalkScreen.FACTS, () -> new TalkScreen(bench, preferences, paths)),
        new LateScreen(
            SeasonScreen.FACTS, () -> new SeasonScreen(bench, preferences, navigation, paths)));
  }

  /** Makes the screens still to be made one after another, letting the window live between two. */
  static void makeInTurn(List<LateScreen> screens) {
    List<LateScreen> rest = new ArrayList<>(screens);
    rest.removeIf(LateScreen::isMade);
    if (!rest.isEmpty()) {
      rest.get(0).make();
      Platform.runLater(() -> makeInTurn(rest));
    }
  }
}
