package org.fadeline.report;

import java.util.List;
import java.util.Locale;
import org.fadeline.analysis.Caught;
import org.fadeline.analysis.Course;
import org.fadeline.analysis.Course.Finish;
import org.fadeline.analysis.EstimateError;
import org.fadeline.analysis.Fade;
import org.fadeline.analysis.LearnedPriors;
import org.fadeline.analysis.LineReview;
import org.fadeline.analysis.Review;
import org.fadeline.analysis.ReviewSettings;
import org.fadeline.analysis.Spell;
import org.fadeline.model.Session;
import org.fadeline.stats.Interval;
import org.jspecify.annotations.Nullable;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.node.ArrayNode;
import tools.jackson.databind.node.ObjectNode;

/** The review as JSON, format {@code fadeline-review} version 1. */
public final class ReviewJson {
  private final Review review;
  private final Session session;

  ReviewJson(Review review) {
    this.review = review;
    this.session = review.session();
  }

  /** Returns the JSON text, ending in a line feed. */
  public static String toJson(Review review) {
    return JsonOut.text(new ReviewJson(review).root());
  }

  private ObjectNode root() {
    ObjectNode root = JsonOut.object();
    root.put("format", "fadeline-review");
    root.put("version", 1);
    root.set("session", session());
    root.set("parameters", parameters(review.settings()));
    ArrayNode lines = root.putArray("lines");
    review.lines().forEach(l -> lines.add(line(l)));
    root.set("rolling", rolling());
    ArrayNode stays = root.putArray("stayOrGo");
    review.stays().forEach(s -> stays.add(stays().of(s)));
    root.set("pace", pace());
    root.set("turningPoints", turningPoints());
    root.set("quarters", quarters());
    root.set("lessons", lessons());
    root.set("warnings", warnings());
    return root;
  }

  /** Returns the writer of this session's stays. */
  StayJson stays() {
    return new StayJson(session);
  }

  ObjectNode session() {
    Review.Summary summary = review.summary();
    ObjectNode node = JsonOut.object();
    node.put("title", session.occasion().title());
    node.put("date", session.occasion().date().toString());
    JsonOut.time(node, "allIn", session, session.match().allIn());
    JsonOut.time(node, "allOut", session, session.match().allOut());
    node.put("fish", summary.caught().landed());
    JsonOut.number(node, "weightG", summary.caught().weightG());
    node.put("weightFrom", summary.weightFrom().word());
    node.put("grade", summary.grade().word());
    JsonOut.number(node, "clockPrecisionS", summary.clockPrecisionS());
    JsonOut.number(node, "unassignedMinutes", summary.unassignedMinutes());
    node.put("bites", summary.caught().bites());
    node.put("lost", summary.caught().lost());
    node.put("foul", summary.caught().foul());
    return node;
  }

  static ObjectNode parameters(ReviewSettings settings) {
    ObjectNode node = JsonOut.object();
    JsonOut.number(node, "windowMinutes", settings.windowMinutes());
    JsonOut.number(node, "callLevel", settings.callLevel());
    JsonOut.number(node, "changeHazardPerHour", settings.changeHazard());
    node.put("measure", settings.measure().word());
    JsonOut.number(node, "moveCostMinutes", settings.moveCostMinutes());
    node.put("seed", settings.seed());
    ObjectNode handling = node.putObject("handlingSecondsByKind");
    settings.handling().secondsByKind().forEach((kind, s) -> JsonOut.number(handling, kind, s));
    JsonOut.number(node, "fadedShare", ReviewSettings.FADED_SHARE);
    JsonOut.number(node, "level", ReviewSettings.LEVEL);
    JsonOut.number(node, "fadeLevel", ReviewSettings.FADE_LEVEL);
    EstimateError error = settings.estimates();
    Interval times = error.factor().interval(ReviewSettings.FADE_LEVEL);
    ObjectNode estimates = node.putObject("estimates");
    JsonOut.number(estimates, "scalesOver", Math.exp(error.factor().logMean()));
    JsonOut.number(estimates, "low", times.low());
    JsonOut.number(estimates, "high", times.high());
    JsonOut.number(estimates, "level", times.level());
    estimates.put("matches", error.matches());
    LearnedPriors learned = settings.learned();
    if (learned == null) {
      node.putNull("learned");
    } else {
      node.set("learned", learned(learned));
    }
    return node;
  }

