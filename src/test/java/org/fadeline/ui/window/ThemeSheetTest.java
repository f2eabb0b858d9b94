package org.fadeline.ui.window;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.awt.Color;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.fadeline.figure.Theme;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;

/** The colours of the screens: contrast (WCAG 2.2, 1.4.3 and 1.4.11) and that none is missing. */
class ThemeSheetTest {
  @ParameterizedTest
  @EnumSource(
      value = Theme.class,
      names = {"LIGHT", "DARK", "HIGH_CONTRAST"})
  void textAndEdgesKeepTheirContrast(Theme theme) {
    Color hover = Theme.mix(theme.ink(), 0.06, theme.panel());
    Color chosen = Theme.mix(theme.accent(), 0.12, theme.panel());
    for (Color ground : List.of(theme.panel(), theme.ground(), hover, chosen)) {
      assertTrue(Theme.contrast(theme.ink(), ground) >= 4.5);
      assertTrue(Theme.contrast(theme.secondInk(), ground) >= 4.5, "quiet text on " + ground);
      assertTrue(Theme.contrast(theme.accent(), ground) >= 4.5, "links on " + ground);
      assertTrue(Theme.contrast(theme.warning(), ground) >= 4.5, "warnings on " + ground);
    }
    assertTrue(Theme.contrast(theme.on(theme.accent()), theme.accent()) >= 4.5);
    assertTrue(Theme.contrast(ThemeSheet.edge(theme), theme.panel()) >= 3);
  }

  @ParameterizedTest
  @EnumSource(
      value = Theme.class,
      names = {"LIGHT", "DARK", "HIGH_CONTRAST"})
  void everyColourAskedForIsGiven(Theme theme) throws Exception {
    Set<String> given = names(ThemeSheet.css(theme, 100), "(-fl-[a-z0-9-]+):");
    String sheet;
    try (var in = ThemeSheet.class.getResourceAsStream("/org/fadeline/ui/fadeline.css")) {
      sheet = new String(in.readAllBytes(), StandardCharsets.UTF_8);
    }
    Set<String> asked = names(sheet.replaceAll("(?s)/\\*.*?\\*/", ""), "(-fl-[a-z0-9-]+)");
    asked.removeAll(given);
    assertEquals(Set.of(), asked);
  }

  private static Set<String> names(String css, String pattern) {
    Set<String> names = new TreeSet<>();
    Matcher matcher = Pattern.compile(pattern).matcher(css);
    while (matcher.find()) {
      names.add(matcher.group(1));
    }
    return names;
  }
}
