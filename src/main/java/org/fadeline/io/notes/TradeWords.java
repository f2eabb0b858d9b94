package org.fadeline.io.notes;

import java.util.HashMap;
import java.util.Map;
import java.util.Set;
import org.jspecify.annotations.Nullable;

/** Words of the trade that notes use, by what they mean (common practice). */
final class TradeWords {
  /** One way to write each unit. */
  private static final Map<String, String> UNITS =
      meanings(
          "lb: lb lbs pound pounds",
          "oz: oz ozs ounce ounces",
          "dr: dr dram drams",
          "kg: kg kgs kilo kilos kilogram kilograms",
          "g: g gram grams",
          "m: m metre metres meter meters",
          "mm: mm millimetre",
          "mil: mil mils mill",
          "ml: ml mls millilitres",
          "pounder: pounder pounders lber lbers");

  private static final Map<String, String> AMOUNTS =
      meanings(
          "balls: ball balls",
          "pouchfuls: pouch pouches pouchful pouchfuls",
          "pieces: grain grains piece pieces bits cubes kernels",
          "hand: handful handfuls pinch pinches",
          "pot: pot pots cup cups cupful potful",
          "feeder: feederfuls");

  private static final Map<String, String> SPECIES =
      meanings(
          "carp: carp",
          "mirror carp: mirror",
          "common carp: common",
          "ghost carp: ghostie",
          "F1: f1",
          "skimmer: skimmer skimmers",
          "bream: bream slab",
          "roach: roach",
          "rudd: rudd",
          "perch: perch",
          "tench: tench",
          "crucian: crucian crucians",
          "ide: ide",
          "hybrid: hybrid hybrids",
          "gudgeon: gudgeon",
          "chub: chub",
          "dace: dace",
          "barbel: barbel",
          "eel: eel",
          "bleak: bleak",
          "ruffe: ruffe",
          "orfe: orfe",
          "pike: pike",
          "catfish: catfish",
          "silvers: silver silvers");

  private static final Set<String> BAITS =
      words(
          "pellet pellets corn sweetcorn maggot maggots caster casters worm worms "
              + "hemp groundbait micros expander expanders meat paste bread punch pinkie "
              + "pinkies slop mussel boilie boilies tares reds squatts bloodworm joker "
              + "dendra dendras particles");

  private static final Set<String> BAIT_ADJECTIVES =
      words(
          "dead red white chopped chop hard soft banded micro cubed cooker expander "
              + "fishmeal live sloppy bread cat luncheon double single big small feed "
              + "fluoro");

  private static final Map<String, String> SECONDS =
      meanings("1: s second seconds sec secs", "60: minute minutes min mins", "3600: hour hours");

  private static final Set<String> LENGTHS =
      words("inch inches foot feet ft cm centimetres sections section");

  private TradeWords() {}

  private static Set<String> words(String words) {
    return Set.of(words.split(" ", -1));
  }

  /** Returns words to what they mean, from lines of a meaning, a colon and its words. */
  private static Map<String, String> meanings(String... lines) {
    Map<String, String> meanings = new HashMap<>();
    for (String line : lines) {
      int colon = line.indexOf(':');
      for (String word : line.substring(colon + 2).split(" ", -1)) {
        meanings.put(word, line.substring(0, colon));
      }
    }
    return meanings;
  }

  /** Returns a word with units written one way, such as "lb" for "pounds". */
  static String plain(String word) {
    return UNITS.getOrDefault(word, word);
  }

  /** Returns the unit that a measure of bait counts as, or null. */
  static @Nullable String amount(String word) {
    return AMOUNTS.get(word);
  }

  /** Returns the fish that a word names, in its usual word, or null. */
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
    return Integer.parseInt(SECONDS.getOrDefault(word, "0"));
  }

  static boolean isLength(String word) {
    return LENGTHS.contains(word);
  }
}
