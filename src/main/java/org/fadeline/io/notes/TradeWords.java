package org.fadeline.io.notes;

import java.util.Map;
import java.util.Set;
import org.jspecify.annotations.Nullable;

/** Words of the trade that notes use, by what they mean (common practice). */
final class TradeWords {
  /** One way to write each unit. */
  private static final Map<String, String> UNITS =
      Map.ofEntries(
          Map.entry("lb", "lb"),
          Map.entry("lbs", "lb"),
          Map.entry("pound", "lb"),
          Map.entry("pounds", "lb"),
          Map.entry("oz", "oz"),
          Map.entry("ozs", "oz"),
          Map.entry("ounce", "oz"),
          Map.entry("ounces", "oz"),
          Map.entry("dr", "dr"),
          Map.entry("dram", "dr"),
          Map.entry("drams", "dr"),
          Map.entry("kg", "kg"),
          Map.entry("kgs", "kg"),
          Map.entry("kilo", "kg"),
          Map.entry("kilos", "kg"),
          Map.entry("kilogram", "kg"),
          Map.entry("kilograms", "kg"),
          Map.entry("g", "g"),
          Map.entry("gram", "g"),
          Map.entry("grams", "g"),
          Map.entry("m", "m"),
          Map.entry("metre", "m"),
          Map.entry("metres", "m"),
          Map.entry("meter", "m"),
          Map.entry("meters", "m"),
          Map.entry("mm", "mm"),
          Map.entry("millimetre", "mm"),
          Map.entry("mil", "mil"),
          Map.entry("mils", "mil"),
          Map.entry("mill", "mil"),
          Map.entry("ml", "ml"),
          Map.entry("mls", "ml"),
          Map.entry("millilitres", "ml"),
          Map.entry("pounder", "pounder"),
          Map.entry("pounders", "pounder"),
          Map.entry("lber", "pounder"),
          Map.entry("lbers", "pounder"));

  private static final Map<String, String> AMOUNTS =
      Map.ofEntries(
          Map.entry("ball", "balls"),
          Map.entry("balls", "balls"),
          Map.entry("pouch", "pouchfuls"),
          Map.entry("pouches", "pouchfuls"),
          Map.entry("pouchful", "pouchfuls"),
          Map.entry("pouchfuls", "pouchfuls"),
          Map.entry("grain", "pieces"),
          Map.entry("grains", "pieces"),
          Map.entry("piece", "pieces"),
          Map.entry("pieces", "pieces"),
          Map.entry("bits", "pieces"),
          Map.entry("cubes", "pieces"),
          Map.entry("kernels", "pieces"),
          Map.entry("handful", "hand"),
          Map.entry("handfuls", "hand"),
          Map.entry("pinch", "hand"),
          Map.entry("pinches", "hand"),
          Map.entry("pot", "pot"),
          Map.entry("pots", "pot"),
          Map.entry("cup", "pot"),
          Map.entry("cups", "pot"),
          Map.entry("cupful", "pot"),
          Map.entry("potful", "pot"),
          Map.entry("feederfuls", "feeder"));

  private static final Map<String, String> SPECIES =
      Map.ofEntries(
          Map.entry("carp", "carp"),
          Map.entry("mirror", "mirror carp"),
          Map.entry("common", "common carp"),
          Map.entry("ghostie", "ghost carp"),
          Map.entry("f1", "F1"),
          Map.entry("skimmer", "skimmer"),
          Map.entry("skimmers", "skimmer"),
          Map.entry("bream", "bream"),
          Map.entry("slab", "bream"),
          Map.entry("roach", "roach"),
          Map.entry("rudd", "rudd"),
          Map.entry("perch", "perch"),
          Map.entry("tench", "tench"),
          Map.entry("crucian", "crucian"),
          Map.entry("crucians", "crucian"),
          Map.entry("ide", "ide"),
          Map.entry("hybrid", "hybrid"),
          Map.entry("hybrids", "hybrid"),
          Map.entry("gudgeon", "gudgeon"),
          Map.entry("chub", "chub"),
          Map.entry("dace", "dace"),
          Map.entry("barbel", "barbel"),
          Map.entry("eel", "eel"),
          Map.entry("bleak", "bleak"),
          Map.entry("ruffe", "ruffe"),
          Map.entry("orfe", "orfe"),
          Map.entry("pike", "pike"),
          Map.entry("catfish", "catfish"),
          Map.entry("silver", "silvers"),
          Map.entry("silvers", "silvers"));

  private static final Set<String> BAITS =
      Set.of(
          "pellet",
          "pellets",
          "corn",
          "sweetcorn",
          "maggot",
          "maggots",
          "caster",
          "casters",
          "worm",
          "worms",
          "hemp",
          "groundbait",
          "micros",
          "expander",
          "expanders",
          "meat",
          "paste",
          "bread",
          "punch",
          "pinkie",
          "pinkies",
          "slop",
          "mussel",
          "boilie",
          "boilies",
          "tares",
          "reds",
          "squatts",
          "bloodworm",
          "joker",
          "dendra",
          "dendras",
          "particles");

  private static final Set<String> BAIT_ADJECTIVES =
      Set.of(
          "dead",
          "red",
          "white",
          "chopped",
          "chop",
          "hard",
          "soft",
          "banded",
          "micro",
          "cubed",
          "cooker",
          "expander",
          "fishmeal",
          "live",
          "sloppy",
          "bread",
          "cat",
          "luncheon",
          "double",
          "single",
          "big",
          "small",
          "feed",
          "fluoro");

  private static final Map<String, Integer> SECONDS =
      Map.ofEntries(
          Map.entry("s", 1),
          Map.entry("second", 1),
          Map.entry("seconds", 1),
          Map.entry("sec", 1),
          Map.entry("secs", 1),
          Map.entry("minute", 60),
          Map.entry("minutes", 60),
          Map.entry("min", 60),
          Map.entry("mins", 60),
          Map.entry("hour", 3600),
          Map.entry("hours", 3600));

  private static final Set<String> LENGTHS =
      Set.of("inch", "inches", "foot", "feet", "ft", "cm", "centimetres", "sections", "section");

  private TradeWords() {}

  /** Returns a word with units written one way, such as "lb" for "pounds". */
  static String plain(String word) {
    return UNITS.getOrDefault(word, word);
  }

  static @Nullable String amount(String word) {
    return AMOUNTS.get(word);
  }

  static @Nullable String species(String word) {
    return SPECIES.get(word);
  }

  static boolean isBait(String word) {
    return BAITS.contains(word);
  }

  static boolean isBaitAdjective(String word) {
    return BAIT_ADJECTIVES.contains(word);
  }

  /** Returns the seconds in one of the named unit of time, or 0. */
  static int seconds(String word) {
    return SECONDS.getOrDefault(word, 0);
  }

  static boolean isLength(String word) {
    return LENGTHS.contains(word);
  }
}
