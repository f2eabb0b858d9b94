package org.fadeline.export;

import java.util.ArrayList;
import java.util.List;
import org.fadeline.figure.Figure;
import org.fadeline.figure.FigureStyle;
import org.fadeline.figure.SlideFigure;
import org.fadeline.figure.Theme;
import org.fadeline.model.talk.Look;
import org.fadeline.model.talk.Picture;
import org.fadeline.model.talk.Slide;
import org.fadeline.model.talk.Talk;

/** Lays the slides of a talk out, ready to draw. */
public final class TalkPages {
  private TalkPages() {}

  /**
   * Returns every slide of a talk.
   *
   * @throws IllegalArgumentException if a slide shows a session or a line that is not there; the
   *     message names the slide
   */
  public static List<SlideFigure> of(Talk talk, TalkMaterial material) {
    List<SlideFigure> pages = new ArrayList<>();
    for (int i = 0; i < talk.slides().size(); i++) {
      try {
        pages.add(of(talk, talk.slides().get(i), material));
      } catch (IllegalArgumentException e) {
        throw new IllegalArgumentException("slide " + (i + 1) + ": " + e.getMessage(), e);
      }
    }
    return pages;
  }

  /**
   * Returns one slide of a talk.
   *
   * @throws IllegalArgumentException if it shows a session or a line that is not there
   */
  public static SlideFigure of(Talk talk, Slide slide, TalkMaterial material) {
    Look look = talk.look();
    FigureStyle plain =
        FigureStyle.of(
            theme(slide.ground() == null ? look.ground() : slide.ground()), look.units());
    Figure figure = null;
    List<String> foot = List.of();
    Picture picture = slide.picture();
    if (picture != null) {
      PictureMaker maker = new PictureMaker(material, !talk.discretion().unnamed());
      PictureMaker.Made made =
          maker.make(picture, plain.withTextScale(SlideFigure.figureTextScale()));
      figure = made.figure();
      foot = made.foot();
    }
    List<String> text = new ArrayList<>();
    text.add(slide.title());
    slide.words().stream().filter(w -> !w.isBlank()).forEach(text::add);
    return new SlideFigure(text, figure, foot, plain, look.shape().width());
  }

  /** Returns the colours of a ground. */
  public static Theme theme(Look.Ground ground) {
    return switch (ground) {
      case LIGHT -> Theme.PROJECTOR;
      case DARK -> Theme.DARK;
      case PRINT -> Theme.PRINT;
    };
  }
}
