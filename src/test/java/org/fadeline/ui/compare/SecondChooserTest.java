package org.fadeline.ui.compare;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import javafx.scene.Node;
import javafx.scene.control.Labeled;
import javafx.scene.layout.Pane;
import org.fadeline.ui.FakePaths;
import org.fadeline.ui.HandMade;
import org.fadeline.ui.state.FakeDesk;
import org.fadeline.ui.state.PreferenceStore;
import org.fadeline.ui.state.Preferences;
import org.fadeline.ui.state.Workbench;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.testfx.api.FxToolkit;

/** What is said while there is no second match. */
class SecondChooserTest {
  @BeforeAll
  static void startToolkit() throws Exception {
    FxToolkit.registerPrimaryStage();
  }

  private static List<String> said(List<Path> known) {
    Workbench bench = FakeDesk.opened(HandMade.session());
    PreferenceStore preferences = new PreferenceStore(Preferences.DEFAULT, changed -> {});
    SecondChooser chooser =
        new SecondChooser(bench, preferences, new CompareBench(bench), new FakePaths());
    List<String> said = new ArrayList<>();
    collect(chooser.invitation(known), said);
    return said.subList(2, said.size());
  }

  private static void collect(Node node, List<String> said) {
    if (node instanceof Labeled labeled) {
      said.add(labeled.getText());
    } else if (node instanceof Pane pane) {
      pane.getChildren().forEach(child -> collect(child, said));
    }
  }

  @Test
  void nothingIsPromisedWhereNoMatchIsKnown() {
    assertEquals(List.of("Choose the second match…", "or drop its file here"), said(List.of()));
  }

  @Test
  void theMatchesKnownStandBelowTheWordsThatOfferThem() {
    assertEquals(
        List.of(
            "Choose the second match…",
            "or drop its file here, or take one of these:",
            "Far bank winter"),
        said(List.of(Path.of("/far-bank-winter.session.json"))));
  }
}
