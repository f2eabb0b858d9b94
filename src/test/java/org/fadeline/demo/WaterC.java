package org.fadeline.demo;

import static org.fadeline.demo.DemoParts.feed;
import static org.fadeline.demo.DemoParts.feeds;
import static org.fadeline.demo.DemoParts.place;
import static org.fadeline.demo.DemoParts.plan;
import static org.fadeline.demo.DemoParts.rules;
import static org.fadeline.demo.DemoParts.stay;
import static org.fadeline.demo.DemoParts.weather;

import java.time.LocalDateTime;
import java.util.List;
import org.fadeline.demo.DemoLine.Casts;
import org.fadeline.demo.DemoLine.Catches;
import org.fadeline.demo.DemoLine.FishSize;
import org.fadeline.demo.DemoPlan.Way;
import org.fadeline.model.Feed;
import org.fadeline.model.Line;
import org.fadeline.model.Line.Rig;
import org.fadeline.model.Peg;
import org.fadeline.model.Peg.Feature;
import org.fadeline.model.Venue;

/** A December water of silvers with a bonus carp, invented. */
final class WaterC {
  private static final Feed SLOP = feed("groundbait slop", 1, Feed.Unit.BALLS, "ball");
  private static final Feed CUP = feed("casters and pinkies", 60, Feed.Unit.ML, "pot");
  private static final Feed WORM = feed("chopped worm", 100, Feed.Unit.ML, "pot");
  private static final Feed EDGE = feed("dead maggots", 100, Feed.Unit.ML, "hand");
  private static final Feed BOMB = feed("8 mm pellets", 6, Feed.Unit.PIECES, "catapult");

  private WaterC() {}

  static DemoWater water() {
    return new DemoWater(
        "C",
        // A point at sea, in the Wash: no fishery lies there.
        new Venue("Ostlerby Cut", 53.0000, 0.4600),
        new Peg("41", 340.0, 1.1, List.of(new Feature("far bank reeds", 30, 0, 20.0))),
        rules(50),
        List.of(whip(), pole(), longLine(), bomb(), edge()),
        new DemoWater.Day(
            "Ostlerby Cut, winter league three",
            LocalDateTime.of(2025, 12, 13, 10, 0),
            List.of(
                weather(0, 315, 2, 8, 4, 5.1),
                weather(150, 320, 3, 7, 5.5, 5.2),
                weather(270, 330, 3, 8, 4.5, 5.1))));
  }

  static DemoPlan usualPlan() {
    return plan(
        List.of(
            stay("whip", 0, null),
            stay("pole", 55, "dead"),
            stay("bomb", 130, "resting"),
            stay("long", 150, "plan"),
            stay("pole", 215, "dead"),
            stay("bomb", 245, "dead"),
            stay("whip", 280, "plan")),
        feeds("whip", SLOP, Way.LOOSE, 0, 30, 270),
        feeds("pole", CUP, Way.GAP, 10, 90, 200),
        feeds("long", WORM, Way.GAP, 60, 120, 175),
        feeds("edge", EDGE, Way.LOOSE, 200),
        feeds("bomb", BOMB, Way.LOOSE, 0));
  }

  private static DemoLine whip() {
    return new DemoLine(
        new Line(
            "whip",
            "whip",
            "whip",
            "whip",
            place(4, -10, 1.5),
            new Rig(0.4, "6x8", 0.12, 0.08, "20", "pinkie")),
        new BiteRate(
            120, new FeedResponse(1, 4, 120, 0.25), List.of(0.9, 1.0, 0.9, 0.7, 0.6, 0.5), 80, 40),
        new Catches(0.35, 0.03, 0, 14, new FishSize("roach", 35, 15)),
        new Casts(20, 60, null));
  }

  private static DemoLine pole() {
    return new DemoLine(
        new Line(
            "pole",
            "pole 13 m",
            "long line",
            "pole",
            place(13, 0, 2.6),
            new Rig(1.0, "16x8", 0.12, 0.09, "18", "caster")),
        new BiteRate(
            45, new FeedResponse(5, 10, 90, 0.10), List.of(0.7, 1.0, 1.0, 0.9, 0.8, 0.7), 60, 40),
        new Catches(0.30, 0.05, 0, 45, new FishSize("skimmer", 160, 110)),
        new Casts(90, 240, null));
  }

  private static DemoLine longLine() {
    return new DemoLine(
        new Line(
            "long",
            "long 14.5 m",
            "long line",
            "long",
            place(14.5, 14, 2.7),
            new Rig(1.0, "16x8", 0.14, 0.10, "18", "worm")),
        new BiteRate(
            30, new FeedResponse(6, 12, 100, 0.10), List.of(0.5, 0.8, 1.0, 1.0, 0.9, 0.8), 70, 40),
        new Catches(0.30, 0.06, 0, 55, new FishSize("skimmer", 320, 180)),
        new Casts(120, 300, null));
  }

  private static DemoLine bomb() {
    return new DemoLine(
        new Line(
            "bomb",
            "bomb",
            "bomb",
            "bomb",
            place(20, -6, 2.2),
            new Rig(null, null, 0.18, 0.15, "16", "8 mm pellet")),
        new BiteRate(
            4, new FeedResponse(0, 1, 600, 1), List.of(0.4, 0.6, 0.9, 1.0, 1.0, 0.8), 200, 60),
        new Catches(0.20, 0.10, 0, 150, new FishSize("carp", 2200, 900)),
        new Casts(600, 1200, null));
  }

  private static DemoLine edge() {
    return new DemoLine(
        new Line(
            "edge",
            "edge",
            "edge",
            "edge",
            place(6.5, 78, 0.9),
            new Rig(0.3, "8x9", 0.18, 0.16, "16", "dead maggots")),
        new BiteRate(
            5, new FeedResponse(10, 10, 60, 0.05), List.of(0.02, 0.05, 0.1, 0.3, 0.8, 1.0), 60, 60),
        new Catches(0.25, 0.15, 0.10, 120, new FishSize("carp", 1800, 700)),
        new Casts(120, 300, null));
  }
}
