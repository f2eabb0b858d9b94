package org.fadeline.demo;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import org.fadeline.demo.DemoPlan.MainFeed;
import org.fadeline.demo.DemoPlan.Stay;
import org.fadeline.demo.DemoPlan.Way;
import org.fadeline.model.Feed;
import org.fadeline.model.Line.Place;
import org.fadeline.model.MatchRules;
import org.fadeline.model.WeatherNote;
import org.jspecify.annotations.Nullable;

/** Short ways to write the waters' tables. */
final class DemoParts {
  private static final double POUND_G = 453.59237;

  private DemoParts() {}

  static Place place(double distanceM, double bearing, double depthM) {
    return new Place(distanceM, null, bearing, depthM);
  }

  static Feed feed(String bait, double amount, Feed.Unit unit, String method) {
    return new Feed(bait, new Feed.Amount(amount, unit), method, null);
  }

  /** Single feeds of one line. */
  static List<MainFeed> feeds(String line, Feed feed, Way way, double... minutes) {
    return Arrays.stream(minutes)
        .mapToObj(minute -> new MainFeed(line, minute, feed, way, null))
        .toList();
  }

  /** A repeated feed of one line. */
  static List<MainFeed> pattern(
      String line, Feed feed, double everySeconds, double from, double until) {
    Feed repeated =
        new Feed(feed.bait(), feed.amount(), feed.method(), new Feed.Pattern(everySeconds, null));
    return List.of(new MainFeed(line, from, repeated, Way.LOOSE, until));
  }

  static Stay stay(String line, double minute, @Nullable String reason) {
    return new Stay(line, minute, reason);
  }

  @SafeVarargs
  static DemoPlan plan(List<Stay> stays, List<MainFeed>... feeds) {
    List<MainFeed> all = new ArrayList<>();
    for (List<MainFeed> some : feeds) {
      all.addAll(some);
    }
    return new DemoPlan(stays, all);
  }

  static WeatherNote weather(
      int minute, double from, int force, double cloud, double air, @Nullable Double water) {
    return new WeatherNote(
        minute * 60_000L, new WeatherNote.Wind(from, force), cloud, air, water, null);
  }

  /** Rules of the invented matches: a limit of so many pounds a net. */
  static MatchRules rules(double limitPounds) {
    return new MatchRules(
        0,
        false,
        false,
        new MatchRules.NetLimit(limitPounds * POUND_G, 0, "a net over the limit counts as nothing"),
        "Invented rules. Five hours. No feeding before all in. One rig in the water at a time; "
            + "no cupping a line while another is fished. Carp and silvers in separate nets. "
            + "Foul-hooked fish do not count.");
  }
}
