package org.fadeline.io.notes;

import java.util.List;
import java.util.Objects;
import java.util.regex.Pattern;
import org.fadeline.io.notes.NoteClause.Hit;
import org.fadeline.io.notes.Piece.Kind;
import org.fadeline.model.EventKind;
import org.fadeline.model.EventKind.Group;
import org.jspecify.annotations.Nullable;

/** Finds which line each event of a note is about. */
final class NoteLines {
  private static final Pattern OVER_IT =
      Pattern.compile("\\b(?:over|on|round|into|with) (?:it|the top|there)\\b");

  private NoteLines() {}

  /** Finds the draft's line, and for a move the line left and the line moved to. */
  static void place(NoteDraft draft, NoteClause clause, Hit hit) {
    if (draft.kind == EventKind.MOVE) {
      List<Piece> pieces = clause.pieces();
      boolean leaves =
          hit.words()
              .matches(
                  ".*\\b(?:off|from|left|leaving|rest\\w*|giv\\w+|gave|enough|done|finished|it for)\\b.*");
      for (int i = hit.from(); i < hit.to(); i++) {
        if (pieces.get(i).is(Kind.LINE)) {
          if (leaves) {
            draft.lineId = pieces.get(i).name();
          } else {
            draft.towards = pieces.get(i).name();
          }
          draft.severalLines |= pieces.get(i).name() == null;
        }
      }
      Piece named = line(clause.pieces().subList(0, hit.from()));
      if (leaves && draft.lineId == null && named != null && !draft.severalLines) {
        draft.lineId = named.name();
      }
      return;
    }
    Piece line = line(draft.pieces);
    if (line == null && draft.kind != EventKind.FED) {
      line = line(clause.pieces());
    }
    if (line != null) {
      draft.lineId = line.name();
      draft.severalLines = line.name() == null;
    }
  }

  private static @Nullable Piece line(List<Piece> pieces) {
    return pieces.stream().filter(piece -> piece.is(Kind.LINE)).findFirst().orElse(null);
  }

  /** Carries a line said earlier in the note to the water events after it. */
  static void carry(List<NoteDraft> drafts) {
    String said = null;
    for (NoteDraft draft : drafts) {
      if (draft.lineId == null && draft.kind != EventKind.MOVE) {
        Piece late = line(draft.pieces);
        draft.lineId = late == null ? null : late.name();
        draft.severalLines |= late != null && late.name() == null;
      }
      if (draft.kind == EventKind.FED
          && draft.lineId == null
          && OVER_IT.matcher(draft.shape()).find()) {
        draft.lineId = said;
      }
      boolean water = draft.kind.group() == Group.WATER;
      boolean placed =
          water || draft.kind == EventKind.INDICATION || draft.kind == EventKind.CHANGE;
      if (draft.kind == EventKind.MOVE && draft.words.contains("it") && draft.lineId == null) {
        Piece left = line(draft.pieces);
        boolean other = left != null && !Objects.equals(left.name(), draft.towards);
        draft.lineId = other && left != null ? left.name() : null;
      }
      if (!takesLine(draft.kind)) {
        draft.lineId = null;
      } else if (draft.kind == EventKind.MOVE) {
        said = draft.towards == null ? said : draft.towards;
      } else if (placed && draft.lineId == null) {
        draft.lineId = said;
      } else if (water) {
        said = draft.lineId;
      }
    }
  }

  private static boolean takesLine(EventKind kind) {
    return switch (kind) {
      case NET, NEIGHBOUR, WEATHER, STOPPED, RESUMED, ALL_IN, ALL_OUT, NOTE, COUNT -> false;
      default -> true;
    };
  }
}
