package org.fadeline.analysis;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import org.fadeline.analysis.Course.TurningKind;
import org.fadeline.analysis.Course.TurningPoint;
import org.fadeline.analysis.Effort.LineEffort;
import org.jspecify.annotations.Nullable;

/** Gathers the moments worth seeking to. */
final class TurningPoints {
  /** A spell is not called one of the best on fewer fish than this. */
  private static final int LEAST_FISH_FOR_BEST = 6;

  private static final int MOST_BEST = 2;

  private final Effort effort;
  private final SentenceText words;
  private final Nets nets;
  private final List<TurningPoint> points = new ArrayList<>();

  /**
   * How the nets filled.
   *
   * @param then as could be known at each moment
   * @param byScales by the weigh-in, or null
   * @param error how far estimates were taken to run off
   */
  record Nets(NetCourse then, @Nullable NetCourse byScales, EstimateError error) {}

  TurningPoints(Effort effort, SentenceText words, Nets nets) {
    this.effort = effort;
    this.words = words;
    this.nets = nets;
  }

  List<TurningPoint> gather(List<LineReview> lines) {
    return gather(lines, true);
  }

  /** Leaves out what could only be told of the whole match. */
  List<TurningPoint> knownThen(List<LineReview> lines) {
    return gather(lines, false);
  }

  private List<TurningPoint> gather(List<LineReview> lines, boolean whole) {
    firstBites(lines);
    fades(lines);
    moves();
    if (whole) {
      bestSpells();
    }
    nets();
    points.sort(Comparator.comparingLong(TurningPoint::at));
    return points;
  }

  private void add(
      long at, TurningKind kind, String line, boolean hindsight, String title, String detail) {
    points.add(new TurningPoint(at, kind, line, hindsight, title, detail));
  }

  /** The first bite of each spell that came after a feed, where it is the spot's first. */
  private void firstBites(List<LineReview> lines) {
    for (LineReview line : lines) {
      int lastSpell = -1;
      for (FirstBite.Stretch row : line.firstBite().rows()) {
        if (!row.bite()) {
          continue;
        }
        long at = row.episodeAt() + Math.round(row.exit() * 60_000);
        int spell = spellAt(line, at);
        if (spell == lastSpell) {
          continue;
        }
        lastSpell = spell;
        String since = SentenceText.minutes(row.exit()) + " after feeding";
        String on =
            row.entry() > 0
                ? ", " + SentenceText.minutes(row.exit() - row.entry()) + " after going on it"
                : "";
        add(
            at,
            TurningKind.FIRST_BITE,
            line.line().id(),
            false,
            "First bite on " + words.line(line.line().id()),
            since + on);
      }
    }
  }

  private static int spellAt(LineReview line, long at) {
    int found = -1;
    for (Spell spell : line.spells()) {
      if (spell.span().from() <= at) {
        found = spell.index();
      }
    }
    return found;
  }

  private void fades(List<LineReview> lines) {
    for (LineReview line : lines) {
      String id = line.line().id();
      String name = SentenceText.sentence(words.line(id));
      for (Fade fade : line.fades()) {
        Fade.Moment moment = fade.moment();
        if (moment != null && fade.probability() >= ReviewSettings.MARKED_FROM) {
          add(
              moment.at(),
              TurningKind.FADED,
              id,
              true,
              name + " faded",
              "between "
                  + words.clock(moment.low())
                  + " and "
                  + words.clock(moment.high())
                  + ", "
                  + restsOn(line.spells().get(fade.spell())));
        }
        boolean called = false;
        for (Fade.Crossing crossing : fade.call().crossings()) {
          if (crossing.up()) {
            add(
                crossing.at(),
                TurningKind.PLAIN,
                id,
                false,
                called ? "Fading was plain again" : "Fading was plain",
                name + ", from the bites seen by then");
          } else {
            add(
                crossing.at(),
                TurningKind.WITHDRAWN,
                id,
                false,
                "No longer plain",
                name + " came back: the call is withdrawn");
          }
          called = true;
        }
      }
    }
  }

  private static String restsOn(Spell spell) {
    return "on " + SentenceText.bites(spell.caught().bites());
  }

  private void moves() {
    List<Spell> spells = effort.spells();
    for (int i = 1; i < spells.size(); i++) {
      Spell before = spells.get(i - 1);
      Spell spell = spells.get(i);
      if (spell.lineId().equals(before.lineId())) {
        continue;
      }
      boolean back = spell.index() > 0;
      String title = (back ? "Back to " : "Moved to ") + words.line(spell.lineId());
      String gave =
          words.line(before.lineId())
              + " gave "
              + SentenceText.fish(before.caught().landed())
              + " in "
              + SentenceText.minutes(before.fishedHours() * 60);
      String rested = back ? "rested " + SentenceText.minutes(restedMinutes(spell)) + "; " : "";
      add(spell.span().from(), TurningKind.MOVE, spell.lineId(), false, title, rested + gave);
    }
  }

  private double restedMinutes(Spell spell) {
    LineEffort line = effort.line(spell.lineId()).orElseThrow();
    return (spell.span().from() - line.spells().get(spell.index() - 1).span().to())
        / TimeSpan.MILLIS_PER_MINUTE;
  }

  private void bestSpells() {
    effort.spells().stream()
        .filter(s -> s.caught().landed() >= LEAST_FISH_FOR_BEST && s.fishedHours() > 0)
        .sorted(Comparator.comparingDouble(TurningPoints::worth).reversed())
        .limit(MOST_BEST)
        .forEach(this::addBest);
  }

  /** Weight an hour where there are weights, else fish an hour. */
  private static double worth(Spell spell) {
    Caught caught = spell.caught();
    double value = caught.weightG() > 0 ? caught.weightG() : caught.landed();
    return value / spell.fishedHours();
  }

  private void addBest(Spell spell) {
    LineReview.Rates rates = Rates.ofSpell(effort.line(spell.lineId()).orElseThrow(), spell);
    String rate =
        rates.weight() != null
            ? words.weightRate(rates.weight())
            : rates.fish() == null ? "" : SentenceText.rate(rates.fish());
    add(
        spell.span().from(),
        TurningKind.BEST_SPELL,
        spell.lineId(),
        true,
        "One of the best spells, on " + words.line(spell.lineId()),
        rate
            + ", "
            + SentenceText.fish(spell.caught().landed())
            + " in "
            + SentenceText.minutes(spell.fishedHours() * 60));
  }

  private void nets() {
    NetText net = new NetText(words.units());
    for (NetState near : nets.then().near()) {
      addNet(near, false, "Net " + near.net() + " near its limit", net);
    }
    NetCourse scaled = nets.byScales();
    if (scaled != null) {
      for (NetState near : scaled.near()) {
        addNet(near, true, "By the scales, net " + near.net() + " near its limit", net);
      }
    }
  }

  private void addNet(NetState near, boolean hindsight, String title, NetText net) {
    points.add(
        new TurningPoint(
            near.at(), TurningKind.NET, null, hindsight, title, net.turning(near, nets.error())));
  }
}
