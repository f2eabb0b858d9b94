package org.fadeline.ui;

import static java.util.Objects.requireNonNull;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNull;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import javafx.scene.control.Label;
import javafx.scene.control.ListView;
import javafx.scene.control.TabPane;
import javafx.scene.input.KeyCode;
import org.fadeline.io.TalkReader;
import org.fadeline.io.TalkWriter;
import org.fadeline.model.talk.Slide;
import org.fadeline.model.talk.Talk;
import org.fadeline.ui.state.Activity;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.testfx.util.WaitForAsyncUtils;

/** Which files talks are opened from and saved to. */
class TalkFilesTest extends WindowHarness {
  @TempDir Path folder;

  @BeforeEach
  void talkScreen() {
    open("Talk");
  }

  private void key(KeyCode code) {
    robot.push(KeyCode.CONTROL, KeyCode.ALT, code);
    WaitForAsyncUtils.waitForFxEvents();
  }

  private void drop(Path file) {
    robot.interact(() -> Drops.drop(screen("Talk").view(), file));
    WaitForAsyncUtils.waitForFxEvents();
  }

  private int slides() {
    return node("slides", ListView.class).getItems().size();
  }

  private Activity.Trouble trouble() {
    return requireNonNull(bench.state().activity().trouble());
  }

  private String matches() {
    return node("talk-matches", Label.class).getText();
  }

  /** Returns a saved talk of two slides. */
  private Path saved(String name) throws IOException {
    Path file = folder.resolve(name);
    Talk talk =
        Talk.EMPTY.withSlides(List.of(Slide.EMPTY.withTitle("One"), Slide.EMPTY.withTitle("Two")));
    TalkWriter.write(talk, file);
    return file;
  }

  @Test
  void aTalkIsSavedOpenedAndSavedAgainWithoutAsking() throws IOException {
    press("draft");
    int drafted = slides();
    paths.answer(folder.resolve("club night"));
    key(KeyCode.S);
    Path file = folder.resolve("club night.talk.json");
    assertTrue(paths.last().name().endsWith(".talk.json"), paths.last().name());
    assertEquals(drafted, TalkReader.read(file).talk().orElseThrow().slides().size());
    robot.push(KeyCode.INSERT);
    key(KeyCode.S);
    assertEquals(1, paths.asked().size(), "it has a file now");
    assertEquals(drafted + 1, TalkReader.read(file).talk().orElseThrow().slides().size());
    paths.answer(saved("two.talk.json"));
    key(KeyCode.O);
    assertEquals(folder, paths.last().near());
    assertEquals(2, slides());
  }

  @Test
  void givingUpAChoiceChangesNothing() throws IOException {
    press("draft");
    int drafted = slides();
    key(KeyCode.S);
    assertEquals(1, paths.asked().size());
    key(KeyCode.O);
    assertEquals("The talk in hand is not saved", trouble().title());
    robot.interact(() -> requireNonNull(trouble().offer()).action().run());
    assertEquals("Open a talk", paths.last().title());
    assertEquals(drafted, slides());
    try (var files = Files.list(folder)) {
      assertEquals(0, files.count());
    }
  }

  @Test
  void aTalkThatCannotBeReadIsToldWithItsNameAndTheOneInHandStays() throws IOException {
    Path broken = folder.resolve("broken.talk.json");
    Files.writeString(broken, "{\"format\": \"fadeline-talk\", \"version\": 1, \"slides\": 3}");
    paths.answer(saved("two.talk.json"));
    key(KeyCode.O);
    for (Path bad : List.of(broken, folder.resolve("gone.talk.json"), folder)) {
      paths.answer(bad);
      key(KeyCode.O);
      assertTrue(
          (trouble().title() + trouble().detail() + trouble().problems())
              .contains(bad.getFileName().toString()),
          trouble()::toString);
      robot.interact(bench::dismissTrouble);
      assertEquals(2, slides());
    }
  }

  @Test
  void aTalkThatCannotBeSavedIsToldAndStaysInHand() throws IOException {
    press("draft");
    int drafted = slides();
    Path inTheWay = Files.writeString(folder.resolve("file"), "kept");
    paths.answer(inTheWay.resolve("club.talk.json"));
    key(KeyCode.S);
    assertTrue(trouble().title().contains("was not saved"), trouble()::toString);
    assertTrue(trouble().detail().contains("club.talk.json"), trouble()::toString);
    assertEquals(drafted, slides());
    assertEquals("kept", Files.readString(inTheWay));
  }

  @Test
  void aDroppedTalkIsOpenedUnlessTheOneInHandWouldBeLost() throws IOException {
    drop(saved("two.talk.json"));
    assertEquals(2, slides());
    robot.push(KeyCode.INSERT);
    drop(saved("other.talk.json"));
    assertEquals("The talk in hand is not saved", trouble().title());
    assertEquals(3, slides());
    robot.interact(() -> requireNonNull(trouble().offer()).action().run());
    WaitForAsyncUtils.waitForFxEvents();
    assertEquals(2, slides());
    assertTrue(paths.asked().isEmpty(), "what was dropped is known");
  }

  @Test
  void aDroppedMatchIsOpenedAsEverywhere() {
    drop(Path.of("missing.session.json"));
    assertEquals("missing.session.json", trouble().problems().get(0).place());
    robot.interact(bench::dismissTrouble);
    assertEquals(0, slides());
  }

  @Test
  void aMatchIsAddedWhereOneIsChosen() {
    press("draft");
    robot.interact(
        () -> robot.lookup(".talk-tabs").queryAs(TabPane.class).getSelectionModel().select(1));
    press("add-match");
    assertEquals("Add a match", paths.last().title());
    assertNull(bench.state().activity().trouble());
    assertEquals("hand.session.json", matches());
    paths.answer(folder.resolve("other.session.json"));
    press("add-match");
    assertEquals("hand.session.json\nother.session.json", matches());
  }
}