  private static ObjectNode learned(LearnedPriors learned) {
    ObjectNode node = JsonOut.object();
    node.put("sessions", learned.sessions());
    JsonOut.number(node, "changeHazardPerHour", learned.changeHazard());
    ObjectNode kinds = node.putObject("kinds");
    learned
        .kinds()
        .forEach(
            (name, kind) -> {
              ObjectNode item = kinds.putObject(name);
              item.put("sessions", kind.sessions());
              JsonOut.number(item, "bunching", kind.bunching());
              JsonOut.number(item, "fishedMinutes", kind.given().fishedHours() * 60);
              item.put("fish", kind.given().fish());
              item.set("pool", JsonOut.gamma(kind.pool()));
            });
    return node;
  }

  private ObjectNode line(LineReview line) {
    ObjectNode node = JsonOut.object();
    node.put("id", line.line().id());
    node.put("name", line.line().name());
    JsonOut.number(node, "fishedMinutes", line.fishedHours() * 60);
    JsonOut.number(node, "baitMinutes", line.baitHours() * 60);
    caught(node, line.caught());
    ArrayNode spells = node.putArray("spells");
    line.spells().forEach(s -> spells.add(spell(s)));
    node.set("fishRate", JsonOut.rate(line.rates().fish(), "perHour"));
    node.set("biteRate", JsonOut.rate(line.rates().bite(), "perHour"));
    node.set("weightRate", weightRate(line.rates()));
    withUnassigned(node, line.rates().withUnassigned());
    node.set("firstBite", new FirstBiteJson(session).of(line.firstBite()));
    ArrayNode fades = node.putArray("fades");
    line.fades().forEach(f -> fades.add(fade(f)));
    node.set("leavingRule", LeavingJson.of(line.leaving()));
    return node;
  }

  private static void withUnassigned(ObjectNode node, LineReview.@Nullable WithUnassigned range) {
    node.set(
        "fishRateWithUnassigned", JsonOut.rate(range == null ? null : range.fish(), "perHour"));
    node.set(
        "biteRateWithUnassigned", JsonOut.rate(range == null ? null : range.bite(), "perHour"));
    node.set(
        "weightRateWithUnassigned",
        JsonOut.rate(range == null ? null : range.weight(), "gPerHour"));
  }

  /** Without a fish no largest weight is known, so that no upper limit can be given. */
  static JsonNode weightRate(LineReview.Rates rates) {
    if (rates.weight() == null && rates.fish() != null && rates.fish().perHour() == 0) {
      ObjectNode none = JsonOut.object();
      none.put("gPerHour", 0);
      none.put("low", 0);
      none.putNull("high");
      JsonOut.number(none, "level", ReviewSettings.LEVEL);
      return none;
    }
    return JsonOut.rate(rates.weight(), "gPerHour");
  }

  static void caught(ObjectNode node, Caught caught) {
    node.put("bites", caught.bites());
    node.put("landed", caught.landed());
    node.put("lost", caught.lost());
    node.put("foul", caught.foul());
    JsonOut.number(node, "weightG", caught.weightG());
  }

  ObjectNode spell(Spell spell) {
    ObjectNode node = JsonOut.object();
    JsonOut.time(node, "from", session, spell.span().from());
    JsonOut.time(node, "to", session, spell.span().to());
    JsonOut.number(node, "fishedMinutes", spell.fishedHours() * 60);
    JsonOut.number(node, "baitMinutes", spell.baitHours() * 60);
    caught(node, spell.caught());
    node.put("opensWithFish", spell.opensWithFish());
    return node;
  }

  ObjectNode fade(Fade fade) {
    ObjectNode node = JsonOut.object();
    node.put("spell", fade.spell());
    Fade.Moment moment = fade.moment();
    JsonOut.time(node, "at", session, moment == null ? null : moment.at());
    JsonOut.time(node, "low", session, moment == null ? null : moment.low());
    JsonOut.time(node, "high", session, moment == null ? null : moment.high());
    JsonOut.number(node, "level", ReviewSettings.FADE_LEVEL);
    JsonOut.number(node, "probability", fade.probability());
    JsonOut.number(node, "before", fade.strength().before());
    JsonOut.number(node, "after", fade.strength().after());
    JsonOut.time(node, "plainAt", session, fade.call().plainAt());
    ArrayNode crossings = node.putArray("crossings");
    for (Fade.Crossing crossing : fade.call().crossings()) {
      ObjectNode item = crossings.addObject();
      JsonOut.time(item, "at", session, crossing.at());
      item.put("up", crossing.up());
    }
    JsonOut.number(node, "bunching", fade.strength().bunching());
    node.put("shape", fade.strength().shape().word());
    node.put("verdict", fade.verdict());
    return node;
  }

