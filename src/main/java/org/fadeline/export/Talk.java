package org.fadeline.export;

import java.util.List;
import org.fadeline.analysis.Review;
import org.fadeline.figure.Figure;
import org.fadeline.figure.FigureSheet;
import org.fadeline.figure.FigureStyle;
import org.fadeline.figure.SlideFigure;
import org.fadeline.figure.Theme;
import org.fadeline.model.Units;

/**
 * A talk: slides in order and how they look.
 *
 * @param title what it is called
 * @param slides in order
 * @param look theme, units and shape
 * @param named whether slides may name the session and its water; otherwise they are left out
 */
public record Talk(String title, List<Slide> slides, Look look, boolean named) {
  /** Copies the list. */
  public Talk {
    slides = List.copyOf(slides);
  }

  /** Shape of the slides. */
  public enum Shape {
    /** 16:9. */
    WIDE(960),
    /** 4:3. */
    STANDARD(720);

    private final int width;

    Shape(int width) {
      this.width = width;
    }

    /** Returns the width in points; every slide is 540 points high. */
    public int width() {
      return width;
    }
  }

  /**
   * How a talk looks.
   *
   * @param theme colours
   * @param units of weights and distances
   * @param shape of the slides
   */
  public record Look(Theme theme, Units units, Shape shape) {}

  /** Returns this talk with other slides. */
  public Talk withSlides(List<Slide> newSlides) {
    return new Talk(title, newSlides, look, named);
  }

  /** Returns this talk with another look. */
  public Talk withLook(Look newLook) {
    return new Talk(title, slides, newLook, named);
  }

  /**
   * Returns the slides as pictures of a review, laid out and ready to draw.
   *
   * @throws IllegalArgumentException if a slide shows a line that the review lacks
   */
  public List<SlideFigure> pages(Review review) {
    FigureStyle plain = FigureStyle.of(look.theme(), look.units());
    FigureStyle large = plain.withTextScale(SlideFigure.figureTextScale());
    return slides.stream()
        .map(
            slide -> {
              FigureChoice choice = slide.figure();
              Figure figure = choice == null ? null : choice.make(review, large);
              java.util.ArrayList<String> text = new java.util.ArrayList<>();
              text.add(slide.title());
              text.addAll(slide.words());
              return new SlideFigure(
                  text,
                  figure,
                  FigureSheet.footOf(review, plain, named),
                  plain,
                  look.shape().width());
            })
        .toList();
  }
}
