package org.fadeline.replay;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNull;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.IntRange;
import org.fadeline.demo.DemoMatch;
import org.fadeline.demo.DemoWaters;
import org.fadeline.model.Fish;
import org.fadeline.model.Session;
import org.fadeline.model.SessionEvent;
import org.fadeline.model.Stamp;
import org.junit.jupiter.api.Test;

/** What shows at an instant is a function of the record up to it, whatever the way there. */
class ReplayTrackTest {
  private static final Session MATCH =
      DemoMatch.generate(DemoWaters.waterB(), DemoWaters.planB(), 7);

  /** Any later event may be missing: the frame must not know of it. */
  @Property(tries = 200, seed = "20260103")
  void aFrameRestsOnNothingThatCameLater(
      @ForAll @IntRange(min = -600, max = 19_000) int secondsAfterAllIn) {
    long at = MATCH.match().allIn() + secondsAfterAllIn * 1000L;
    List<SessionEvent> seen = MATCH.events().stream().filter(e -> e.at() <= at).toList();
    assertEquals(ReplayFrame.at(MATCH.withEvents(seen), at), ReplayFrame.at(MATCH, at));
  }

  @Test
  void goingBackToEveryEventShowsWhatGoingForwardShowed() {
    ReplayTrack track = ReplayTrack.of(MATCH);
    List<ReplayFrame> forward = new ArrayList<>();
    for (SessionEvent event : MATCH.events()) {
      forward.add(track.frameAt(event.at()));
      track.frameAt(event.at() - 1);
    }
    List<ReplayFrame> backward = new ArrayList<>();
    for (int i = MATCH.events().size() - 1; i >= 0; i--) {
      backward.add(track.frameAt(MATCH.events().get(i).at()));
    }
    Collections.reverse(backward);
    assertEquals(forward, backward);
  }

  @Test
  void theLastFrameHoldsTheWholeCatch() {
    ReplayFrame end = ReplayFrame.at(MATCH, MATCH.match().allOut());
    int landed = 0;
    double grams = 0;
    for (SessionEvent event : MATCH.events()) {
      if (event instanceof SessionEvent.Landed fish && fish.fish().grams() != null) {
        landed += fish.fish().count();
        grams += fish.fish().grams();
      }
    }
    assertEquals(landed, end.totals().fish());
    assertEquals(grams, end.totals().weightG(), 1e-6);
    assertEquals(landed, end.lines().stream().mapToInt(ReplayFrame.LineState::fish).sum());
    assertEquals(ReplayFrame.Phase.AFTER, end.phase());
    assertNull(end.fishing());
  }

  @Test
  void aClickerCountAddsWhatWasNotLoggedFishByFish() {
    long allIn = MATCH.match().allIn();
    String line = MATCH.lines().get(0).id();
    List<SessionEvent> events = new ArrayList<>();
    for (int i = 1; i <= 3; i++) {
      events.add(
          new SessionEvent.Landed(
              new Stamp("f" + i, allIn + i * 60_000L, line, null),
              new Fish(1, null, 300.0, false)));
    }
    events.add(count("same", allIn + 240_000, line, 3, 900.0));
    events.add(count("more", allIn + 480_000, line, 2, 500.0));
    ReplayTrack track = ReplayTrack.of(MATCH.withEvents(events));
    ReplayFrame.Totals same = track.frameAt(allIn + 240_000).totals();
    assertEquals(3, same.fish());
    assertEquals(900, same.weightG());
    ReplayFrame more = track.frameAt(allIn + 480_000);
    assertEquals(5, more.totals().fish());
    assertEquals(1400, more.totals().weightG());
    assertEquals(5, more.line(line).orElseThrow().bites());
  }

  private static SessionEvent count(String id, long at, String line, int fish, double grams) {
    return new SessionEvent.Count(
        new Stamp(id, at, line, null), new Fish(fish, null, grams, false));
  }
}
