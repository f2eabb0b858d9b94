package org.fadeline.figure;

import java.awt.geom.Rectangle2D;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import org.fadeline.analysis.Course.RollingPoint;
import org.fadeline.analysis.Fade;
import org.fadeline.analysis.Rate;
import org.fadeline.analysis.ReviewSettings;
import org.fadeline.analysis.Spell;
import org.fadeline.model.SessionEvent;

/** Finds what lies under a point of a timeline, as far as it is known. */
final class TimelineHits {
  /** How far from a mark it still is picked, pixels. */
  private static final double REACH = 7;

  /** How far right of its instant a mark may reach, pixels. */
  private static final double WIDEST = 10;

  private final TimelineLayout layout;
  private final Knowledge knowledge;
  private final MarkWords words;

  TimelineHits(TimelineLayout layout, Knowledge knowledge) {
    this.layout = layout;
    this.knowledge = knowledge;
    this.words = new MarkWords(layout.words, knowledge);
  }

  Optional<Hit> at(double x, double y) {
    if (layout.aroundStrip().contains(x, y)) {
      return nearest(around(x), x, y).map(mark -> words.of(mark, null));
    }
    TimelineLayout.Lane lane = layout.laneAt(y).orElse(null);
    if (lane == null) {
      return Optional.empty();
    }
    LaneRecord record = layout.record(lane);
    if (!lane.plot().contains(x, y)) {
      return Optional.of(lineHit(record));
    }
    Optional<MarkPlaces.Mark> mark = nearest(marks(lane, record, x), x, y);
    if (mark.isPresent()) {
      return mark.map(m -> words.of(m, record));
    }
    long instant = layout.instantAt(x);
    if (!knowledge.knows(instant)) {
      return Optional.empty();
    }
    boolean aboveRate = y < lane.rate().getY();
    return Optional.of(
        fadeAt(record, x)
            .or(() -> aboveRate ? Optional.empty() : rateAt(record, instant))
            .or(() -> spellAt(record, instant))
            .orElseGet(() -> lineHit(record)));
  }

  List<String> eventsIn(Rectangle2D area) {
    List<SessionEvent> found = new ArrayList<>();
    long from = layout.instantAt(area.getMinX());
    long to = Math.min(layout.instantAt(area.getMaxX()), knowledge.until(Long.MAX_VALUE));
    for (TimelineLayout.Lane lane : layout.lanes()) {
      LaneRecord record = layout.record(lane);
      if (to >= from && area.intersects(lane.plot())) {
        found.addAll(record.marks.slice(from, to));
        found.addAll(record.feeds.slice(from, to));
      }
    }
    return found.stream()
        .sorted(Comparator.comparingLong(SessionEvent::at))
        .map(SessionEvent::id)
        .toList();
  }

  /** What is drawn near an x, later ones over earlier ones. */
  private List<MarkPlaces.Mark> marks(TimelineLayout.Lane lane, LaneRecord record, double x) {
    long from = from(x);
    long to = until(x);
    if (to < from) {
      return List.of();
    }
    MarkPlaces places = new MarkPlaces(layout, lane, record);
    List<MarkPlaces.Mark> marks = new ArrayList<>(places.feeds(from, to));
    marks.addAll(places.marks(from, to));
    return marks;
  }

  private List<MarkPlaces.Mark> around(double x) {
    long from = from(x);
    long to = until(x);
    return to < from
        ? List.of()
        : layout.figure.shared().lanes().around().slice(from, to).stream()
            .map(e -> MarkPlaces.around(layout, e))
            .toList();
  }

  /** The first instant whose mark may lie at an x. */
  private long from(double x) {
    return Math.max(layout.axis.from(), layout.instantAt(x - REACH - WIDEST));
  }

  /** The last instant whose mark may lie at an x: marks stand to the right of theirs. */
  private long until(double x) {
    return Math.min(
        layout.instantAt(x + REACH) + MarkPlaces.stepMillis(layout.axis),
        knowledge.until(layout.axis.to()));
  }

  /**
   * Returns the mark under a point, of several the one drawn on top; where there is none, the
   * nearest within reach in both directions.
   */
  private static Optional<MarkPlaces.Mark> nearest(
      List<MarkPlaces.Mark> marks, double x, double y) {
    MarkPlaces.Mark nearest = null;
    double least = REACH;
    for (MarkPlaces.Mark mark : marks) {
      double distance = distance(mark, x, y);
      if (distance <= least) {
        nearest = mark;
        least = distance;
      }
    }
    return Optional.ofNullable(nearest);
  }

  private static double distance(MarkPlaces.Mark mark, double x, double y) {
    // Half a pixel on each side: thin ticks lie between whole pixels.
    if (mark.shape().intersects(x - 0.5, y - 0.5, 1, 1)) {
      return 0;
    }
    Rectangle2D box = mark.shape().getBounds2D();
    double dx = Math.max(0, Math.max(box.getMinX() - x, x - box.getMaxX()));
    double dy = Math.max(0, Math.max(box.getMinY() - y, y - box.getMaxY()));
    // In the corner of a round mark the pointer is beside it, not on it.
    return Math.max(0.5, Math.hypot(dx, dy));
  }

