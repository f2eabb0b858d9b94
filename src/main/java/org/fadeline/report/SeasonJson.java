package org.fadeline.report;

import java.nio.file.Path;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import org.fadeline.analysis.FirstBite;
import org.fadeline.analysis.ReviewSettings;
import org.fadeline.analysis.season.Learned;
import org.fadeline.analysis.season.Season;
import org.fadeline.analysis.season.Season.PastPlainTally;
import org.fadeline.analysis.season.SeasonFilter;
import org.fadeline.analysis.season.SessionSummary;
import org.fadeline.analysis.season.StandingOut;
import org.fadeline.index.SeasonFolder;
import org.fadeline.stats.LogRank;
import org.jspecify.annotations.Nullable;
import tools.jackson.databind.node.ArrayNode;
import tools.jackson.databind.node.ObjectNode;

/** A season's tables as JSON, format {@code fadeline-season} version 1. */
public final class SeasonJson {
  private final Season season;
  private final SeasonFolder folder;
  private final Path root;

  private SeasonJson(Season season, SeasonFolder folder, Path root) {
    this.season = season;
    this.folder = folder;
    this.root = root;
  }

  /**
   * Returns the JSON text, ending in a line feed.
   *
   * @param season the tables
   * @param folder the files behind them
   * @param root the folder that paths are written below
   */
  public static String toJson(Season season, SeasonFolder folder, Path root) {
    return JsonOut.text(new SeasonJson(season, folder, root).root());
  }

  private ObjectNode root() {
    ObjectNode node = JsonOut.object();
    node.put("format", "fadeline-season");
    node.put("version", 1);
    node.set("parameters", parameters());
    node.set("sessions", sessions());
    node.set("standingOut", standingOut());
    ArrayNode lines = node.putArray("lines");
    season.lines().forEach(l -> lines.add(line(l)));
    ArrayNode firstBites = node.putArray("firstBites");
    season.firstBites().forEach(g -> firstBites.add(firstBites(g)));
    ArrayNode fades = node.putArray("fades");
    season.fades().forEach(g -> fades.add(fades(g)));
    node.set("feed", SeasonFeedJson.bySession(season));
    node.set("feedByLine", SeasonFeedJson.byLine(season));
    node.set("learned", learned());
    ArrayNode broken = node.putArray("broken");
    for (SeasonFolder.Broken one : folder.broken()) {
      ObjectNode item = broken.addObject();
      item.put("file", path(one.file()));
      ArrayNode problems = item.putArray("problems");
      one.problems().forEach(p -> problems.add(p.toString()));
    }
    ArrayNode copies = node.putArray("copies");
    for (SeasonFolder.Copy copy : folder.copies()) {
      ObjectNode item = copies.addObject();
      item.put("file", path(copy.file()));
      item.put("used", path(copy.used()));
    }
    return node;
  }

  private String path(Path file) {
    return root.relativize(file).toString().replace('\\', '/');
  }

  private ObjectNode parameters() {
    ObjectNode node = JsonOut.object();
    JsonOut.number(node, "level", ReviewSettings.LEVEL);
    node.put("fewestSessionsForLimits", Season.FEWEST_FOR_LIMITS);
    SeasonFilter filter = season.filter();
    ObjectNode chosen = node.putObject("filter");
    texts(chosen.putArray("waters"), filter.waters().stream().sorted().toList());
    ArrayNode months = chosen.putArray("months");
    filter.months().stream().sorted().forEach(months::add);
    texts(chosen.putArray("lines"), filter.groups().stream().sorted().toList());
    span(chosen, "waterC", filter.temperature());
    SeasonFilter.WindWanted wind = filter.wind();
    span(chosen, "windForce", wind == null ? null : wind.force());
    JsonOut.number(chosen, "windFromDegrees", wind == null ? null : wind.fromDegrees());
    return node;
  }

  private static void texts(ArrayNode node, List<String> texts) {
    texts.forEach(node::add);
  }

  private static void span(ObjectNode node, String name, SeasonFilter.@Nullable Span span) {
    if (span == null) {
      node.putNull(name);
    } else {
      ObjectNode item = node.putObject(name);
      JsonOut.number(item, "low", span.low());
      JsonOut.number(item, "high", span.high());
    }
  }

  private ArrayNode sessions() {
    Map<SessionSummary.About, SeasonFolder.Entry> files = new HashMap<>();
    folder.entries().forEach(e -> files.put(e.summary().about(), e));
    ArrayNode all = JsonOut.array();
    for (SessionSummary session : season.sessions()) {
      SessionSummary.About about = session.about();
      SessionSummary.Result result = session.result();
      ObjectNode node = all.addObject();
      SeasonFolder.Entry entry = files.get(about);
      node.put("file", entry == null ? null : path(entry.file()));
      texts(node.putArray("warnings"), entry == null ? List.of() : entry.warnings());
      node.put("id", about.id());
      node.put("title", about.title());
      node.put("date", about.dated() ? about.date().toString() : null);
      node.put("water", about.water());
      JsonOut.number(node, "matchMinutes", about.matchMinutes());
      JsonOut.number(node, "waterC", about.day().waterC());
      JsonOut.number(node, "airC", about.day().airC());
      JsonOut.number(node, "windFromDegrees", about.day().windFromDegrees());
      JsonOut.number(node, "windForce", about.day().windForce());
      node.put("grade", result.grade().word());
      node.put("fish", result.fish());
      JsonOut.number(node, "weightG", result.grams());
      node.put("weightFrom", result.weights().from().word());
      node.put("fishWithoutWeight", result.weights().missing());
      JsonOut.number(node, "fishedMinutes", session.fishedMinutes());
      ArrayNode nets = node.putArray("netsG");
      result.netGrams().forEach(nets::add);
      JsonOut.number(node, "weighedG", result.weighedGrams());
      JsonOut.number(node, "scalesFactor", result.weights().scalesFactor());
      SessionSummary.Placing placing = result.placing();
      node.put("position", placing == null ? null : placing.position());
      node.put("of", placing == null ? null : placing.of());
      past(node, session.hasFades() ? season.pastPlain(session) : null);
    }
    return all;
  }

