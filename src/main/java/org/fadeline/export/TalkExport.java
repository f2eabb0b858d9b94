package org.fadeline.export;

import java.io.IOException;
import java.nio.file.DirectoryNotEmptyException;
import java.nio.file.Files;
import java.nio.file.NoSuchFileException;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import org.fadeline.analysis.Review;
import org.fadeline.figure.Figure;
import org.fadeline.figure.SlideFigure;

/** Writes a talk: slides, a PDF, or a folder of pictures. */
public final class TalkExport {
  private TalkExport() {}

  /** What pictures a folder holds. */
  public enum Picture {
    /** Dots, 1920 wide or as many as 1440 for 4:3. */
    PNG,
    /** Vectors. */
    SVG
  }

  /**
   * Writes slides that presentation programs open: titles, words and notes as text, figures as
   * pictures with alternative text.
   *
   * @throws IOException if the file cannot be written; nothing is then left behind
   * @throws java.util.concurrent.CancellationException if stopped; nothing is then left behind
   */
  public static void pptx(Talk talk, Review review, Path file, ExportMonitor monitor)
      throws IOException {
    SlideDeck.write(talk, talk.pages(review), file, monitor);
  }

  /**
   * Writes a PDF, a page a slide, in vectors.
   *
   * @throws IOException if the file cannot be written; nothing is then left behind
   * @throws java.util.concurrent.CancellationException if stopped; nothing is then left behind
   */
  public static void pdf(Talk talk, Review review, Path file, ExportMonitor monitor)
      throws IOException {
    List<Figure> pages = new ArrayList<>(talk.pages(review));
    PdfPages.write(file, pages, talk.look().shape().width(), SlideFigure.HEIGHT, monitor);
  }

  /**
   * Writes a folder of pictures, numbered in order: all of them or none.
   *
   * @param folder must not exist, or be empty
   * @throws IOException if it cannot be written or holds files; nothing is then left behind
   * @throws java.util.concurrent.CancellationException if stopped; nothing is then left behind
   */
  public static void pictures(
      Talk talk, Review review, Path folder, Picture picture, ExportMonitor monitor)
      throws IOException {
    Path parent = folder.toAbsolutePath().getParent();
    if (parent == null) {
      throw new IOException("not a folder that can be written: " + folder);
    }
    Files.createDirectories(parent);
    Path part = Files.createTempDirectory(parent, ".fadeline-");
    try {
      List<SlideFigure> pages = talk.pages(review);
      for (int i = 0; i < pages.size(); i++) {
        monitor.step(i / (double) pages.size());
        writePicture(pages.get(i), part, i + 1, picture, talk.look().shape().width());
      }
      monitor.step(1);
      moveInto(part, folder);
    } finally {
      deleteTree(part);
    }
  }

  private static void writePicture(
      SlideFigure page, Path folder, int number, Picture picture, int width) throws IOException {
    String ending = picture.name().toLowerCase(Locale.ROOT);
    Path file =
        folder.resolve(
            FileNames.of(String.format(Locale.ROOT, "%02d %s", number, page.title()), ending));
    if (picture == Picture.PNG) {
      FigureExport.png(
          page, file, new FigureExport.Raster(2 * width, 2 * (int) SlideFigure.HEIGHT, 192));
    } else {
      FigureExport.svg(page, file, width, SlideFigure.HEIGHT);
    }
  }

  private static void moveInto(Path part, Path folder) throws IOException {
    try {
      Files.delete(folder);
    } catch (NoSuchFileException e) {
      // Nothing is in the way.
    } catch (DirectoryNotEmptyException e) {
      throw new IOException(folder + ": the folder holds files; choose a new or empty one", e);
    }
    Files.move(part, folder, StandardCopyOption.ATOMIC_MOVE);
  }

  private static void deleteTree(Path folder) throws IOException {
    if (Files.exists(folder)) {
      try (var files = Files.list(folder)) {
        for (Path file : files.toList()) {
          Files.delete(file);
        }
      }
      Files.delete(folder);
    }
  }
}
