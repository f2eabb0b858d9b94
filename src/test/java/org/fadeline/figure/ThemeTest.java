package org.fadeline.figure;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.awt.Color;
import java.util.LinkedHashMap;
import java.util.Map;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;

class ThemeTest {
  /** Okabe–Ito hues on white and black, computed by the formula of WCAG 2.2; ends of the scale. */
  @Test
  void contrastFollowsTheFormula() {
    assertEquals(21, Theme.contrast(Color.BLACK, Color.WHITE), 1e-9);
    assertEquals(1, Theme.contrast(Color.PINK, Color.PINK), 1e-9);
    assertEquals(5.19, Theme.contrast(new Color(0x0072B2), Color.WHITE), 0.005);
    assertEquals(1.32, Theme.contrast(new Color(0xF0E442), Color.WHITE), 0.005);
    assertEquals(9.32, Theme.contrast(new Color(0xE69F00), Color.BLACK), 0.005);
  }

  /** WCAG 2.2, 1.4.3: text 4.5:1 on every ground it stands on. */
  @ParameterizedTest
  @EnumSource(Theme.class)
  void textCanBeRead(Theme theme) {
    for (Map.Entry<String, Color> ground : grounds(theme).entrySet()) {
      assertContrast(4.5, "ink on " + ground.getKey(), theme.ink(), ground.getValue());
      assertContrast(4.5, "second ink on " + ground.getKey(), theme.secondInk(), ground.getValue());
    }
    for (Color ground : new Color[] {theme.panel(), theme.ground()}) {
      assertContrast(4.5, "accent", theme.accent(), ground);
      assertContrast(4.5, "warning", theme.warning(), ground);
      for (int i = 0; i < theme.hues(); i++) {
        assertContrast(4.5, "name of line " + i, theme.line(i), ground);
      }
    }
    for (int i = 0; i < theme.hues(); i++) {
      Color hue = theme.line(i);
      assertContrast(4.5, "letter on line " + i, theme.on(hue), hue);
    }
    assertContrast(4.5, "letter on warning", theme.on(theme.warning()), theme.warning());
  }

  /** WCAG 2.2, 1.4.11: graphics 3:1 on every ground, tinted fishing time too. */
  @ParameterizedTest
  @EnumSource(Theme.class)
  void graphicsCanBeSeen(Theme theme) {
    for (int i = 0; i < theme.hues(); i++) {
      for (Map.Entry<String, Color> ground : grounds(theme).entrySet()) {
        assertContrast(3, "line " + i + " on " + ground.getKey(), theme.line(i), ground.getValue());
      }
      Color fished = Theme.mix(theme.line(i), 0.07, theme.panel());
      assertContrast(3, "line on its fished time", theme.line(i), fished);
      assertContrast(3, "warning on fished time", theme.warning(), fished);
      assertContrast(
          3, "cast on fished time", Theme.mix(theme.line(i), 0.85, theme.panel()), fished);
    }
    assertContrast(3, "accent on water", theme.accent(), theme.water());
  }

  /** Hues come round after five lines; dash and letter must then differ. */
  @Test
  void moreThanFiveLinesHaveASecondCue() {
    for (Theme theme : Theme.values()) {
      assertEquals(theme.line(0), theme.line(5));
      assertEquals(0, theme.dash(0).length);
      assertTrue(theme.dash(5).length > 0);
      assertTrue(theme.dash(10).length > 0 && theme.dash(10)[0] != theme.dash(5)[0]);
    }
    assertEquals("A", Theme.letter(0));
    assertEquals("Z", Theme.letter(25));
    assertEquals("AA", Theme.letter(26));
    assertEquals("AZ", Theme.letter(51));
    assertEquals("BA", Theme.letter(52));
  }

  private static Map<String, Color> grounds(Theme theme) {
    Map<String, Color> grounds = new LinkedHashMap<>();
    grounds.put("panel", theme.panel());
    grounds.put("ground", theme.ground());
    grounds.put("water", theme.water());
    grounds.put("bank", theme.bank());
    return grounds;
  }

  private static void assertContrast(double least, String what, Color mark, Color ground) {
    double contrast = Theme.contrast(mark, ground);
    assertTrue(contrast >= least, what + ": " + contrast);
  }
}
