package org.fadeline.ui.window;

import java.awt.Color;
import java.nio.charset.StandardCharsets;
import java.util.Base64;
import java.util.Locale;
import org.fadeline.figure.Theme;
import org.fadeline.figure.TimelineLayout;
import org.fadeline.ui.control.picture.Looks;
import org.fadeline.ui.state.Preferences;

/** The themes' colours as a style sheet, so that screens and figures share one set. */
final class ThemeSheet {
  private static final double BODY_PIXELS = 13;

  /** Height of a table's row, of the text's size. */
  private static final double ROW_EMS = 2.3;

  private ThemeSheet() {}

  /** Returns the address of a style sheet with the colours and the text size. */
  static String address(Preferences preferences) {
    String css = css(Looks.theme(preferences.look()), preferences.textPercent());
    return "data:text/css;base64,"
        + Base64.getEncoder().encodeToString(css.getBytes(StandardCharsets.UTF_8));
  }

  static String css(Theme theme, int textPercent) {
    StringBuilder css = new StringBuilder(".root {\n");
    colour(css, "panel", theme.panel());
    colour(css, "ground", theme.ground());
    colour(css, "water", theme.water());
    colour(css, "bank", theme.bank());
    colour(css, "ink", theme.ink());
    colour(css, "second", theme.secondInk());
    colour(css, "hairline", theme.hairline());
    colour(css, "accent", theme.accent());
    colour(css, "warning", theme.warning());
    colour(css, "on-accent", theme.on(theme.accent()));
    colour(css, "hover", Theme.mix(theme.ink(), 0.06, theme.panel()));
    colour(css, "pressed", Theme.mix(theme.ink(), 0.12, theme.panel()));
    colour(css, "chosen", Theme.mix(theme.accent(), 0.12, theme.panel()));
    // Towards the ink, so that words on it gain contrast.
    colour(css, "accent-hover", Theme.mix(theme.ink(), 0.15, theme.accent()));
    colour(css, "future", TimelineLayout.futureColour(theme));
    // A control's edge must be seen where a hairline need not: 3:1 (WCAG 2.2, 1.4.11).
    colour(css, "edge", edge(theme));
    for (int i = 0; i < theme.hues(); i++) {
      colour(css, "line-" + i, theme.line(i));
    }
    css.append(
        String.format(
            Locale.ROOT, "  -fx-font-size: %.2fpx;%n}%n", BODY_PIXELS * textPercent / 100));
    // Whole pixels: between rows of a fraction more some of the rules would not be drawn.
    css.append(
        String.format(
            Locale.ROOT,
            ".table-view { -fx-fixed-cell-size: %dpx; }%n",
            Math.round(ROW_EMS * BODY_PIXELS * textPercent / 100)));
    return css.toString();
  }

  static Color edge(Theme theme) {
    for (int share = 30; share < 100; share += 5) {
      Color mixed = Theme.mix(theme.ink(), share / 100.0, theme.panel());
      if (Theme.contrast(mixed, theme.panel()) >= 3.05
          && Theme.contrast(mixed, theme.ground()) >= 3.05) {
        return mixed;
      }
    }
    return theme.ink();
  }

  private static void colour(StringBuilder css, String name, Color colour) {
    css.append(
        String.format(
            Locale.ROOT,
            "  -fl-%s: #%02x%02x%02x;%n",
            name,
            colour.getRed(),
            colour.getGreen(),
            colour.getBlue()));
  }
}
