package org.fadeline.ui.review;

import java.time.ZoneId;
import java.time.ZoneOffset;
import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import java.util.function.LongConsumer;
import org.fadeline.analysis.Course.Quarter;
import org.fadeline.analysis.FirstBite;
import org.fadeline.analysis.LineReview;
import org.fadeline.analysis.Review;
import org.fadeline.model.EventKind;
import org.fadeline.model.Fish;
import org.fadeline.model.SessionEvent;
import org.fadeline.model.Units;
import org.fadeline.ui.control.Say;
import org.fadeline.ui.control.table.DataTable;
import org.jspecify.annotations.Nullable;

/** The tables of a review: everything that is on a chart, in figures. */
final class LineTables {
  private Units units = Units.LB_OZ_AND_METRES;
  private ZoneId zone = ZoneOffset.UTC;

  final DataTable<LineReview> lines = new DataTable<>("Line by line", "No lines in this record.");
  final DataTable<ResponseRow> response =
      new DataTable<>("Bites by minutes since feeding", "No feeding is logged.");
  final DataTable<Quarter> quarters =
      new DataTable<>("By quarter-hour", "Nothing was fished in this record.");
  final DataTable<SessionEvent> fish = new DataTable<>("Every fish", "No fish in this record.");

  /**
   * One bin of a feed response.
   *
   * @param line the line's name
   * @param bin the bin
   */
  record ResponseRow(String line, FirstBite.ResponseBin bin) {}

  private @Nullable Review review;

  LineTables(LongConsumer replay) {
    lines
        .words("Line", 150, l -> Say.capital(Say.line(l.line(), units)))
        .numbers(
            "Weight an hour",
            160,
            l -> ReviewWords.value(l.rates().weight()),
            l -> ReviewWords.weightRate(l.rates().weight(), units))
        .numbers(
            "Fish an hour",
            125,
            l -> ReviewWords.value(l.rates().fish()),
            l -> ReviewWords.rate(l.rates().fish()))
        .numbers(
            "Bites an hour",
            125,
            l -> ReviewWords.value(l.rates().bite()),
            l -> ReviewWords.rate(l.rates().bite()))
        .numbers(
            "Weight", 100, l -> l.caught().weightG(), l -> Say.weight(l.caught().weightG(), units))
        .numbers(
            "Landed",
            70,
            l -> (double) l.caught().landed(),
            l -> String.valueOf(l.caught().landed()))
        .numbers("Min fished", 90, LineReview::fishedHours, l -> minutes(l.fishedHours()))
        .numbers(
            "Lost", 60, l -> (double) l.caught().lost(), l -> String.valueOf(l.caught().lost()))
        .numbers(
            "Foul", 60, l -> (double) l.caught().foul(), l -> String.valueOf(l.caught().foul()))
        .numbers(
            "Bites", 65, l -> (double) l.caught().bites(), l -> String.valueOf(l.caught().bites()))
        .numbers(
            "Spells", 65, l -> (double) l.spells().size(), l -> String.valueOf(l.spells().size()))
        .numbers("Min bait in", 90, LineReview::baitHours, l -> minutes(l.baitHours()))
        .detail(
            "How long a stay pays",
            l -> Say.capital(l.line().name()),
            l -> l.leaving() == null ? "" : l.leaving().wording());
    response
        .words("Line", 130, ResponseRow::line)
        .numbers(
            "Minutes since",
            130,
            r -> r.bin.fromMinute(),
            r ->
                (Math.round(r.bin.fromMinute()) + " to " + Math.round(r.bin.toMinute()))
                    .replace('-', '−'))
        .numbers("Bites", 65, r -> (double) r.bin.bites(), r -> String.valueOf(r.bin.bites()))
        .numbers("Min bait in", 90, r -> r.bin.baitHours(), r -> minutes(r.bin.baitHours()))
        .numbers(
            "Bites an hour",
            150,
            r -> ReviewWords.value(r.bin.rate()),
            r -> ReviewWords.rate(r.bin.rate()));
    quarters
        .words("From", 80, q -> Say.shortClock(q.span().from(), zone))
        .numbers(
            "Weight", 110, q -> q.caught().weightG(), q -> Say.weight(q.caught().weightG(), units))
        .numbers(
            "Landed",
            75,
            q -> (double) q.caught().landed(),
            q -> String.valueOf(q.caught().landed()))
        .numbers(
            "Lost", 65, q -> (double) q.caught().lost(), q -> String.valueOf(q.caught().lost()))
        .numbers(
            "Bites", 65, q -> (double) q.caught().bites(), q -> String.valueOf(q.caught().bites()))
        .numbers(
            "Min fished",
            90,
            Quarter::fishedMinutes,
            q -> String.valueOf(Math.round(q.fishedMinutes())))
        .onChoose(q -> replay.accept(q.span().from()));
    fish.words("Time", 90, e -> Say.clock(e.at(), zone))
        .words("Line", 130, this::lineOf)
        .words("Species", 110, e -> species(e))
        .numbers(
            "Fish", 60, e -> (double) fishOf(e).count(), e -> String.valueOf(fishOf(e).count()))
        .numbers(
            "Weight",
            110,
            e -> fishOf(e).grams(),
            e -> Say.fishWeight(Objects.requireNonNullElse(fishOf(e).grams(), 0.0), units))
        .words(
            "Weight is",
            100,
            e ->
                fishOf(e).grams() == null
                    ? "not given"
                    : fishOf(e).weighed() ? "weighed" : "estimated")
        .words("Counts", 120, e -> e.kind() == EventKind.FOUL ? foul() : "yes")
        .onChoose(e -> replay.accept(e.at()));
  }

  void show(@Nullable Review newReview, Units newUnits) {
    review = newReview;
    units = newUnits;
    List<LineReview> all = newReview == null ? List.of() : newReview.lines();
    if (newReview != null) {
      zone = newReview.session().occasion().zone();
    }
    lines.show(all);
    List<ResponseRow> responseRows = new ArrayList<>();
    for (LineReview line : all) {
      String name = Say.capital(line.line().name());
      line.firstBite().feedResponse().forEach(b -> responseRows.add(new ResponseRow(name, b)));
    }
    response.show(responseRows);
    quarters.show(newReview == null ? List.of() : newReview.course().quarters());
    fish.show(
        newReview == null
            ? List.of()
            : newReview.session().events().stream().filter(LineTables::isCatch).toList());
  }

  private static boolean isCatch(SessionEvent event) {
    return event.kind() == EventKind.LANDED
        || event.kind() == EventKind.FOUL
        || event.kind() == EventKind.COUNT;
  }

  private static Fish fishOf(SessionEvent event) {
    return Objects.requireNonNullElse(event.fishOrNull(), Fish.ONE);
  }

  private static String species(SessionEvent event) {
    String species = fishOf(event).species();
    return species == null ? "" : species;
  }

  private String foul() {
    Review now = review;
    boolean counts = now != null && now.session().match().rules().foulHookedCounts();
    return counts ? "yes, foul-hooked" : "no, foul-hooked";
  }

  private String lineOf(SessionEvent event) {
    Review now = review;
    String id = event.lineId();
    return now == null || id == null
        ? ""
        : now.session().line(id).map(l -> Say.capital(l.name())).orElse(id);
  }

  private static String minutes(double hours) {
    return String.valueOf(Math.round(hours * 60));
  }
}
