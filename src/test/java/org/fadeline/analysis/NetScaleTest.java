package org.fadeline.analysis;

import static java.util.Objects.requireNonNull;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNull;

import java.util.ArrayList;
import java.util.List;
import org.fadeline.analysis.NetScale.Standing;
import org.fadeline.model.Fish;
import org.fadeline.model.MatchRules.NetLimit;
import org.fadeline.model.Outcome;
import org.fadeline.model.Outcome.NetWeight;
import org.fadeline.model.Session;
import org.fadeline.model.SessionEvent;
import org.fadeline.model.Stamp;
import org.fadeline.ui.HandMade;
import org.jspecify.annotations.Nullable;
import org.junit.jupiter.api.Test;

/** Nets by the log and by the scales; the sums are done by hand. */
class NetScaleTest {
  /** 50 lb exactly: 22.6796185 kg (Weights and Measures Act 1985, Schedule 1). */
  private static final double FIFTY_POUNDS = 22_679.6185;

  private final List<SessionEvent> events = new ArrayList<>();

  private Stamp stamp(double minute) {
    return new Stamp("e" + events.size(), HandMade.minute(minute), "short", null);
  }

  private void landed(double minute, @Nullable Double grams) {
    events.add(new SessionEvent.Landed(stamp(minute), new Fish(1, "carp", grams, false)));
  }

  private void net(double minute, @Nullable Integer number) {
    events.add(new SessionEvent.Net(stamp(minute), number));
  }

  private Session session(@Nullable NetLimit limit, NetWeight... weighed) {
    Session session = HandMade.of(events);
    return session
        .withMatch(session.match().withRules(session.match().rules().withNetLimit(limit)))
        .withOutcome(Outcome.UNKNOWN.withWeighIn(List.of(weighed)));
  }

  @Test
  void putsFishIntoTheNetInUse() {
    landed(1, 2000.0);
    landed(2, 3000.0);
    net(3, null);
    events.add(new SessionEvent.Foul(stamp(4), new Fish(1, "carp", 4000.0, false)));
    net(5, 4);
    landed(6, 1000.0);
    List<NetScale> nets = NetScale.of(session(null, new NetWeight(1, 5500, "carp")));
    assertEquals(List.of(1, 2, 4), nets.stream().map(NetScale::net).toList());
    assertEquals(new NetScale.Logged(2, 0, 5000), nets.get(0).logged());
    assertEquals(
        new NetScale.Logged(1, 0, 4000), nets.get(1).logged(), "the scales include foul-hooked");
    assertEquals(1.1, requireNonNull(nets.get(0).factor()), 1e-12);
    assertNull(nets.get(1).factor(), "not weighed");
  }

  @Test
  void givesNoFactorWhereSomeFishHaveNoWeight() {
    landed(1, 2000.0);
    landed(2, null);
    NetScale net = NetScale.of(session(null, new NetWeight(1, 5500, null))).get(0);
    assertEquals(new NetScale.Logged(2, 1, 2000), net.logged());
    assertNull(net.factor());
  }

  @Test
  void takesFromACountWhatWasNotLoggedOneByOne() {
    landed(1, 2000.0);
    landed(2, null);
    events.add(new SessionEvent.Count(stamp(10), new Fish(5, null, 9000.0, false)));
    events.add(new SessionEvent.Count(stamp(20), new Fish(2, null, 1000.0, false)));
    NetScale net = NetScale.of(session(null, new NetWeight(1, 11_000, null))).get(0);
    assertEquals(new NetScale.Logged(7, 0, 10_000), net.logged());
    assertEquals(1.1, requireNonNull(net.factor()), 1e-12);
  }

  @Test
  void standsToTheLimit() {
    NetLimit limit = new NetLimit(FIFTY_POUNDS, 1000, "counts as nothing");
    landed(1, 2000.0);
    Session logged = session(limit);
    assertEquals(Standing.WITHIN, NetScale.of(logged).get(0).standing());
    assertEquals(Standing.WITHIN, standing(limit, FIFTY_POUNDS));
    assertEquals(Standing.WITHIN_TOLERANCE, standing(limit, FIFTY_POUNDS + 1000));
    assertEquals(Standing.OVER, standing(limit, FIFTY_POUNDS + 1001));
    assertEquals(Standing.NO_LIMIT, standing(null, FIFTY_POUNDS));
  }

  private Standing standing(@Nullable NetLimit limit, double grams) {
    return NetScale.of(session(limit, new NetWeight(1, grams, null))).get(0).standing();
  }

  @Test
  void knowsNoTotalWhileANetWithFishIsNotWeighed() {
    landed(1, 2000.0);
    net(2, null);
    landed(3, 2000.0);
    Session half = session(null, new NetWeight(1, 2100, null));
    assertNull(NetScale.total(NetScale.of(half)).scalesG());
    Session whole = session(null, new NetWeight(1, 2100, null), new NetWeight(2, 2300, null));
    NetScale.Total total = NetScale.total(NetScale.of(whole));
    assertEquals(4400, requireNonNull(total.scalesG()));
    assertEquals(1.1, requireNonNull(total.factor()), 1e-12);
    assertNull(NetScale.total(NetScale.of(session(null))).scalesG());
  }
}
