package org.fadeline.io.notes;

import java.util.List;
import java.util.stream.Collectors;
import org.jspecify.annotations.Nullable;

/**
 * One piece of a spoken note that means something, or a word that may.
 *
 * @param kind what it is
 * @param said the words
 * @param value number, grams, amount or seconds, as the kind says; otherwise 0
 * @param name line id, species, bait, unit or peg, as the kind says
 */
record Piece(Kind kind, String said, double value, @Nullable String name) {
  /** What a piece of a note is; the sign stands for it in the patterns of {@link NoteRules}. */
  enum Kind {
    /** A plain word. */
    WORD(""),
    /** A number without unit. */
    NUMBER("#n"),
    /** A weight in grams; the name is "each" for a fish told by its weight, "g" for plain grams. */
    WEIGHT("#w"),
    /** An amount of bait; the name is its unit. */
    AMOUNT("#a"),
    /** A line; the name is its id, or null where several lines could be meant. */
    LINE("#l"),
    /** A kind of fish. */
    SPECIES("#s"),
    /** A bait. */
    BAIT("#b"),
    /** A length of time in seconds. */
    DURATION("#d"),
    /** A length or distance. */
    LENGTH("#m"),
    /** Another peg. */
    PEG("#p"),
    /** A pause inside a sentence. */
    COMMA(","),
    /** The end of a sentence. */
    STOP("."),
    /** The end of a question. */
    QUESTION("?");

    private final String sign;

    Kind(String sign) {
      this.sign = sign;
    }

    String sign() {
      return sign;
    }
  }

  static Piece word(String word) {
    return new Piece(Kind.WORD, word, 0, null);
  }

  static Piece number(String said, double value) {
    return new Piece(Kind.NUMBER, said, value, null);
  }

  /** Returns the shape of pieces, one after the other. */
  static String shapes(List<Piece> pieces) {
    return pieces.stream().map(Piece::shape).collect(Collectors.joining(" "));
  }

  /** Returns the words of pieces, one after the other. */
  static String said(List<Piece> pieces) {
    return pieces.stream().map(Piece::said).collect(Collectors.joining(" "));
  }

  /** Returns a number in figures, a whole one without decimals. */
  static String figure(double value) {
    return value == Math.rint(value) ? String.valueOf((long) value) : String.valueOf(value);
  }

  boolean is(Kind other) {
    return kind == other;
  }

  boolean isWord(String word) {
    return kind == Kind.WORD && said.equals(word);
  }

  /** Returns the sign or word that patterns see; "one" stays a word, for it may be a fish. */
  String shape() {
    boolean plain = kind == Kind.WORD || (kind == Kind.NUMBER && said.equals("one") && value == 1);
    return plain ? said : kind.sign();
  }
}
