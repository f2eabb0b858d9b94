package org.fadeline.analysis;

import static java.util.Objects.requireNonNull;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertNull;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Random;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.IntRange;
import org.fadeline.analysis.Course.TurningKind;
import org.fadeline.analysis.Course.TurningPoint;
import org.fadeline.analysis.NetState.Likely;
import org.fadeline.model.EventKind;
import org.fadeline.model.Fish;
import org.fadeline.model.MatchRules.NetLimit;
import org.fadeline.model.Outcome;
import org.fadeline.model.Outcome.NetWeight;
import org.fadeline.model.Session;
import org.fadeline.model.SessionEvent;
import org.fadeline.model.Stamp;
import org.fadeline.model.Units;
import org.fadeline.ui.HandMade;
import org.jspecify.annotations.Nullable;
import org.junit.jupiter.api.Test;

/** What a net is likely to weigh, fish by fish; the sums are done by hand. */
class NetCourseTest {
  /** 50 lb exactly: 22.6796185 kg (Weights and Measures Act 1985, Schedule 1). */
  private static final double FIFTY_POUNDS = 22_679.6185;

  private static final double Z_95 = 1.6448536269514722;

  private final List<SessionEvent> events = new ArrayList<>();

  private Stamp stamp(double minute, @Nullable String line) {
    return new Stamp("e" + events.size(), HandMade.minute(minute), line, null);
  }

  private void landed(
      double minute,
      String line,
      @Nullable String species,
      @Nullable Double grams,
      boolean scales) {
    events.add(new SessionEvent.Landed(stamp(minute, line), new Fish(1, species, grams, scales)));
  }

  private void landed(double minute, @Nullable Double grams) {
    landed(minute, "short", "carp", grams, false);
  }

  private static Session session(
      List<SessionEvent> events, @Nullable NetLimit limit, NetWeight... weighed) {
    Session session = HandMade.of(events);
    return session
        .withMatch(session.match().withRules(session.match().rules().withNetLimit(limit)))
        .withOutcome(Outcome.UNKNOWN.withWeighIn(List.of(weighed)));
  }

  private Session session(double limit, NetWeight... weighed) {
    return session(events, new NetLimit(limit, 0, null), weighed);
  }

  private NetState at(double minute) {
    return at(session(FIFTY_POUNDS), minute);
  }

  private static NetState at(Session session, double minute) {
    NetCourse course = NetCourse.asKnownThen(session, EstimateError.USUAL);
    return requireNonNull(course.at(HandMade.minute(minute))).inUse();
  }

  private static Likely likely(NetState net) {
    return requireNonNull(net.likely());
  }

  @Test
  void fishReadOffScalesWeighWhatTheyWeigh() {
    landed(1, "short", "carp", 2000.0, true);
    landed(2, "short", "carp", 3000.0, true);
    Likely likely = likely(at(2));
    assertEquals(5000, likely.low());
    assertEquals(5000, likely.high());
    assertEquals(0.0, requireNonNull(likely.over()));
    assertEquals(2000, likely(at(1.5)).middle());
  }

  /** The factor's log has variance 0.08² + 0.06²; twenty fish scatter by 0.08 of each. */
  @Test
  void estimatesAreAllowedToRunOff() {
    for (int i = 0; i < 20; i++) {
      landed(i, 1000.0);
    }
    Likely likely = likely(at(19));
    double share = Math.expm1(0.01) + 0.08 * 0.08 / 20;
    double sd = Math.sqrt(Math.log1p(share));
    assertEquals(20_000, likely.middle(), 1e-6);
    assertEquals(20_000 * Math.exp(-Z_95 * sd), likely.low(), 1e-6);
    assertEquals(20_000 * Math.exp(Z_95 * sd), likely.high(), 1e-6);
    assertTrue(likely.high() > FIFTY_POUNDS);
    // R 4: plnorm(22679.6185, log(20000), sqrt(log1p(expm1(.01) + .08^2/20)), lower.tail = FALSE)
    assertEquals(0.1078783096, requireNonNull(likely.over()), 1e-9);
  }

