package org.fadeline.analysis.season;

import java.util.Arrays;
import java.util.List;
import org.fadeline.analysis.season.SessionSummary.Behind;
import org.fadeline.analysis.season.SessionSummary.FadeFound;
import org.fadeline.analysis.season.SessionSummary.Hour;
import org.fadeline.analysis.season.SessionSummary.LineSummary;
import org.fadeline.analysis.season.SessionSummary.PastPlain;

/**
 * What every line of every session gave, was fed and how it faded, in columns: entry after entry in
 * the order of the sessions and their lines, so that a filter goes through plain numbers.
 */
final class LineColumns {
  /** First hour fished of each line, and one entry more; then hour by hour. */
  final int[] firstHour;

  final int[] hour;
  final double[] hourMinutes;
  final double[] hourFish;
  final double[] hourGrams;

  /** Of each line. */
  final double[] minutes;

  final int[] fish;
  final double[] grams;
  final int[] feeds;

  /** First fade of each line, and one entry more; then fade by fade. */
  final int[] firstFade;

  final double[] fadeProbability;

  /** When it faded, minutes since all in; NaN where there is no moment. */
  final double[] fadeMinute;

  /** From plain to leaving; the minutes are NaN where there was no such stay. */
  final double[] pastMinutes;

  final int[] pastFish;
  final double[] pastGrams;

  /** How far bites of each line bunch, 0 where not worked out. */
  final double[] departure;

  final int[] pairs;

  /**
   * Evidence at each rate of change, {@link Learned#HAZARDS} entries a line: NaN where the record
   * cannot carry it or it is not worked out.
   */
  final double[] evidence;

  LineColumns(List<SessionSummary> sessions) {
    int lines = 0;
    int hours = 0;
    int fades = 0;
    for (SessionSummary session : sessions) {
      for (LineSummary line : session.lines()) {
        lines++;
        hours += line.hours().size();
        fades += line.behind() == null ? 0 : line.behind().fades().size();
      }
    }
    firstHour = new int[lines + 1];
    hour = new int[hours];
    hourMinutes = new double[hours];
    hourFish = new double[hours];
    hourGrams = new double[hours];
    minutes = new double[lines];
    fish = new int[lines];
    grams = new double[lines];
    feeds = new int[lines];
    firstFade = new int[lines + 1];
    fadeProbability = new double[fades];
    fadeMinute = new double[fades];
    pastMinutes = new double[fades];
    pastFish = new int[fades];
    pastGrams = new double[fades];
    departure = new double[lines];
    pairs = new int[lines];
    evidence = new double[lines * Learned.HAZARDS.size()];
    Arrays.fill(evidence, Double.NaN);
    int at = 0;
    for (SessionSummary session : sessions) {
      for (LineSummary line : session.lines()) {
        fill(at++, line);
      }
    }
  }

  private void fill(int line, LineSummary of) {
    int at = firstHour[line];
    for (Hour one : of.hours()) {
      hour[at] = one.hour();
      hourMinutes[at] = one.fishedMinutes();
      hourFish[at] = one.fish();
      hourGrams[at++] = one.grams();
      minutes[line] += one.fishedMinutes();
      fish[line] += one.fish();
      grams[line] += one.grams();
    }
    firstHour[line + 1] = at;
    feeds[line] = of.feed().feeds();
    firstFade[line + 1] = firstFade[line];
    Behind behind = of.behind();
    if (behind != null) {
      departure[line] = behind.bunching().departure();
      pairs[line] = behind.bunching().pairs();
      behind.fades().forEach(fade -> fill(firstFade[line + 1]++, fade));
      List<Double> known = behind.hazardLogEvidence();
      for (int i = 0; i < known.size(); i++) {
        evidence[line * Learned.HAZARDS.size() + i] = known.get(i);
      }
    }
  }

  private void fill(int at, FadeFound fade) {
    fadeProbability[at] = fade.probability();
    fadeMinute[at] = fade.minute() == null ? Double.NaN : fade.minute();
    PastPlain past = fade.pastPlain();
    if (past == null) {
      pastMinutes[at] = Double.NaN;
    } else {
      pastMinutes[at] = past.minutes();
      pastFish[at] = past.fish();
      pastGrams[at] = past.grams();
    }
  }
}
