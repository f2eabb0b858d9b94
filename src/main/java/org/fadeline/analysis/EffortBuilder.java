package org.fadeline.analysis;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import org.fadeline.analysis.Effort.Unassigned;
import org.fadeline.model.EventKind;
import org.fadeline.model.Fish;
import org.fadeline.model.Line;
import org.fadeline.model.Session;
import org.fadeline.model.SessionEvent;
import org.fadeline.model.UnloggedFish;
import org.jspecify.annotations.Nullable;

/**
 * Reads the log once, in order, and cuts it into spells. What is known so far can be asked for at
 * any time from all in on, and reading then goes on.
 */
final class EffortBuilder {
  /** A rig out for at most this long does not end a spell. */
  static final long SHORT_OFF_MILLIS = 600_000;

  private final Session session;
  private final Map<String, LineMarks> lines = new LinkedHashMap<>();
  private final Map<String, Integer> orders = new HashMap<>();
  private final List<Unassigned> unassigned = new ArrayList<>();
  private final RecordWarnings warnings = new RecordWarnings();

  private final boolean counts;
  private final UnloggedFish unlogged;

  private @Nullable SpellDraft current;
  private long offSince = -1;
  private SessionEvent.@Nullable Cast castBeforeAllIn;
  private @Nullable SpellDraft atWhistle;
  private boolean over;

  EffortBuilder(Session session, HandlingTimes handling) {
    this(session, handling, RecordGrade.of(session) == Grade.COUNTS);
  }

  /**
   * @param session whose match and lines hold; its events are read one by one
   * @param counts whether what is read is a record of clicker counts
   */
  EffortBuilder(Session session, HandlingTimes handling, boolean counts) {
    this.session = session;
    this.counts = counts;
    this.unlogged = new UnloggedFish(session.match().rules());
    for (Line line : session.lines()) {
      // A count dates many fish at one report: no time can be taken off where they came.
      double millis = counts ? 0 : handling.millis(line.kind());
      boolean foulCounts = session.match().rules().foulHookedCounts();
      lines.put(line.id(), new LineMarks(line, foulCounts, millis, orders));
    }
  }

  Effort build() {
    session.events().forEach(this::read);
    openAtAllIn();
    if (!fished()) {
      warnings.forgetCounts();
      new CountSpells(session).fill(lines);
    }
    return effort(session, session.match().allOut());
  }

  /** Whether what is read is a record of clicker counts. */
  boolean counts() {
    return counts;
  }

  /** Whether anything was in the water. */
  boolean fished() {
    return lines.values().stream().anyMatch(line -> !line.drafts().isEmpty());
  }

  /** Takes in the next event of the log. */
  void read(SessionEvent event) {
    orders.putIfAbsent(event.id(), orders.size());
    if (event.at() > session.match().allOut() && !over) {
      closeAtAllOut();
      over = true;
    }
    if (event.at() >= session.match().allIn()) {
      openAtAllIn();
    }
    if (over) {
      takeAfterAllOut(event);
    } else {
      take(event);
    }
  }

  /**
   * Returns the effort of what was read, no earlier than all in. Reading can go on afterwards.
   *
   * @param cut the record that was read
   * @param end when a stay that is still on ends, as far as is known
   */
  Effort effort(Session cut, long end) {
    openAtAllIn();
    SpellDraft open = current;
    if (open != null) {
      open.endAt(offSince >= 0 ? offSince : end);
    }
    return new Effort(
        cut, lines.values().stream().map(LineMarks::build).toList(), unassigned, warnings.list());
  }

  /** The line being fished, or null. */
  @Nullable String fishing() {
    return current == null ? null : current.lineId();
  }

  /** The time that a fish now in hand takes at the longest, from the hook on, or null. */
  @Nullable TimeSpan inHand() {
    LineMarks line = current == null ? null : lines.get(current.lineId());
    return line == null ? null : line.inHand();
  }

  private void take(SessionEvent event) {
    unlogged.see(event);
    switch (event.kind().group()) {
      case WATER -> takeWater(event);
      case MOVE -> takeMove(event);
      case COUNT -> takeCount((SessionEvent.Count) event);
      default -> {}
    }
  }

  private void takeMove(SessionEvent event) {
    if (event.kind() == EventKind.RESUMED) {
      return;
    }
    castBeforeAllIn = null;
    SpellDraft spell = current;
    if (spell == null) {
      return;
    }
    if (event.lineId() != null && !event.lineId().equals(spell.lineId())) {
      warnings.otherLineLeft(event);
    }
    if (event.kind() != EventKind.OFF) {
      close(spell, event.at());
    } else if (offSince < 0) {
      offSince = event.at();
    }
  }

