package org.fadeline.export;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import org.fadeline.figure.Fixtures;
import org.fadeline.figure.SlideFigure;
import org.fadeline.model.talk.Look;
import org.fadeline.model.talk.Picture;
import org.fadeline.model.talk.Slide;
import org.fadeline.model.talk.Source;
import org.fadeline.model.talk.Talk;
import org.junit.jupiter.api.Test;

class SlideChecksTest {
  private final TalkMaterial material =
      new TalkMaterial(Map.of("a", Fixtures.carpMatch(), "b", Fixtures.springMatch()));
  private final Talk talk =
      TalkDraft.of(List.of(new Source("a", Path.of("a"))), material, Look.USUAL, true);

  private List<String> found(Slide slide) {
    return SlideChecks.of(TalkPages.of(talk, slide, material));
  }

  @Test
  void theDraftHasNothingTooMuchOrTooSmall() {
    for (Look.Shape shape : Look.Shape.values()) {
      for (SlideFigure page : TalkPages.of(talk.withLook(talk.look().withShape(shape)), material)) {
        assertEquals(List.of(), SlideChecks.of(page), page.title() + " " + shape);
      }
    }
  }

  @Test
  void tooMuchIsSaid() {
    assertTrue(found(Slide.EMPTY).get(0).contains("no title"));
    Slide one = Slide.EMPTY.withTitle("One");
    assertEquals(List.of(), found(one));
    assertTrue(found(one.withTitle("long ".repeat(30))).get(0).contains("cut"));
    assertTrue(found(one.withWords(List.of("word ".repeat(56)))).get(0).startsWith("56 words"));
    List<String> many = new ArrayList<>();
    for (int i = 0; i < 12; i++) {
      many.add("a row");
    }
    assertTrue(found(one.withWords(many)).get(0).contains("more words than room"));
    Slide squeezed =
        one.withWords(many.subList(0, 5)).withPicture(Picture.of(Picture.Kind.TIMELINE, "a"));
    assertTrue(
        String.join(" ", found(squeezed)).contains("little room"), found(squeezed)::toString);
  }

  @Test
  void aPictureWithSmallTextIsSaid() {
    Slide page =
        Slide.EMPTY
            .withTitle("All")
            .withPicture(Picture.of(Picture.Kind.COMPARE_TIMELINES, "a", "b"));
    assertTrue(String.join(" ", found(page)).contains("points; below 24"), found(page)::toString);
  }
}
