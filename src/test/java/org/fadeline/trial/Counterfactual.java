package org.fadeline.trial;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import org.fadeline.analysis.Spell;
import org.fadeline.demo.BiteRate;
import org.fadeline.demo.DemoLine;
import org.fadeline.demo.DemoMatch.Played;
import org.fadeline.demo.DemoWater;
import org.fadeline.model.Feed;
import org.fadeline.model.Session;
import org.fadeline.model.SessionEvent;

/**
 * The truth about a stretch of a simulated match: how many fish another line would have been
 * expected to give, had it been fished instead.
 *
 * <p>The line's true bites per bait hour are integrated over the stretch as they would have been
 * with the line fished from its start: the feed it was really given (and what goes in with each
 * cast), the hour of the match, its condition as rested up to then and falling from then on. Bites
 * become fish with the line's own shares missed and lost and its own handling times.
 */
final class Counterfactual {
  private static final double SECONDS_PER_HOUR = 3600;

  private Counterfactual() {}

  /** Fish landed per fished hour at so many bites per bait hour: a renewal of bait and handling. */
  static double landed(double bites, double missed, double lost, double hand, double lostHand) {
    double busy = missed * 15 + (1 - missed) * ((1 - lost) * hand + lost * lostHand);
    double perFishedHour = bites / (1 + bites * busy / SECONDS_PER_HOUR);
    return perFishedHour * (1 - missed) * (1 - lost);
  }

  /** Expected fish of a line of a match played on given rates, over [from, to), instants. */
  static double onRates(Played played, String line, double from, double to) {
    List<Double> rates = played.bitesPerHour().getOrDefault(line, List.of());
    long allIn = played.session().match().allIn();
    double fish = 0;
    double start = (from - allIn) / 60_000;
    double end = (to - allIn) / 60_000;
    for (double minute = start; minute < end; minute = Math.floor(minute) + 1) {
      double width = Math.min(end, Math.floor(minute) + 1) - minute;
      double bites = rates.get((int) Math.min(rates.size() - 1.0, minute));
      fish += RateMatch.landedPerFishedHour(bites) * width / 60;
    }
    return fish;
  }

  /** Expected fish of a line of an invented water, over [from, to), instants. */
  static double onWater(
      DemoWater water, Session session, List<Spell> spells, String id, double from, double to) {
    DemoLine line = water.line(id);
    BiteRate rate = line.bites();
    long allIn = session.match().allIn();
    double start = (from - allIn) / 60_000;
    double end = (to - allIn) / 60_000;
    double condition = 1;
    for (int minute = 0; minute + 1 <= start; minute++) {
      long at = allIn + minute * 60_000L + 30_000;
      boolean fished =
          spells.stream()
              .anyMatch(s -> s.lineId().equals(id) && s.span().from() <= at && at < s.span().to());
      condition = rate.conditionAfter(condition, 1, fished);
    }
    double[] feeds = feeds(session, line, start, end);
    DemoLine.Catches catches = line.catches();
    double fish = 0;
    double step = 0.5;
    for (double minute = start; minute < end; minute += step) {
      double width = Math.min(step, end - minute);
      int given = 0;
      while (given < feeds.length && feeds[given] <= minute) {
        given++;
      }
      double bites = rate.perHourAt(minute, condition, feeds, given);
      double out = catches.lost() + catches.foul();
      double hand = catches.handSeconds();
      fish += landed(bites, catches.missed(), out, hand, 0.6 * hand) * width / 60;
      condition = rate.conditionAfter(condition, width, true);
    }
    return fish;
  }

  /** The feeds of a line in minutes, ascending, with one at each cast from {@code start} on. */
  private static double[] feeds(Session session, DemoLine line, double start, double end) {
    List<Double> minutes = new ArrayList<>();
    long allIn = session.match().allIn();
    for (SessionEvent event : session.events()) {
      if (event instanceof SessionEvent.Fed fed && line.id().equals(fed.lineId())) {
        double at = (fed.at() - allIn) / 60_000.0;
        minutes.add(at);
        Feed.Pattern pattern = fed.feed().pattern();
        if (pattern != null) {
          Long until = pattern.until();
          double stop = until == null ? 300 : (until - allIn) / 60_000.0;
          double every = pattern.everySeconds() / 60;
          for (double next = at + every; next <= stop; next += every) {
            minutes.add(next);
          }
        }
      }
    }
    if (line.casts().feed() != null) {
      double every = (line.casts().fromSeconds() + line.casts().toSeconds()) / 120;
      for (double next = start; next < end; next += every) {
        minutes.add(next);
      }
    }
    double[] sorted = minutes.stream().mapToDouble(Double::doubleValue).toArray();
    Arrays.sort(sorted);
    return sorted;
  }
}
