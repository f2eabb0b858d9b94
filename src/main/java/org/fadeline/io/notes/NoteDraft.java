package org.fadeline.io.notes;

import java.util.ArrayList;
import java.util.List;
import org.fadeline.io.notes.Piece.Kind;
import org.fadeline.model.EventKind;
import org.jspecify.annotations.Nullable;

/** An event in the making: what was found of it so far. */
final class NoteDraft {
  final EventKind kind;
  final boolean mention;
  final List<Piece> pieces = new ArrayList<>();

  /** The shape of the words that told it. */
  final String words;

  double confidence;
  @Nullable String lineId;
  @Nullable String towards;
  boolean severalLines;
  long shiftMillis;

  /** How many times the same words were said. */
  int repeated = 1;

  NoteDraft(EventKind kind, boolean mention, String words, double confidence) {
    this.kind = kind;
    this.mention = mention;
    this.words = words;
    this.confidence = confidence;
  }

  boolean isFish() {
    return kind == EventKind.LANDED
        || kind == EventKind.LOST
        || kind == EventKind.FOUL
        || kind == EventKind.HOOKED;
  }

  boolean has(Kind piece) {
    return pieces.stream().anyMatch(p -> p.is(piece));
  }

  /** Whether the words speak of one more fish, not of the one just spoken of. */
  boolean another() {
    return words.matches(
        ".*\\b(?:another|an|a|one|two|more|second|next|also|first)\\b.*|.*(?:#n|#s).*");
  }

  String shape() {
    return Piece.shapes(pieces);
  }
}