  @Test
  void aFishWithoutAWeightIsCountedAtWhatSuchFishWeighed() {
    for (int i = 0; i < 3; i++) {
      landed(i, "short", "skimmer", 500.0, false);
      landed(i, "short", "carp", 3000.0, false);
    }
    landed(4, "short", "skimmer", null, false);
    landed(5, "shallow", "skimmer", null, false);
    landed(6, "short", "tench", null, false);
    assertEquals(10_500, likely(at(3)).middle(), 1e-6);
    assertEquals(11_000, likely(at(4)).middle(), 1e-6, "its species on its line");
    assertEquals(11_500, likely(at(5)).middle(), 1e-6, "its species on any line");
    assertEquals(13_250, likely(at(6)).middle(), 1e-6, "any fish of the line");
    assertEquals(2750, likely(at(6)).countedG(), 1e-6);
    assertEquals(3, at(6).logged().unweighed());
    double before = likely(at(5)).high() / likely(at(5)).middle();
    assertTrue(likely(at(6)).high() / likely(at(6)).middle() > before, "less is known of it");
  }

  @Test
  void withoutAnyWeightNothingIsSaidOfIt() {
    landed(1, null);
    assertNull(at(1).likely());
    assertFalse(at(1).near());
    landed(2, 1000.0);
    assertEquals(2000, likely(at(2)).middle(), 1e-6, "the first is counted at what came since");
  }

  @Test
  void aCountWeighsTheFishBeforeIt() {
    landed(1, 2000.0);
    landed(2, null);
    events.add(new SessionEvent.Count(stamp(10, "short"), new Fish(5, null, 9000.0, false)));
    assertEquals(new NetScale.Logged(5, 0, 9000), at(10).logged());
    assertEquals(9000, likely(at(10)).middle(), 1e-6);
    assertEquals(0, likely(at(10)).countedG());
  }

  @Test
  void aNetIsNearWhereTheUpperEndReachesTheLimit() {
    for (int i = 0; i < 25; i++) {
      landed(i, 1000.0);
    }
    List<NetState> near = NetCourse.asKnownThen(session(FIFTY_POUNDS), EstimateError.USUAL).near();
    assertEquals(1, near.size());
    // 19 kg × exp(1.645 × 0.1017) = 22.46 kg and 20 kg × … = 23.6 kg.
    assertEquals(HandMade.minute(19), near.get(0).at());
  }

  @Test
  void orWhereOneMoreFishWouldBringItThere() {
    for (int i = 0; i < 25; i++) {
      landed(i, "short", "carp", 1000.0, true);
    }
    NetState near = NetCourse.asKnownThen(session(FIFTY_POUNDS), EstimateError.USUAL).near().get(0);
    assertEquals(HandMade.minute(21), near.at(), "22 kg weighed; another kilogram is over 22.68");
  }

  @Test
  void whatEarlierMatchesTaughtMovesIt() {
    for (int i = 0; i < 35; i++) {
      landed(i, 1000.0);
    }
    EstimateError low = EstimateError.learned(List.of(1.2, 1.22, 1.18, 1.2, 1.21, 1.19));
    EstimateError high = EstimateError.learned(List.of(0.8, 0.82, 0.78, 0.8, 0.81, 0.79));
    Session session = session(FIFTY_POUNDS);
    long usual = NetCourse.asKnownThen(session, EstimateError.USUAL).near().get(0).at();
    assertTrue(NetCourse.asKnownThen(session, low).near().get(0).at() < usual);
    assertTrue(NetCourse.asKnownThen(session, high).near().get(0).at() > usual);
  }

  @Test
  void withHindsightTheScalesFixTheNet() {
    landed(1, 4000.0);
    landed(2, 4000.0);
    landed(3, null);
    NetCourse course =
        requireNonNull(NetCourse.byScales(session(10_000, new NetWeight(1, 9000, null))));
    Likely end = likely(requireNonNull(course.at(HandMade.minute(3))).inUse());
    assertEquals(9000, end.low(), 1e-6);
    assertEquals(9000, end.high(), 1e-6);
    // The fish without a weight is counted at 4 kg: 8 of 12 kg had been landed, 6 of the 9.
    Likely middle = likely(requireNonNull(course.at(HandMade.minute(2))).inUse());
    assertEquals(6000, middle.middle(), 1e-6);
    assertTrue(middle.low() < 5900 && middle.high() > 6100);
  }

