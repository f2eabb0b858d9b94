package org.fadeline.io.notes;

import java.util.ArrayList;
import java.util.List;
import java.util.regex.Matcher;
import org.fadeline.io.notes.NoteClause.Hit;
import org.fadeline.io.notes.Piece.Kind;
import org.fadeline.model.EventKind;
import org.fadeline.model.EventKind.Group;
import org.fadeline.model.SessionEvent;
import org.fadeline.model.Stamp;
import org.jspecify.annotations.Nullable;

/**
 * Reads a spoken note as zero or more proposed events. Plans, hopes, denials, questions and running
 * totals are no events; a note that tells a hook-up and its outcome is the outcome alone.
 *
 * <p>A proposal's line is null where the note does not say it: it is then the line being fished.
 */
final class NoteReader {
  private static final int MOST_BITES = 10;

  /** The rules' own confidence was too high by this on notes they had not seen (see the docs). */
  private static final double ON_FRESH_NOTES = 0.87;

  private final Vocabulary vocabulary;

  /** Returns a reader that knows a session's lines. */
  NoteReader(Vocabulary vocabulary) {
    this.vocabulary = vocabulary;
  }

  /**
   * Returns the events that a note seems to tell, in the order told.
   *
   * @param note what was said
   * @param at when, epoch milliseconds
   * @param idPrefix the events' ids are this and a number from 1
   */
  List<ProposedEvent> read(String note, long at, String idPrefix) {
    List<NoteDraft> drafts = new NoteMerger(drafts(note)).merge();
    NoteLines.carry(drafts);
    List<ProposedEvent> events = new ArrayList<>();
    for (NoteDraft draft : drafts) {
      int times = times(draft);
      for (int i = 0; i < times; i++) {
        Stamp stamp =
            new Stamp(
                idPrefix + (events.size() + 1), at - draft.shiftMillis, draft.lineId, note.strip());
        SessionEvent event = NoteFields.event(draft.kind, stamp, draft.pieces, draft.words);
        events.add(new ProposedEvent(event, confidence(draft), draft.towards));
      }
    }
    return events;
  }

  /** "Missed three bites" is three of them, at one instant. */
  private static int times(NoteDraft draft) {
    boolean counted = draft.kind == EventKind.BITE || draft.kind == EventKind.LOST;
    int least = draft.pieces.stream().anyMatch(piece -> piece.isWord("both")) ? 2 : 1;
    return counted ? Math.min(MOST_BITES, NoteFields.count(draft.pieces, least)) : 1;
  }

  private double confidence(NoteDraft draft) {
    double confidence = draft.confidence * ON_FRESH_NOTES;
    if (draft.severalLines) {
      confidence *= 0.7;
    }
    String line = draft.lineId;
    if (line != null && vocabulary.isNew(line)) {
      confidence *= 0.95;
    }
    return Math.min(0.98, Math.max(0.05, confidence));
  }

  private List<NoteDraft> drafts(String note) {
    List<NoteDraft> drafts = new ArrayList<>();
    List<Piece> waiting = new ArrayList<>();
    boolean conditional = false;
    boolean correction = false;
    for (NoteClause clause : NoteClause.split(NoteScanner.scan(vocabulary, note, false))) {
      if (clause.startsSentence()) {
        conditional =
            clause.shape().matches("(?:and |so |right |ok )*(?:if|when|once|unless)\\b.*");
        correction = false;
      }
      if (clause.isQuestion() || conditional) {
        continue;
      }
      correction |=
          clause.shape().matches("(?:oh |er )*(?:no|sorry|actually|wait|make|rather)\\b.*");
      List<NoteDraft> found = ofClause(clause);
      NoteDraft last = drafts.isEmpty() ? null : drafts.get(drafts.size() - 1);
      boolean aside =
          last != null && !found.isEmpty() && isAside(last, found, clause.startsSentence());
      if (found.isEmpty() || aside) {
        if (aside || clause.hits().isEmpty()) {
          NoteDonor.give(clause, correction, drafts, waiting);
        }
        continue;
      }
      if (correction && last != null && last.isFish() && found.get(0).mention) {
        drafts.remove(last);
      }
      found.get(0).pieces.addAll(0, waiting);
      waiting.clear();
      drafts.addAll(found);
      if (found.get(0).kind == EventKind.NOTE) {
        break;
      }
    }
    return drafts;
  }

