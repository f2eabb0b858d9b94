package org.fadeline.io.notes;

import java.util.ArrayList;
import java.util.List;
import org.fadeline.io.notes.Piece.Kind;
import org.fadeline.model.Units;
import org.fadeline.model.WeightText;
import org.jspecify.annotations.Nullable;

/** Finds lines, weights, amounts, fish, baits and times in the words of a note. */
final class NoteScanner {
  private static final int LARGEST_PELLET_MM = 20;

  private final Vocabulary vocabulary;
  private final boolean terse;
  private final List<Piece> in;
  private final List<Piece> out = new ArrayList<>();

  private NoteScanner(Vocabulary vocabulary, boolean terse, List<Piece> in) {
    this.vocabulary = vocabulary;
    this.terse = terse;
    this.in = in;
  }

  /** Returns the pieces of a spoken note, or of a line of shorthand. */
  static List<Piece> scan(Vocabulary vocabulary, String note, boolean terse) {
    NoteScanner scanner = new NoteScanner(vocabulary, terse, NoteNumbers.of(note));
    int i = 0;
    while (i < scanner.in.size()) {
      i = scanner.take(i);
    }
    return scanner.out;
  }

  private int take(int i) {
    int end = weight(i);
    if (end > i) {
      return end;
    }
    Vocabulary.Found line = vocabulary.at(in, i, terse);
    if (line != null) {
      return add(Kind.LINE, i, i + line.length(), 0, line.id());
    }
    if (word(i).equals("peg") && isNumber(i + 1)) {
      return add(Kind.PEG, i, i + 2, 0, String.valueOf((long) in.get(i + 1).value()));
    }
    boolean article = word(i).equals("a") || word(i).equals("an");
    if (article && TradeWords.isLength(word(i + 1))) {
      return add(Kind.LENGTH, i, i + 2, 1, null);
    }
    end = isNumber(i) ? number(i, i + 1, in.get(i).value()) : pot(i);
    if (end > i) {
      return end;
    }
    end = bait(i, i);
    if (end > i) {
      return end;
    }
    String species = TradeWords.species(word(i));
    if (species != null) {
      boolean two = TradeWords.species(word(i + 1)) != null;
      return two ? i + 1 : add(Kind.SPECIES, i, i + 1, 0, species);
    }
    out.add(in.get(i));
    return i + 1;
  }

  private int add(Kind kind, int from, int to, double value, @Nullable String name) {
    out.add(new Piece(kind, Piece.said(in.subList(from, to)), value, name));
    return to;
  }

  private String word(int i) {
    return i >= 0 && i < in.size() && in.get(i).is(Kind.WORD)
        ? TradeWords.plain(in.get(i).said())
        : "";
  }

  private boolean isNumber(int i) {
    return i < in.size() && in.get(i).is(Kind.NUMBER);
  }

  private boolean whole(int i) {
    return isNumber(i) && in.get(i).value() == Math.rint(in.get(i).value());
  }

  /** Adds the weight that starts at piece i and returns its end, or i. */
  private int weight(int i) {
    int unit = i;
    double value = Double.NaN;
    if (isNumber(i)) {
      value = in.get(i).value();
      unit = i + 1;
      if (List.of("to", "or", "-").contains(word(unit)) && isNumber(i + 2)) {
        boolean range = List.of("lb", "oz", "kg", "g", "pounder").contains(word(i + 3));
        if (!range) {
          return word(unit).equals("-") ? dashed(i) : i;
        }
        // "Four to five pound" is its middle.
        value = (value + in.get(i + 2).value()) / 2;
        unit = i + 3;
      } else if (value == 3 && word(unit).equals("quarters") && word(i + 2).equals("of")) {
        value = 0.75;
        unit = word(i + 3).equals("a") || word(i + 3).equals("an") ? i + 4 : i + 3;
      }
    } else if (word(i).equals("a") || word(i).equals("an")) {
      value = 1;
      unit = i + 1;
    } else if (word(i).equals("half") || word(i).equals("quarter")) {
      value = word(i).equals("half") ? 0.5 : 0.25;
      unit = i + 1;
      unit = word(unit).equals("of") ? unit + 1 : unit;
      unit = word(unit).equals("a") || word(unit).equals("an") ? unit + 1 : unit;
    } else if (List.of("lb", "oz", "kg").contains(word(i))
        && (List.of("and", "apiece", "each", "or").contains(word(i + 1)) || startsAnew(i))) {
      value = 1;
    }
    if (Double.isNaN(value)) {
      return i;
    }
    return switch (word(unit)) {
      case "lb" -> compound(i, unit, value, "oz", 16);
      case "oz" -> compound(i, unit, value, "dr", 16);
      case "kg" -> kilograms(i, unit, value);
      case "g" -> isNumber(i) ? weight(i, unit + 1, value + " g", "g") : i;
      case "dr" -> weight(i, unit + 1, value + " dr", null);
      case "pounder" -> weight(i, unit + 1, value + " lb", "each");
      default -> i;
    };
  }