  @Test
  void theScalesSpeakOfOtherFishWhereTheLogKnowsOneNetAndTheyKnewTwo() {
    landed(1, 4000.0);
    NetWeight silvers = new NetWeight(1, 1500, "silvers");
    NetWeight carp = new NetWeight(2, 2500, "carp");
    assertNull(NetCourse.byScales(session(10_000, silvers, carp)));
    assertNull(NetCourse.byScales(session(10_000)));
  }

  @Test
  void bothKnowledgesHaveTheirTurningPoint() {
    for (int i = 0; i < 25; i++) {
      landed(i, 1000.0);
    }
    Session session = session(FIFTY_POUNDS, new NetWeight(1, 21_000, null));
    List<TurningPoint> points =
        Reviewer.review(session, ReviewSettings.DEFAULT).course().turningPoints().stream()
            .filter(p -> p.kind() == TurningKind.NET)
            .toList();
    assertEquals(1, points.size(), "21 kg at the scales came near no limit");
    assertFalse(points.get(0).hindsight());
    assertEquals("Net 1 near its limit", points.get(0).title());
    assertEquals(
        "37–52 lb likely, limit 50 lb; 44 lb logged; scales taken to say 0.85–1.18 times the"
            + " estimates; your water's rules decide",
        points.get(0).detail());
    KnownThen known =
        KnownThen.of(session, ReviewSettings.DEFAULT, Units.LB_OZ_AND_METRES, () -> false);
    assertEquals(points, known.at(HandMade.minute(19)).course().turningPoints());
    assertEquals(List.of(), known.at(HandMade.minute(19) - 1).course().turningPoints());
    Review over =
        Reviewer.review(
            session(FIFTY_POUNDS, new NetWeight(1, 27_000, null)), ReviewSettings.DEFAULT);
    assertTrue(
        over.course().turningPoints().stream()
            .anyMatch(p -> p.hindsight() && p.title().startsWith("By the scales, net 1")));
  }

  /** 0.08² and 0.06² beforehand; with two matches at 1.1: precision 1/0.0064 + 2/0.003. */
  @Test
  void whatIsLearnedOfEstimatesByHand() {
    EstimateError usual = EstimateError.USUAL;
    assertEquals(0, usual.factor().logMean());
    assertEquals(0.1, usual.factor().logSd(), 1e-12);
    EstimateError two = EstimateError.learned(List.of(1.1, 1.1));
    double variance = 5 * 0.0036 / 6;
    double precision = 1 / 0.0064 + 2 / variance;
    assertEquals(2 * Math.log(1.1) / variance / precision, two.factor().logMean(), 1e-12);
    assertEquals(Math.sqrt(1 / precision + variance), two.factor().logSd(), 1e-12);
    assertEquals(2, two.matches());
  }

  /** A match as somebody logs it who now and then forgets a weight and changes nets. */
  private static List<SessionEvent> rough(Random random) {
    List<SessionEvent> events = new ArrayList<>();
    for (int i = 0; i < 60; i++) {
      Stamp stamp =
          new Stamp(
              "e" + i, HandMade.minute(4 * i), random.nextBoolean() ? "short" : "shallow", null);
      String species = random.nextBoolean() ? "carp" : "skimmer";
      Double grams = random.nextInt(4) == 0 ? null : (Double) (300.0 + random.nextInt(2500));
      Fish fish = new Fish(1 + random.nextInt(2), species, grams, random.nextInt(5) == 0);
      events.add(
          switch (random.nextInt(9)) {
            case 0 -> new SessionEvent.Count(stamp, fish);
            case 1 -> new SessionEvent.Net(stamp, random.nextBoolean() ? null : 1);
            case 2 -> new SessionEvent.Foul(stamp, fish);
            default -> new SessionEvent.Landed(stamp, fish);
          });
    }
    return events;
  }

