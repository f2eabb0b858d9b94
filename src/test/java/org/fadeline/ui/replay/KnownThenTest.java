package org.fadeline.ui.replay;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNotEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import org.fadeline.demo.AsPeopleLog;
import org.fadeline.io.ReadOptions;
import org.fadeline.io.open.SessionFiles;
import org.fadeline.model.Session;
import org.fadeline.ui.state.FakeDesk;
import org.fadeline.ui.state.Workbench;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** As known then, a whole record says at each moment what the record up to that moment says. */
class KnownThenTest {
  private static final long STEP = 43 * 60_000L + 3_000;

  @ParameterizedTest
  @ValueSource(
      strings = {
        "quillthorn-first-open",
        "brackwith-spring",
        "ostlerby-winter",
        "evening-moves-and-fish"
      })
  void nothingAheadOfThePlayheadChangesWhatIsShown(String sample) {
    holds(read(sample));
  }

  /** Where hardly more than the fish are logged, later ones tell most about what came before. */
  @ParameterizedTest
  @ValueSource(strings = {"brackwith-spring", "evening-moves-and-fish"})
  void norWhereOnlyFishAreLogged(String sample) {
    holds(AsPeopleLog.fishOnly(read(sample)));
  }

  /** The switch does change what is shown: otherwise the tests above would hold of nothing. */
  @Test
  void withHindsightTheRestIsShown() {
    Session whole = read("evening-moves-and-fish");
    Workbench bench = FakeDesk.opened(whole);
    long at = whole.match().allIn() + STEP;
    List<Object> then = ShownThen.at(bench, at);
    int points = bench.state().turningPoints().size();
    bench.hindsight(true);
    assertNotEquals(then, ShownThen.at(bench, at));
    assertTrue(bench.state().turningPoints().size() > points);
  }

  private static Session read(String sample) {
    return SessionFiles.read(
            Path.of("sample-sessions", sample + ".session.json"), ReadOptions.DEFAULT)
        .session()
        .orElseThrow();
  }

  private static void holds(Session whole) {
    Workbench bench = FakeDesk.opened(whole);
    List<String> told = new ArrayList<>();
    int asked = 0;
    for (long at = whole.match().allIn() + STEP; at < whole.match().allOut(); at += STEP) {
      long now = at;
      Workbench cut =
          FakeDesk.opened(
              whole.withEvents(whole.events().stream().filter(e -> e.at() <= now).toList()));
      List<Object> then = ShownThen.at(bench, at);
      List<Object> known = ShownThen.at(cut, at);
      asked++;
      assertEquals(known.size(), then.size());
      long minute = (at - whole.match().allIn()) / 60_000;
      for (int i = 0; i < known.size(); i++) {
        if (!known.get(i).equals(then.get(i))) {
          told.add(minute + " min: " + known.get(i) + " but " + then.get(i));
        }
      }
    }
    assertEquals(List.of(), told, told.size() + " told ahead in " + asked + " moments");
    assertTrue(asked > 3);
  }
}
