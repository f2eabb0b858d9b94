package org.fadeline.ui.replay;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import org.fadeline.analysis.Reviewer;
import org.fadeline.io.ReadOptions;
import org.fadeline.io.open.SessionFiles;
import org.fadeline.model.Session;
import org.fadeline.model.Units;
import org.fadeline.ui.state.DirectTaskService;
import org.fadeline.ui.state.FakeDesk;
import org.fadeline.ui.state.Workbench;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** As known then, a whole record says at each moment what the record up to that moment says. */
class KnownThenTest {
  private static final long STEP = 17 * 60_000L + 3_000;

  @ParameterizedTest
  @ValueSource(
      strings = {
        "quillthorn-first-open",
        "brackwith-spring",
        "ostlerby-winter",
        "evening-moves-and-fish"
      })
  void nothingAheadOfThePlayheadChangesTheReadout(String sample) {
    Session whole =
        SessionFiles.read(Path.of("sample-sessions", sample + ".session.json"), ReadOptions.DEFAULT)
            .session()
            .orElseThrow();
    Workbench bench = bench(whole);
    List<String> told = new ArrayList<>();
    int asked = 0;
    for (long at = whole.match().allIn() + STEP; at < whole.match().allOut(); at += STEP) {
      long now = at;
      Workbench cut =
          bench(whole.withEvents(whole.events().stream().filter(e -> e.at() <= now).toList()));
      Readout then = at(bench, at);
      Readout known = at(cut, at);
      asked++;
      long minute = (at - whole.match().allIn()) / 60_000;
      for (int i = 0; i < known.cards().size(); i++) {
        if (!known.cards().get(i).equals(then.cards().get(i))) {
          told.add(minute + " min: " + known.cards().get(i) + " but " + then.cards().get(i));
        }
      }
      if (!known.pace().equals(then.pace())) {
        told.add(minute + " min: " + known.pace() + " but " + then.pace());
      }
    }
    assertEquals(List.of(), told, told.size() + " told ahead in " + asked + " moments");
  }

  private static Readout at(Workbench bench, long at) {
    bench.transport().seek(at);
    return Readout.of(bench.state(), Units.LB_OZ_AND_METRES).orElseThrow();
  }

  private static Workbench bench(Session session) {
    Workbench bench =
        new Workbench(
            new FakeDesk().with("s.session.json", session),
            Reviewer::review,
            new DirectTaskService(),
            () -> {});
    bench.open(Path.of("s.session.json"));
    return bench;
  }
}