  /** Whether a clause only adds a weight to the fish just told: "landed one, about four pound". */
  private static boolean isAside(NoteDraft last, List<NoteDraft> found, boolean anew) {
    NoteDraft first = found.get(0);
    boolean theirs = last.kind == EventKind.NEIGHBOUR && !anew;
    boolean counted = last.kind == EventKind.COUNT && !last.has(Kind.NUMBER);
    if (found.size() == 1 && first.mention && (theirs || counted)) {
      return true;
    }
    boolean takesWeight =
        last.isFish() || last.kind == EventKind.COUNT || last.kind == EventKind.NEIGHBOUR;
    boolean offIt = first.kind == EventKind.MOVE && first.words.startsWith("off ");
    if (offIt && found.size() == 1 && last.isFish() && last.lineId == null) {
      return true;
    }
    boolean names =
        first
                .shape()
                .matches("(?:(?:all|both|mostly|mainly|nice|good|proper|big|decent) )*#s(?: that)?")
            && !last.has(Kind.SPECIES);
    if (takesWeight && found.size() == 1 && first.mention && names) {
      return true;
    }
    return found.size() == 1
        && first.mention
        && takesWeight
        && first.has(Kind.WEIGHT)
        && !last.has(Kind.WEIGHT)
        && first.pieces.stream().noneMatch(piece -> piece.is(Kind.SPECIES) || piece.is(Kind.NUMBER))
        && !first.words.contains("another");
  }

  private static List<NoteDraft> ofClause(NoteClause clause) {
    List<Hit> hits = effective(clause);
    Matcher other = NoteRules.OTHER_PEG.matcher(clause.shape());
    if (other.find() && hits.stream().noneMatch(hit -> hit.rule().kind() == EventKind.MOVE)) {
      return otherPeg(clause);
    }
    List<NoteDraft> drafts = new ArrayList<>();
    for (int i = 0; i < hits.size(); i++) {
      Hit hit = hits.get(i);
      if (blocked(clause, hit)) {
        continue;
      }
      NoteDraft draft =
          new NoteDraft(
              hit.rule().kind(), hit.rule().mention(), hit.words(), confidence(clause, hit));
      int from = i == 0 ? 0 : boundary(clause, hits.get(i - 1), hit);
      int to =
          i + 1 == hits.size() ? clause.pieces().size() : boundary(clause, hit, hits.get(i + 1));
      draft.pieces.addAll(clause.pieces().subList(from, to));
      draft.shiftMillis = ago(clause.shape(), draft.pieces);
      NoteLines.place(draft, clause, hit);
      drafts.add(draft);
      if (draft.kind == EventKind.FED) {
        drafts.addAll(NoteDonor.fedElsewhere(draft));
      }
    }
    return drafts;
  }

  /** Returns the hits that stand for events of their own. */
  private static List<Hit> effective(NoteClause clause) {
    List<Hit> all = clause.hits();
    boolean strong =
        all.stream().anyMatch(hit -> !hit.rule().mention() && counts(hit.rule().kind()));
    boolean fished =
        all.stream()
            .map(hit -> hit.rule().kind())
            .anyMatch(kind -> kind.group() == Group.WATER && kind != EventKind.CAST);
    List<Hit> hits = new ArrayList<>();
    for (Hit hit : all) {
      EventKind kind = hit.rule().kind();
      // A fish named beside another event of the clause is what that event is about.
      boolean about = hit.rule().mention() && strong;
      boolean when =
          kind == EventKind.CAST
              && fished
              && hit.words().matches("(?:first |next |another )?(?:put in|cast|chuck|first \\w+)");
      Hit last = hits.isEmpty() ? null : hits.get(hits.size() - 1);
      boolean sameFeed =
          last != null
              && kind == EventKind.FED
              && last.rule().kind() == kind
              && hit.words().startsWith("#")
              && !clause.pieces().get(hit.from() - 1).isWord("and");
      boolean sameFish =
          last != null
              && hit.rule().mention()
              && last.rule().mention()
              && !hit.words().matches("(?:another|#n|two|second|next)\\b.*")
              && !clause.pieces().get(hit.from() - 1).isWord("and");
      if (!about && !when && !sameFeed && !sameFish && !where(clause, last, hit)) {
        hits.add(hit);
      }
    }
    return hits;
  }