  private ObjectNode rolling() {
    ObjectNode node = JsonOut.object();
    JsonOut.number(node, "windowMinutes", review.settings().windowMinutes());
    node.put("stepMinutes", 1);
    ObjectNode lines = node.putObject("lines");
    for (Course.Rolling rolling : review.course().rolling()) {
      ArrayNode points = lines.putArray(rolling.lineId());
      for (Course.RollingPoint point : rolling.points()) {
        ObjectNode item = points.addObject();
        JsonOut.time(item, "at", session, point.at());
        JsonOut.number(item, "fishedMinutes", point.fishedMinutes());
        item.put("landed", point.caught().landed());
        JsonOut.number(item, "perHour", point.fish() == null ? null : point.fish().perHour());
        JsonOut.number(item, "low", point.fish() == null ? null : point.fish().low());
        JsonOut.number(item, "high", point.fish() == null ? null : point.fish().high());
        JsonOut.number(item, "lowWide", point.fishWide() == null ? null : point.fishWide().low());
        JsonOut.number(item, "highWide", point.fishWide() == null ? null : point.fishWide().high());
        item.set("weight", JsonOut.rate(point.weight(), "gPerHour"));
      }
    }
    return node;
  }

  private ArrayNode pace() {
    ArrayNode all = JsonOut.array();
    for (Course.Pace pace : review.course().pace()) {
      ObjectNode node = all.addObject();
      JsonOut.time(node, "at", session, pace.at());
      node.put("fishSoFar", pace.fishSoFar());
      finish(node, pace.fish(), pace.weight());
      JsonOut.number(node, "level", pace.fish().level());
      JsonOut.number(node, "weightSoFarG", pace.weightSoFarG());
      ObjectNode tiring = node.putObject("tiring");
      JsonOut.number(tiring, "chance", pace.tiring().chance());
      finish(tiring, pace.tiring().fish(), pace.tiring().weight());
    }
    return all;
  }

  private static void finish(ObjectNode node, Finish fish, @Nullable Finish weight) {
    JsonOut.number(node, "finishLow", fish.low());
    JsonOut.number(node, "finishMedian", fish.median());
    JsonOut.number(node, "finishHigh", fish.high());
    JsonOut.number(node, "weightLowG", weight == null ? null : weight.low());
    JsonOut.number(node, "weightMedianG", weight == null ? null : weight.median());
    JsonOut.number(node, "weightHighG", weight == null ? null : weight.high());
  }

  private ArrayNode turningPoints() {
    ArrayNode all = JsonOut.array();
    for (Course.TurningPoint point : review.course().turningPoints()) {
      ObjectNode node = all.addObject();
      JsonOut.time(node, "at", session, point.at());
      node.put("kind", point.kind().name().toLowerCase(Locale.ROOT).replace('_', '-'));
      node.put("line", point.lineId());
      node.put("hindsight", point.hindsight());
      node.put("title", point.title());
      node.put("detail", point.detail());
    }
    return all;
  }

  private ArrayNode quarters() {
    ArrayNode all = JsonOut.array();
    for (Course.Quarter quarter : review.course().quarters()) {
      ObjectNode node = all.addObject();
      JsonOut.time(node, "from", session, quarter.span().from());
      JsonOut.time(node, "to", session, quarter.span().to());
      JsonOut.number(node, "fishedMinutes", quarter.fishedMinutes());
      caught(node, quarter.caught());
    }
    return all;
  }

  private ArrayNode lessons() {
    return texts(
        review.course().lessons().stream()
            .map(l -> new Text(l.at(), l.lineId(), l.text()))
            .toList(),
        true);
  }

  private ArrayNode warnings() {
    return texts(
        review.course().warnings().stream().map(w -> new Text(w.at(), null, w.text())).toList(),
        false);
  }

  private record Text(@Nullable Long at, @Nullable String line, String text) {}

  private ArrayNode texts(List<Text> texts, boolean withLine) {
    ArrayNode all = JsonOut.array();
    for (Text text : texts) {
      ObjectNode node = all.addObject();
      JsonOut.time(node, "at", session, text.at());
      if (withLine) {
        node.put("line", text.line());
      }
      node.put("text", text.text());
    }
    return all;
  }
}
