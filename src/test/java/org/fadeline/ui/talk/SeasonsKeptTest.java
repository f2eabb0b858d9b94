package org.fadeline.ui.talk;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import org.fadeline.demo.DemoMatch;
import org.fadeline.demo.DemoWaters;
import org.fadeline.io.Problem;
import org.fadeline.io.SessionWriter;
import org.fadeline.model.talk.SeasonSource;
import org.fadeline.ui.talk.SeasonsKept.Freshness;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** A season on a talk: not read at each key typed, but as it is when the talk is written. */
class SeasonsKeptTest {
  @TempDir Path folder;

  private void match(int seed) throws IOException {
    Files.writeString(
        folder.resolve(seed + ".session.json"),
        SessionWriter.toJson(DemoMatch.generate(DemoWaters.waterB(), DemoWaters.planB(), seed)));
  }

  private int sessions(SeasonsKept kept, Freshness freshness) {
    List<Problem> problems = new ArrayList<>();
    int found =
        kept
            .load(
                List.of(new SeasonSource("season", folder, SeasonSource.Sift.ALL)),
                freshness,
                problems)
            .values()
            .stream()
            .mapToInt(season -> season.sessions().size())
            .sum();
    assertEquals(List.of(), problems);
    return found;
  }

  @Test
  void aMatchThatCameLatelyIsInWhatIsWritten() throws IOException {
    match(1);
    SeasonsKept kept = new SeasonsKept();
    assertEquals(1, sessions(kept, Freshness.RECENT));
    match(2);
    assertEquals(1, sessions(kept, Freshness.RECENT), "what is typed at is not read at each key");
    assertEquals(2, sessions(kept, Freshness.NOW));
    assertEquals(2, sessions(kept, Freshness.RECENT));
  }
}
