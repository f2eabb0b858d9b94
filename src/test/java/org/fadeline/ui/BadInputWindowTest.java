package org.fadeline.ui;

import static java.util.Objects.requireNonNull;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertNotNull;
import static org.junit.jupiter.api.Assertions.assertSame;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.Stream;
import javafx.scene.Node;
import javafx.scene.control.TableView;
import org.fadeline.io.BadInput;
import org.fadeline.model.Session;
import org.fadeline.ui.imports.ImportScreen;
import org.fadeline.ui.state.Activity.Trouble;
import org.fadeline.ui.state.Desk;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/**
 * Every kind of bad input opened and brought in through the window: a sheet lists the problems, and
 * the match in hand is the same. A build takes every third kind; {@code -Dbad.all=true} takes all.
 */
class BadInputWindowTest extends WindowHarness {
  private static final int EVERY = Boolean.getBoolean("bad.all") ? 1 : 3;

  @TempDir Path folder;

  @Override
  Desk desk() {
    return new FileDesk(folder.resolve("app-data"));
  }

  private static List<BadInput> some(List<BadInput> kinds) {
    return Stream.iterate(0, i -> i < kinds.size(), i -> i + EVERY)
        .map(kinds::get)
        .filter(bad -> !bad.readable())
        .toList();
  }

  private Session openGood() throws Exception {
    Path good = Files.writeString(folder.resolve("good.session.json"), BadInput.GOOD_JSON);
    robot.interact(() -> bench.open(good));
    return session();
  }

  @Test
  void openingItShowsTheProblemsAndChangesNothing() throws Exception {
    Session before = openGood();
    List<BadInput> kinds = some(BadInput.all());
    for (BadInput bad : kinds) {
      Path file = Files.write(folder.resolve("bad" + bad.ending()), bad.bytes());
      robot.interact(() -> bench.open(file));
      Trouble trouble = bench.state().activity().trouble();
      assertNotNull(trouble, bad.toString());
      assertFalse(trouble.problems().isEmpty(), bad.toString());
      assertTrue(shows("could not be opened"), bad.toString());
      assertTrue(
          trouble.problems().stream()
              .allMatch(p -> p.place().startsWith("bad") && !p.remedy().isBlank()),
          bad + ": " + trouble.problems());
      assertSame(before, session(), bad.toString());
      robot.interact(bench::dismissTrouble);
    }
    assertTrue(kinds.size() > 25, kinds.size() + " kinds");
  }

  @Test
  void notesAreNoRecordBeforeSomebodyAcceptedThem() throws Exception {
    Session before = openGood();
    for (String name : List.of("notes.vtt", "notes.txt")) {
      Path file = folder.resolve(name);
      Files.writeString(
          file,
          name.endsWith("txt")
              ? "10:00 all in\n10:05 short bite\n"
              : "WEBVTT\n\n00:01.000 --> 00:02.000\nlanded a carp on the short line\n");
      robot.interact(() -> bench.open(file));
      Trouble trouble = requireNonNull(bench.state().activity().trouble());
      assertTrue(trouble.problems().get(0).remedy().contains("Import screen"), name);
      assertSame(before, session());
      robot.interact(bench::dismissTrouble);
    }
  }

  @Test
  void bringingItInTakesNothing() throws Exception {
    Session before = openGood();
    ImportScreen screen =
        window.screens().stream()
            .filter(ImportScreen.class::isInstance)
            .map(ImportScreen.class::cast)
            .findFirst()
            .orElseThrow();
    robot.interact(() -> window.showScreen("Import"));
    for (BadInput bad : some(BadInput.csv())) {
      Path file = Files.write(folder.resolve("bad.csv"), bad.bytes());
      robot.interact(() -> screen.take(file));
      assertFalse(node("import-problems", TableView.class).getItems().isEmpty(), bad.toString());
      assertEquals(before, session(), bad.toString());
    }
    for (BadInput bad : some(BadInput.captions())) {
      Path file = Files.write(folder.resolve("bad" + bad.ending()), bad.bytes());
      robot.interact(() -> screen.take(file));
      assertNotNull(requireNonNull(bench.state().activity().trouble()), bad.toString());
      assertTrue(node("import-notes-add", Node.class).isDisabled(), bad.toString());
      assertEquals(before, session(), bad.toString());
      robot.interact(bench::dismissTrouble);
    }
  }
}
