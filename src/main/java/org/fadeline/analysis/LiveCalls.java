package org.fadeline.analysis;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.OptionalDouble;
import java.util.TreeMap;
import org.fadeline.analysis.Effort.LineEffort;
import org.fadeline.analysis.Fade.Crossing;
import org.fadeline.stats.FadeOptions;
import org.fadeline.stats.FadePosterior;
import org.fadeline.stats.FadeRecord;
import org.jspecify.annotations.Nullable;

/** When a fade was plain, and when it no longer was, judged afresh at each look. */
final class LiveCalls {
  private final ReviewSettings settings;
  private final LiveTracks tracks;
  private final Map<String, TreeMap<Integer, List<Crossing>>> crossings = new HashMap<>();
  private long before = Long.MIN_VALUE;

  LiveCalls(ReviewSettings settings, LiveTracks tracks) {
    this.settings = settings;
    this.tracks = tracks;
  }

  /**
   * Judges what was fished since the last look, up to the last bait minute that was over: as Review
   * judges it, one minute after the other.
   *
   * @param at the instant of the look
   * @param untilNow effort of the record cut there, its last stay ended there
   * @param record the record so far
   * @return whether a call was made or withdrawn
   */
  boolean look(long at, Effort untilNow, RecordSoFar record) {
    boolean crossed = false;
    boolean over = at >= untilNow.session().match().allOut();
    Grade grade = record.grade();
    for (LineEffort line : untilNow.lines()) {
      Spell last = line.spells().isEmpty() ? null : line.spells().get(line.spells().size() - 1);
      if (last == null || last.span().to() <= before) {
        continue;
      }
      FadeTrack track = tracks.of(untilNow.session(), line, grade);
      if (track.isEmpty() || track.lastSpellIndex() != last.index()) {
        continue;
      }
      boolean on = !over && last.lineId().equals(record.fishing());
      TimeSpan inHand = on ? record.inHand() : null;
      long until = inHand != null && at < inHand.to() ? Math.min(at, inHand.from()) : at;
      int spell = track.record().spells().size() - 1;
      // A count ends its time at once; else the minute still running is not judged.
      int to =
          !on || grade == Grade.COUNTS
              ? track.record().spells().get(spell).to()
              : track.lastBinOver(last, before, until);
      crossed |= to > 0 && judge(at, new Seen(track, spell, to, !on), line, last);
    }
    before = at;
    return crossed;
  }

  /**
   * A track as far as it is seen.
   *
   * @param spell index of its last spell in the track's record
   * @param to bin after the last one seen
   * @param over whether the spell is
   */
  private record Seen(FadeTrack track, int spell, int to, boolean over) {}

  private boolean judge(long at, Seen seen, LineEffort line, Spell spell) {
    FadeOptions options = Fades.options(settings, line.line());
    FadeRecord record = seen.track.record();
    OptionalDouble probability =
        FadePosterior.glance(record, seen.spell, seen.to, seen.over, options);
    if (probability.isEmpty()) {
      return false;
    }
    List<Crossing> ofSpell =
        crossings
            .computeIfAbsent(spell.lineId(), id -> new TreeMap<>())
            .computeIfAbsent(spell.index(), i -> new ArrayList<>());
    boolean called = !ofSpell.isEmpty() && ofSpell.get(ofSpell.size() - 1).up();
    boolean plain = probability.getAsDouble() >= settings.callLevel();
    if (plain == called) {
      return false;
    }
    Fade.@Nullable Moment moment =
        plain
            ? Fades.moment(
                seen.track, FadePosterior.momentSeen(record, seen.spell, seen.to, options))
            : null;
    ofSpell.add(new Crossing(at, plain, moment));
    return true;
  }

  /** Returns the calls on a line so far, as fades of which nothing else is known. */
  List<Fade> of(LineEffort line) {
    List<Fade> fades = new ArrayList<>();
    crossings
        .getOrDefault(line.line().id(), new TreeMap<>())
        .forEach(
            (spell, ofSpell) -> {
              if (spell < line.spells().size() && !ofSpell.isEmpty()) {
                fades.add(
                    new Fade(
                        spell,
                        0,
                        null,
                        new Fade.Call(null, settings.callLevel(), ofSpell),
                        new Fade.Strength(null, null, 1, Fade.Shape.UNCLEAR, 0),
                        ""));
              }
            });
    return fades;
  }
}
