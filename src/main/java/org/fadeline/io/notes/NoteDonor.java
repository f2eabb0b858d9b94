package org.fadeline.io.notes;

import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import org.fadeline.io.notes.Piece.Kind;
import org.fadeline.model.EventKind;
import org.fadeline.model.Units;
import org.fadeline.model.WeightText;
import org.jspecify.annotations.Nullable;

/** Gives what a clause without event of its own tells to the event before it, or to the next. */
final class NoteDonor {
  private NoteDonor() {}

  static void give(
      NoteClause clause, boolean correction, List<NoteDraft> drafts, List<Piece> waiting) {
    String shape = clause.shape();
    int fact = shape.indexOf('#');
    boolean planned = fact >= 0 && NoteRules.PLANNED.matcher(shape.substring(0, fact)).find();
    if (planned || NoteRules.TOTAL.matcher(shape).find()) {
      return;
    }
    if (drafts.isEmpty()) {
      if (fact >= 0) {
        waiting.addAll(clause.pieces());
      }
      return;
    }
    NoteDraft last = drafts.get(drafts.size() - 1);
    NoteDraft again = fedAgain(last, clause);
    if (again != null) {
      drafts.add(again);
      return;
    }
    Double pair = NoteFields.plainPair(clause.pieces());
    if (last.isFish() && pair != null && !last.has(Kind.WEIGHT)) {
      last.pieces.add(new Piece(Kind.WEIGHT, shape, pair, null));
      return;
    }
    List<Piece> before = List.copyOf(last.pieces);
    for (Piece piece : clause.pieces()) {
      Piece weight = correction ? corrected(last, piece) : null;
      if (weight != null) {
        last.pieces.removeIf(old -> old.is(Kind.WEIGHT));
        last.pieces.add(weight);
      } else if (piece.is(Kind.AMOUNT) && last.kind == EventKind.FED) {
        // "A cup of casters, say 150 ml": the measure takes the place of the vessel.
        last.pieces.removeIf(old -> old.is(Kind.AMOUNT) && !"ml".equals(old.name()));
        last.pieces.add(piece);
      } else if (piece.is(Kind.WORD) || before.stream().noneMatch(old -> old.is(piece.kind()))) {
        last.pieces.add(piece);
      }
    }
  }

  /** "Fed two pots short, one left edge": the second feed is told by its line and amount alone. */
  private static @Nullable NoteDraft fedAgain(NoteDraft last, NoteClause clause) {
    boolean line = clause.pieces().stream().anyMatch(piece -> piece.is(Kind.LINE));
    boolean much =
        clause.pieces().stream().anyMatch(piece -> piece.is(Kind.AMOUNT) || piece.is(Kind.NUMBER));
    if (last.kind != EventKind.FED || !line || !much || !last.has(Kind.LINE)) {
      return null;
    }
    NoteDraft again = new NoteDraft(EventKind.FED, false, last.words, last.confidence * 0.85);
    String unit = null;
    for (Piece piece : last.pieces) {
      unit = piece.is(Kind.AMOUNT) ? piece.name() : unit;
      if (piece.is(Kind.BAIT)) {
        again.pieces.add(piece);
      }
    }
    for (Piece piece : clause.pieces()) {
      boolean bare = piece.is(Kind.NUMBER) && unit != null;
      again.pieces.add(bare ? new Piece(Kind.AMOUNT, piece.said(), piece.value(), unit) : piece);
    }
    return again;
  }

  /** "Cupped the left edge and the right edge": one feed for each further line. */
  static List<NoteDraft> fedElsewhere(NoteDraft draft) {
    List<Piece> lines = draft.pieces.stream().filter(piece -> piece.is(Kind.LINE)).toList();
    List<Piece> amounts = draft.pieces.stream().filter(piece -> piece.is(Kind.AMOUNT)).toList();
    List<NoteDraft> others = new ArrayList<>();
    for (int i = 1; i < lines.size(); i++) {
      if (Objects.equals(lines.get(i).name(), draft.lineId)) {
        continue;
      }
      NoteDraft other = new NoteDraft(EventKind.FED, false, draft.words, draft.confidence * 0.9);
      other.lineId = lines.get(i).name();
      other.severalLines = other.lineId == null;
      other.pieces.add(lines.get(i));
      if (!amounts.isEmpty()) {
        other.pieces.add(amounts.get(amounts.size() == lines.size() ? i : 0));
      }
      draft.pieces.stream().filter(piece -> piece.is(Kind.BAIT)).forEach(other.pieces::add);
      others.add(other);
    }
    return others;
  }

  /** Returns the weight that a correction gives, or null: "four pound, no, make that five". */
  private static @Nullable Piece corrected(NoteDraft last, Piece piece) {
    if (piece.is(Kind.WEIGHT)) {
      return piece;
    }
    Piece old = last.pieces.stream().filter(one -> one.is(Kind.WEIGHT)).findFirst().orElse(null);
    if (old == null || !piece.is(Kind.NUMBER)) {
      return null;
    }
    String said = old.said();
    String unit = said.contains("oz") || said.contains("ounce") ? "oz" : "lb";
    unit = said.contains("k") ? "kg" : unit;
    double grams = WeightText.grams(piece.value() + " " + unit, Units.Weight.LB_OZ);
    return new Piece(Kind.WEIGHT, piece.said(), grams, old.name());
  }
}
