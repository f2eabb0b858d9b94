package org.fadeline.figure;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import org.fadeline.analysis.Review;
import org.fadeline.analysis.season.Season;
import org.fadeline.analysis.season.SeasonBuilder;
import org.fadeline.analysis.season.SeasonFilter;
import org.fadeline.analysis.season.SessionSummaries;
import org.fadeline.export.TalkMaterial;
import org.fadeline.export.TalkPages;
import org.fadeline.model.Line;
import org.fadeline.model.talk.Look;
import org.fadeline.model.talk.Picture;
import org.fadeline.model.talk.Slide;
import org.fadeline.model.talk.Source;
import org.fadeline.model.talk.Talk;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.TestInstance;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;

/** Every figure, at the large text of a slide, keeps its words inside and off each other. */
@TestInstance(TestInstance.Lifecycle.PER_CLASS)
// BeforeAll sets every field.
@SuppressWarnings("NullAway.Init")
class FiguresOnSlidesTest {
  private static final List<String> WORDS = List.of("A row of words beside it.");

  private TalkMaterial material;

  @BeforeAll
  void matches() {
    Review carp = Fixtures.carpMatch();
    Review spring = Fixtures.springMatch();
    Review winter = Fixtures.winterMatch();
    Season season =
        SeasonBuilder.build(
            List.of(
                SessionSummaries.whole(carp),
                SessionSummaries.whole(spring),
                SessionSummaries.whole(winter)),
            SeasonFilter.ALL);
    material =
        new TalkMaterial(Map.of("s1", carp, "s2", spring, "s3", winter), Map.of("season", season));
  }

  private List<Picture> pictures(Picture.Kind kind) {
    List<Picture> pictures = new ArrayList<>();
    if (kind.ofSeason()) {
      pictures.add(Picture.of(kind, "season"));
    } else if (kind.sessions() == 2) {
      pictures.add(Picture.of(kind, "s1", "s2"));
      pictures.add(Picture.of(kind, "s3", "s1"));
    } else {
      for (String source : List.of("s1", "s2", "s3")) {
        if (kind.ofOneLine()) {
          for (Line line : material.review(source).session().lines()) {
            pictures.add(Picture.ofLine(kind, source, line.id()));
          }
        } else {
          pictures.add(Picture.of(kind, source));
        }
      }
    }
    return pictures;
  }

  @ParameterizedTest
  @EnumSource
  void wordsStayInsideAndApart(Picture.Kind kind) {
    Talk talk =
        Talk.EMPTY.withSources(
            List.of(
                new Source("s1", Path.of("a")),
                new Source("s2", Path.of("b")),
                new Source("s3", Path.of("c"))));
    List<String> faults = new ArrayList<>();
    for (Picture picture : pictures(kind)) {
      for (Look.Shape shape : Look.Shape.values()) {
        for (List<String> words : List.of(List.<String>of(), WORDS)) {
          Slide slide = Slide.EMPTY.withTitle("Title").withWords(words).withPicture(picture);
          SlideFigure page =
              TalkPages.of(talk.withLook(Look.USUAL.withShape(shape)), slide, material);
          RecordingGraphics g = new RecordingGraphics();
          page.paint(g, shape.width(), SlideFigure.HEIGHT);
          assertTrue(g.texts.size() > 3);
          String which = picture.sources() + " " + picture.lines() + " " + shape + words + ": ";
          g.outside(shape.width(), SlideFigure.HEIGHT).forEach(t -> faults.add(which + "out " + t));
          g.overlaps().forEach(t -> faults.add(which + t));
        }
      }
    }
    assertEquals("", String.join("\n", faults));
  }
}
