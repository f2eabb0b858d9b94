package org.fadeline.analysis;

/** What kind of record a session is; what a grade cannot carry is withheld, not guessed. */
public enum Grade {
  /** Casts throughout: bites can be judged on the time a bait was in the water. */
  FULL("full", "full record"),
  /** Moves and fish, no casts: spells are known, bait time and missed bites are not. */
  MOVES_AND_FISH("moves-and-fish", "moves and fish"),
  /** Fish alone: where a spell ended is not known. */
  FISH_ONLY("fish-only", "fish only"),
  /** Clicker counts: nothing finer than the reports. */
  COUNTS("counts", "clicker counts");

  private final String word;
  private final String label;

  Grade(String word, String label) {
    this.word = word;
    this.label = label;
  }

  /** Returns the word used in files. */
  public String word() {
    return word;
  }

  /** Returns the words used on screen. */
  public String label() {
    return label;
  }
}
