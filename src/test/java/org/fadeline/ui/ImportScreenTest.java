package org.fadeline.ui;

import static java.util.Objects.requireNonNull;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Instant;
import java.time.format.DateTimeFormatter;
import java.util.ArrayList;
import java.util.List;
import javafx.scene.Node;
import javafx.scene.control.Button;
import javafx.scene.control.TableView;
import javafx.scene.control.TextField;
import javafx.scene.input.KeyCode;
import org.fadeline.io.EventCsv;
import org.fadeline.model.EventKind;
import org.fadeline.model.Fish;
import org.fadeline.model.Outcome;
import org.fadeline.model.Session;
import org.fadeline.model.SessionEvent;
import org.fadeline.model.Stamp;
import org.fadeline.ui.imports.ImportScreen;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.testfx.util.WaitForAsyncUtils;

/** Bringing in tables and notes through the window. */
class ImportScreenTest extends WindowHarness {
  private static final String FOREIGN =
      """
      Clock;What;Swim;lb;oz;Remarks
      10:00;all-in;;;;
      10:05;landed;Short;3;4,5;first
      10:09;flew away;Short;;;
      10:20;landed;Far bank;1;0;
      15:00;all-out;;;;
      """;

  private static final String SPOKEN =
      """
      WEBVTT

      00:10.000 --> 00:12.000
      landed a carp on the short line, three pounds

      05:00.000 --> 05:03.000
      lost one on the short line

      06:00.000 --> 06:03.000
      lovely weather this
      """;

  @TempDir Path folder;

  private Path file(String name, String text) throws Exception {
    return Files.writeString(folder.resolve(name), text);
  }

  private void take(Path file) {
    robot.interact(() -> window.showScreen("Import"));
    robot.interact(() -> importScreen().take(file));
    WaitForAsyncUtils.waitForFxEvents();
  }

  private ImportScreen importScreen() {
    return window.screens().stream()
        .filter(ImportScreen.class::isInstance)
        .map(ImportScreen.class::cast)
        .findFirst()
        .orElseThrow();
  }

  private TableView<?> table(String id) {
    return node(id, TableView.class);
  }

  @Test
  void aTableOfSomebodyElseIsReadByItsHeaderAndItsBadRowIsListedAndShown() throws Exception {
    take(file("their 2026-08-15.csv", FOREIGN));
    assertTrue(shows("Nothing is taken while there are errors"));
    assertTrue(node("import-table-begin", Node.class).isDisabled());
    robot.interact(
        () -> {
          TableView<?> problems = table("import-problems");
          for (int i = 0; i < problems.getItems().size(); i++) {
            if (problems.getItems().get(i).toString().contains("flew away")) {
              problems.getSelectionModel().clearAndSelect(i);
            }
          }
        });
    assertEquals(2, table("import-rows").getSelectionModel().getSelectedIndex(), "row 4");
    choose("import-bad", "leave bad rows out");
    assertTrue(shows("2 events on 2 lines; 1 rows left out"));
    press("import-table-begin");
    List<SessionEvent> events = session().events();
    assertEquals(2, events.size());
    Double grams = requireNonNull(requireNonNull(events.get(0).fishOrNull()).grams());
    assertEquals((3 * 16 + 4.5) * 28.349523125, grams, 1e-9);
  }

  @Test
  void theRowsLeftOutAreSavedAsATable() throws Exception {
    take(file("their 2026-08-15.csv", FOREIGN));
    choose("import-bad", "leave bad rows out");
    Path to = folder.resolve("left.csv");
    press("import-table-rejects");
    assertEquals("left-out.csv", paths.last().name());
    assertFalse(Files.exists(to), "given up");
    paths.answer(folder.resolve("left"));
    press("import-table-rejects");
    String left = Files.readString(to);
    assertTrue(left.contains("Clock") && left.contains("flew away"), left);
    assertFalse(left.contains("Far bank"), left);
  }

  @Test
  void aTableIsAddedToTheOpenMatchAsOneStep() throws Exception {
    open("Replay");
    Session before = session();
    take(file("more.csv", "time,event,line\n10:31:07,bite,SHALLOW\n10:33,cast,New bank\n"));
    press("import-table-add");
    assertEquals(before.events().size() + 2, session().events().size());
    assertTrue(session().lines().stream().anyMatch(l -> l.name().equals("New bank")));
    robot.interact(() -> bench.editing().undo());
    assertEquals(before.events(), session().events());
    assertEquals(before.lines(), session().lines());
  }

  @Test
  void aDateInTheTablesNameIsItsDayWhateverIsOpen() throws Exception {
    open("Replay");
    take(file("club 2026-04-03.csv", "time,event,line\n10:00,cast,a\n10:05,bite,a\n"));
    assertEquals("2026-04-03", node("import-date", TextField.class).getText());
    press("import-table-begin");
    assertEquals("2026-04-03", session().occasion().date().toString());
  }

