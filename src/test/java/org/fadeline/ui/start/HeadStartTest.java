package org.fadeline.ui.start;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNotSame;
import static org.junit.jupiter.api.Assertions.assertNull;
import static org.junit.jupiter.api.Assertions.assertSame;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.fadeline.analysis.Review;
import org.fadeline.analysis.ReviewSettings;
import org.fadeline.analysis.Reviewer;
import org.fadeline.model.Edit;
import org.fadeline.model.Session;
import org.fadeline.model.SessionEvent;
import org.fadeline.model.Units;
import org.fadeline.ui.FileDesk;
import org.fadeline.ui.state.Desk;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class HeadStartTest {
  private static final Path SAMPLE = Path.of("sample-sessions/evening-moves-and-fish.session.json");

  @TempDir private Path folder = Path.of("");

  private Path copy() throws IOException {
    return Files.copy(SAMPLE, folder.resolve("match.session.json"));
  }

  @Test
  void readsTheMatchAndReviewsItOnce() throws Exception {
    HeadStart start = new HeadStart(copy(), new FileDesk(folder), Units.LB_OZ_AND_METRES);
    Session session = start.held().session();
    Review first = start.review(session, ReviewSettings.DEFAULT, Units.LB_OZ_AND_METRES);
    assertSame(first, start.review(session, ReviewSettings.DEFAULT, Units.LB_OZ_AND_METRES));
    assertEquals(Reviewer.review(session, ReviewSettings.DEFAULT), first);
    start.close();
  }

  @Test
  void leavesAnotherReviewThanTheOneBegunToBeWorkedOut() throws Exception {
    HeadStart start = new HeadStart(copy(), new FileDesk(folder), Units.KG_AND_METRES);
    Session session = start.held().session();
    Review begun = start.review(session, ReviewSettings.DEFAULT, Units.KG_AND_METRES);
    Review asked = start.review(session, ReviewSettings.DEFAULT, Units.LB_OZ_AND_METRES);
    assertNotSame(begun, asked);
    assertEquals(Reviewer.review(session, ReviewSettings.DEFAULT), asked);
    start.close();
  }

  @Test
  void reviewsAnEditedMatchAnew() throws Exception {
    HeadStart start = new HeadStart(copy(), new FileDesk(folder), Units.LB_OZ_AND_METRES);
    Desk.Held held = start.held();
    Session opened = held.session();
    start.review(opened, ReviewSettings.DEFAULT, Units.LB_OZ_AND_METRES);
    List<SessionEvent> fewer = opened.events().subList(0, opened.events().size() / 2);
    held.append(Edit.between("Delete half", opened, opened.withEvents(fewer))).join();
    Review asked = start.review(held.session(), ReviewSettings.DEFAULT, Units.LB_OZ_AND_METRES);
    assertEquals(Reviewer.review(held.session(), ReviewSettings.DEFAULT), asked);
    start.close();
  }

  @Test
  void handsOnTheRefusalOfAFileThatCannotBeUsed() throws Exception {
    Path damaged = Files.writeString(folder.resolve("x.session.json"), "{ \"format\": ");
    HeadStart start = new HeadStart(damaged, new FileDesk(folder), Units.LB_OZ_AND_METRES);
    Desk.Refusal refusal = assertThrows(Desk.Refusal.class, start::held);
    assertTrue(refusal.trouble().title().contains("could not be opened"));
    start.close();
  }

  @Test
  void letsTheFileGoWhereNoWindowCame() throws Exception {
    Path path = copy();
    new HeadStart(path, new FileDesk(folder), Units.LB_OZ_AND_METRES).close();
    try (Desk.Held again =
        new HeadStart(path, new FileDesk(folder), Units.LB_OZ_AND_METRES).held()) {
      assertNull(again.source().readOnly());
    }
  }
}
