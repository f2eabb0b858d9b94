package org.fadeline.export;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import org.fadeline.analysis.Review;
import org.fadeline.figure.FigureStyle;
import org.fadeline.figure.Fixtures;
import org.fadeline.figure.Theme;
import org.fadeline.model.Units;
import org.fadeline.model.talk.Look;
import org.fadeline.model.talk.Source;
import org.fadeline.model.talk.Talk;

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
    TalkMaterial material = new TalkMaterial(Map.of("s1", review));
    List<Source> sources = List.of(new Source("s1", Path.of("s1")));
    for (Look.Shape shape : Look.Shape.values()) {
      Talk talk = TalkDraft.of(sources, material, Look.USUAL.withShape(shape), true);
      TalkExport.pptx(
          talk, material, folder.resolve("talk-" + shape + ".pptx"), ExportMonitor.NONE);
      TalkExport.pdf(talk, material, folder.resolve("talk-" + shape + ".pdf"), ExportMonitor.NONE);
    }
    long allIn = review.session().match().allIn();
    ReplayGif.write(
        review,
        style,
        new ReplayGif.Film(allIn, review.session().match().allOut(), 40, 8, 1280, 720),
        folder.resolve("replay.gif"),
        ExportMonitor.NONE);
    for (Table table : ReviewTableSet.of(review)) {
      TableCsv.write(table, folder.resolve(FileNames.of(table.name(), "csv")));
    }
  }
}
