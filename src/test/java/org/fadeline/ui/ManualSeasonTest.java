package org.fadeline.ui;

import javafx.scene.Parent;
import org.junit.jupiter.api.Test;

/** What the manual's page about a season sets in bold stands on its screen and can be pressed. */
class ManualSeasonTest extends SeasonHarness {
  @Test
  void whatIsBoldIsOnTheScreen() {
    ManualNames names = new ManualNames(window);
    names.readAll((Parent) screen("Season").view());
    names.check("season.md");
  }
}
