package org.fadeline.ui;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNotNull;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.List;
import javafx.scene.AccessibleAttribute;
import javafx.scene.AccessibleRole;
import javafx.scene.Node;
import javafx.scene.input.KeyCode;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.extension.ExtendWith;
import org.testfx.framework.junit5.ApplicationExtension;
import org.testfx.util.WaitForAsyncUtils;

/** The way of the Tab key through Replay and Review, told by the names a screen reader says. */
@ExtendWith(ApplicationExtension.class)
class FocusOrderTest extends WindowHarness {
  /** Returns what a screen reader says of a node, and that it knows what it is. */
  private String said(Node node) {
    Object text = node.queryAccessibleAttribute(AccessibleAttribute.TEXT);
    String name = node.getAccessibleText() != null ? node.getAccessibleText() : (String) text;
    assertNotNull(name, () -> "no name: " + node);
    assertTrue(!name.isBlank(), () -> "no name: " + node);
    assertNotNull(node.getAccessibleRole(), () -> "no role: " + node);
    assertTrue(
        node.getAccessibleRole() != AccessibleRole.NODE
            && node.getAccessibleRole() != AccessibleRole.PARENT,
        () -> "no role: " + node);
    return name;
  }

  /** Presses Tab until the focus is back where it began. */
  private List<String> way(int most) {
    List<String> names = new ArrayList<>();
    Node first = window.scene().getFocusOwner();
    Node now = first;
    do {
      Node here = now;
      names.add(WaitForAsyncUtils.waitForAsyncFx(5_000, () -> said(here)));
      robot.push(KeyCode.TAB);
      now = window.scene().getFocusOwner();
    } while (now != first && names.size() < most);
    return names;
  }

  private static final List<String> HEADER =
      List.of(
          "Matches",
          "Replay",
          "Review",
          "Compare",
          "Log",
          "Set up",
          "Import",
          "Weigh-in",
          "Talk",
          "Season",
          "Menu");

  private static final List<String> TRANSPORT =
      List.of(
          "Playhead",
          "Go to a clock time",
          "Previous turning point",
          "Previous event",
          "Play backwards",
          "Play",
          "Next event",
          "Next turning point",
          "Loop what is picked",
          "Speed: 60×");

  private static final List<String> ABOVE =
      List.of("Lines: show, hide", "Show: with hindsight", "Peg 14", "Turning points");

  /** The names begin, one by one, with these words. */
  private static void goes(List<String> names, List<String> wanted) {
    assertEquals(wanted.size(), names.size(), () -> "goes " + names);
    for (int i = 0; i < wanted.size(); i++) {
      String name = names.get(i);
      assertTrue(name.startsWith(wanted.get(i)), () -> "«" + name + "» in " + names);
    }
  }

  private static List<String> all(List<List<String>> parts) {
    return parts.stream().flatMap(List::stream).toList();
  }

  @Test
  void throughTheReplay() {
    open("Replay");
    robot.interact(() -> bench.hindsight(true));
    goes(way(60), all(List.of(List.of("Timeline"), TRANSPORT, HEADER, ABOVE)));
  }

  @Test
  void throughTheReplayWithAnEventPicked() {
    open("Replay");
    robot.interact(
        () -> {
          bench.hindsight(true);
          bench.picking().pick("w0");
        });
    List<String> event =
        List.of(
            "Time of the event",
            "Kind of event",
            "Line of what is picked",
            "Weight of the fish",
            "Words on the event",
            "Delete what is picked");
    goes(way(60), all(List.of(List.of("Timeline"), event, TRANSPORT, HEADER, ABOVE)));
  }

  @Test
  void throughTheReview() {
    open("Review");
    goes(
        way(60),
        all(
            List.of(
                List.of("Show: Evidence"),
                List.of("Show only rows", "Copy the rows", "What the other lines"),
                HEADER,
                List.of("Go to 12:10", "Go to 10:26"),
                List.of("10:01–10:25  Short line", "Replay from 10:01"),
                List.of(
                    "10:26–13:00  Shallow", "Replay from 10:26", "From 12:10, when it was plain"),
                List.of(
                    "13:01–15:00  Short line",
                    "Replay from 13:01",
                    "From 14:52, when it was plain"))));
  }
}
