package org.fadeline.demo;

import static org.fadeline.demo.DemoParts.feed;
import static org.fadeline.demo.DemoParts.feeds;
import static org.fadeline.demo.DemoParts.pattern;
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

/** A hot August carp water, invented. */
final class WaterA {
  private static final Feed SIX_MM = feed("6 mm pellets", 7, Feed.Unit.PIECES, "catapult");
  private static final Feed POT = feed("4 mm pellets", 200, Feed.Unit.ML, "pot");
  private static final Feed EDGE_POT =
      feed("groundbait and dead maggots", 250, Feed.Unit.ML, "pot");
  private static final Feed POUCHFULS = feed("8 mm pellets", 3, Feed.Unit.POUCHFULS, "catapult");

  private WaterA() {}

  static DemoWater water() {
    return new DemoWater(
        "A",
        // A point at sea, in the Wash: no fishery lies there, and the sun stands as over England.
        new Venue("Quillthorn Water", 52.9700, 0.4200),
        new Peg(
            "17",
            200.0,
            0.6,
            List.of(
                new Feature("reeds", 4, -80, 3.0),
                new Feature("empty platform", 5, 82, 2.0),
                new Feature("island", 34, 5, 18.0))),
        rules(50),
        List.of(shortLine(), shallow(), leftEdge(), rightEdge(), waggler()),
        firstDay());
  }

  static DemoWater.Day firstDay() {
    return new DemoWater.Day(
        "Quillthorn Water, first August open",
        LocalDateTime.of(2026, 8, 8, 10, 0),
        List.of(
            weather(0, 225, 2, 2, 21, 22.4),
            weather(120, 235, 2, 1, 25.5, 23.1),
            weather(240, 240, 3, 3, 26.5, 23.8)));
  }

  static DemoWater.Day secondDay() {
    return new DemoWater.Day(
        "Quillthorn Water, second August open",
        LocalDateTime.of(2026, 8, 22, 10, 0),
        List.of(
            weather(0, 280, 3, 5, 19, 21.5),
            weather(150, 285, 4, 4, 22, 21.9),
            weather(270, 290, 3, 6, 21.5, 22.0)));
  }

  static DemoPlan firstPlan() {
    return plan(
        List.of(
            stay("short", 0, null),
            stay("shallow", 25, "plan"),
            stay("waggler", 115, "dead"),
            stay("shallow", 150, "resting"),
            stay("short", 175, "dead"),
            stay("left", 190, "plan"),
            stay("right", 240, "dead"),
            stay("left", 265, "resting")),
        feeds("short", POT, Way.GAP, 0, 150, 168),
        pattern("shallow", SIX_MM, 40, 5, 115),
        pattern("shallow", SIX_MM, 40, 150, 175),
        feeds("left", EDGE_POT, Way.GAP, 120, 150, 175, 205, 225, 255, 280),
        feeds("right", EDGE_POT, Way.GAP, 120, 150, 190, 225, 250),
        feeds("waggler", POUCHFULS, Way.LOOSE, 85));
  }

  /** Other decisions: a longer start on the short line, less shallow, the right edge first. */
  static DemoPlan secondPlan() {
    return plan(
        List.of(
            stay("short", 0, null),
            stay("waggler", 45, "plan"),
            stay("shallow", 90, "dead"),
            stay("short", 140, "resting"),
            stay("right", 180, "plan"),
            stay("shallow", 215, "dead"),
            stay("left", 235, "plan"),
            stay("right", 275, "neighbour")),
        feeds("short", POT, Way.GAP, 0, 20, 120, 160),
        feeds("waggler", POUCHFULS, Way.LOOSE, 15, 30),
        pattern("shallow", SIX_MM, 40, 60, 140),
        pattern("shallow", SIX_MM, 40, 200, 235),
        feeds("left", EDGE_POT, Way.GAP, 140, 180, 215, 235, 255, 275),
        feeds("right", EDGE_POT, Way.GAP, 140, 170, 195, 235, 260, 285));
  }

  private static DemoLine shortLine() {
    return new DemoLine(
        new Line(
            "short",
            "short",
            "short line",
            "short",
            new Line.Place(5.0, "top kit + 2", -8.0, 1.7),
            new Rig(0.4, "6x8", 0.17, 0.15, "16", "6 mm pellet")),
        new BiteRate(
            32, new FeedResponse(2, 6, 60, 0.10), List.of(1.0, 0.8, 0.7, 0.7, 0.8, 0.9), 35, 35),
        new Catches(0.25, 0.10, 0, 60, new FishSize("carp", 1100, 450)),
        new Casts(60, 180, null));
  }

  private static DemoLine shallow() {
    return new DemoLine(
        new Line(
            "shallow",
            "shallow",
            "shallow",
            "shallow",
            place(14.5, 4, 0.5),
            new Rig(0.1, "2x9", 0.19, 0.17, "16", "banded pellet")),
        new BiteRate(
            45, new FeedResponse(3, 8, 240, 0.15), List.of(0.9, 1.0, 0.9, 0.75, 0.6, 0.5), 55, 45),
        new Catches(0.30, 0.15, 0, 75, new FishSize("carp", 1400, 450)),
        new Casts(20, 60, null));
  }

  private static DemoLine leftEdge() {
    return new DemoLine(
        new Line(
            "left",
            "left edge",
            "edge",
            "left",
            place(5.5, -82, 0.6),
            new Rig(0.2, "4x9", 0.21, 0.19, "14", "dead maggots")),
        new BiteRate(
            50, new FeedResponse(6, 6, 30, 0.05), List.of(0.05, 0.1, 0.3, 0.6, 1.0, 1.1), 30, 25),
        new Catches(0.30, 0.18, 0.10, 100, new FishSize("carp", 2400, 800)),
        new Casts(120, 300, null));
  }

  private static DemoLine rightEdge() {
    return new DemoLine(
        new Line(
            "right",
            "right edge",
            "edge",
            "right",
            place(6.5, 80, 0.7),
            new Rig(0.2, "4x9", 0.21, 0.19, "14", "dead maggots")),
        new BiteRate(
            40, new FeedResponse(6, 6, 30, 0.05), List.of(0.05, 0.1, 0.2, 0.5, 0.9, 1.0), 30, 25),
        new Catches(0.30, 0.18, 0.10, 100, new FishSize("carp", 2200, 800)),
        new Casts(120, 300, null));
  }

  private static DemoLine waggler() {
    return new DemoLine(
        new Line(
            "waggler",
            "waggler",
            "waggler",
            "waggler",
            place(27, -12, 0.9),
            new Rig(5.0, null, 0.20, 0.18, "14", "8 mm pellet")),
        new BiteRate(
            30, new FeedResponse(4, 10, 240, 0.15), List.of(0.7, 0.9, 1.0, 0.9, 0.7, 0.5), 60, 45),
        new Catches(0.30, 0.12, 0, 110, new FishSize("carp", 1600, 500)),
        new Casts(45, 120, POUCHFULS));
  }
}