  @Test
  void theMatchesOwnTableAddsNothingTwice() throws Exception {
    open("Replay");
    Session before = session();
    take(file("own.csv", EventCsv.write(before)));
    press("import-table-add");
    assertEquals(before, session());
    assertTrue(shows("every event is in the match already"));
  }

  @Test
  void aTimeThatTheClockChangeBroughtTwiceIsAskedAbout() throws Exception {
    take(
        file(
            "2026-10-25.csv",
            "time,event\n2026-10-25T00:30,all-in\n2026-10-25T01:30,note\n2026-10-25T05:00,all-out\n"));
    type("import-zone", "Europe/London");
    assertTrue(node("import-table-begin", Node.class).isDisabled());
    choose("import-clock", "by the clock after it");
    press("import-table-begin");
    assertEquals(
        Instant.parse("2026-10-25T01:30:00Z").toEpochMilli(), session().events().get(0).at());
  }

  @Test
  void proposalsAreAcceptedAndRefusedByKeysAndMovedByATimeThatIsKnown() throws Exception {
    open("Replay");
    int before = session().events().size();
    take(file("notes.vtt", SPOKEN));
    assertTrue(shows("0 accepted, 0 refused, 2 open; 1 note gave no event"));
    type("import-align", "10:42:10");
    robot.interact(() -> table("import-proposals").requestFocus());
    robot.push(KeyCode.A);
    robot.push(KeyCode.R);
    WaitForAsyncUtils.waitForFxEvents();
    assertTrue(shows("1 accepted, 1 refused, 0 open"));
    assertEquals(before, session().events().size(), "nothing is added silently");
    press("import-notes-add");
    assertEquals(before + 1, session().events().size());
    SessionEvent added =
        session().events().stream()
            .filter(e -> String.valueOf(e.note()).contains("three pounds"))
            .findFirst()
            .orElseThrow();
    assertEquals(EventKind.LANDED, added.kind());
    assertEquals("10:42:10", session().clock(added.at()).toLocalTime().toString());
    robot.interact(() -> bench.editing().undo());
    assertEquals(before, session().events().size());
  }

  @Test
  void aWrongClockIsStatedOrTheOffsetTypedAndKeptWithTheImport() throws Exception {
    open("Replay");
    Path sheet = file("sheet.txt", "11:42 short landed carp 8lb 4oz\n12:00 short bite\n");
    take(sheet);
    type("import-offset", "0:05:00");
    assertEquals(List.of("11:47:00", "12:05:00"), proposedTimes());
    type("import-offset", "soon");
    assertTrue(shows("does not say by how much"));
    robot.interact(() -> node("import-said", TextField.class).setText("12:00"));
    type("import-align", "11:58:30");
    assertEquals(List.of("11:40:30", "11:58:30"), proposedTimes(), "from the device's own times");
    assertEquals("-1:30", node("import-offset", TextField.class).getText());
    press("import-accept-rest");
    press("import-notes-add");
    assertEquals(
        List.of(new Outcome.Imported("sheet.txt", -90_000)), session().outcome().imports());
    assertTrue(session().events().stream().anyMatch(e -> clock(e).equals("11:40:30")));
    take(sheet);
    assertTrue(shows("as when it was last brought in"));
    assertEquals(List.of("11:40:30", "11:58:30"), proposedTimes());
    robot.interact(() -> bench.editing().undo());
    assertEquals(List.of(), session().outcome().imports());
  }

  @Test
  void everythingIsDecidedByKeysAlone() throws Exception {
    open("Replay");
    int before = session().events().size();
    take(
        file(
            "notes.txt",
            "11:40 short bite\n11:41 short landed carp 4lb\n11:42 short lost\n11:43 short bite"));
    assertTrue(table("import-proposals").isFocused(), "the list has the keys at once");
    assertTrue(shows("11:41 short landed carp 4lb"), "each stands beside its words");
    robot.push(KeyCode.A);
    robot.push(KeyCode.E);
    waitUntil(() -> node("proposal-time", TextField.class).isFocused());
    robot.push(KeyCode.CONTROL, KeyCode.A);
    robot.write("11:41:30");
    robot.push(KeyCode.ENTER);
    robot.push(KeyCode.TAB);
    robot.push(KeyCode.DOWN);
    robot.push(KeyCode.DOWN);
    robot.push(KeyCode.TAB);
    robot.push(KeyCode.TAB);
    robot.push(KeyCode.CONTROL, KeyCode.A);
    robot.write("5lb 2oz");
    robot.push(KeyCode.ENTER);
    robot.push(KeyCode.ESCAPE);
    waitUntil(() -> table("import-proposals").isFocused());
    robot.push(KeyCode.A);
    robot.push(KeyCode.R);
    assertTrue(shows("2 accepted, 1 refused, 1 open"));
    robot.push(KeyCode.UP);
    robot.push(KeyCode.U);
    assertTrue(shows("2 accepted, 0 refused, 2 open"));
    robot.push(KeyCode.R);
    robot.push(KeyCode.SHIFT, KeyCode.A);
    assertTrue(shows("3 accepted, 1 refused, 0 open"));
    robot.push(KeyCode.T);
    waitUntil(() -> node("import-align", TextField.class).isFocused());
    assertEquals("", node("import-align", TextField.class).getText(), "the key types nothing");
    robot.write("11:44");
    robot.push(KeyCode.ENTER);
    waitUntil(() -> table("import-proposals").isFocused());
    assertEquals(before, session().events().size(), "nothing is added silently");
    press("import-notes-add");
    List<SessionEvent> added =
        session().events().stream()
            .filter(e -> HandMade.session().events().stream().noneMatch(o -> o.at() == e.at()))
            .toList();
    assertEquals(3, added.size());
    SessionEvent changed = added.get(1);
    assertEquals(EventKind.FOUL, changed.kind(), "two kinds on by the down key");
    assertEquals(
        5.125 * 453.59237, requireNonNull(requireNonNull(changed.fishOrNull()).grams()), 1e-6);
  }

