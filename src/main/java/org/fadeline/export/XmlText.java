package org.fadeline.export;

/** Text for XML. */
final class XmlText {
  private XmlText() {}

  /** Returns the text without characters that XML 1.0 (section 2.2) does not allow. */
  static String clean(String text) {
    StringBuilder clean = new StringBuilder(text.length());
    text.codePoints()
        .filter(
            c ->
                c == 0x9
                    || c == 0xA
                    || c == 0xD
                    || (c >= 0x20 && c <= 0xD7FF)
                    || (c >= 0xE000 && c <= 0xFFFD)
                    || c >= 0x10000)
        .forEach(clean::appendCodePoint);
    return clean.toString();
  }
}