  /** "Six pellets over the shallow now" tells where the bait went, not where the angler did. */
  private static boolean where(NoteClause clause, @Nullable Hit last, Hit hit) {
    if (last == null || hit.rule().kind() != EventKind.MOVE) {
      return false;
    }
    boolean joined =
        clause.pieces().subList(last.to(), hit.from()).stream()
            .noneMatch(piece -> piece.isWord("and") || piece.isWord("so"));
    boolean rig = last.rule().kind() == EventKind.CHANGE && hit.words().startsWith("on ");
    boolean bait =
        last.rule().kind() == EventKind.FED
            && !hit.words().matches("(?:mov|switch|swap|back|went|gone|com|came|head|off|rest).*");
    return joined && (rig || bait);
  }

  private static boolean counts(EventKind kind) {
    return kind != EventKind.WEATHER
        && kind != EventKind.CAST
        && kind != EventKind.MOVE
        && kind != EventKind.FED
        && kind != EventKind.INDICATION
        && kind != EventKind.NET
        && kind != EventKind.ALL_IN
        && kind != EventKind.ALL_OUT;
  }

  private static List<NoteDraft> otherPeg(NoteClause clause) {
    if (!NoteRules.CATCHING.matcher(clause.shape()).find()
        || NoteRules.NOT_CATCHING.matcher(clause.shape()).find()
        || NoteRules.PLANNED.matcher(clause.shape()).find()) {
      return List.of();
    }
    NoteDraft draft = new NoteDraft(EventKind.NEIGHBOUR, false, clause.shape(), 0.8);
    draft.pieces.addAll(clause.pieces());
    return List.of(draft);
  }

  /** Returns the piece at which the second event's words begin: after an "and" between, if any. */
  private static int boundary(NoteClause clause, Hit first, Hit second) {
    for (int i = second.from() - 1; i >= first.to(); i--) {
      Piece piece = clause.pieces().get(i);
      if (piece.isWord("and") || piece.isWord("so") || piece.isWord("after")) {
        return i;
      }
    }
    return second.from();
  }

  private static boolean blocked(NoteClause clause, Hit hit) {
    if (NoteRules.PLANNED.matcher(hit.before()).find()
        || NoteRules.PLANNED_AFTER.matcher(hit.after()).find()
        || NoteRules.DENIED.matcher(hit.before()).find()) {
      return true;
    }
    EventKind kind = hit.rule().kind();
    if (kind == EventKind.CAST
        && hit.before().matches(".*\\b(?:every|each|per|last|on(?: the| that)?) (?:\\w+ )?")) {
      return true;
    }
    if (kind == EventKind.ALL_IN && hit.before().endsWith("#w ")) {
      return true;
    }
    if ((kind == EventKind.ALL_IN || kind == EventKind.ALL_OUT)
        && hit.before()
            .matches(".*(?:#d|to|before|after|since|from|till|almost|nearly|minute)(?: the)? ")) {
      return true;
    }
    boolean again = kind == EventKind.BITE || kind == EventKind.LOST;
    if (again && hit.before().matches(".*that 's (?:#n|one) .*")) {
      return true;
    }
    boolean fish = kind == EventKind.LANDED || kind == EventKind.COUNT || kind == EventKind.LOST;
    if (hit.rule().mention() && hit.words().matches("(?:looks?|feels?|sounds?) like .*")) {
      return true;
    }
    boolean clicked = kind == EventKind.COUNT && hit.words().contains("clicker");
    if (fish && !clicked && NoteRules.TOTAL.matcher(clause.shape()).find()) {
      return true;
    }
    boolean feeding = hit.words().equals("feeding");
    return feeding
        && hit.before().matches(".*\\b(?:fish|they|are|they're|#s|been|still|is|'s) (?:\\w+ )?");
  }

  private static double confidence(NoteClause clause, Hit hit) {
    double confidence = hit.rule().confidence();
    if (NoteRules.DOUBT.matcher(clause.shape()).find()) {
      confidence *= 0.6;
    }
    return confidence;
  }

  /** "Five minutes ago" puts the event back by that time. */
  private static long ago(String clause, List<Piece> pieces) {
    if (!clause.contains("#d ago")) {
      return 0;
    }
    return pieces.stream()
        .filter(piece -> piece.is(Kind.DURATION))
        .mapToLong(piece -> Math.round(piece.value() * 1000))
        .findFirst()
        .orElse(0);
  }
}
