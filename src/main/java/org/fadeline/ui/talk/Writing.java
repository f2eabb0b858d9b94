package org.fadeline.ui.talk;

/**
 * What a talk is written as.
 *
 * @param output the kind of file
 * @param width of pictures, pixels
 * @param dpi of pictures
 * @param speed of a replay, match seconds a second
 */
record Writing(Output output, int width, double dpi, double speed) {
  /** The kinds there are. */
  enum Output {
    /** Slides. */
    PPTX("Slides (PPTX)", "pptx"),
    /** A page a slide. */
    PDF("Pages (PDF)", "pdf"),
    /** A page a slide, to a printer. */
    PRINT("Print", "pdf"),
    /** A folder of pictures. */
    PICTURES("Every slide as PNG and SVG", ""),
    /** One slide. */
    ONE_PNG("This slide as PNG", "png"),
    /** One slide in vectors. */
    ONE_SVG("This slide as SVG", "svg"),
    /** A replay of the match or the stretch the slide shows. */
    GIF("The match replayed (GIF)", "gif"),
    /** Every table of every session. */
    TABLES("Tables (CSV)", "");

    private final String label;
    private final String ending;

    Output(String label, String ending) {
      this.label = label;
      this.ending = ending;
    }

    String label() {
      return label;
    }

    /** Returns the ending of its file, without the dot; empty for a folder. */
    String ending() {
      return ending;
    }

    boolean isFolder() {
      return ending.isEmpty();
    }

    boolean hasSize() {
      return this == PICTURES || this == ONE_PNG;
    }
  }
}
