package org.fadeline.io.notes;

import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import java.util.regex.Matcher;
import org.fadeline.io.notes.NoteRules.Rule;
import org.fadeline.io.notes.Piece.Kind;

/** A part of a note between pauses, with its shape for the patterns of {@link NoteRules}. */
final class NoteClause {
  /** Nobody says more in one breath; it also bounds what the patterns look over. */
  private static final int LONGEST = 60;

  private static final Set<String> PAUSES = Set.of("then", "but", "while", "whilst");

  private final List<Piece> pieces;
  private final boolean question;
  private final boolean startsSentence;
  private final String shape;
  private final int[] starts;

  private NoteClause(List<Piece> pieces, boolean question, boolean startsSentence) {
    this.pieces = List.copyOf(pieces);
    this.question = question;
    this.startsSentence = startsSentence;
    this.starts = new int[pieces.size() + 1];
    StringBuilder text = new StringBuilder();
    for (int i = 0; i < pieces.size(); i++) {
      if (i > 0) {
        text.append(' ');
      }
      starts[i] = text.length();
      text.append(pieces.get(i).shape());
    }
    starts[pieces.size()] = text.length() + 1;
    this.shape = text.toString();
  }

  /** Splits a note at stops, pauses and "then" or "but". */
  static List<NoteClause> split(List<Piece> pieces) {
    List<NoteClause> clauses = new ArrayList<>();
    List<Piece> part = new ArrayList<>();
    boolean starts = true;
    int sentence = 0;
    for (Piece piece : pieces) {
      boolean stop = piece.is(Kind.STOP) || piece.is(Kind.QUESTION);
      // "Clicker, plus four" is said in one.
      boolean clicker = !part.isEmpty() && part.get(part.size() - 1).isWord("clicker");
      if (piece.is(Kind.COMMA) && clicker) {
        continue;
      }
      boolean pause = piece.is(Kind.COMMA) || PAUSES.contains(piece.said());
      if (!stop && !pause) {
        part.add(piece);
        if (part.size() < LONGEST) {
          continue;
        }
      }
      if (!part.isEmpty()) {
        clauses.add(new NoteClause(part, false, starts));
        part.clear();
        starts = false;
      }
      if (stop) {
        if (piece.is(Kind.QUESTION)) {
          for (int i = sentence; i < clauses.size(); i++) {
            NoteClause clause = clauses.get(i);
            clauses.set(i, new NoteClause(clause.pieces, true, clause.startsSentence));
          }
        }
        starts = true;
        sentence = clauses.size();
      }
    }
    if (!part.isEmpty()) {
      clauses.add(new NoteClause(part, false, starts));
    }
    return clauses;
  }

  List<Piece> pieces() {
    return pieces;
  }

  String shape() {
    return shape;
  }

  boolean startsSentence() {
    return startsSentence;
  }

  boolean isQuestion() {
    return question || (startsSentence && NoteRules.QUESTION.matcher(shape).find());
  }

  /**
   * A place where a rule's words stand.
   *
   * @param rule the rule
   * @param from first piece
   * @param to piece after the last
   * @param words the shape of what matched
   * @param before the shape of the clause up to it
   * @param after the shape of the clause from its end
   */
  record Hit(Rule rule, int from, int to, String words, String before, String after) {}

  /** Returns where rules match, without overlaps: the longer first, then the earlier rule. */
  List<Hit> hits() {
    List<Hit> all = new ArrayList<>();
    for (Rule rule : NoteRules.RULES) {
      Matcher matcher = rule.pattern().matcher(shape);
      int at = 0;
      while (at <= shape.length() && matcher.find(at)) {
        if (matcher.end() > matcher.start()) {
          all.add(hit(rule, matcher));
        }
        at = Math.max(matcher.end(), matcher.start() + 1);
      }
    }
    List<Hit> kept = new ArrayList<>();
    all.stream()
        .sorted(
            (a, b) ->
                a.rule.mention() != b.rule.mention()
                    ? Boolean.compare(a.rule.mention(), b.rule.mention())
                    : Integer.compare(b.words.length(), a.words.length()))
        .forEach(
            hit -> {
              if (kept.stream().noneMatch(k -> hit.from < k.to && k.from < hit.to)) {
                kept.add(hit);
              }
            });
    kept.sort((a, b) -> Integer.compare(a.from, b.from));
    return kept;
  }

  private Hit hit(Rule rule, Matcher matcher) {
    int from = 0;
    while (from + 1 < pieces.size() && starts[from + 1] <= matcher.start()) {
      from++;
    }
    int to = from + 1;
    while (to < pieces.size() && starts[to] < matcher.end()) {
      to++;
    }
    return new Hit(
        rule,
        from,
        to,
        matcher.group(),
        shape.substring(0, matcher.start()),
        shape.substring(matcher.end()));
  }
}
