package org.fadeline.report;

import org.fadeline.analysis.FirstBite;
import org.fadeline.analysis.FirstBite.Clock;
import org.fadeline.analysis.ReviewSettings;
import org.fadeline.model.Session;
import tools.jackson.databind.node.ArrayNode;
import tools.jackson.databind.node.ObjectNode;

/** Times to first bite of one line, as JSON. */
final class FirstBiteJson {
  private final Session session;

  FirstBiteJson(Session session) {
    this.session = session;
  }

  /** Returns the times on both clocks, the stretches they rest on and the feed response. */
  ObjectNode of(FirstBite first) {
    ObjectNode node = JsonOut.object();
    figures(node, first);
    node.set("leaving", leaving(first.sinceFeed().leaving()));
    node.set("rows", rows(first.sinceFeed()));
    ObjectNode baitIn = node.putObject("baitIn");
    times(baitIn, first.on(Clock.BAIT_IN));
    baitIn.set("leaving", leaving(first.baitIn().leaving()));
    baitIn.set("rows", rows(first.baitIn()));
    ArrayNode response = node.putArray("feedResponse");
    for (FirstBite.ResponseBin bin : first.feedResponse()) {
      ObjectNode item = response.addObject();
      JsonOut.number(item, "fromMinute", bin.fromMinute());
      JsonOut.number(item, "toMinute", bin.toMinute());
      item.put("bites", bin.bites());
      JsonOut.number(item, "baitMinutes", bin.baitHours() * 60);
      item.set("rate", JsonOut.rate(bin.rate(), "perHour"));
    }
    return node;
  }

  /** Puts the tally, and the median and the curve by minutes since the feed. */
  static void figures(ObjectNode node, FirstBite first) {
    node.put("episodes", first.tally().episodes());
    node.put("bites", first.tally().bites());
    node.put("censored", first.tally().censored());
    node.put("late", first.tally().late());
    node.put("unfished", first.tally().unfished());
    times(node, first.on(Clock.SINCE_FEED));
  }

  private static void times(ObjectNode node, FirstBite.Times times) {
    JsonOut.number(node, "fromMinute", times.fromMinute());
    FirstBite.Median median = times.median();
    JsonOut.number(node, "medianMinutes", median == null ? null : median.minutes());
    JsonOut.number(node, "low", median == null ? null : median.low());
    JsonOut.number(node, "high", median == null ? null : median.high());
    JsonOut.number(node, "level", ReviewSettings.LEVEL);
    ArrayNode curve = node.putArray("curve");
    for (FirstBite.Step step : times.curve()) {
      ObjectNode point = curve.addObject();
      JsonOut.number(point, "minutes", step.minutes());
      point.put("atRisk", step.atRisk());
      point.put("bites", step.bites());
      JsonOut.number(point, "survival", step.survival());
      JsonOut.number(point, "low", step.low());
      JsonOut.number(point, "high", step.high());
    }
  }

  private static ObjectNode leaving(FirstBite.Leaving leaving) {
    ObjectNode node = JsonOut.object();
    JsonOut.number(node, "fromMinute", leaving.fromMinute());
    ArrayNode shares = node.putArray("shares");
    for (FirstBite.LeavingStep step : leaving.steps()) {
      ObjectNode point = shares.addObject();
      JsonOut.number(point, "minutes", step.minutes());
      point.put("atRisk", step.atRisk());
      point.put("bites", step.bites());
      point.put("leavings", step.lefts());
      JsonOut.number(point, "bitten", step.bitten());
      JsonOut.number(point, "low", step.low());
      JsonOut.number(point, "high", step.high());
      JsonOut.number(point, "left", step.left());
    }
    return node;
  }

  private ArrayNode rows(FirstBite.Times times) {
    ArrayNode rows = JsonOut.array();
    for (FirstBite.Stretch row : times.rows()) {
      ObjectNode item = rows.addObject();
      JsonOut.time(item, "fedAt", session, row.episodeAt());
      JsonOut.number(item, "entry", row.entry());
      JsonOut.number(item, "exit", row.exit());
      item.put("bite", row.bite());
      item.put("left", row.end() == FirstBite.End.LEFT);
    }
    return rows;
  }
}
