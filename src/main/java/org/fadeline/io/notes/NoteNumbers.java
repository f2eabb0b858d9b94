package org.fadeline.io.notes;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.fadeline.io.notes.Piece.Kind;
import org.jspecify.annotations.Nullable;

/**
 * Splits a note into words, stops and numbers, figures and words alike: "8", "3.7", "twenty two".
 */
final class NoteNumbers {
  private static final Pattern TOKEN =
      Pattern.compile(
          "(?<clock>\\d{1,2}:\\d{2}(?::\\d{2})?)|(?<f1>\\bf ?1(?:'?s)?\\b)"
              + "|(?<figure>\\d{1,7}(?:[.,]\\d{1,3})?(?!\\d))(?<part>[½¼¾])?|(?<alone>[½¼¾])"
              + "|(?<word>\\p{L}+(?:'\\p{L}+)?)|(?<stop>[.!;:…]+)|(?<question>\\?)|(?<comma>,)"
              + "|(?<dash>-)");
  private static final Map<String, Integer> SMALL =
      counted(
          "zero one two three four five six seven eight nine ten eleven twelve thirteen fourteen"
              + " fifteen sixteen seventeen eighteen nineteen",
          0,
          1);
  private static final Map<String, Integer> TENS =
      counted("twenty thirty forty fifty sixty seventy eighty ninety", 20, 10);

  private final List<Piece> in;
  private final List<Piece> out = new ArrayList<>();

  private NoteNumbers(List<Piece> in) {
    this.in = in;
  }

  /** Returns words to the numbers they name, each a step above the one before it. */
  private static Map<String, Integer> counted(String words, int first, int step) {
    Map<String, Integer> numbers = new HashMap<>();
    for (String word : words.split(" ", -1)) {
      numbers.put(word, first + numbers.size() * step);
    }
    return numbers;
  }

  /** Returns the words, numbers and stops of a note. */
  static List<Piece> of(String note) {
    NoteNumbers numbers = new NoteNumbers(words(note));
    int i = 0;
    while (i < numbers.in.size()) {
      i = numbers.take(i);
    }
    return numbers.out;
  }

  private static List<Piece> words(String note) {
    String text =
        note.toLowerCase(Locale.ROOT)
            .replace('\u2019', '\'')
            .replace('\u2013', '-')
            .replace('\u2014', '-');
    List<Piece> pieces = new ArrayList<>();
    Matcher matcher = TOKEN.matcher(text);
    while (matcher.find()) {
      String figure = matcher.group("figure");
      if (figure != null) {
        double part = quarters(matcher.group("part"));
        double value = Double.parseDouble(figure.replace(',', '.')) + part;
        pieces.add(Piece.number(matcher.group(), value));
      } else if (matcher.group("alone") != null) {
        pieces.add(Piece.number(matcher.group(), quarters(matcher.group())));
      } else if (matcher.group("f1") != null) {
        pieces.add(Piece.word("f1"));
      } else if (matcher.group("word") != null) {
        addWord(matcher.group(), pieces);
      } else if (matcher.group("stop") != null) {
        pieces.add(new Piece(Kind.STOP, ".", 0, null));
      } else if (matcher.group("question") != null) {
        pieces.add(new Piece(Kind.QUESTION, "?", 0, null));
      } else if (matcher.group("comma") != null) {
        pieces.add(new Piece(Kind.COMMA, ",", 0, null));
      } else if (matcher.group("dash") != null) {
        addDash(text, matcher.start(), pieces);
      } else {
        pieces.add(Piece.word("clock"));
      }
    }
    return pieces;
  }

  private static void addWord(String word, List<Piece> pieces) {
    int s = word.endsWith("'s") ? word.length() - 2 : word.length();
    pieces.add(Piece.word(word.substring(0, s)));
    if (s < word.length()) {
      pieces.add(Piece.word("'s"));
    }
  }

  /** A dash between figures is part of a weight or range; between spaces it is a pause. */
  private static void addDash(String text, int at, List<Piece> pieces) {
    boolean left = at > 0 && Character.isDigit(text.charAt(at - 1));
    boolean right = at + 1 < text.length() && Character.isDigit(text.charAt(at + 1));
    boolean joinsWords =
        at > 0
            && at + 1 < text.length()
            && !Character.isWhitespace(text.charAt(at - 1))
            && !Character.isWhitespace(text.charAt(at + 1));
    if (left && right) {
      pieces.add(Piece.word("-"));
    } else if (!joinsWords) {
      pieces.add(new Piece(Kind.COMMA, ",", 0, null));
    }
  }

  private static double quarters(@Nullable String sign) {
    return sign == null ? 0 : ("¼½¾".indexOf(sign) + 1) / 4.0;
  }

  private String word(int i) {
    return i < in.size() && in.get(i).is(Kind.WORD) ? in.get(i).said() : "";
  }