  /** A bait that went in just before all in, and did not come out again, fishes from all in on. */
  private void openAtAllIn() {
    SessionEvent.Cast cast = castBeforeAllIn;
    castBeforeAllIn = null;
    String line = cast == null ? null : lineOf(cast);
    if (cast != null && line != null) {
      open(line, session.match().allIn()).add(cast);
    }
  }

  /**
   * On a record of counts the fish not logged one by one are dated at the report; a count never
   * starts or ends a spell.
   */
  private void takeCount(SessionEvent.Count count) {
    if (!counts) {
      return;
    }
    Fish more = unlogged.of(count);
    if (more == null) {
      return;
    }
    String line = lineOf(count);
    LineMarks ofLine = line == null ? null : lines.get(line);
    if (ofLine == null || ofLine.drafts().isEmpty()) {
      warnings.countWithoutSpell(count);
    } else {
      SessionEvent.Landed landed = new SessionEvent.Landed(count.stamp(), more);
      ofLine.drafts().get(ofLine.drafts().size() - 1).add(landed);
    }
  }

  private void takeWater(SessionEvent event) {
    long early = session.match().allIn() - event.at();
    if (early > 0) {
      boolean cast = event instanceof SessionEvent.Cast && early <= SHORT_OFF_MILLIS;
      castBeforeAllIn = cast ? (SessionEvent.Cast) event : null;
      if (cast) {
        warnings.castBeforeAllIn(event);
      } else {
        warnings.beforeAllIn(event);
      }
      return;
    }
    String line = lineOf(event);
    if (line == null) {
      warnings.noLine(event);
      return;
    }
    SpellDraft spell = current;
    if (spell != null && spell.lineId().equals(line)) {
      if (offSince >= 0) {
        if (event.at() - offSince <= SHORT_OFF_MILLIS) {
          spell.addOffGap(offSince, event.at());
          offSince = -1;
        } else {
          close(spell, event.at());
          spell = open(line, event.at());
        }
      }
    } else {
      if (spell != null) {
        leaveFor(spell, line, event);
      }
      spell = open(line, event.at());
    }
    spell.add(event);
  }

  /** Ends a spell at the first sign of another line. */
  private void leaveFor(SpellDraft spell, String line, SessionEvent event) {
    if (offSince < 0 && event.kind() != EventKind.CAST) {
      TimeSpan between = new TimeSpan(spell.lastWater(), event.at());
      if (between.millis() > 0) {
        unassigned.add(new Unassigned(between, spell.lineId(), line));
        warnings.unassigned(between);
      }
      close(spell, spell.lastWater());
    } else {
      close(spell, event.at());
    }
  }

  private @Nullable String lineOf(SessionEvent event) {
    String id = event.lineId();
    if (id != null) {
      return lines.containsKey(id) ? id : null;
    }
    return current == null ? null : current.lineId();
  }

  private SpellDraft open(String line, long at) {
    SpellDraft spell = new SpellDraft(line, at);
    Objects.requireNonNull(lines.get(line)).drafts().add(spell);
    current = spell;
    offSince = -1;
    return spell;
  }

  /** Ends a spell at an instant, or where the rig came out before it. */
  private void close(SpellDraft spell, long at) {
    spell.endAt(offSince >= 0 ? offSince : at);
    current = null;
    offSince = -1;
  }

  private void closeAtAllOut() {
    if (current != null) {
      atWhistle = offSince < 0 ? current : null;
      close(current, session.match().allOut());
    }
  }

  /** A fish being played at the whistle joins the last spell where the match counts it. */
  private void takeAfterAllOut(SessionEvent event) {
    EventKind kind = event.kind();
    if (kind.group() != EventKind.Group.WATER) {
      return;
    }
    SpellDraft spell = atWhistle;
    double extra = session.match().rules().playingAtWhistleMinutes();
    boolean inTime = event.at() <= session.match().allOut() + Math.round(extra * 60_000);
    boolean sameLine =
        spell != null && (event.lineId() == null || event.lineId().equals(spell.lineId()));
    if (spell != null && kind.isOutcome() && inTime && sameLine) {
      spell.add(event);
      atWhistle = null;
    } else {
      warnings.afterAllOut(event);
    }
  }
}
