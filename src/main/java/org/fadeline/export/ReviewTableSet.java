package org.fadeline.export;

import java.time.format.DateTimeFormatter;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import org.fadeline.analysis.Course.Quarter;
import org.fadeline.analysis.Fade;
import org.fadeline.analysis.FirstBite;
import org.fadeline.analysis.LeavingRule;
import org.fadeline.analysis.LineReview;
import org.fadeline.analysis.Rate;
import org.fadeline.analysis.Review;
import org.fadeline.analysis.StayOrGo;
import org.jspecify.annotations.Nullable;

/** The tables behind the figures of a review; weights in grams, times of the water's clock. */
public final class ReviewTableSet {
  private static final DateTimeFormatter TIME = DateTimeFormatter.ofPattern("HH:mm:ss", Locale.UK);

  private final Review review;

  private ReviewTableSet(Review review) {
    this.review = review;
  }

  /** Returns every table of a review. */
  public static List<Table> of(Review review) {
    ReviewTableSet tables = new ReviewTableSet(review);
    return List.of(
        tables.lines(),
        tables.spells(),
        tables.fades(),
        tables.leaving(),
        FirstBiteTables.stretches(review),
        FirstBiteTables.curves(review),
        tables.feedResponse(),
        tables.quarters());
  }

  private Table lines() {
    List<List<@Nullable Object>> rows = new ArrayList<>();
    for (LineReview line : review.lines()) {
      Rate fish = line.rates().fish();
      Rate bites = line.rates().bite();
      Rate weight = line.rates().weight();
      rows.add(
          Table.row(
              line.line().name(),
              line.fishedHours() * 60,
              line.baitHours() * 60,
              line.caught().bites(),
              line.caught().landed(),
              line.caught().lost(),
              line.caught().foul(),
              line.caught().weightG(),
              value(weight),
              low(weight),
              high(weight),
              value(fish),
              low(fish),
              high(fish),
              value(bites),
              low(bites),
              high(bites)));
    }
    return new Table(
        "lines",
        List.of(
            "line",
            "fished min",
            "bait min",
            "bites",
            "landed",
            "lost",
            "foul",
            "weight g",
            "g an hour",
            "g low",
            "g high",
            "fish an hour",
            "fish low",
            "fish high",
            "bites a bait hour",
            "bites low",
            "bites high"),
        rows);
  }

  private Table spells() {
    List<List<@Nullable Object>> rows = new ArrayList<>();
    for (StayOrGo stay : review.stays()) {
      Fade fade = stay.fade();
      StayOrGo.PastPlain past = stay.past();
      rows.add(
          Table.row(
              name(stay.spell().lineId()),
              time(stay.spell().span().from()),
              time(stay.spell().span().to()),
              stay.spell().fishedHours() * 60,
              stay.spell().caught().landed(),
              stay.spell().caught().weightG(),
              value(stay.paid().weight()),
              value(stay.paid().fish()),
              fade == null ? null : fade.probability(),
              past == null ? null : time(past.plainAt()),
              past == null ? null : past.minutes(),
              past == null ? null : past.breakEvenGPerHour(),
              past == null ? null : past.breakEvenPerHour(),
              stay.wording().text()));
    }
    return new Table(
        "spells",
        List.of(
            "line",
            "from",
            "to",
            "fished min",
            "landed",
            "weight g",
            "g an hour",
            "fish an hour",
            "probability faded",
            "plain by",
            "min past plain",
            "g an hour to beat",
            "fish an hour to beat",
            "in words"),
        rows);
  }

  private Table fades() {
    List<List<@Nullable Object>> rows = new ArrayList<>();
    for (LineReview line : review.lines()) {
      for (Fade fade : line.fades()) {
        Fade.Moment moment = fade.moment();
        Long plain = fade.call().plainAt();
        rows.add(
            Table.row(
                line.line().name(),
                fade.spell() + 1,
                fade.probability(),
                moment == null ? null : time(moment.at()),
                moment == null ? null : time(moment.low()),
                moment == null ? null : time(moment.high()),
                plain == null ? null : time(plain),
                fade.strength().before(),
                fade.strength().after(),
                fade.strength().bunching(),
                fade.verdict()));
      }
    }
    return new Table(
        "fades",
        List.of(
            "line",
            "spell",
            "probability",
            "faded",
            "faded low",
            "faded high",
            "plain by",
            "bites a bait hour before",
            "after",
            "bunching",
            "in words"),
        rows);
  }

  private Table leaving() {
    List<List<@Nullable Object>> rows = new ArrayList<>();
    for (LineReview line : review.lines()) {
      LeavingRule rule = line.leaving();
      if (rule != null) {
        LeavingRule.Decline decline = rule.decline();
        LeavingRule.LeaveAfter leave = rule.leaveAfter();
        rows.add(
            Table.row(
                line.line().name(),
                rule.visits(),
                rule.bites(),
                rule.movingMinutes(),
                decline == null ? null : decline.startingRate(),
                decline == null ? null : decline.halfLifeMinutes(),
                decline == null ? null : decline.wide().p(),
                decline == null ? null : decline.bunching(),
                leave == null ? null : leave.minutes(),
                leave == null ? null : leave.wide().low(),
                leave == null ? null : leave.wide().high(),
                rule.wording()));
      }
    }
    return new Table(
        "leaving times",
        List.of(
            "line",
            "visits",
            "bites",
            "move min",
            "bites a bait hour at first",
            "halves in min",
            "p",
            "bunching",
            "leave after bait min",
            "low",
            "high",
            "in words"),
        rows);
  }

  private Table feedResponse() {
    List<List<@Nullable Object>> rows = new ArrayList<>();
    for (LineReview line : review.lines()) {
      for (FirstBite.ResponseBin bin : line.firstBite().feedResponse()) {
        rows.add(
            Table.row(
                line.line().name(),
                bin.fromMinute(),
                bin.toMinute(),
                bin.bites(),
                bin.baitHours() * 60,
                value(bin.rate()),
                low(bin.rate()),
                high(bin.rate())));
      }
    }
    return new Table(
        "feed response",
        List.of(
            "line",
            "from min",
            "to min",
            "bites",
            "bait min",
            "bites a bait hour",
            "bites low",
            "bites high"),
        rows);
  }

  private Table quarters() {
    List<List<@Nullable Object>> rows = new ArrayList<>();
    for (Quarter quarter : review.course().quarters()) {
      rows.add(
          Table.row(
              time(quarter.span().from()),
              time(quarter.span().to()),
              quarter.caught().landed(),
              quarter.caught().weightG(),
              quarter.caught().bites(),
              quarter.fishedMinutes()));
    }
    return new Table(
        "quarter-hours", List.of("from", "to", "landed", "weight g", "bites", "fished min"), rows);
  }

  private static @Nullable Double value(@Nullable Rate rate) {
    return rate == null ? null : rate.perHour();
  }

  private static @Nullable Double low(@Nullable Rate rate) {
    return rate == null ? null : rate.low();
  }

  private static @Nullable Double high(@Nullable Rate rate) {
    return rate == null ? null : rate.high();
  }

  private String name(String lineId) {
    return review.line(lineId).map(l -> l.line().name()).orElse(lineId);
  }

  private String time(long at) {
    return review.session().clock(at).format(TIME);
  }
}
