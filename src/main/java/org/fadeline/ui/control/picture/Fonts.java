package org.fadeline.ui.control.picture;

import java.io.IOException;
import java.io.InputStream;
import java.util.concurrent.ConcurrentHashMap;
import javafx.scene.text.Font;
import org.fadeline.figure.Type;

/** The bundled typeface as JavaFX fonts. */
public final class Fonts {
  private static final ConcurrentHashMap<String, String> NAMES = new ConcurrentHashMap<>();

  private static final String HEAVY = Type.semiBold(12).getPSName();

  private Fonts() {}

  /** Loads the bundled weights so that style sheets and canvases find them; cheap when repeated. */
  public static void load() {
    for (String resource : Type.resources()) {
      NAMES.computeIfAbsent(resource, Fonts::load);
    }
  }

  private static String load(String resource) {
    try (InputStream in = Type.class.getResourceAsStream(resource)) {
      Font font = in == null ? null : Font.loadFont(in, 13);
      return font == null ? Font.getDefault().getName() : font.getName();
    } catch (IOException unreadable) {
      return Font.getDefault().getName();
    }
  }

  /** Returns the JavaFX font that looks like one of the figures' fonts. */
  static Font of(java.awt.Font font) {
    load();
    boolean heavy = font.isBold() || font.getPSName().equals(HEAVY);
    String name = NAMES.get(heavy ? Type.SEMI_BOLD_RESOURCE : Type.REGULAR_RESOURCE);
    return new Font(name, font.getSize2D());
  }
}
