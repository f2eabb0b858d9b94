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
import org.jspecify.annotations.Nullable;

/** When a fade was plain, and when it no longer was, judged afresh at each look. */
final class LiveCalls {
  private final ReviewSettings settings;
  private final LiveTracks tracks;
  private final Map<String, TreeMap<Integer, List<Crossing>>> crossings = new HashMap<>();

  LiveCalls(ReviewSettings settings, LiveTracks tracks) {
    this.settings = settings;
    this.tracks = tracks;
  }

  /**
   * Judges the line being fished.
   *
   * @param at the instant of the look
   * @param untilNow effort of the record cut there, its last stay ended there
   * @param grade of the cut record
   * @return whether a call was made or withdrawn
   */
  boolean look(long at, Effort untilNow, Grade grade) {
    for (LineEffort line : untilNow.lines()) {
      Spell last = line.spells().isEmpty() ? null : line.spells().get(line.spells().size() - 1);
      if (last != null && last.span().to() == at) {
        return look(at, last, tracks.of(untilNow.session(), line, grade), line);
      }
    }
    return false;
  }

  private boolean look(long at, Spell spell, FadeTrack track, LineEffort line) {
    if (track.isEmpty() || track.lastSpellIndex() != spell.index()) {
      return false;
    }
    FadeOptions options = Fades.options(settings, line.line());
    OptionalDouble probability = FadePosterior.glance(track.record(), options);
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
            ? FadePosterior.latest(track.record(), options)
                .map(posterior -> Fades.moment(track, posterior.moment()))
                .orElse(null)
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
