package org.fadeline.ui.state;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import org.fadeline.model.Units;
import org.fadeline.ui.state.Preferences.Bounds;
import org.fadeline.ui.state.Preferences.Look;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** Preferences come back as kept, and a bad file costs no more than themselves. */
class PreferenceFileTest {
  @TempDir Path folder;

  @Test
  void comesBackAsKept() throws IOException {
    PreferenceFile file = new PreferenceFile(folder.resolve("new/preferences.properties"));
    Preferences kept =
        new Preferences(
            new Units(Units.Weight.KG, Units.Length.FT),
            Look.HIGH_CONTRAST,
            130,
            false,
            new Bounds(10, 20, 1300, 850, true),
            Map.of("log.key.1.bite", "Shift+B", "log.key.net", ""),
            List.of("/a/ä.session.json", "/b.csv"));
    file.write(kept);
    assertEquals(kept, file.read());
    try (var files = Files.list(folder.resolve("new"))) {
      assertEquals(1, files.count(), "no draft is left behind");
    }
  }

  @Test
  void aMissingFileGivesTheDefaults() {
    Preferences read = new PreferenceFile(folder.resolve("none")).read();
    assertEquals(Preferences.DEFAULT, read);
  }

  @ParameterizedTest
  @ValueSource(
      strings = {
        "\\uZZZZ",
        "text=huge\nwindow.width=NaN\nwindow.height=1e400\ntheme=PURPLE\nweight=stone",
        "text=100000",
        "recent.0=",
        "\u0000\u0000"
      })
  void aDamagedFileCostsOnlyWhatIsDamaged(String content) throws IOException {
    Path path = folder.resolve("damaged");
    Files.writeString(path, content);
    Preferences read = new PreferenceFile(path).read();
    assertEquals(Preferences.DEFAULT.units(), read.units());
    assertEquals(Look.LIGHT, read.look());
    assertEquals(Bounds.DEFAULT.width(), read.window().width());
    assertTrue(read.textPercent() >= 80 && read.textPercent() <= 200);
  }

  @Test
  void aFolderThatCannotBeMadeIsSaid() throws IOException {
    Path blocked = folder.resolve("file");
    Files.writeString(blocked, "in the way");
    PreferenceFile file = new PreferenceFile(blocked.resolve("preferences.properties"));
    assertThrows(IOException.class, () -> file.write(Preferences.DEFAULT));
    assertEquals(Preferences.DEFAULT, file.read());
  }

  @Test
  void windowsAreBroughtOntoAScreen() {
    List<Bounds> screens =
        List.of(new Bounds(0, 0, 1920, 1080, false), new Bounds(1920, 0, 1280, 800, false));
    assertEquals(
        new Bounds(240, 90, 1440, 900, false), Bounds.DEFAULT.onto(screens), "in the middle");
    assertEquals(
        new Bounds(1920, 0, 1280, 800, false),
        new Bounds(2000, 100, 1440, 900, false).onto(screens),
        "on the screen it mostly lies on, shrunk to it");
    assertEquals(
        new Bounds(560, 240, 800, 600, false),
        new Bounds(9000, 9000, 800, 600, false).onto(screens),
        "a screen that is gone");
  }

  @Test
  void recentFilesAreTheLatestFirstAndNoMoreThanTen() {
    Preferences p = Preferences.DEFAULT;
    for (int i = 0; i < 14; i++) {
      p = p.withRecent("/" + i);
    }
    p = p.withRecent("/9");
    assertEquals(10, p.recent().size());
    assertEquals("/9", p.recent().get(0));
    assertEquals("/13", p.recent().get(1));
    assertEquals(1, p.recent().stream().filter("/9"::equals).count());
  }
}