  private static void past(ObjectNode node, @Nullable PastPlainTally past) {
    if (past == null) {
      node.putNull("pastPlain");
      return;
    }
    ObjectNode item = node.putObject("pastPlain");
    item.put("stays", past.stays());
    JsonOut.number(item, "minutes", past.minutes());
    item.put("fish", past.fish());
    JsonOut.number(item, "weightG", past.grams());
  }

  private ArrayNode standingOut() {
    ArrayNode all = JsonOut.array();
    for (StandingOut one : season.standing()) {
      ObjectNode node = all.addObject();
      node.put("session", one.session());
      node.put("measure", one.measure().word());
      JsonOut.number(node, "value", one.value());
      JsonOut.number(node, "lowerQuartile", one.low());
      JsonOut.number(node, "upperQuartile", one.high());
      node.put("sessions", one.sessions());
    }
    return all;
  }

  private static ObjectNode line(Season.LineHours line) {
    ObjectNode node = JsonOut.object();
    node.put("line", line.group());
    node.set("whole", cell(line.whole()));
    ArrayNode hours = node.putArray("hours");
    line.hours().forEach(c -> hours.add(cell(c)));
    return node;
  }

  private static ObjectNode cell(Season.Cell cell) {
    ObjectNode node = JsonOut.object();
    node.put("hour", cell.hour());
    indices(node, cell.sessions());
    JsonOut.number(node, "fishedMinutes", cell.fishedHours() * 60);
    node.set("fish", perHour(cell.fish(), "perHour"));
    node.set("weight", perHour(cell.weight(), "gPerHour"));
    return node;
  }

  static void indices(ObjectNode node, List<Integer> sessions) {
    ArrayNode all = node.putArray("sessions");
    sessions.forEach(all::add);
  }

  static ObjectNode perHour(Season.PerHour rate, String name) {
    ObjectNode node = JsonOut.object();
    JsonOut.number(node, "amount", rate.amount());
    node.put("sessions", rate.sessions());
    JsonOut.number(node, name, rate.perHour());
    Season.Limits limits = rate.limits();
    JsonOut.number(node, "low", rate.low());
    JsonOut.number(node, "high", rate.high());
    node.put("basis", limits == null ? null : limits.basis().word());
    return node;
  }

  private static ObjectNode firstBites(Season.FirstBiteGroup group) {
    ObjectNode node = JsonOut.object();
    node.put("by", group.by().word());
    node.put("name", group.name());
    indices(node, group.sessions());
    node.put("feeds", group.tally().feeds());
    node.put("bites", group.tally().bites());
    node.put("late", group.tally().late());
    Season.Curve curve = group.curve();
    JsonOut.number(node, "fromMinute", curve == null ? null : curve.fromMinute());
    JsonOut.number(node, "medianMinutes", curve == null ? null : curve.medianMinutes());
    JsonOut.number(node, "low", curve == null ? null : curve.low());
    JsonOut.number(node, "high", curve == null ? null : curve.high());
    ArrayNode points = node.putArray("curve");
    if (curve != null) {
      for (FirstBite.Step step : curve.steps()) {
        ObjectNode point = points.addObject();
        JsonOut.number(point, "minutes", step.minutes());
        point.put("atRisk", step.atRisk());
        point.put("bites", step.bites());
        JsonOut.number(point, "survival", step.survival());
      }
    }
    LogRank test = group.againstOthers();
    ObjectNode others = node.putObject("againstOthers");
    JsonOut.number(others, "observed", test.observed());
    JsonOut.number(others, "expected", test.expected());
    JsonOut.number(others, "chiSquare", test.chiSquare());
    JsonOut.number(others, "p", test.p());
    return node;
  }

  private static ObjectNode fades(Season.FadeGroup group) {
    ObjectNode node = JsonOut.object();
    node.put("line", group.group());
    indices(node, group.sessions());
    node.put("spells", group.spells());
    node.put("faded", group.faded());
    ArrayNode minutes = node.putArray("minutesSinceAllIn");
    group.minutes().forEach(minutes::add);
    JsonOut.number(node, "medianMinute", group.medianMinute());
    past(node, group.past());
    return node;
  }

  private ObjectNode learned() {
    Learned learned = season.learned();
    ObjectNode node = JsonOut.object();
    node.put("sessions", learned.sessions());
    ObjectNode hazard = node.putObject("changeHazard");
    JsonOut.number(hazard, "perHour", learned.hazard().perHour());
    JsonOut.number(hazard, "low", learned.hazard().interval().low());
    JsonOut.number(hazard, "high", learned.hazard().interval().high());
    JsonOut.number(hazard, "level", learned.hazard().interval().level());
    hazard.put("records", learned.hazard().records());
    Learned.DaysLearned days = learned.days();
    if (days == null) {
      node.putNull("days");
    } else {
      ObjectNode item = node.putObject("days");
      JsonOut.number(item, "sigma", days.sigma());
      JsonOut.number(item, "raw", days.raw());
      item.put("sessions", days.sessions());
    }
    ArrayNode groups = node.putArray("lines");
    for (Learned.GroupLearned group : learned.groups()) {
      ObjectNode item = groups.addObject();
      item.put("line", group.group());
      item.put("sessions", group.sessions());
      JsonOut.number(item, "bunching", group.bunching());
      item.set("pool", JsonOut.gamma(group.pool()));
    }
    return node;
  }
}
