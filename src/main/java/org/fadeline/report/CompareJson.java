package org.fadeline.report;

import java.util.List;
import org.fadeline.analysis.FeedPut;
import org.fadeline.analysis.FirstBite;
import org.fadeline.analysis.ReviewSettings;
import org.fadeline.analysis.compare.Alignment;
import org.fadeline.analysis.compare.Comparison;
import org.fadeline.analysis.compare.Comparison.PairRates;
import org.fadeline.analysis.compare.Comparison.PairedLines;
import org.fadeline.analysis.compare.Comparison.Side;
import org.fadeline.analysis.compare.RatePair;
import org.fadeline.analysis.compare.RunningCatch;
import org.fadeline.stats.Interval;
import org.fadeline.stats.LogRank;
import org.jspecify.annotations.Nullable;
import tools.jackson.databind.node.ArrayNode;
import tools.jackson.databind.node.ObjectNode;

/** A comparison of two sessions as JSON, format {@code fadeline-comparison} version 1. */
public final class CompareJson {
  private final Comparison comparison;
  private final ReviewJson first;
  private final ReviewJson second;

  private CompareJson(Comparison comparison) {
    this.comparison = comparison;
    this.first = new ReviewJson(comparison.first());
    this.second = new ReviewJson(comparison.second());
  }

  /** Returns the JSON text, ending in a line feed. */
  public static String toJson(Comparison comparison) {
    return JsonOut.text(new CompareJson(comparison).root());
  }

  private ObjectNode root() {
    ObjectNode root = JsonOut.object();
    root.put("format", "fadeline-comparison");
    root.put("version", 1);
    root.set("first", first.session());
    root.set("second", second.session());
    root.set("alignment", alignment(comparison.setup().alignment()));
    root.set("parameters", parameters());
    root.set("whole", whole());
    ArrayNode pairs = root.putArray("pairs");
    comparison.lines().pairs().forEach(p -> pairs.add(pair(p)));
    root.set("onlyFirst", alone(comparison.lines().onlyFirst(), first));
    root.set("onlySecond", alone(comparison.lines().onlySecond(), second));
    root.set("running", running());
    ArrayNode findings = root.putArray("findings");
    for (Comparison.Finding finding : comparison.findings().sentences()) {
      ObjectNode node = findings.addObject();
      node.put("firstLine", finding.firstLine());
      node.put("secondLine", finding.secondLine());
      node.put("text", finding.text());
    }
    root.put("caution", comparison.findings().caution());
    return root;
  }

  private ObjectNode alignment(Alignment alignment) {
    ObjectNode node = JsonOut.object();
    node.put("mode", alignment.mode().word());
    JsonOut.time(node, "firstOrigin", comparison.first().session(), alignment.firstOrigin());
    JsonOut.time(node, "secondOrigin", comparison.second().session(), alignment.secondOrigin());
    node.put("stated", alignment.stated());
    return node;
  }

  private ObjectNode parameters() {
    ObjectNode node = JsonOut.object();
    JsonOut.number(node, "level", ReviewSettings.LEVEL);
    JsonOut.number(node, "sigmaDay", comparison.setup().days().sigma());
    node.put("sigmaDayLearned", comparison.setup().days().learned());
    node.set("firstReview", ReviewJson.parameters(comparison.first().settings()));
    node.set("secondReview", ReviewJson.parameters(comparison.second().settings()));
    return node;
  }

  private ObjectNode whole() {
    ObjectNode node = JsonOut.object();
    rates(node, comparison.lines().whole());
    node.put("bitesWithheld", comparison.lines().bitesWithheld());
    node.set("firstBites", logRank(comparison.lines().firstBites()));
    return node;
  }

  private static void rates(ObjectNode node, PairRates rates) {
    node.set("fishRate", rate(rates.fish(), "perHour"));
    node.set("weightRate", rate(rates.weight(), "gPerHour"));
    RatePair bites = rates.bites();
    if (bites == null) {
      node.putNull("biteRate");
    } else {
      node.set("biteRate", rate(bites, "perHour"));
    }
  }

  private static ObjectNode rate(RatePair pair, String name) {
    ObjectNode node = JsonOut.object();
    node.set("first", side(pair.first(), name));
    node.set("second", side(pair.second(), name));
    RatePair.Ratio ratio = pair.ratio();
    JsonOut.number(node, "ratio", ratio == null ? null : ratio.value());
    limits(node, "low", "high", ratio == null ? null : ratio.fishing());
    limits(node, "lowDays", "highDays", ratio == null ? null : ratio.days());
    JsonOut.number(node, "p", ratio == null ? null : ratio.p());
    return node;
  }

  private static void limits(
      ObjectNode node, String low, String high, @Nullable Interval interval) {
    JsonOut.number(node, low, interval == null ? null : interval.low());
    JsonOut.number(node, high, interval == null ? null : interval.high());
  }

