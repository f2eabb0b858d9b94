package org.fadeline.log;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;

/**
 * The keys of the pads. A row of the keyboard is a line and a column is what happened, so that the
 * pads lie on the keys as they lie on the screen; lines five to eight take Shift. Only the main
 * keys are used, no numeric pad.
 *
 * @param changed keys the angler chose, by the pad's slot; an empty text is a pad without key
 */
public record PadKeys(Map<String, String> changed) {
  /** The keys as they come. */
  public static final PadKeys USUAL = new PadKeys(Map.of());

  private static final List<List<String>> ROWS =
      List.of(
          List.of("1", "2", "3", "4", "5", "6", "7", "8", "9", "0"),
          List.of("Q", "W", "E", "R", "T", "Y", "U", "I", "O", "P"),
          List.of("A", "S", "D", "F", "G", "H", "J", "K", "L", "Semicolon"),
          List.of("Z", "X", "C", "V", "B", "N", "M", "Comma", "Period", "Slash"));

  private static final List<String> AROUND =
      List.of("F2", "F3", "F4", "F5", "F6", "F7", "F8", "F9", "F11", "F12");

  /** What the names of keys in the preferences start with. */
  private static final String PREFIX = "log.key.";

  /** Belongs to the list of keys. */
  private static final String HELP = "Shift+Slash";

  /** Copies the map. */
  public PadKeys {
    changed = Map.copyOf(changed);
  }

  /**
   * A key that would do more than one thing.
   *
   * @param key its name
   * @param pads the pads that have it
   * @param command what else has it, in words, or empty
   */
  public record Conflict(String key, List<Pad> pads, Optional<String> command) {
    /** Copies the list. */
    public Conflict {
      pads = List.copyOf(pads);
    }
  }

  /** Returns the key of a pad, as {@code KeyCombination} names it, or empty where it has none. */
  public Optional<String> key(Pad pad) {
    String chosen = changed.get(pad.slot());
    String key = chosen == null ? usual(pad) : chosen;
    return key.isEmpty() ? Optional.empty() : Optional.of(key);
  }

  private static String usual(Pad pad) {
    if (pad.line() == Pad.AROUND) {
      int place = Pad.OFF_THE_LINES.indexOf(pad.kind());
      return place < 0 ? "" : AROUND.get(place);
    }
    int column = Pad.ON_A_LINE.indexOf(pad.kind());
    if (column < 0 || pad.line() >= 2 * ROWS.size()) {
      return "";
    }
    String key = ROWS.get(pad.line() % ROWS.size()).get(column);
    String whole = pad.line() < ROWS.size() ? key : "Shift+" + key;
    return whole.equals(HELP) ? "" : whole;
  }

  /** Returns these keys with another for a pad; an empty text takes its key away. */
  public PadKeys with(Pad pad, String key) {
    Map<String, String> keys = new HashMap<>(changed);
    keys.put(pad.slot(), key);
    if (key.equals(usual(pad))) {
      keys.remove(pad.slot());
    }
    return new PadKeys(keys);
  }

  /**
   * Returns the keys that several pads have, or a pad and a command.
   *
   * @param pads the pads in use
   * @param commands what other keys do, by key name
   */
  public List<Conflict> conflicts(List<Pad> pads, Map<String, String> commands) {
    Map<String, List<Pad>> byKey = new LinkedHashMap<>();
    for (Pad pad : pads) {
      key(pad).ifPresent(key -> byKey.computeIfAbsent(key, k -> new ArrayList<>()).add(pad));
    }
    List<Conflict> conflicts = new ArrayList<>();
    byKey.forEach(
        (key, having) -> {
          String command = commands.get(key);
          if (having.size() > 1 || command != null) {
            conflicts.add(new Conflict(key, having, Optional.ofNullable(command)));
          }
        });
    return conflicts;
  }

  /** Returns the keys kept in preferences; names that are no pad's do no harm. */
  public static PadKeys of(Map<String, String> kept) {
    Map<String, String> keys = new TreeMap<>();
    kept.forEach(
        (name, key) -> {
          if (name.startsWith(PREFIX)) {
            keys.put(name.substring(PREFIX.length()), key);
          }
        });
    return new PadKeys(keys);
  }

  /** Returns preferences that keep these keys, everything else as it was. */
  public Map<String, String> into(Map<String, String> kept) {
    Map<String, String> all = new TreeMap<>(kept);
    all.keySet().removeIf(name -> name.startsWith(PREFIX));
    changed.forEach((slot, key) -> all.put(PREFIX + slot, key));
    return all;
  }
}
