package org.fadeline.ui;

import static java.util.Objects.requireNonNull;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Path;
import java.util.HashSet;
import javafx.scene.Node;
import javafx.scene.control.Label;
import javafx.scene.control.Menu;
import javafx.scene.control.MenuButton;
import javafx.scene.control.MenuItem;
import javafx.scene.layout.Region;
import javafx.stage.Stage;
import org.fadeline.model.Units;
import org.fadeline.ui.state.PreferenceFile;
import org.fadeline.ui.state.PreferenceKeeper;
import org.fadeline.ui.state.PreferenceStore;
import org.fadeline.ui.state.Preferences;
import org.fadeline.ui.state.Preferences.Bounds;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.extension.ExtendWith;
import org.junit.jupiter.api.io.TempDir;
import org.testfx.api.FxToolkit;
import org.testfx.framework.junit5.ApplicationExtension;
import org.testfx.util.WaitForAsyncUtils;

/** What is chosen in the menu takes effect at once and is there after the next start. */
@ExtendWith(ApplicationExtension.class)
// The folder is made before each test.
@SuppressWarnings("NullAway.Init")
class RestartTest extends WindowHarness {
  @TempDir Path folder;

  private PreferenceKeeper keeper;

  @Override
  protected PreferenceStore storedPreferences() {
    PreferenceFile file = new PreferenceFile(folder.resolve("preferences.properties"));
    PreferenceKeeper mine = new PreferenceKeeper(file);
    keeper = mine;
    // The stage is the same in every test; windows of earlier ones keep nothing any more.
    return new PreferenceStore(
        file.read(),
        changed -> {
          if (mine == keeper) {
            mine.keep(changed);
          }
        });
  }

  private Stage stage() {
    return (Stage) window.scene().getWindow();
  }

  private void restart() throws Exception {
    robot.interact(() -> stage().hide());
    keeper.close();
    FxToolkit.cleanupStages();
    openWindow();
    WaitForAsyncUtils.waitForFxEvents();
  }

  private void choose(String menu, String item) {
    MenuButton all = robot.lookup((Node n) -> "Menu".equals(n.getAccessibleText())).query();
    Menu found =
        (Menu)
            all.getItems().stream().filter(i -> menu.equals(i.getText())).findFirst().orElseThrow();
    MenuItem chosen =
        found.getItems().stream().filter(i -> item.equals(i.getText())).findFirst().orElseThrow();
    robot.interact(chosen::fire);
  }

  private double textSize() {
    return robot
        .lookup((Node n) -> n instanceof Label l && l.getText().equals("Turning points"))
        .queryAs(Label.class)
        .getFont()
        .getSize();
  }

  @Test
  void themeTextSizeAndUnitsAreKept() throws Exception {
    open("Replay");
    double normal = textSize();
    choose("Theme", "High contrast");
    choose("Text size", "150%");
    choose("Weights in", "Kilograms");
    choose("Distances in", "Feet");
    robot.interact(() -> bench.transport().seek(HandMade.minute(15)));
    WaitForAsyncUtils.waitForFxEvents();
    assertEquals(1.5, textSize() / normal, 0.05);
    // 1100 g + 900 g.
    assertTrue(shows("2.00 kg"));
    restart();
    Preferences kept = preferences.get();
    assertEquals(Preferences.Look.HIGH_CONTRAST, kept.look());
    assertEquals(150, kept.textPercent());
    assertEquals(new Units(Units.Weight.KG, Units.Length.FT), kept.units());
    open("Replay");
    assertEquals(1.5, textSize() / normal, 0.05);
    robot.interact(() -> bench.transport().seek(HandMade.minute(15)));
    WaitForAsyncUtils.waitForFxEvents();
    assertTrue(shows("2.00 kg"));
    assertTrue(kept.recent().get(0).endsWith("hand.session.json"), "and what was opened last");
  }

  @Test
  void everyThemeIsOneOfItsOwn() {
    open("Replay");
    var grounds = new HashSet<String>();
    for (Preferences.Look look : Preferences.Look.values()) {
      choose("Theme", look.label());
      var ground =
          WaitForAsyncUtils.waitForAsyncFx(
              5_000,
              () -> {
                window.scene().getRoot().applyCss();
                var panel = (Region) window.scene().getRoot().lookup(".panel");
                var text = robot.lookup("Turning points").queryAs(Label.class).getTextFill();
                return requireNonNull(panel.getBackground()).getFills().get(0).getFill()
                    + " under "
                    + text;
              });
      grounds.add(ground);
    }
    assertEquals(3, grounds.size(), grounds::toString);
  }

  @Test
  void theWindowStandsWhereItStood() throws Exception {
    robot.interact(
        () -> {
          stage().setX(120);
          stage().setY(60);
          stage().setWidth(1010);
          stage().setHeight(655);
        });
    WaitForAsyncUtils.waitForFxEvents();
    restart();
    assertEquals(new Bounds(120, 60, 1010, 655, false), preferences.get().window());
    assertEquals(120, stage().getX());
    assertEquals(60, stage().getY());
    assertEquals(1010, stage().getWidth());
    assertEquals(655, stage().getHeight());
  }
}