  /** Whether a unit stands first, or after a pause and before one or a number: "F1, pound". */
  private boolean startsAnew(int i) {
    boolean ends = i + 1 >= in.size() || !in.get(i + 1).is(Kind.WORD);
    return i == 0 || (in.get(i - 1).is(Kind.COMMA) && ends);
  }

  private int weight(int from, int to, String text, @Nullable String name) {
    double grams;
    try {
      grams = WeightText.grams(text, Units.Weight.LB_OZ);
    } catch (IllegalArgumentException e) {
      return from;
    }
    return add(Kind.WEIGHT, from, to, grams, name);
  }

  private int compound(int from, int unit, double value, String smaller, int inLarger) {
    String large = value + " " + word(unit);
    int i = unit + 1;
    if (word(i).equals("and") && word(i + 1).equals("a")) {
      double part = word(i + 2).equals("half") ? 0.5 : word(i + 2).equals("quarter") ? 0.25 : 0;
      if (part > 0) {
        return weight(from, i + 3, value + part + " " + word(unit), null);
      }
    }
    boolean three = isNumber(i + 1) && in.get(i + 1).value() == 3;
    if (word(i).equals("and") && three && word(i + 2).equals("quarters")) {
      return weight(from, i + 3, value + 0.75 + " " + word(unit), null);
    }
    int second = word(i).equals("and") ? i + 1 : i;
    if (second < in.size() && in.get(second).is(Kind.COMMA)) {
      // "8lb, 4oz": a comma only where the smaller unit is said.
      second = word(second + 2).equals(smaller) ? second + 1 : in.size();
    }
    if (isNumber(second) && in.get(second).value() < inLarger) {
      boolean said = word(second + 1).equals(smaller);
      if (said || (whole(second) && isWeight(second) && value == Math.rint(value))) {
        return weight(
            from,
            said ? second + 2 : second + 1,
            large + " " + in.get(second).value() + " " + smaller,
            word(second + 2).equals("each") ? "each" : null);
      }
    }
    return weight(from, i, large, null);
  }

  private int kilograms(int from, int unit, double value) {
    int i = unit + 1;
    if (word(i).equals("and") && word(i + 1).equals("a") && word(i + 2).equals("half")) {
      return weight(from, i + 3, value + 0.5 + " kg", null);
    }
    int second = word(i).equals("and") ? i + 1 : i;
    if (whole(second) && in.get(second).value() < 1000 && value == Math.rint(value)) {
      double grams = in.get(second).value();
      boolean said = word(second + 1).equals("g");
      if (said || (grams >= 50 && isWeight(second))) {
        return weight(from, said ? second + 2 : second + 1, value + " kg " + grams + " g", null);
      }
    }
    return weight(from, i, value + " kg", null);
  }

  /** "8-4" is pounds and ounces, unless bait follows: "6-8 pellets". */
  private int dashed(int i) {
    if (in.get(i + 2).value() < 16 && whole(i) && whole(i + 2) && isWeight(i + 2)) {
      String text = in.get(i).value() + " lb " + in.get(i + 2).value() + " oz";
      return weight(i, i + 3, text, null);
    }
    return i;
  }

  private boolean isWeight(int i) {
    return endsAlone(i) || TradeWords.species(word(i + 1)) != null;
  }

  /** Whether the number stands for itself: no unit, bait or fish is counted by it. */
  private boolean endsAlone(int i) {
    String next = word(i + 1);
    boolean counts =
        TradeWords.amount(next) != null
            || TradeWords.isBait(next)
            || TradeWords.isBaitAdjective(next)
            || TradeWords.species(next) != null
            || TradeWords.seconds(next) > 0
            || TradeWords.isLength(next)
            || List.of("lb", "oz", "kg", "g", "m", "mm", "ml", "mil", "pounder", "fish", "more")
                .contains(next);
    return !counts && !isNumber(i + 1);
  }

