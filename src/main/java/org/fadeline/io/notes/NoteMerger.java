package org.fadeline.io.notes;

import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import org.fadeline.model.EventKind;

/** Joins what a note says several times over into one event: a hook-up and its outcome. */
final class NoteMerger {
  private final List<NoteDraft> drafts;

  NoteMerger(List<NoteDraft> drafts) {
    this.drafts = new ArrayList<>(drafts);
  }

  List<NoteDraft> merge() {
    boolean stopped = drafts.stream().anyMatch(draft -> draft.kind == EventKind.STOPPED);
    boolean lost = drafts.stream().anyMatch(draft -> draft.kind == EventKind.LOST);
    boolean moved = drafts.stream().anyMatch(draft -> draft.kind == EventKind.MOVE);
    drafts.removeIf(
        draft ->
            (draft.kind == EventKind.WEATHER && (stopped || moved))
                || (draft.kind == EventKind.OFF && (stopped || lost)));
    for (int i = 0; i + 1 < drafts.size(); ) {
      NoteDraft first = drafts.get(i);
      NoteDraft second = drafts.get(i + 1);
      if (replaces(first, second)) {
        absorb(second, first);
        drafts.remove(i);
        i = Math.max(0, i - 1);
      } else if (sameSpecies(first, second)) {
        first.repeated++;
        drafts.remove(i + 1);
      } else if (repeats(first, second)) {
        absorb(first, second);
        drafts.remove(i + 1);
      } else {
        i++;
      }
    }
    drafts.stream()
        .filter(draft -> draft.repeated > 1)
        .forEach(draft -> draft.pieces.add(0, Piece.number("again", draft.repeated)));
    return drafts;
  }

  /** "Skimmer, skimmer, skimmer" is three of them. */
  private static boolean sameSpecies(NoteDraft first, NoteDraft second) {
    return first.mention
        && second.mention
        && first.words.equals("#s")
        && second.words.equals("#s")
        && !first.has(Piece.Kind.WEIGHT)
        && !second.has(Piece.Kind.WEIGHT)
        && Objects.equals(
            NoteFields.name(first.pieces, Piece.Kind.SPECIES),
            NoteFields.name(second.pieces, Piece.Kind.SPECIES));
  }

  /** Whether the second tells what became of the first. */
  private static boolean replaces(NoteDraft first, NoteDraft second) {
    boolean missed = second.words.contains("miss") || second.words.contains("nothing");
    if (first.kind == EventKind.BITE && !first.words.contains("miss")) {
      return (second.isFish() && !second.words.contains("another"))
          || (second.kind == EventKind.BITE && missed);
    }
    if (first.kind == EventKind.HOOKED) {
      return second.isFish() && !second.words.contains("another");
    }
    boolean mentioned = first.kind == EventKind.LANDED && first.mention;
    if (mentioned) {
      boolean fate =
          second.kind == EventKind.LOST
              || second.kind == EventKind.FOUL
              || (second.kind == EventKind.HOOKED && !first.has(Piece.Kind.WEIGHT));
      boolean landed = second.kind == EventKind.LANDED && !second.mention;
      return (fate || landed) && !second.another();
    }
    boolean toldFoul = first.kind == EventKind.LANDED && second.kind == EventKind.FOUL;
    boolean foulLost = first.kind == EventKind.FOUL && second.kind == EventKind.LOST;
    return (toldFoul || foulLost) && !second.another();
  }

  /** Whether the second says the first again. */
  private static boolean repeats(NoteDraft first, NoteDraft second) {
    if (first.kind == EventKind.OFF && second.kind == EventKind.CHANGE) {
      return true;
    }
    if (first.kind == EventKind.HOOKED && second.kind == EventKind.LANDED && second.mention) {
      return !second.words.contains("another");
    }
    if (first.kind == EventKind.FOUL && second.kind != EventKind.FOUL) {
      return second.kind == EventKind.LANDED && !second.words.contains("another");
    }
    if (first.kind != second.kind) {
      boolean aside = second.kind == EventKind.LANDED && second.mention;
      return first.kind == EventKind.LOST
          && (aside || second.kind == EventKind.FOUL)
          && !second.another();
    }
    return switch (first.kind) {
      case LANDED ->
          !second.another()
              || (second.mention
                  && !first.has(Piece.Kind.WEIGHT)
                  && second.has(Piece.Kind.WEIGHT)
                  && !second.words.contains("another"));
      case LOST, HOOKED, BITE, FOUL -> !second.another();
      case MOVE -> first.towards == null || second.towards == null;
      case FED ->
          (first.lineId == null || second.lineId == null)
              && !(first.has(Piece.Kind.AMOUNT) && second.has(Piece.Kind.AMOUNT));
      case WEATHER, SIGN, INDICATION, OFF, NET, STOPPED, RESUMED, CHANGE, CAST -> true;
      default -> false;
    };
  }

  private static void absorb(NoteDraft kept, NoteDraft gone) {
    kept.pieces.addAll(gone.pieces);
    kept.confidence = Math.max(kept.confidence, gone.confidence);
    kept.lineId = kept.lineId == null ? gone.lineId : kept.lineId;
    kept.towards = kept.towards == null ? gone.towards : kept.towards;
    kept.severalLines |= gone.severalLines;
    kept.shiftMillis = Math.max(kept.shiftMillis, gone.shiftMillis);
  }
}
