package org.fadeline.figure;

import java.awt.Font;
import java.awt.FontFormatException;
import java.awt.font.FontRenderContext;
import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.util.List;

/**
 * The bundled typeface, IBM Plex Sans (SIL Open Font License 1.1), whose figures are all of one
 * width: columns of numbers align and a running clock does not shake.
 */
public final class Type {
  /** Class path of the regular weight. */
  public static final String REGULAR_RESOURCE = "/org/fadeline/fonts/IBMPlexSans-Regular.ttf";

  /** Class path of the heavier weight. */
  public static final String SEMI_BOLD_RESOURCE = "/org/fadeline/fonts/IBMPlexSans-SemiBold.ttf";

  /** What programs call the regular weight. */
  public static final String REGULAR_FAMILY = "IBM Plex Sans";

  /** What programs call the heavier weight: a family of its own. */
  public static final String SEMI_BOLD_FAMILY = "IBM Plex Sans SmBld";

  private static final FontRenderContext MEASURE = new FontRenderContext(null, true, true);
  private static final Font REGULAR = load(REGULAR_RESOURCE);
  private static final Font SEMI_BOLD = load(SEMI_BOLD_RESOURCE);

  private Type() {}

  private static Font load(String resource) {
    try (InputStream in = Type.class.getResourceAsStream(resource)) {
      if (in == null) {
        throw new IllegalStateException("the program is incomplete: " + resource + " is missing");
      }
      return Font.createFont(Font.TRUETYPE_FONT, in);
    } catch (FontFormatException e) {
      throw new IllegalStateException("the program is damaged: " + resource, e);
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  /**
   * Returns the regular weight.
   *
   * @param size pixels, above 0
   */
  public static Font regular(double size) {
    return REGULAR.deriveFont((float) size);
  }

  /**
   * Returns the heavier weight.
   *
   * @param size pixels, above 0
   */
  public static Font semiBold(double size) {
    return SEMI_BOLD.deriveFont((float) size);
  }

  /** Returns the class paths of every bundled weight, for surfaces that load fonts themselves. */
  public static List<String> resources() {
    return List.of(REGULAR_RESOURCE, SEMI_BOLD_RESOURCE);
  }

  /** Returns the advance width of a text in pixels, the same on every surface. */
  public static double width(Font font, String text) {
    return text.isEmpty() ? 0 : font.getStringBounds(text, MEASURE).getWidth();
  }

  /** Returns how far below the middle of a mark the baseline of a text beside it lies, pixels. */
  static double drop(Font font) {
    return ascent(font) * 0.46;
  }

  /** Returns the height of a line of text above its baseline in pixels. */
  static double ascent(Font font) {
    return font.getSize2D() * 0.78;
  }
}
