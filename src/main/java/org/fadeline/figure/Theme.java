package org.fadeline.figure;

import java.awt.Color;

/**
 * Colours of all figures and screens.
 *
 * <p>Hue means the line. Text keeps a contrast of 4.5:1 and graphics 3:1 on every ground they stand
 * on (WCAG 2.2, success criteria 1.4.3 and 1.4.11).
 */
public enum Theme {
  /** Dark ink on white, for screens in daylight. */
  LIGHT(
      "FFFFFF F3F6F4 EAF2F3 E2E3D3",
      "1C2B2D 526364 D9E0DE 0B6E69 B23A2E",
      "0072B2 8F6A00 007A59 B4480A 9C4F7C"),
  /** Light ink on deep green-grey, for evenings. */
  DARK(
      "16262A 0E1A1D 1B3138 2E3330",
      "E7EFEE A3B5B6 30464B 4FC3B8 FF8A75",
      "56B4E9 E6A928 2BC79A F08A4B DD9CC4"),
  /** Pure white on black with bright hues. */
  HIGH_CONTRAST(
      "000000 000000 000A12 1A1A12",
      "FFFFFF E2E8E8 7A8A8A 6FF2E4 FF9C8C",
      "6FC8FF FFCB52 52EDBD FFA871 F7BFE2"),
  /** White paper, hardly any tint. */
  PRINT(
      "FFFFFF FFFFFF F4F8F8 F0F0E8",
      "000000 4A4A4A CFCFCF 0B5F5A A12A1F",
      "00609A 7A5A00 00684B 9C3D06 87406A"),
  /** White ground with heavy ink and deep hues, readable from the back row. */
  PROJECTOR(
      "FFFFFF FFFFFF EEF4F5 E9E9DD",
      "0B1517 37474A C3CCCA 075550 9A2318",
      "005489 664B00 005B41 8A3405 7A2F5E");

  private static final int HUES = 5;

  private final String grounds;
  private final String inks;
  private final String lines;

  /** Takes colours as RGB in hexadecimal, each six digits, a space between. */
  Theme(String grounds, String inks, String lines) {
    this.grounds = grounds;
    this.inks = inks;
    this.lines = lines;
  }

  private static Color colour(String palette, int index) {
    return new Color(Integer.parseInt(palette.substring(7 * index, 7 * index + 6), 16));
  }

  /** Returns the ground figures stand on. */
  public Color panel() {
    return colour(grounds, 0);
  }

  /** Returns the ground behind panels. */
  public Color ground() {
    return colour(grounds, 1);
  }

  /** Returns the water of the peg diagram. */
  public Color water() {
    return colour(grounds, 2);
  }

  /** Returns the bank of the peg diagram. */
  public Color bank() {
    return colour(grounds, 3);
  }

  /** Returns the ink of text and main strokes. */
  public Color ink() {
    return colour(inks, 0);
  }

  /** Returns the ink of secondary text. */
  public Color secondInk() {
    return colour(inks, 1);
  }

  /** Returns the colour of rules that separate; never of anything that must be read. */
  public Color hairline() {
    return colour(inks, 2);
  }

  /** Returns the one accent, for what can be acted on. */
  public Color accent() {
    return colour(inks, 3);
  }

  /** Returns the colour of fades and warnings. */
  public Color warning() {
    return colour(inks, 4);
  }

  /**
   * Returns the hue of a line by its place in the session; from the sixth on hues come round again
   * and the letter, the dash and the hatch tell lines apart.
   *
   * @param index place of the line in the session, from 0
   */
  public Color line(int index) {
    return colour(lines, Math.floorMod(index, HUES));
  }

  /** Returns how many lines have a hue of their own. */
  public int hues() {
    return HUES;
  }

  /**
   * Returns the stroke pattern of a line: solid for the first five, then dashed, then dotted, in
   * multiples of the stroke's width; empty for solid.
   *
   * @param index place of the line in the session, from 0
   */
  public float[] dash(int index) {
    return switch (Math.floorMod(index / HUES, 3)) {
      case 1 -> new float[] {5, 2.5f};
      case 2 -> new float[] {1.5f, 2};
      default -> new float[0];
    };
  }

  /**
   * Returns the letters that name a line in small marks: A to Z, then AA, AB, …
   *
   * @param index place of the line in the session, from 0
   */
  public static String letter(int index) {
    StringBuilder letters = new StringBuilder();
    for (int rest = index; rest >= 0; rest = rest / 26 - 1) {
      letters.insert(0, (char) ('A' + rest % 26));
    }
    return letters.toString();
  }

  /** Returns the ink that reads best on a mark of the given colour. */
  public Color on(Color mark) {
    Color dark = new Color(0x10, 0x1A, 0x1C);
    return contrast(Color.WHITE, mark) >= contrast(dark, mark) ? Color.WHITE : dark;
  }

  /** Returns whether the ground is darker than the ink. */
  public boolean isDark() {
    return luminance(panel()) < luminance(ink());
  }

  /**
   * Returns the contrast of two colours, in [1, 21] (WCAG 2.2, "contrast ratio").
   *
   * @param one a colour without transparency
   * @param other a colour without transparency
   */
  public static double contrast(Color one, Color other) {
    double a = luminance(one);
    double b = luminance(other);
    return (Math.max(a, b) + 0.05) / (Math.min(a, b) + 0.05);
  }

  private static double luminance(Color colour) {
    return 0.2126 * linear(colour.getRed())
        + 0.7152 * linear(colour.getGreen())
        + 0.0722 * linear(colour.getBlue());
  }

  private static double linear(int channel) {
    double share = channel / 255.0;
    return share <= 0.04045 ? share / 12.92 : Math.pow((share + 0.055) / 1.055, 2.4);
  }

  /**
   * Returns a colour laid thinly over another.
   *
   * @param top colour laid over
   * @param share how much of it, in [0, 1]
   * @param under colour below
   */
  public static Color mix(Color top, double share, Color under) {
    return new Color(
        channel(top.getRed(), share, under.getRed()),
        channel(top.getGreen(), share, under.getGreen()),
        channel(top.getBlue(), share, under.getBlue()));
  }

  private static int channel(int top, double share, int under) {
    return (int) Math.round(top * share + under * (1 - share));
  }
}
