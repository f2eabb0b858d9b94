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

/** A cool May water of mixed fish, invented. */
final class WaterB {
  private static final Feed FEEDER = feed("groundbait and chopped worm", 60, Feed.Unit.G, "feeder");
  private static final Feed BALLS = feed("groundbait", 6, Feed.Unit.BALLS, "ball");
  private static final Feed CUP = feed("worm and casters", 150, Feed.Unit.ML, "pot");
  private static final Feed CASTERS = feed("casters", 20, Feed.Unit.PIECES, "hand");
  private static final Feed EDGE = feed("dead maggots", 200, Feed.Unit.ML, "pot");
  private static final Feed BOMB = feed("8 mm pellets", 3, Feed.Unit.POUCHFULS, "catapult");

  private WaterB() {}

  static DemoWater water() {
    return new DemoWater(
        "B",
        // A point at sea, in the Wash: no fishery lies there.
        new Venue("Brackwith Mere", 53.0200, 0.5000),
        new Peg(
            "6",
            95.0,
            0.4,
            List.of(
                new Feature("overhanging willow", 9, 70, 5.0), new Feature("lilies", 7, -60, 4.0))),
        rules(60),
        List.of(feeder(), pole(), caster(), edge(), bomb()),
        new DemoWater.Day(
            "Brackwith Mere, spring round two",
            LocalDateTime.of(2026, 5, 16, 10, 0),
            List.of(
                weather(0, 40, 3, 7, 11, 12.5),
                weather(150, 55, 3, 6, 13.5, 12.9),
                weather(280, 60, 2, 4, 14.5, 13.3))));
  }

  static DemoPlan usualPlan() {
    return plan(
        List.of(
            stay("caster", 0, null),
            stay("feeder", 20, "plan"),
            stay("pole", 60, "dead"),
            stay("bomb", 130, "resting"),
            stay("pole", 150, "plan"),
            stay("feeder", 190, "dead"),
            stay("caster", 225, "dead"),
            stay("edge", 240, "plan")),
        feeds("feeder", FEEDER, Way.WITH_CAST, 18, 20, 22, 24, 26, 28, 35, 45, 55),
        feeds("feeder", FEEDER, Way.WITH_CAST, 188, 195, 205, 215),
        feeds("pole", BALLS, Way.GAP, 30),
        feeds("pole", CUP, Way.GAP, 100, 140, 175),
        feeds("caster", CASTERS, Way.LOOSE, 0, 60, 120, 180, 222),
        feeds("edge", EDGE, Way.GAP, 180, 210, 235, 255, 275),
        feeds("bomb", BOMB, Way.LOOSE, 0));
  }

  private static DemoLine feeder() {
    return new DemoLine(
        new Line(
            "feeder",
            "feeder",
            "feeder",
            "feeder",
            place(32, 6, 2.8),
            new Rig(null, null, 0.22, 0.14, "14", "worm")),
        new BiteRate(
            22, new FeedResponse(6, 10, 90, 0.15), List.of(0.8, 1.0, 0.9, 0.8, 0.8, 0.7), 60, 50),
        new Catches(0.30, 0.08, 0, 70, new FishSize("skimmer", 450, 350)),
        new Casts(150, 420, null));
  }

  private static DemoLine pole() {
    return new DemoLine(
        new Line(
            "pole",
            "pole 11 m",
            "deck",
            "pole",
            place(11, 0, 2.4),
            new Rig(0.75, "12x8", 0.14, 0.12, "16", "worm and caster")),
        new BiteRate(
            40, new FeedResponse(8, 12, 80, 0.10), List.of(0.6, 0.9, 1.0, 0.95, 0.8, 0.7), 50, 40),
        new Catches(0.28, 0.06, 0, 45, new FishSize("skimmer", 260, 160)),
        new Casts(90, 240, null));
  }

  private static DemoLine caster() {
    return new DemoLine(
        new Line(
            "caster",
            "caster 5 m",
            "short line",
            "caster",
            place(5, -15, 1.9),
            new Rig(0.3, "10x10", 0.12, 0.10, "18", "caster")),
        new BiteRate(
            75, new FeedResponse(2, 6, 120, 0.25), List.of(1.0, 0.9, 0.8, 0.8, 0.7, 0.7), 70, 40),
        new Catches(0.35, 0.03, 0, 25, new FishSize("roach", 60, 30)),
        new Casts(45, 120, null));
  }

  private static DemoLine edge() {
    return new DemoLine(
        new Line(
            "edge",
            "edge",
            "edge",
            "edge",
            place(6.5, 72, 0.8),
            new Rig(0.3, "8x9", 0.20, 0.18, "14", "dead maggots")),
        new BiteRate(
            14, new FeedResponse(8, 8, 40, 0.05), List.of(0.05, 0.05, 0.1, 0.4, 0.9, 1.2), 40, 40),
        new Catches(0.30, 0.20, 0.10, 120, new FishSize("carp", 1900, 700)),
        new Casts(120, 300, null));
  }

  private static DemoLine bomb() {
    return new DemoLine(
        new Line(
            "bomb",
            "bomb",
            "bomb",
            "bomb",
            place(38, -20, 2.9),
            new Rig(null, null, 0.22, 0.18, "14", "8 mm pellet")),
        new BiteRate(
            6, new FeedResponse(0, 1, 600, 1), List.of(0.6, 0.7, 0.8, 0.9, 1.0, 1.0), 200, 60),
        new Catches(0.20, 0.12, 0, 110, new FishSize("carp", 1700, 700)),
        new Casts(420, 900, null));
  }
}
