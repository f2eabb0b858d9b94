package org.fadeline.io.notes;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Stream;
import org.fadeline.io.notes.Piece.Kind;
import org.fadeline.model.Line;
import org.fadeline.model.LineCodes;
import org.jspecify.annotations.Nullable;

/**
 * The words a note may use for lines: the names of a session's own lines first, with what anglers
 * say for them ("eleven metres" for "pole 11 m", "margin" for "edge"), then the trade's usual
 * lines, which stand for new ones.
 */
public final class Vocabulary {
  private static final List<String> TRADE_LINES =
      List.of(
          "shallow",
          "short",
          "long",
          "left edge",
          "right edge",
          "edge",
          "deck",
          "waggler",
          "feeder",
          "bomb",
          "whip",
          "pole");

  /** What makes a word of the trade something else than a line. */
  private static final Set<String> NOT_BEFORE =
      Set.of(
          "too",
          "so",
          "not",
          "very",
          "bit",
          "how",
          "before",
          "bigger",
          "smaller",
          "new",
          "another",
          "lighter",
          "heavier",
          "changed",
          "different",
          "for",
          "as",
          "pretty",
          "quite");

  private static final Set<String> NOT_AFTER =
      Set.of(
          "of", "time", "wait", "break", "way", "as", "float", "pot", "section", "shadow",
          "elastic", "tip", "full", "ago", "enough", "sharp", "term", "run");

  private final Map<String, String> names = new LinkedHashMap<>();
  private final Map<String, Set<String>> aliases = new LinkedHashMap<>();
  private final Map<String, Line> lines = new LinkedHashMap<>();
  private final Set<String> own = new HashSet<>();

  /** Codes of the bank sheet; read in shorthand alone, since nobody says them. */
  private final Map<String, String> codes = new HashMap<>();

  private int longest = 1;

  private Vocabulary(List<Line> sessionLines) {
    for (Line line : sessionLines) {
      own.add(line.id());
      lines.put(line.id(), line);
      List<String> name = plain(line.name());
      name(name, line.id());
      name(plain(line.id()), line.id());
      others(name).forEach(other -> alias(other, line.id()));
      String kind = line.kind();
      if (kind != null) {
        alias(plain(kind), line.id());
        others(plain(kind)).forEach(other -> alias(other, line.id()));
      }
    }
    LineCodes.of(sessionLines).forEach((id, code) -> codes.put(key(plain(code)), id));
    for (String trade : TRADE_LINES) {
      List<String> name = plain(trade);
      if (names.containsKey(key(name)) || aliases.containsKey(key(name))) {
        continue;
      }
      String id = trade.replace(' ', '-');
      lines.put(id, new Line(id, trade, trade, id, Line.Place.UNKNOWN, Line.Rig.UNKNOWN));
      name(name, id);
      for (List<String> other : others(name)) {
        if (!aliases.containsKey(key(other)) && !names.containsKey(key(other))) {
          alias(other, id);
        }
      }
    }
  }

  /** Returns the vocabulary for a session with these lines. */
  public static Vocabulary of(List<Line> lines) {
    return new Vocabulary(lines);
  }

  /** Returns the line, of the session or of the trade, with the given id. */
  public Optional<Line> line(String id) {
    return Optional.ofNullable(lines.get(id));
  }

  /** Returns whether the line is one that the session does not have yet. */
  public boolean isNew(String id) {
    return !own.contains(id);
  }

  /**
   * A line found in a note.
   *
   * @param id its id, or null where several lines could be meant
   * @param length how many pieces its name took
   */
  record Found(@Nullable String id, int length) {}

  /**
   * Returns the line whose longest name starts at piece i, or null.
   *
   * @param terse whether the text is shorthand, in which a name needs no "the" or "line"
   */
  @Nullable Found at(List<Piece> pieces, int i, boolean terse) {
    for (int length = Math.min(longest, pieces.size() - i); length > 0; length--) {
      String key = key(pieces, i, length);
      if (key == null) {
        continue;
      }
      String id = names.get(key);
      if (id == null && terse && !aliases.containsKey(key)) {
        id = codes.get(key);
      }
      Set<String> meant = id == null ? aliases.get(key) : Set.of(id);
      boolean first = terse && (i == 0 || !TradeWords.isBait(pieces.get(i).said()));
      if (meant != null && (first || stands(pieces, i, length))) {
        int end = i + length;
        boolean line = end < pieces.size() && isLineWord(pieces.get(end));
        return new Found(
            meant.size() == 1 ? meant.iterator().next() : null, line ? length + 1 : length);
      }
    }
    return null;
  }

