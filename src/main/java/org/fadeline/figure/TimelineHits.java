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
import org.fadeline.model.Feed;
import org.fadeline.model.Fish;
import org.fadeline.model.SessionEvent;
import org.jspecify.annotations.Nullable;

/** Finds what lies under a point of a timeline, as far as it is known. */
final class TimelineHits {
  /** How far from a mark it still is picked, pixels. */
  private static final double REACH = 7;

  private final TimelineLayout layout;
  private final Knowledge knowledge;

  TimelineHits(TimelineLayout layout, Knowledge knowledge) {
    this.layout = layout;
    this.knowledge = knowledge;
  }

  Optional<Hit> at(double x, double y) {
    if (layout.aroundStrip().contains(x, y)) {
      return nearest(layout.figure.shared().lanes().around(), x).map(e -> event(e, null));
    }
    TimelineLayout.Lane lane = layout.laneAt(y).orElse(null);
    if (lane == null) {
      return Optional.empty();
    }
    LaneRecord record = layout.record(lane);
    if (!lane.plot().contains(x, y)) {
      return Optional.of(lineHit(record));
    }
    boolean feedBand = y < lane.plot().getY() + 12;
    boolean stringBand = !feedBand && y < lane.rate().getY();
    boolean floorBand = y > lane.plot().getMaxY() - 13;
    Optional<SessionEvent> event =
        feedBand
            ? nearest(record.feeds, x)
            : stringBand || floorBand ? nearest(record.marks, x) : Optional.empty();
    if (event.isPresent()) {
      return Optional.of(event(event.get(), record));
    }
    long instant = layout.instantAt(x);
    if (!knowledge.knows(instant)) {
      return Optional.empty();
    }
    return Optional.of(
        fadeAt(record, x)
            .or(() -> stringBand || feedBand ? Optional.empty() : rateAt(record, instant))
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

  private Optional<SessionEvent> nearest(LaneRecord.Sorted events, double x) {
    // Marks stand to the right of their instant.
    long from = layout.instantAt(x - REACH - 6);
    long to = Math.min(layout.instantAt(x + REACH), knowledge.until(Long.MAX_VALUE));
    if (to < from) {
      return Optional.empty();
    }
    return events.slice(from, to).stream()
        .min(
            Comparator.comparingDouble((SessionEvent e) -> Math.abs(layout.xOf(e.at()) + 3 - x))
                .thenComparing(e -> e.fishOrNull() == null));
  }

  private Hit event(SessionEvent event, @Nullable LaneRecord record) {
    FigureText words = layout.words;
    List<String> rows = new ArrayList<>();
    rows.add(
        words.clockSeconds(event.at())
            + (record == null ? "" : ", " + record.review.line().name()));
    Fish fish = event.fishOrNull();
    if (fish != null) {
      rows.add(fishRow(fish));
    }
    if (event instanceof SessionEvent.Fed fed) {
      rows.addAll(feedRows(fed.feed()));
    }
    String note = event.note();
    if (note != null && !note.isBlank()) {
      rows.add(note);
    }
    return new Hit(
        Hit.Kind.EVENT,
        event.id(),
        record == null ? null : record.id(),
        event.at(),
        FigureText.capital(event.kind().word()),
        rows);
  }

  private String fishRow(Fish fish) {
    StringBuilder row = new StringBuilder();
    row.append(fish.count() == 1 ? "" : fish.count() + " ");
    row.append(fish.species() == null ? "fish" : fish.species());
    if (fish.grams() != null) {
      row.append(", ").append(layout.words.fineWeight(fish.grams()));
      row.append(fish.weighed() ? ", weighed" : ", estimated");
    } else {
      row.append(", no weight given");
    }
    return row.toString();
  }

  private List<String> feedRows(Feed feed) {
    List<String> rows = new ArrayList<>();
    StringBuilder row = new StringBuilder();
    if (feed.amount() != null) {
      row.append(FigureText.number(feed.amount().value())).append(' ');
      row.append(feed.amount().unit() == Feed.Unit.PIECES ? "" : feed.amount().unit().word() + " ");
    }
    row.append(feed.bait() == null ? "" : feed.bait());
    row.append(feed.method() == null ? "" : ", " + feed.method());
    if (!row.toString().isBlank()) {
      rows.add(row.toString().strip());
    }
    Feed.Pattern pattern = feed.pattern();
    if (pattern != null) {
      Long until = pattern.until();
      rows.add(
          "every "
              + FigureText.number(pattern.everySeconds())
              + " s"
              + (until == null || !knowledge.knows(until)
                  ? ""
                  : " until " + layout.words.clock(until)));
    }
    return rows;
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
        new Hit(Hit.Kind.SPELL, record.id(), record.id(), spell.span().from(), title, rows));
  }

  private Hit lineHit(LaneRecord record) {
    int lane = layout.figure.view().lanes().indexOf(record.id());
    List<List<String>> figures = layout.figures(knowledge);
    return new Hit(
        Hit.Kind.LINE,
        record.id(),
        record.id(),
        layout.figure.view().from(),
        layout.words.line(record.review.line()),
        lane >= 0 && lane < figures.size() ? List.of(figures.get(lane).get(0)) : List.of());
  }
}
