package org.fadeline.export;

import java.io.IOException;
import java.nio.file.Path;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.fadeline.analysis.LineReview;
import org.fadeline.analysis.Review;
import org.fadeline.figure.Figure;
import org.fadeline.figure.FigureSheet;
import org.fadeline.figure.FigureStyle;
import org.fadeline.figure.MatchPageFigure;
import org.fadeline.figure.TimelineFigure;
import org.fadeline.model.talk.Picture;

/** Every figure of a review, each with the name of its file. */
public final class ReviewFigureSet {
  /** What the one session of a review is called among the sources of its pictures. */
  private static final String ONE = "session";

  private ReviewFigureSet() {}

  /** Returns the figures by file name without ending, in the order they are best looked at. */
  public static Map<String, Figure> of(Review review, FigureStyle style) {
    Map<String, Figure> figures = new LinkedHashMap<>();
    TimelineFigure timeline = new TimelineFigure(review, style);
    figures.put("timeline", FigureSheet.of(timeline.with(timeline.view().withKey(true)), review));
    figures.put("match-page", new MatchPageFigure(review, style));
    Map<String, Picture> pictures = new LinkedHashMap<>();
    pictures.put("peg", Picture.of(Picture.Kind.PEG, ONE));
    pictures.put("weight", Picture.of(Picture.Kind.WEIGHT, ONE));
    pictures.put("first-bites", Picture.of(Picture.Kind.FIRST_BITE, ONE));
    pictures.put("first-bites-bait-in", Picture.of(Picture.Kind.FIRST_BITE_BAIT_IN, ONE));
    pictures.put("quarter-hours", Picture.of(Picture.Kind.QUARTER_HOURS, ONE));
    pictures.put("catch-weights", Picture.of(Picture.Kind.CATCH_WEIGHTS, ONE));
    int number = 1;
    for (LineReview line : review.lines()) {
      if (!line.spells().isEmpty()) {
        String id = line.line().id();
        String end = "-" + number + "-" + line.line().name();
        pictures.put("rate" + end, Picture.ofLine(Picture.Kind.RATE, ONE, id));
        pictures.put("feed-response" + end, Picture.ofLine(Picture.Kind.FEED_RESPONSE, ONE, id));
      }
      number++;
    }
    PictureMaker maker = new PictureMaker(new TalkMaterial(Map.of(ONE, review)), true);
    pictures.forEach(
        (name, picture) ->
            figures.put(name, FigureSheet.of(maker.make(picture, style).figure(), review)));
    return figures;
  }

  /**
   * Writes every figure as PNG and SVG.
   *
   * @param folder made where it is missing; files of the same names are replaced
   * @return the files written
   * @throws IOException if a file cannot be written; none of them is then left behind
   */
  public static List<Path> write(Review review, FigureStyle style, Path folder) throws IOException {
    return FigureFiles.write(of(review, style), folder, false);
  }
}