  private Optional<Hit> fadeAt(LaneRecord record, double x) {
    for (Fade fade : record.review.fades()) {
      Fade.Moment moment = fade.moment();
      Long plain = fade.call().plainAt();
      if (knowledge.isHindsight()) {
        boolean drawn = fade.probability() >= ReviewSettings.MARKED_FROM;
        boolean near =
            (moment != null && Math.abs(layout.xOf(moment.at()) - x) <= REACH)
                || (plain != null && Math.abs(layout.xOf(plain) - x) <= REACH);
        if (drawn && near && moment != null) {
          return Optional.of(
              new Hit(
                  Hit.Kind.FADE,
                  record.id(),
                  List.of(),
                  record.id(),
                  moment.at(),
                  FigureText.capital(fade.verdict()),
                  fadeRows(fade)));
        }
        continue;
      }
      for (Fade.Crossing crossing : fade.call().crossings()) {
        if (knowledge.knows(crossing.at()) && Math.abs(layout.xOf(crossing.at()) - x) <= REACH) {
          return Optional.of(
              new Hit(
                  Hit.Kind.FADE,
                  record.id(),
                  List.of(),
                  record.id(),
                  crossing.at(),
                  crossing.up() ? "Fading was plain" : "The call was withdrawn",
                  List.of("by " + layout.words.clock(crossing.at()) + ", from the bites so far")));
        }
      }
    }
    return Optional.empty();
  }

  private List<String> fadeRows(Fade fade) {
    List<String> rows = new ArrayList<>();
    Fade.Strength strength = fade.strength();
    if (strength.before() != null && strength.after() != null) {
      rows.add(
          "from "
              + FigureText.number(strength.before())
              + " to "
              + FigureText.number(strength.after())
              + " bites an hour of bait time");
    }
    rows.add(
        String.format(
            Locale.ROOT,
            "probability %.2f, rests on %s of bait time after it",
            fade.probability(),
            FigureText.minutes(strength.baitMinutesAfter())));
    Long plain = fade.call().plainAt();
    rows.add(
        plain == null
            ? "not plain before leaving"
            : "plain by " + layout.words.clock(plain) + " from what had been seen");
    if (strength.bunching() > 1.05) {
      rows.add("allowing for bunching (×" + FigureText.number(strength.bunching()) + ")");
    }
    return rows;
  }

  private Optional<Hit> rateAt(LaneRecord record, long instant) {
    RollingPoint point = record.sight(knowledge).pointAt(instant);
    if (point == null || !knowledge.knows(point.at())) {
      return Optional.empty();
    }
    List<String> rows = new ArrayList<>();
    Rate weight = point.weight();
    if (weight != null) {
      rows.add(layout.words.weightPerHour(weight));
    }
    Rate fish = point.fishWide() == null ? point.fish() : point.fishWide();
    if (fish != null) {
      rows.add(
          FigureText.number(fish.perHour())
              + " fish an hour ("
              + FigureText.number(fish.low())
              + "–"
              + FigureText.number(fish.high())
              + ")");
    }
    rows.add(
        FigureText.fish(point.caught().landed())
            + " in "
            + FigureText.minutes(point.fishedMinutes())
            + " fished");
    return Optional.of(
        new Hit(
            Hit.Kind.RATE,
            record.id(),
            List.of(),
            record.id(),
            point.at(),
            record.review.line().name() + " at " + layout.words.clock(point.at()),
            rows));
  }

  private Optional<Hit> spellAt(LaneRecord record, long instant) {
    Spell spell = record.spellAt(instant, knowledge);
    if (spell == null) {
      return Optional.empty();
    }
    String title =
        record.review.line().name()
            + " from "
            + layout.words.clock(spell.span().from())
            + (knowledge.knows(spell.span().to())
                ? " to " + layout.words.clock(spell.span().to())
                : "");
    List<String> rows =
        knowledge.knows(spell.span().to())
            ? List.of(
                layout.words.weight(spell.caught().weightG())
                    + ", "
                    + FigureText.fish(spell.caught().landed())
                    + " in "
                    + FigureText.minutes(spell.fishedHours() * 60)
                    + " fished",
                FigureText.bites(spell.caught().bites()) + ", " + spell.caught().lost() + " lost")
            : List.of("still being fished");
    return Optional.of(
        new Hit(
            Hit.Kind.SPELL, record.id(), List.of(), record.id(), spell.span().from(), title, rows));
  }

  private Hit lineHit(LaneRecord record) {
    int lane = layout.figure.view().lanes().indexOf(record.id());
    List<List<String>> figures = layout.figures(knowledge);
    return new Hit(
        Hit.Kind.LINE,
        record.id(),
        List.of(),
        record.id(),
        layout.figure.view().from(),
        layout.words.line(record.review.line()),
        lane >= 0 && lane < figures.size() ? List.of(figures.get(lane).get(0)) : List.of());
  }
}
