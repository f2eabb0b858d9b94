package org.fadeline.ui.control.picture;

import java.io.IOException;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.function.Supplier;
import javafx.scene.Node;
import org.fadeline.export.FigureExport;
import org.fadeline.export.FileNames;
import org.fadeline.figure.FigureSheet;
import org.fadeline.ui.control.file.PathChooser;
import org.fadeline.ui.control.file.PathChooser.Kind;
import org.fadeline.ui.control.file.PathChooser.Question;
import org.fadeline.ui.state.Workbench;
import org.jspecify.annotations.Nullable;

/** Saves one figure where the user says, as PNG, SVG or PDF by the ending chosen. */
public final class PictureSave {
  private static final double WIDTH = 1200;
  private static final List<String> ENDINGS = List.of("png", "svg", "pdf");

  private PictureSave() {}

  /**
   * Asks for a file to write, or null where none was chosen.
   *
   * @param label what the figure is called
   */
  public static @Nullable Path ask(PathChooser paths, @Nullable Node owner, String label) {
    Kind[] kinds =
        ENDINGS.stream()
            .map(e -> Kind.of(e.toUpperCase(Locale.ROOT) + " picture", "*." + e))
            .toArray(Kind[]::new);
    Path chosen =
        paths.save(
            Question.of("Save the picture", owner)
                .named(FileNames.of(label, ENDINGS.get(0)))
                .ofKinds(kinds));
    if (chosen == null || ENDINGS.contains(ending(chosen))) {
      return chosen;
    }
    return Path.of(chosen + "." + ENDINGS.get(0));
  }

  private static String ending(Path file) {
    String[] parts = file.toString().toLowerCase(Locale.ROOT).split("\\.", -1);
    return Arrays.stream(parts).skip(1).reduce("", (before, part) -> part);
  }

  /** Draws a figure and writes it, in the background. */
  public static void write(Workbench bench, Path file, Supplier<FigureSheet> figure) {
    bench.write("picture-save", file, to -> write(figure.get(), to));
  }

  private static void write(FigureSheet sheet, Path file) throws IOException {
    double height = Math.round(WIDTH / sheet.aspect());
    switch (ending(file)) {
      case "svg" -> FigureExport.svg(sheet, file, WIDTH, height);
      case "pdf" -> FigureExport.pdf(sheet, file, WIDTH * 0.75, height * 0.75);
      default ->
          FigureExport.png(
              sheet, file, new FigureExport.Raster((int) (2 * WIDTH), (int) (2 * height), 192));
    }
  }
}
