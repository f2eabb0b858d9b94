package org.fadeline.figure;

import java.awt.Color;
import java.util.List;

/**
 * Colours of all figures and screens.
 *
 * <p>Hue means the line. Text keeps a contrast of 4.5:1 and graphics 3:1 on every ground they stand
 * on (WCAG 2.2, success criteria 1.4.3 and 1.4.11).
 */
public enum Theme {
  /** Dark ink on white, for screens in daylight. */
  LIGHT(
      new Grounds(0xFFFFFF, 0xF3F6F4, 0xEAF2F3, 0xE2E3D3),
      new Inks(0x1C2B2D, 0x526364, 0xD9E0DE, 0x0B6E69, 0xB23A2E),
      List.of(0x0072B2, 0x8F6A00, 0x007A59, 0xB4480A, 0x9C4F7C)),
  /** Light ink on deep green-grey, for evenings. */
  DARK(
      new Grounds(0x16262A, 0x0E1A1D, 0x1B3138, 0x2E3330),
      new Inks(0xE7EFEE, 0xA3B5B6, 0x30464B, 0x4FC3B8, 0xFF8A75),
      List.of(0x56B4E9, 0xE6A928, 0x2BC79A, 0xF08A4B, 0xDD9CC4)),
  /** Pure white on black with bright hues. */
  HIGH_CONTRAST(
      new Grounds(0x000000, 0x000000, 0x000A12, 0x1A1A12),
      new Inks(0xFFFFFF, 0xE2E8E8, 0x7A8A8A, 0x6FF2E4, 0xFF9C8C),
      List.of(0x6FC8FF, 0xFFCB52, 0x52EDBD, 0xFFA871, 0xF7BFE2)),
  /** White paper, hardly any tint. */
  PRINT(
      new Grounds(0xFFFFFF, 0xFFFFFF, 0xF4F8F8, 0xF0F0E8),
      new Inks(0x000000, 0x4A4A4A, 0xCFCFCF, 0x0B5F5A, 0xA12A1F),
      List.of(0x00609A, 0x7A5A00, 0x00684B, 0x9C3D06, 0x87406A)),
  /** White ground with heavy ink and deep hues, readable from the back row. */
  PROJECTOR(
      new Grounds(0xFFFFFF, 0xFFFFFF, 0xEEF4F5, 0xE9E9DD),
      new Inks(0x0B1517, 0x37474A, 0xC3CCCA, 0x075550, 0x9A2318),
      List.of(0x005489, 0x664B00, 0x005B41, 0x8A3405, 0x7A2F5E));

  private final Grounds grounds;
  private final Inks inks;
  private final List<Integer> lines;

  Theme(Grounds grounds, Inks inks, List<Integer> lines) {
    this.grounds = grounds;
    this.inks = inks;
    this.lines = lines;
  }

  private record Grounds(int panel, int ground, int water, int bank) {}

  private record Inks(int ink, int secondInk, int hairline, int accent, int warning) {}

  /** Returns the ground figures stand on. */
  public Color panel() {
    return new Color(grounds.panel);
  }

  /** Returns the ground behind panels. */
  public Color ground() {
    return new Color(grounds.ground);
  }

  /** Returns the water of the peg diagram. */
  public Color water() {
    return new Color(grounds.water);
  }

  /** Returns the bank of the peg diagram. */
  public Color bank() {
    return new Color(grounds.bank);
  }

  /** Returns the ink of text and main strokes. */
  public Color ink() {
    return new Color(inks.ink);
  }

  /** Returns the ink of secondary text. */
  public Color secondInk() {
    return new Color(inks.secondInk);
  }

  /** Returns the colour of rules that separate; never of anything that must be read. */
  public Color hairline() {
    return new Color(inks.hairline);
  }

  /** Returns the one accent, for what can be acted on. */
  public Color accent() {
    return new Color(inks.accent);
  }

  /** Returns the colour of fades and warnings. */
  public Color warning() {
    return new Color(inks.warning);
  }

  /**
   * Returns the hue of a line by its place in the session; from the sixth on hues come round again
   * and the letter, the dash and the hatch tell lines apart.
   *
   * @param index place of the line in the session, from 0
   */
  public Color line(int index) {
    return new Color(lines.get(Math.floorMod(index, lines.size())));
  }

  /** Returns how many lines have a hue of their own. */
  public int hues() {
    return lines.size();
  }

  /**
   * Returns the stroke pattern of a line: solid for the first five, then dashed, then dotted, in
   * multiples of the stroke's width; empty for solid.
   *
   * @param index place of the line in the session, from 0
   */
  public float[] dash(int index) {
    return switch (Math.floorMod(index / lines.size(), 3)) {
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