  private int take(int i) {
    Piece piece = in.get(i);
    if (piece.is(Kind.NUMBER)) {
      return tail(piece.said(), piece.value(), i + 1);
    }
    String word = word(i);
    boolean a = word.equals("a");
    int noun = a ? i + 1 : i;
    switch (word(noun)) {
      case "dozen" -> {
        return add("dozen", 12, noun + 1);
      }
      case "couple", "pair" -> {
        if (a || word(noun + 1).equals("of")) {
          return add(word(noun), 2, word(noun + 1).equals("of") ? noun + 2 : noun + 1);
        }
      }
      case "hundred" -> {
        return hundred(noun + 1);
      }
      case "half" -> {
        int next = word(noun + 1).equals("a") ? noun + 2 : noun + 1;
        if (word(next).equals("dozen")) {
          return add("half a dozen", 6, next + 1);
        }
      }
      default -> {}
    }
    if (SMALL.containsKey(word) || TENS.containsKey(word)) {
      return spelled(i);
    }
    if (word.equals("point") && !digits(i + 1).isEmpty()) {
      return tail("point", 0, i);
    }
    out.add(piece);
    return i + 1;
  }

  private int add(String said, double value, int next) {
    out.add(Piece.number(said, value));
    return next;
  }

  /** "A hundred", "a hundred and fifty". */
  private int hundred(int start) {
    int rest = word(start).equals("and") ? start + 1 : start;
    int tens = TENS.getOrDefault(word(rest), 0);
    int units = SMALL.getOrDefault(word(tens > 0 ? rest + 1 : rest), 0);
    boolean ends = tens == 0 || units > 9 || units == 0;
    int value = 100 + (tens == 0 ? units : units > 9 ? tens : tens + units);
    int next = tens == 0 ? (units > 0 ? rest + 1 : start) : ends ? rest + 1 : rest + 2;
    return add("hundred", value, next);
  }

  private int spelled(int start) {
    int i = start;
    int value = 0;
    Integer tens = TENS.get(word(i));
    if (tens == null) {
      value = SMALL.getOrDefault(word(i), 0);
      i++;
      if (word(i).equals("hundred")) {
        value *= 100;
        i++;
        int rest = word(i).equals("and") ? i + 1 : i;
        if (SMALL.containsKey(word(rest)) || TENS.containsKey(word(rest))) {
          i = rest;
          tens = TENS.get(word(i));
          if (tens == null) {
            value += SMALL.getOrDefault(word(i), 0);
            i++;
          }
        }
      } else if (word(i).equals("dozen")) {
        value *= 12;
        i++;
      } else if (value > 0 && value < 10 && TENS.containsKey(word(i))) {
        // "Two fifty" is 250.
        value *= 100;
        tens = TENS.get(word(i));
      }
    }
    if (tens != null) {
      value += tens;
      i++;
      int units = SMALL.getOrDefault(word(i), 0);
      if (units > 0 && units < 10) {
        value += units;
        i++;
      }
    }
    return tail(i == start + 1 ? word(start) : "number", value, i);
  }

  /** Adds what may follow a number: "point seven", "and a half". */
  private int tail(String said, double whole, int start) {
    double value = whole;
    int i = start;
    if (word(i).equals("point")) {
      String digits = digits(i + 1);
      if (!digits.isEmpty()) {
        value += Double.parseDouble("0." + digits);
        i = start + 1 + digitPieces(start + 1);
      }
    }
    if (word(i).equals("and")) {
      int noun = word(i + 1).equals("a") ? i + 2 : i + 1;
      double part = part(noun);
      if (part > 0 && !word(noun + 1).equals("of")) {
        value += part;
        i = noun + (word(noun).equals("three") ? 2 : 1);
      }
    }
    out.add(Piece.number(said, value));
    return i;
  }

  private double part(int i) {
    return switch (word(i)) {
      case "half" -> 0.5;
      case "quarter" -> 0.25;
      case "three" -> word(i + 1).equals("quarters") ? 0.75 : 0;
      default -> 0;
    };
  }

  private int digitPieces(int from) {
    int i = from;
    while (i < in.size() && i < from + 3 && digit(i) >= 0) {
      i++;
    }
    return i - from;
  }

  private String digits(int from) {
    StringBuilder digits = new StringBuilder();
    for (int i = from; i < from + digitPieces(from); i++) {
      digits.append(digit(i));
    }
    return digits.toString();
  }

  private int digit(int i) {
    Piece piece = in.get(i);
    if (piece.is(Kind.NUMBER)) {
      return piece.value() == Math.rint(piece.value()) && piece.value() < 100
          ? (int) piece.value()
          : -1;
    }
    int digit = SMALL.getOrDefault(word(i), -1);
    return digit < 10 ? digit : -1;
  }
}