  private static boolean isLineWord(Piece piece) {
    return piece.isWord("line") || piece.isWord("swim");
  }

  private static boolean stands(List<Piece> pieces, int i, int length) {
    String before = i > 0 ? pieces.get(i - 1).said() : "";
    String after = i + length < pieces.size() ? pieces.get(i + length).said() : "";
    boolean line = after.equals("line") || after.equals("swim");
    if (line) {
      return true;
    }
    String said = pieces.get(i).said();
    if (length == 1 && TradeWords.isBait(said)) {
      return i > 1 && before.equals("the") && !pieces.get(i - 2).isWord("of");
    }
    if (length == 1 && (said.equals("left") || said.equals("right"))) {
      return false;
    }
    int end = i + length;
    boolean onThe =
        after.equals("on") && end + 1 < pieces.size() && pieces.get(end + 1).isWord("the");
    return !NOT_BEFORE.contains(before)
        && !(length == 1 && onThe)
        && !NOT_AFTER.contains(after)
        && !(before.equals("a") && i > 1)
        && !TradeWords.isBait(after);
  }

  private static @Nullable String key(List<Piece> pieces, int i, int length) {
    List<String> words = new ArrayList<>();
    for (Piece piece : pieces.subList(i, i + length)) {
      if (piece.is(Kind.WORD)) {
        words.add(TradeWords.plain(piece.said()));
      } else if (piece.is(Kind.NUMBER)) {
        words.add(Piece.figure(piece.value()));
      } else {
        return null;
      }
    }
    return key(words);
  }

  private static String key(List<String> words) {
    return String.join(" ", words);
  }

  private void name(List<String> words, String id) {
    if (!words.isEmpty()) {
      names.putIfAbsent(key(words), id);
      longest = Math.max(longest, words.size());
    }
  }

  private void alias(List<String> words, String id) {
    if (!words.isEmpty()) {
      aliases.computeIfAbsent(key(words), key -> new LinkedHashSet<>()).add(id);
      longest = Math.max(longest, words.size());
    }
  }

  /** Returns the words of a name, numbers as figures and units one way. */
  private static List<String> plain(String name) {
    return NoteNumbers.of(name).stream()
        .flatMap(
            piece ->
                piece.is(Kind.WORD)
                    ? Stream.of(TradeWords.plain(piece.said()))
                    : piece.is(Kind.NUMBER) ? Stream.of(Piece.figure(piece.value())) : Stream.of())
        .filter(word -> !word.equals("line") && !word.equals("swim"))
        .toList();
  }

  /** Returns what else anglers say for a name. */
  private static Set<List<String>> others(List<String> name) {
    Set<List<String>> others = new LinkedHashSet<>();
    int metres = name.indexOf("m");
    if (metres > 0) {
      List<String> rest = new ArrayList<>(name);
      List<String> distance = List.copyOf(name.subList(metres - 1, metres + 1));
      rest.removeAll(distance);
      others.add(distance);
      others.add(rest);
      List<String> turned = new ArrayList<>(distance);
      turned.addAll(rest);
      others.add(turned);
    }
    if (name.contains("edge")) {
      others.add(replace(name, "edge", "margin"));
      others.add(replace(name, "edge", "margins"));
      others.add(List.of("edge"));
      others.add(List.of("margin"));
      others.add(List.of("margins"));
      for (String side : List.of("left", "right")) {
        if (name.contains(side)) {
          for (String what : List.of("edge", "margin", "side")) {
            others.add(List.of(side, "hand", what));
          }
          others.add(List.of(side, "side"));
          others.add(List.of("edge", "to", "the", side));
          others.add(List.of("edge", "on", "the", side));
        }
      }
    }
    if (name.equals(List.of("waggler"))) {
      others.add(List.of("pellet", "waggler"));
      others.add(List.of("wag"));
    }
    if (name.equals(List.of("feeder"))) {
      others.add(List.of("method", "feeder"));
      others.add(List.of("method"));
    }
    if (name.contains("short")) {
      others.add(List.of("short", "pole"));
      others.add(List.of("top", "kit"));
    }
    if (name.contains("shallow")) {
      others.add(List.of("shallow", "rig"));
    }
    return others;
  }

  private static List<String> replace(List<String> name, String old, String other) {
    return name.stream().map(word -> word.equals(old) ? other : word).toList();
  }
}