  @Property(tries = 200, seed = "20261130")
  void nothingLaterChangesWhatWasKnownThen(
      @ForAll @IntRange(min = 1, max = 1_000_000) int seed,
      @ForAll @IntRange(min = 0, max = 60) int cut) {
    List<SessionEvent> whole = rough(new Random(seed));
    List<SessionEvent> other = new ArrayList<>(whole.subList(0, cut));
    other.addAll(rough(new Random(seed + 1)).subList(cut, 60));
    NetLimit limit = new NetLimit(15_000, 0, null);
    NetCourse first =
        NetCourse.asKnownThen(
            session(whole, limit, new NetWeight(1, 12_345, null)), EstimateError.USUAL);
    NetCourse second = NetCourse.asKnownThen(session(other, limit), EstimateError.USUAL);
    for (int i = 0; i < cut; i++) {
      assertEquals(first.at(HandMade.minute(4 * i)), second.at(HandMade.minute(4 * i)));
    }
    long until = HandMade.minute(4 * (cut - 1));
    assertEquals(
        first.near().stream().filter(n -> n.at() <= until).toList(),
        second.near().stream().filter(n -> n.at() <= until).toList());
  }

  /** Counts aside, which tell of fish landed before, a net holds what was landed while in use. */
  @Property(tries = 100, seed = "20261201")
  void everyFishLiesInTheNetThatWasInUse(@ForAll @IntRange(min = 1, max = 1_000_000) int seed) {
    List<SessionEvent> log =
        rough(new Random(seed)).stream().filter(e -> e.kind() != EventKind.COUNT).toList();
    Map<Integer, Integer> fish = new HashMap<>();
    Map<Integer, Double> grams = new HashMap<>();
    int inUse = 1;
    for (SessionEvent event : log) {
      Fish landed = event.fishOrNull();
      if (event instanceof SessionEvent.Net change) {
        inUse = change.net() == null ? inUse + 1 : change.net();
      } else if (landed != null) {
        fish.merge(inUse, landed.count(), Integer::sum);
        grams.merge(inUse, landed.grams() == null ? 0 : landed.grams(), Double::sum);
      }
    }
    Session session = session(log, null);
    List<NetScale> nets = NetScale.of(session);
    assertTrue(nets.size() >= fish.size());
    for (NetScale net : nets) {
      assertEquals(fish.getOrDefault(net.net(), 0), net.logged().fish());
      assertEquals(grams.getOrDefault(net.net(), 0.0), net.logged().grams(), 1e-6);
    }
    NetCourse course = NetCourse.asKnownThen(session, EstimateError.USUAL);
    for (NetState net : requireNonNull(course.at(HandMade.minute(300))).all()) {
      assertEquals(fish.getOrDefault(net.net(), 0), net.logged().fish());
    }
  }

  /**
   * The 90% interval holds the true weight of made nets nine times in ten: estimates with the habit
   * and scatter allowed for, a fifth of the fish without a weight.
   */
  @Test
  void theRangeHoldsTheWeightAsOftenAsItSays() {
    Random random = new Random(20261130);
    int held = 0;
    int nets = 4000;
    for (int i = 0; i < nets; i++) {
      List<SessionEvent> fish = new ArrayList<>();
      double factor = Math.exp(0.1 * random.nextGaussian());
      double weight = 0;
      int count = 8 + random.nextInt(30);
      for (int j = 0; j < count; j++) {
        double grams = 1200 * Math.exp(0.45 * random.nextGaussian());
        weight += grams;
        boolean told = j < 3 || random.nextInt(5) > 0;
        Double estimate =
            told ? (Double) (grams / factor * (1 + 0.08 * random.nextGaussian())) : null;
        fish.add(
            new SessionEvent.Landed(
                new Stamp("e" + j, HandMade.minute(j), "short", null),
                new Fish(1, "carp", estimate, false)));
      }
      Likely likely = likely(at(session(fish, null), 100));
      held += likely.low() <= weight && weight <= likely.high() ? 1 : 0;
    }
    assertEquals(0.9, (double) held / nets, 0.015);
  }
}