  private static ObjectNode side(RatePair.Side side, String name) {
    ObjectNode node = JsonOut.object();
    JsonOut.number(node, "amount", side.amount());
    JsonOut.number(node, "minutes", side.hours() * 60);
    node.set("rate", JsonOut.rate(side.rate(), name));
    return node;
  }

  /** The test's figures; statistic and p are null where nothing can be told. */
  private static ObjectNode logRank(LogRank test) {
    ObjectNode node = JsonOut.object();
    JsonOut.number(node, "firstObserved", test.observed());
    JsonOut.number(node, "firstExpected", test.expected());
    JsonOut.number(node, "secondObserved", test.observedOther());
    JsonOut.number(node, "secondExpected", test.expectedOther());
    JsonOut.number(node, "variance", test.variance());
    JsonOut.number(node, "chiSquare", test.chiSquare());
    JsonOut.number(node, "p", test.p());
    return node;
  }

  private ObjectNode pair(PairedLines pair) {
    ObjectNode node = JsonOut.object();
    node.put("name", pair.pair().name());
    node.put("pairedBy", pair.pair().by().word());
    rates(node, pair.rates());
    node.set("logRank", logRank(pair.firstBites()));
    node.set("first", side(pair.first(), first));
    node.set("second", side(pair.second(), second));
    return node;
  }

  private static ArrayNode alone(List<Side> sides, ReviewJson json) {
    ArrayNode all = JsonOut.array();
    sides.forEach(s -> all.add(side(s, json)));
    return all;
  }

  private static ObjectNode side(Side side, ReviewJson json) {
    ObjectNode node = JsonOut.object();
    node.put("line", side.line().line().id());
    node.put("name", side.line().line().name());
    JsonOut.number(node, "distanceM", side.line().line().place().distanceM());
    JsonOut.number(node, "bearingDegrees", side.line().line().place().bearingDegrees());
    JsonOut.number(node, "fishedMinutes", side.line().fishedHours() * 60);
    JsonOut.number(node, "baitMinutes", side.line().baitHours() * 60);
    ReviewJson.caught(node, side.caught());
    node.put("moves", side.moves());
    JsonOut.number(node, "minutesPastPlain", side.minutesPastPlain());
    node.set("feed", feed(side.feed()));
    node.set("firstBite", firstBite(side.line().firstBite()));
    ArrayNode spells = node.putArray("spells");
    side.line().spells().forEach(s -> spells.add(json.spell(s)));
    ArrayNode fades = node.putArray("fades");
    side.line().fades().forEach(f -> fades.add(json.fade(f)));
    ArrayNode stays = node.putArray("stayOrGo");
    side.stays().forEach(s -> stays.add(json.stays().of(s)));
    return node;
  }

  private static ObjectNode feed(FeedPut feed) {
    ObjectNode node = JsonOut.object();
    node.put("feeds", feed.feeds());
    node.put("withoutAmount", feed.withoutAmount());
    node.put("openPatterns", feed.openPatterns());
    node.set("amounts", amounts(feed));
    ArrayNode baits = node.putArray("baits");
    feed.baits().forEach(baits::add);
    return node;
  }

  /** Returns amounts by unit. */
  static ObjectNode amounts(FeedPut feed) {
    ObjectNode amounts = JsonOut.object();
    feed.amounts().forEach((unit, amount) -> JsonOut.number(amounts, unit.word(), amount));
    return amounts;
  }

  private static ObjectNode firstBite(FirstBite firstBite) {
    ObjectNode node = JsonOut.object();
    FirstBiteJson.figures(node, firstBite);
    return node;
  }

  private ObjectNode running() {
    RunningCatch running = comparison.running();
    ObjectNode node = JsonOut.object();
    node.put("firstFishWithoutWeight", running.firstWithoutWeight());
    node.put("secondFishWithoutWeight", running.secondWithoutWeight());
    ArrayNode points = node.putArray("points");
    for (RunningCatch.Point point : running.points()) {
      ObjectNode item = points.addObject();
      JsonOut.number(item, "minutes", point.minutes());
      soFar(item, "first", point.first());
      soFar(item, "second", point.second());
      Integer fish = point.fishDifference();
      JsonOut.number(item, "fishDifference", fish == null ? null : (double) fish);
      JsonOut.number(item, "weightDifferenceG", point.gramsDifference());
    }
    return node;
  }

  private static void soFar(ObjectNode node, String which, RunningCatch.@Nullable SoFar soFar) {
    JsonOut.number(node, which + "Fish", soFar == null ? null : (double) soFar.fish());
    JsonOut.number(node, which + "WeightG", soFar == null ? null : soFar.grams());
  }
}