  private String clock(SessionEvent event) {
    return session().clock(event.at()).toLocalTime().format(DateTimeFormatter.ISO_LOCAL_TIME);
  }

  private List<String> proposedTimes() {
    return table("import-proposals").getItems().stream()
        .map(SessionEvent.class::cast)
        .map(this::clock)
        .toList();
  }

  @Test
  void aProposalIsChangedBeforeItIsAccepted() throws Exception {
    robot.interact(() -> window.showScreen("Import"));
    take(
        file(
            "notes.txt", "10:00 all in\n10:51 short landed carp 8lb 4oz\nnonsense\n15:00 all out"));
    assertTrue(shows("1 remark"));
    robot.interact(() -> table("import-proposals").getSelectionModel().clearAndSelect(1));
    type("proposal-weight", "9lb");
    choose("proposal-kind", EventKind.FOUL);
    press("import-accept-rest");
    press("import-notes-begin");
    assertEquals(3, session().events().size());
    SessionEvent foul = session().events().get(1);
    assertEquals(EventKind.FOUL, foul.kind());
    assertEquals(9 * 453.59237, requireNonNull(requireNonNull(foul.fishOrNull()).grams()), 1e-6);
    assertEquals("15:00", session().clock(session().match().allOut()).toLocalTime().toString());
  }

  @Test
  void notesThatCannotBeReadSaySoAndChangeNothing() throws Exception {
    open("Replay");
    Session before = session();
    take(file("bad.vtt", "NOTVTT\n\n00:01.000 --> 00:02.000\nlanded one\n"));
    assertTrue(shows("bad.vtt could not be read"));
    assertEquals(before, session());
  }

  /** The match in hand as a friend logged it: two minutes fast, one fish heavier, one more bite. */
  private Path friends() {
    List<SessionEvent> events = new ArrayList<>();
    boolean heavier = false;
    for (SessionEvent event : session().events()) {
      SessionEvent told = event.retimed(at -> at + 120_000);
      if (!heavier && told instanceof SessionEvent.Landed landed) {
        heavier = true;
        told = new SessionEvent.Landed(landed.stamp(), new Fish(1, null, 2_222.0, false));
      }
      events.add(told);
    }
    events.add(
        new SessionEvent.Bite(
            new Stamp("friend", HandMade.minute(47.3) + 120_000, events.get(5).lineId(), null)));
    desk.with("friend.session.json", session().withEvents(List.copyOf(events)));
    return Path.of("friend.session.json");
  }

  @Test
  void clocksThatAgreeAreSaidToAgree() {
    open("Import");
    desk.with("friend.session.json", session());
    take(Path.of("friend.session.json"));
    assertTrue(shows("Their clock agrees with yours, by"));
    assertTrue(shows("and nothing differs."));
  }

  @Test
  void aSecondRecordIsSetBesideAndPutInAsOneStep() {
    open("Import");
    Session before = session();
    take(friends());
    assertTrue(shows("Their clock is 120.0 s ahead of yours"));
    assertTrue(shows("1 by theirs alone and will be added, 1 differs"));
    assertEquals(1, table("second-clashes").getItems().size());
    robot.interact(() -> table("second-clashes").requestFocus());
    robot.push(KeyCode.DIGIT2);
    assertTrue(shows("theirs"));
    robot.interact(() -> node("second-together", Button.class).fire());
    WaitForAsyncUtils.waitForFxEvents();
    assertEquals(before.events().size() + 1, session().events().size());
    Fish first =
        session().events().stream()
            .filter(SessionEvent.Landed.class::isInstance)
            .findFirst()
            .map(SessionEvent::fishOrNull)
            .orElseThrow();
    assertEquals(2_222.0, first.grams());
    robot.interact(() -> bench.editing().undo());
    assertEquals(before.events(), session().events());
  }

  @Test
  void aSecondRecordNeedsOnesOwnToBeOpen() {
    take(FILE);
    assertTrue(shows("Open your own record of the match first"));
    assertTrue(node("second-together", Button.class).isDisabled());
  }
}
