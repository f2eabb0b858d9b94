package org.fadeline.export;

import java.io.IOException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Set;
import org.fadeline.analysis.Review;
import org.fadeline.figure.Figure;
import org.fadeline.figure.SlideFigure;
import org.fadeline.model.Checks;
import org.fadeline.model.talk.Look;
import org.fadeline.model.talk.Talk;

/** Writes a talk: slides, a PDF, a folder of pictures or of tables. What is to be left out is. */
public final class TalkExport {
  private TalkExport() {}

  /** What pictures a folder holds. */
  public enum Picture {
    /** Dots. */
    PNG,
    /** Vectors. */
    SVG
  }

  /**
   * How large pictures of slides are.
   *
   * @param width pixels, at least 160
   * @param dpi dots an inch told to the reader of a picture, in [36, 2400]; a slide is drawn the
   *     same whatever they are
   */
  public record Size(int width, double dpi) {
    /** Checks the range. */
    public Size {
      if (width < 160) {
        throw new IllegalArgumentException("a picture of a slide is 160 or more wide: " + width);
      }
      Checks.between("dots an inch", dpi, 36, 2400);
    }

    /** Returns two dots a point: 1920 by 1080, or 1440 by 1080 for 4:3. */
    public static Size usual(Look.Shape shape) {
      return new Size(2 * shape.width(), 144);
    }

    /** Returns the raster of a slide. */
    public FigureExport.Raster raster(Look.Shape shape) {
      int height = (int) Math.round(width * SlideFigure.HEIGHT / shape.width());
      return new FigureExport.Raster(width, height, dpi);
    }
  }

  /**
   * Writes slides that presentation programs open: titles, words and notes as text, figures as
   * pictures with alternative text.
   *
   * @throws IOException if the file cannot be written; nothing is then left behind
   * @throws IllegalArgumentException if a slide shows a session or a line that is not there
   * @throws java.util.concurrent.CancellationException if stopped; nothing is then left behind
   */
  public static void pptx(Talk talk, TalkMaterial material, Path file, ExportMonitor monitor)
      throws IOException {
    Unnamed shown = Unnamed.of(talk, material);
    SlideDeck.write(shown.talk(), TalkPages.of(shown.talk(), shown.material()), file, monitor);
  }

  /**
   * Writes a PDF, a page a slide, in vectors.
   *
   * @throws IOException if the file cannot be written; nothing is then left behind
   * @throws IllegalArgumentException if a slide shows a session or a line that is not there
   * @throws java.util.concurrent.CancellationException if stopped; nothing is then left behind
   */
  public static void pdf(Talk talk, TalkMaterial material, Path file, ExportMonitor monitor)
      throws IOException {
    Unnamed shown = Unnamed.of(talk, material);
    List<Figure> pages = new ArrayList<>(TalkPages.of(shown.talk(), shown.material()));
    PdfPages.write(
        file,
        new PdfPages.Book(shown.talk().title(), pages),
        talk.look().shape().width(),
        SlideFigure.HEIGHT,
        monitor);
  }

  /**
   * What a folder of pictures is made of.
   *
   * @param kinds each slide is written as each of these
   * @param size of pictures in dots
   */
  public record Pictures(Set<Picture> kinds, Size size) {
    /** Copies the set. */
    public Pictures {
      kinds = Set.copyOf(kinds);
    }
  }

  /**
   * Writes a folder of pictures, numbered in order: all of them or none.
   *
   * @param folder must not exist, or be empty
   * @throws IOException if it cannot be written or holds files; nothing is then left behind
   * @throws IllegalArgumentException if a slide shows a session or a line that is not there, or a
   *     picture would be too large
   * @throws java.util.concurrent.CancellationException if stopped; nothing is then left behind
   */
  public static void pictures(
      Talk talk, TalkMaterial material, Path folder, Pictures pictures, ExportMonitor monitor)
      throws IOException {
    Unnamed shown = Unnamed.of(talk, material);
    List<SlideFigure> pages = TalkPages.of(shown.talk(), shown.material());
    WholeFolder.write(
        folder,
        part -> {
          for (int i = 0; i < pages.size(); i++) {
            monitor.step(i / (double) pages.size());
            for (Picture kind : pictures.kinds()) {
              writePicture(pages.get(i), part, i + 1, kind, talk.look().shape(), pictures.size());
            }
          }
          monitor.step(1);
        });
  }

  private static void writePicture(
      SlideFigure page, Path folder, int number, Picture picture, Look.Shape shape, Size size)
      throws IOException {
    String ending = picture.name().toLowerCase(Locale.ROOT);
    Path file =
        folder.resolve(
            FileNames.of(String.format(Locale.ROOT, "%02d %s", number, page.title()), ending));
    if (picture == Picture.PNG) {
      FigureExport.png(page, file, size.raster(shape));
    } else {
      FigureExport.svg(page, file, shape.width(), SlideFigure.HEIGHT);
    }
  }

  /**
   * Writes every table of every session of a talk as CSV into a folder: all of them or none.
   *
   * @param folder must not exist, or be empty
   * @return how many files were written
   * @throws IOException if it cannot be written or holds files; nothing is then left behind
   * @throws java.util.concurrent.CancellationException if stopped; nothing is then left behind
   */
  public static int tables(Talk talk, TalkMaterial material, Path folder, ExportMonitor monitor)
      throws IOException {
    Map<String, Review> reviews = Unnamed.of(talk, material).material().reviews();
    int[] written = {0};
    WholeFolder.write(
        folder,
        part -> {
          for (Map.Entry<String, Review> entry : reviews.entrySet()) {
            monitor.step(written[0] / (1.0 + written[0]));
            String first = reviews.size() == 1 ? "" : entry.getKey() + " ";
            for (Table table : ReviewTableSet.of(entry.getValue())) {
              TableCsv.write(table, part.resolve(FileNames.of(first + table.name(), "csv")));
              written[0]++;
            }
          }
          monitor.step(1);
        });
    return written[0];
  }
}
