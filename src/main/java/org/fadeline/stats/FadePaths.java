package org.fadeline.stats;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;

/**
 * Histories drawn from the exact posterior of the steps before a last change, kept by prior mean
 * and place of the change: given the change, they do not depend on what came after it, so every
 * minute looked at shares them. Not safe for use by several threads.
 */
final class FadePaths {
  private final FadeGeometry geometry;
  private final FadeRecord.Spell spell;
  private final ChangePointSampler[] samplers;
  private final Cell[][] cells;
  private final long seed;

  // Scratch of the history being drawn: segments from the newest to the oldest.
  private int[] starts = new int[8];
  private double[] rates = new double[8];
  private final double[] integral;
  private int[] moments = new int[16];
  private double[] levels = new double[16];

  FadePaths(
      FadeGeometry geometry, FadeRecord.Spell spell, ChangePointSampler[] samplers, long seed) {
    this.geometry = geometry;
    this.spell = spell;
    this.samplers = samplers;
    this.seed = seed;
    int n = geometry.record.size();
    cells = new Cell[samplers.length][n + 1];
    integral = new double[n + 1];
  }

  private static final class Cell {
    final List<FadePath> paths = new ArrayList<>(4);
    final ChangePointRandom random;

    Cell(ChangePointRandom random) {
      this.random = random;
    }
  }

  /**
   * The {@code index}-th history before a change at {@code change} under prior mean {@code scale}.
   */
  FadePath get(int scale, int change, int index) {
    Cell cell = cells[scale][change];
    if (cell == null) {
      cell = new Cell(ChangePointRandom.forCell(seed, scale, change));
      cells[scale][change] = cell;
    }
    while (cell.paths.size() <= index) {
      int segments = draw(samplers[scale], cell.random, change, 0);
      cell.paths.add(boilDown(change, segments));
    }
    return cell.paths.get(index);
  }

  /**
   * A history of all bins before the spell, its last segment from {@code lastStart} on, as what a
   * decline afresh in the spell needs of it.
   */
  FadePrefix prefix(int scale, int lastStart, ChangePointRandom random) {
    int end = spell.from();
    starts[0] = lastStart;
    rates[0] = samplers[scale].rate(random, lastStart, end);
    int segments = draw(samplers[scale], random, lastStart, 1);
    FadePath path = boilDown(end, segments);
    double going = 0;
    for (int e = geometry.firstGoing; e <= end; e++) {
      going = Math.max(going, geometry.meanBefore(integral, e));
    }
    double[] tails = new double[geometry.record.size() - end + 1];
    for (int e = Math.max(end, geometry.firstWindow); e < geometry.record.size(); e++) {
      if (geometry.windowBin(e) >= end) {
        break;
      }
      tails[e - end] = integral[end] - geometry.windowStart(integral, e);
    }
    return new FadePrefix(path.before(), going, integral[end], tails);
  }

  private int draw(ChangePointSampler sampler, ChangePointRandom random, int change, int drawn) {
    int end = change;
    int k = drawn;
    while (end > 0) {
      if (k == starts.length) {
        starts = Arrays.copyOf(starts, 2 * k);
        rates = Arrays.copyOf(rates, 2 * k);
      }
      int start = sampler.start(random, end);
      starts[k] = start;
      rates[k] = sampler.rate(random, start, end);
      end = start;
      k++;
    }
    return k;
  }

  private FadePath boilDown(int change, int segments) {
    integrate(change, segments);
    double share = geometry.share;
    double hour = FadeOptions.GOING_RATE_MINUTES;
    double changeAt = geometry.edge(change);
    double upToChange = integral[change];
    double going = 0;
    double before = 0;
    double best = 0;
    int found = 0;
    int segment = segments - 1;
    double[] highestAfter = highestAfter(segments);
    int end = Math.min(spell.to(), geometry.record.size());
    for (int i = geometry.firstGoing; i < end; i++) {
      double at = geometry.edge(i);
      double run = at - changeAt;
      if (run >= hour && i > change) {
        break;
      }
      double mean;
      if (run <= 0) {
        mean = geometry.meanBefore(integral, i);
      } else {
        double start = i < geometry.firstWindow ? 0 : geometry.windowStart(integral, i);
        mean = (upToChange - start) / (Math.min(at, hour) - share * run);
      }
      going = Math.max(going, mean);
      double level = share * going;
      if (i < geometry.firstMoment || level <= best) {
        continue;
      }
      if (i < change) {
        while (segment > 0 && starts[segment - 1] <= i) {
          segment--;
        }
        if (highestAfter[segment] > level) {
          continue;
        }
      }
      best = level;
      if (i < spell.from()) {
        before = level;
      } else {
        if (found == moments.length) {
          moments = Arrays.copyOf(moments, 2 * found);
          levels = Arrays.copyOf(levels, 2 * found);
        }
        moments[found] = i;
        levels[found] = level;
        found++;
      }
    }
    double[] between = new double[found];
    for (int k = 0; k < found; k++) {
      between[k] = moments[k] < change ? upToChange - integral[moments[k]] : 0;
    }
    return new FadePath(
        change, before, Arrays.copyOf(moments, found), Arrays.copyOf(levels, found), between);
  }

  // Rates here are per hour and widths minutes; only ratios of the two are used.
  private void integrate(int change, int segments) {
    int end;
    for (int k = segments - 1; k >= 0; k--) {
      end = k == 0 ? change : starts[k - 1];
      double rate = rates[k];
      if (geometry.record.even()) {
        for (int i = starts[k]; i < end; i++) {
          integral[i + 1] = integral[i] + rate;
        }
      } else {
        for (int i = starts[k]; i < end; i++) {
          integral[i + 1] = integral[i] + rate * (geometry.edge(i + 1) - geometry.edge(i));
        }
      }
    }
  }

  private double[] highestAfter(int segments) {
    double[] highest = new double[segments];
    double top = 0;
    for (int k = 0; k < segments; k++) {
      top = Math.max(top, rates[k]);
      highest[k] = top;
    }
    return highest;
  }
}
