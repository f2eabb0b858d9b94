package org.fadeline.export;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import org.fadeline.analysis.Review;
import org.fadeline.figure.FigureStyle;
import org.fadeline.figure.Fixtures;
import org.fadeline.figure.Theme;
import org.fadeline.model.Units;

/** Writes one of each export to be looked at in other programs. */
public final class ExportGallery {
  private ExportGallery() {}

  /** Writes into the folder given as the first argument. */
  public static void main(String[] args) throws IOException {
    Path folder = Path.of(args[0]);
    Files.createDirectories(folder);
    Review review = Fixtures.carpMatch();
    FigureStyle style = FigureStyle.of(Theme.LIGHT, Units.LB_OZ_AND_METRES);
    ReviewFigureSet.write(review, style, folder.resolve("figures"));
    for (Talk.Shape shape : Talk.Shape.values()) {
      Talk talk =
          TalkDraft.of(review, new Talk.Look(Theme.PROJECTOR, Units.LB_OZ_AND_METRES, shape), true);
      TalkExport.pptx(talk, review, folder.resolve("talk-" + shape + ".pptx"), ExportMonitor.NONE);
      TalkExport.pdf(talk, review, folder.resolve("talk-" + shape + ".pdf"), ExportMonitor.NONE);
    }
    long allIn = review.session().match().allIn();
    ReplayGif.write(
        review,
        style,
        new ReplayGif.Film(allIn, review.session().match().allOut(), 40, 8, 1280, 720),
        folder.resolve("replay.gif"),
        ExportMonitor.NONE);
    for (Table table : Tables.of(review)) {
      TableCsv.write(table, folder.resolve(FileNames.of(table.name(), "csv")));
    }
  }
}
