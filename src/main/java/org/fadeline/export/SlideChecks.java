package org.fadeline.export;

import java.awt.Graphics;
import java.awt.geom.Rectangle2D;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import org.apache.batik.dom.GenericDOMImplementation;
import org.apache.batik.svggen.SVGGeneratorContext;
import org.apache.batik.svggen.SVGGraphics2D;
import org.fadeline.figure.Figure;
import org.fadeline.figure.SlideFigure;
import org.w3c.dom.Document;

/**
 * What keeps a slide from being taken in at a glance from the back row. That a slide has one
 * message and few words is common practice; {@value #MOST_WORDS} words is a choice of this program.
 */
public final class SlideChecks {
  private static final int MOST_WORDS = 55;

  /** Least height of a picture, points of 540. */
  private static final double LEAST_PICTURE = 270;

  private SlideChecks() {}

  /** Returns a sentence for each thing that is too much or too small; empty where all is well. */
  public static List<String> of(SlideFigure page) {
    List<String> found = new ArrayList<>();
    if (page.title().isBlank()) {
      found.add("The slide has no title: say its one message there.");
    } else if (!page.titleFits()) {
      found.add("The title is too long for its row: it is cut.");
    }
    if (!page.wordsFit()) {
      found.add("There are more words than room: the last ones are left off.");
    }
    int words = page.words().stream().mapToInt(SlideChecks::count).sum();
    if (words > MOST_WORDS) {
      found.add(
          words
              + " words are more than is taken in while listening; "
              + MOST_WORDS
              + " is plenty. The rest can go into the notes.");
    }
    Figure figure = page.figure();
    if (figure != null) {
      picture(figure, page.figureBox(), found);
    }
    return found;
  }

  private static int count(String text) {
    return text.isBlank() ? 0 : text.strip().split("\\s+", -1).length;
  }

  private static void picture(Figure figure, Rectangle2D box, List<String> found) {
    if (box.getHeight() < LEAST_PICTURE) {
      found.add("The words leave little room for the picture: use fewer.");
    }
    Recorder recorder = new Recorder();
    figure.paint(recorder, box.getWidth(), box.getHeight());
    recorder.dispose();
    if (recorder.seen.smallest < SlideFigure.SMALLEST_TEXT - 0.5) {
      found.add(
          String.format(
              Locale.ROOT,
              "The smallest text of the picture has %.0f points; below %.0f it cannot be read from"
                  + " the back row.",
              recorder.seen.smallest,
              SlideFigure.SMALLEST_TEXT));
    }
    if (!recorder.seen.cut.isEmpty()) {
      found.add("Cut for want of room: " + String.join(", ", recorder.seen.cut));
    }
  }

  /** What texts a picture has drawn. */
  private static final class Seen {
    private double smallest = Double.MAX_VALUE;
    private final List<String> cut = new ArrayList<>();
  }

  /** Draws nothing and notes how large texts are and which are cut. */
  private static final class Recorder extends SVGGraphics2D {
    private final Seen seen;

    Recorder() {
      super(SVGGeneratorContext.createDefault(document()), false);
      seen = new Seen();
    }

    private Recorder(Recorder parent) {
      super(parent);
      seen = parent.seen;
    }

    private static Document document() {
      return GenericDOMImplementation.getDOMImplementation()
          .createDocument("http://www.w3.org/2000/svg", "svg", null);
    }

    @Override
    public Graphics create() {
      return new Recorder(this);
    }

    @Override
    public void drawString(String text, float x, float y) {
      double scale = Math.sqrt(Math.abs(getTransform().getDeterminant()));
      seen.smallest = Math.min(seen.smallest, getFont().getSize2D() * scale);
      if (text.endsWith("…")) {
        seen.cut.add(text);
      }
    }
  }
}
