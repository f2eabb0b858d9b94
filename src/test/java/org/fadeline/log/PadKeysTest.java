package org.fadeline.log;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import org.fadeline.log.PadKeys.Conflict;
import org.fadeline.model.EventKind;
import org.junit.jupiter.api.Test;

/** The pads' keys: what they are, changed, kept and in each other's way. */
class PadKeysTest {
  private static final Pad BITE = new Pad(EventKind.BITE, 1);
  private static final Pad LANDED = new Pad(EventKind.LANDED, 1);

  @Test
  void eightLinesHaveKeysOfTheirOwnAndNoneIsOnANumericPad() {
    List<Pad> pads = Pad.all(8);
    assertEquals(List.of(), PadKeys.USUAL.conflicts(pads, Map.of()));
    List<String> keys = pads.stream().flatMap(p -> PadKeys.USUAL.key(p).stream()).toList();
    // All but one: Shift and the stroke call the list of keys.
    assertEquals(pads.size() - 1, keys.size());
    assertTrue(keys.stream().noneMatch(key -> key.toUpperCase(Locale.ROOT).contains("NUMPAD")));
  }

  @Test
  void everyKindOfEventButTheWayOnHasAPad() {
    List<EventKind> kinds = Pad.all(1).stream().map(Pad::kind).toList();
    for (EventKind kind : EventKind.values()) {
      assertTrue(kind == EventKind.RESUMED || kinds.contains(kind), kind.word());
    }
  }

  @Test
  void theKeysOfALineAreARowOfTheKeyboard() {
    assertEquals(Optional.of("R"), PadKeys.USUAL.key(BITE));
    assertEquals(Optional.of("Shift+R"), PadKeys.USUAL.key(new Pad(EventKind.BITE, 5)));
    assertEquals(Optional.empty(), PadKeys.USUAL.key(new Pad(EventKind.BITE, 8)));
  }

  @Test
  void aKeyTakenTwiceIsAConflictThatNamesBothPads() {
    PadKeys keys = PadKeys.USUAL.with(BITE, "Y");
    assertEquals(
        List.of(new Conflict("Y", List.of(BITE, LANDED), Optional.empty())),
        keys.conflicts(Pad.all(2), Map.of()));
    assertEquals(List.of(), keys.with(LANDED, "").conflicts(Pad.all(2), Map.of()));
  }

  @Test
  void aKeyOfACommandIsAConflictThatNamesTheCommand() {
    List<Conflict> conflicts =
        PadKeys.USUAL.with(BITE, "Space").conflicts(Pad.all(2), Map.of("Space", "Play or pause"));
    assertEquals(
        List.of(new Conflict("Space", List.of(BITE), Optional.of("Play or pause"))), conflicts);
  }

  @Test
  void changedKeysAreKeptAndTheUsualOnesAreNot() {
    PadKeys keys = PadKeys.USUAL.with(BITE, "F6").with(LANDED, "Y");
    Map<String, String> kept = keys.into(Map.of("other", "stays", "log.key.1.cast", "old"));
    assertEquals(Map.of("other", "stays", "log.key.2.bite", "F6"), kept);
    assertEquals(keys, PadKeys.of(kept));
    assertEquals(PadKeys.USUAL, keys.with(BITE, "R"));
  }
}
