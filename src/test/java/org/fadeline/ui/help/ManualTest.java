package org.fadeline.ui.help;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Stream;
import org.commonmark.node.AbstractVisitor;
import org.commonmark.node.Image;
import org.commonmark.node.Link;
import org.commonmark.node.Text;
import org.commonmark.parser.Parser;
import org.junit.jupiter.api.Test;

/** The manual holds together: no page unreachable, no link or picture that leads nowhere. */
class ManualTest {
  private final Manual manual = new Manual();

  private static List<String> targets(Manual.Page page, boolean pictures) {
    List<String> found = new ArrayList<>();
    Parser.builder()
        .build()
        .parse(page.markdown())
        .accept(
            new AbstractVisitor() {
              @Override
              public void visit(Link link) {
                if (!pictures) {
                  found.add(link.getDestination());
                }
                visitChildren(link);
              }

              @Override
              public void visit(Image image) {
                if (pictures) {
                  found.add(image.getDestination());
                  assertTrue(
                      image.getFirstChild() instanceof Text, page.file() + ": a picture in words");
                }
              }
            });
    return found;
  }

  @Test
  void everyPageIsReachedFromTheFirst() throws Exception {
    Set<String> files = new TreeSet<>();
    try (Stream<Path> found = Files.list(Path.of("docs/manual"))) {
      found
          .map(p -> String.valueOf(p.getFileName()))
          .filter(n -> n.endsWith(".md"))
          .forEach(files::add);
    }
    assertEquals(files, new TreeSet<>(manual.pages().stream().map(Manual.Page::file).toList()));
  }

  @Test
  void everyLinkLeadsToAPageAndEveryPictureIsThere() {
    for (Manual.Page page : manual.pages()) {
      for (String target : targets(page, false)) {
        assertTrue(manual.page(target.split("#", 2)[0]).isPresent(), page.file() + ": " + target);
      }
      for (String picture : targets(page, true)) {
        assertTrue(manual.picture(picture).isPresent(), page.file() + ": " + picture);
      }
    }
  }

  @Test
  void aPageIsFoundByItsScreenAndPicturesOnlyInsideTheManual() {
    assertEquals("Replay", manual.about("Replay").title());
    assertEquals(Manual.FIRST, manual.about("No such screen").file());
    assertTrue(manual.picture("images/replay-light.png").isPresent());
    assertFalse(manual.picture("../ui/fadeline.css").isPresent());
    assertFalse(manual.picture("/org/fadeline/ui/fadeline.css").isPresent());
  }

  @Test
  void theBuildListsTheLicenceOfEveryLibrary() {
    List<Libraries.Library> all = Libraries.all();
    assertTrue(all.size() > 40, all.size() + " libraries");
    assertTrue(
        all.stream().anyMatch(l -> l.name().equals("ControlsFX") && l.licence().contains("BSD")));
    assertTrue(all.stream().noneMatch(l -> l.licence().isBlank()));
  }
}
