package org.fadeline.ui.compare;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.List;
import javafx.scene.control.MenuButton;
import javafx.scene.control.MenuItem;
import org.fadeline.ui.FakePaths;
import org.fadeline.ui.HandMade;
import org.fadeline.ui.state.FakeDesk;
import org.fadeline.ui.state.PreferenceStore;
import org.fadeline.ui.state.Preferences;
import org.fadeline.ui.state.Workbench;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.testfx.api.FxToolkit;

/** What is saved of a comparison is with hindsight, and is called so where less is on screen. */
class CompareSavesTest {
  @BeforeAll
  static void startToolkit() throws Exception {
    FxToolkit.registerPrimaryStage();
  }

  private static List<String> offered(MenuButton menu) {
    menu.getOnShowing().handle(null);
    return menu.getItems().stream().map(MenuItem::getText).toList();
  }

  @Test
  void asKnownThenTheMenuSaysThatAllIsSavedWithHindsight() {
    Workbench bench = FakeDesk.opened(HandMade.session());
    PreferenceStore preferences = new PreferenceStore(Preferences.DEFAULT, changed -> {});
    MenuButton menu =
        new CompareSaves(
                bench, preferences, new CompareBench(bench), new FakePaths(), () -> "Timelines")
            .menu(() -> {});
    bench.hindsight(false);
    assertEquals(
        List.of(
            "This figure on the talk, with hindsight",
            "This figure, with hindsight…",
            "Figures as PNG and SVG, with hindsight…",
            "Everything as JSON, with hindsight…",
            "In words, with hindsight…"),
        offered(menu));
    bench.hindsight(true);
    assertEquals(
        List.of(
            "This figure on the talk",
            "This figure…",
            "Figures as PNG and SVG…",
            "Everything as JSON…",
            "In words…"),
        offered(menu));
  }
}