  /**
   * Adds a number with what it counts; {@code start} is where it was said, {@code i} what follows.
   */
  private int number(int start, int i, double value) {
    if ((word(i).equals("more") || word(i).equals("extra")) && counted(i + 1)) {
      return number(start, i + 1, value);
    }
    String range = word(i);
    if (List.of("to", "or", "-").contains(range) && isNumber(i + 1) && counted(i + 2)) {
      return number(start, i + 2, (value + in.get(i + 1).value()) / 2);
    }
    String next = word(i);
    if (next.equals("ml") || next.equals("mil") || next.equals("mm")) {
      int bait = next.equals("ml") ? i : bait(start, i + 1);
      if (bait > i + 1) {
        return sized(start, bait, value);
      }
      return next.equals("mm")
          ? add(Kind.LENGTH, start, i + 1, value, null)
          : amount(start, i + 1, value, "ml");
    }
    if (isNumber(i) && (word(i + 1).equals("mm") || word(i + 1).equals("mil"))) {
      add(Kind.AMOUNT, start, i, value, "pieces");
      return number(i, i + 1, in.get(i).value());
    }
    String unit = TradeWords.amount(next);
    if (unit != null) {
      return amount(start, i + 1, value, unit);
    }
    if (TradeWords.isBait(next) || (TradeWords.isBaitAdjective(next) && counted(i + 1))) {
      add(Kind.AMOUNT, start, i, value, "pieces");
      return bait(i, i);
    }
    int seconds = TradeWords.seconds(next);
    if (seconds > 0) {
      return add(Kind.DURATION, start, i + 1, value * seconds, null);
    }
    if (TradeWords.isLength(next) || next.equals("m")) {
      return add(Kind.LENGTH, start, i + 1, value, null);
    }
    if (i > start + 1) {
      return add(Kind.NUMBER, start, i, value, null);
    }
    out.add(in.get(start));
    return i;
  }

  /** Puts the size before the bait just added: "6 mm pellets"; "twenty six mil" is 20 of 6 mm. */
  private int sized(int start, int end, double value) {
    Piece bait = out.remove(out.size() - 1);
    double size = value;
    if (value > LARGEST_PELLET_MM && value < 100 && value % 10 != 0) {
      size = value % 10;
      out.add(new Piece(Kind.AMOUNT, in.get(start).said(), value - size, "pieces"));
    }
    String name = Piece.figure(size) + " mm " + bait.name();
    out.add(new Piece(Kind.BAIT, bait.said(), 0, name));
    return end;
  }

  private boolean counted(int i) {
    String next = word(i);
    return TradeWords.amount(next) != null
        || TradeWords.isBait(next)
        || TradeWords.isBaitAdjective(next)
        || List.of("ml", "mm", "mil", "g").contains(next);
  }

  private int amount(int from, int to, double value, String unit) {
    int of = word(to).equals("of") ? to + 1 : to;
    return add(Kind.AMOUNT, from, of, value, unit);
  }

  /** "a pot", "half a pot", "a full cup", "a ball", "a pinch". */
  private int pot(int i) {
    int noun = i;
    double share = 1;
    while (List.of("a", "an", "half", "full", "big", "small", "another", "good", "toss", "quarter")
        .contains(word(noun))) {
      share = word(noun).equals("half") ? 0.5 : word(noun).equals("quarter") ? 0.25 : share;
      noun++;
    }
    String unit = TradeWords.amount(word(noun));
    boolean vessel =
        noun == i && word(i + 1).equals("of") && unit != null && !unit.equals("pieces");
    if (vessel && unit != null) {
      return amount(i, i + 1, 1, unit);
    }
    if (unit == null || noun == i) {
      return i;
    }
    boolean measured = word(noun - 1).equals("full") || share < 1;
    double value = share;
    if (unit.equals("pot") && (measured || word(noun - 2).equals("full"))) {
      // A cup pot holds 250 ml (common practice).
      return amount(i, noun + 1, 250 * share, "cup ml");
    }
    return amount(i, noun + 1, value, unit);
  }

  /** Adds the bait that starts at piece i and returns its end, or {@code from}. */
  private int bait(int from, int i) {
    int end = baitEnd(i);
    if (end == i) {
      return from;
    }
    while (word(end).equals("and") && baitEnd(end + 1) > end + 1) {
      end = baitEnd(end + 1);
    }
    return add(Kind.BAIT, i, end, 0, Piece.said(in.subList(i, end)));
  }

  private int baitEnd(int i) {
    int end = i;
    while (TradeWords.isBaitAdjective(word(end)) && !TradeWords.isBait(word(end))) {
      end++;
    }
    int noun = end;
    while (TradeWords.isBait(word(noun))) {
      noun++;
    }
    return noun == end ? i : noun;
  }
}
