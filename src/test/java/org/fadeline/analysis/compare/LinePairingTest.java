package org.fadeline.analysis.compare;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;

import java.util.List;
import java.util.stream.Stream;
import org.fadeline.analysis.compare.LinePairing.Choice;
import org.fadeline.model.Line;
import org.fadeline.model.Session;
import org.jspecify.annotations.Nullable;
import org.junit.jupiter.api.Test;

/** Lines find their counterpart by name, kind and place, or by hand. */
class LinePairingTest {
  private static Line line(
      String id,
      String name,
      @Nullable String kind,
      @Nullable Double metres,
      @Nullable Double bearing) {
    return new Line(
        id, name, kind, id, new Line.Place(metres, null, bearing, null), Line.Rig.UNKNOWN);
  }

  private static Session with(Line... lines) {
    SmallMatch match = SmallMatch.from("10:00", "15:00");
    Stream.of(lines).forEach(match::line);
    return match.session();
  }

  private static List<String> told(LinePairing pairing) {
    return pairing.pairs().stream()
        .map(p -> p.first().id() + "=" + p.second().id() + " " + p.by().word())
        .toList();
  }

  @Test
  void namesComeFirstThenKindsThenPlaces() {
    Session one =
        with(
            line("a1", "Short  Pole", "pole", 6.5, 0.0),
            line("a2", "island", "waggler", 28.0, 0.0),
            line("a3", "bank", null, 13.0, -60.0),
            line("a4", "feeder", "feeder", 40.0, 0.0));
    Session other =
        with(
            line("b1", "far", "waggler", 30.0, 5.0),
            line("b2", "short pole", "pole", 13.0, 0.0),
            line("b3", "left margin", "edge", 13.5, -60.0),
            line("b4", "bomb", "bomb", 40.0, 0.0));
    LinePairing pairing = LinePairing.automatic(one, other);
    assertEquals(List.of("a1=b2 name", "a2=b1 kind", "a3=b3 distance"), told(pairing));
    assertEquals(List.of("a4"), pairing.onlyFirst().stream().map(Line::id).toList());
    assertEquals(List.of("b4"), pairing.onlySecond().stream().map(Line::id).toList());
  }

  @Test
  void twoEdgesArePairedOnTheirOwnSides() {
    Session one =
        with(line("l", "reeds", "edge", 13.0, -80.0), line("r", "pallet", "edge", 13.0, 80.0));
    Session other =
        with(line("x", "bush", "edge", 14.5, 78.0), line("y", "lilies", "edge", 11.5, -75.0));
    assertEquals(List.of("l=y kind", "r=x kind"), told(LinePairing.automatic(one, other)));
    // Opposite margins are about 26 m apart: no counterpart.
    Session rightOnly = with(line("x", "bush", "edge", 14.5, 78.0));
    Session leftOnly = with(line("l", "reeds", "edge", 13.0, -80.0));
    assertEquals(List.of(), told(LinePairing.automatic(leftOnly, rightOnly)));
  }

  @Test
  void pairingDoesNotDependOnWhichSessionComesFirst() {
    Session one =
        with(
            line("a1", "a", "pole", 11.0, null),
            line("a2", "b", "pole", 12.0, null),
            line("a3", "c", "pole", 13.0, null));
    Session other = with(line("b1", "d", "pole", 12.5, null), line("b2", "e", "pole", 11.5, null));
    List<String> there =
        LinePairing.automatic(one, other).pairs().stream()
            .map(p -> p.first().id() + p.second().id())
            .sorted()
            .toList();
    List<String> back =
        LinePairing.automatic(other, one).pairs().stream()
            .map(p -> p.second().id() + p.first().id())
            .sorted()
            .toList();
    assertEquals(there, back);
    assertEquals(2, there.size());
  }

  @Test
  void theAnglersChoiceGoesBeforeEverything() {
    Session one = with(line("s", "short", null, 6.5, 0.0), line("e", "edge", null, 13.0, -80.0));
    Session other =
        with(line("s2", "short", null, 6.5, 0.0), line("e2", "edge", null, 13.0, -80.0));
    LinePairing crossed = LinePairing.of(one, other, List.of(new Choice("s", "e2")));
    assertEquals(List.of("s=e2 hand"), told(crossed));
    LinePairing kept = LinePairing.of(one, other, List.of(new Choice("s", null)));
    assertEquals(List.of("e=e2 name"), told(kept));
    assertEquals(List.of("s"), kept.onlyFirst().stream().map(Line::id).toList());
    assertThrows(
        IllegalArgumentException.class,
        () -> LinePairing.of(one, other, List.of(new Choice("none", "e2"))));
    assertThrows(
        IllegalArgumentException.class,
        () -> LinePairing.of(one, other, List.of(new Choice("s", "e2"), new Choice("e", "e2"))));
  }
}
