package org.fadeline.report;

import java.util.Locale;
import org.fadeline.analysis.Fade;
import org.fadeline.analysis.LineOrWater;
import org.fadeline.analysis.Recovery;
import org.fadeline.analysis.ReviewSettings;
import org.fadeline.analysis.StayOrGo;
import org.fadeline.model.Session;
import org.jspecify.annotations.Nullable;
import tools.jackson.databind.node.ArrayNode;
import tools.jackson.databind.node.ObjectNode;

/** One spell looked at both ways, as JSON. */
final class StayJson {
  private final Session session;

  StayJson(Session session) {
    this.session = session;
  }

  /** Returns one spell as JSON. */
  ObjectNode of(StayOrGo stay) {
    ObjectNode node = JsonOut.object();
    node.put("line", stay.spell().lineId());
    node.put("spell", stay.spell().index());
    JsonOut.time(node, "arrived", session, stay.spell().span().from());
    JsonOut.time(node, "left", session, stay.spell().span().to());
    Fade fade = stay.fade();
    JsonOut.number(node, "probability", fade == null ? null : fade.probability());
    Fade.Moment moment =
        fade == null || fade.probability() < ReviewSettings.PROBABLE_FROM ? null : fade.moment();
    JsonOut.time(node, "fadedAt", session, moment == null ? null : moment.at());
    JsonOut.time(node, "plainAt", session, fade == null ? null : fade.call().plainAt());
    StayOrGo.PastPlain past = stay.past();
    JsonOut.number(node, "minutesPastPlain", past == null ? null : past.minutes());
    JsonOut.number(node, "fishAfterPlain", past == null ? null : (double) past.caught().landed());
    JsonOut.number(node, "weightAfterPlainG", past == null ? null : past.caught().weightG());
    JsonOut.number(node, "breakEvenPerHour", past == null ? null : past.breakEvenPerHour());
    JsonOut.number(node, "breakEvenGPerHour", past == null ? null : past.breakEvenGPerHour());
    ArrayNode others = node.putArray("others");
    stay.others().forEach(o -> others.add(other(o)));
    node.set("fishRate", JsonOut.rate(stay.paid().fish(), "perHour"));
    node.set("weightRate", ReviewJson.weightRate(stay.paid()));
    node.set("lineOrWater", lineOrWater(stay.quiet()));
    node.put("reason", stay.spell().reasonForLeaving(session));
    node.put("finding", stay.wording().verdict().name().toLowerCase(Locale.ROOT));
    node.put("wording", stay.wording().text());
    ArrayNode notes = node.putArray("notes");
    stay.notes().forEach(notes::add);
    node.set("recovery", recovery(stay.recovery()));
    return node;
  }

  private @Nullable ObjectNode lineOrWater(@Nullable LineOrWater quiet) {
    if (quiet == null) {
      return null;
    }
    ObjectNode node = JsonOut.object();
    JsonOut.time(node, "fadedAt", session, quiet.fadedAt());
    node.put("verdict", quiet.verdict().word());
    node.put("wording", quiet.text());
    ArrayNode parts = node.putArray("parts");
    for (LineOrWater.Part part : quiet.parts()) {
      ObjectNode item = parts.addObject();
      item.put("source", part.source().word());
      item.put("verdict", part.verdict().word());
      LineOrWater.Against against = part.against();
      if (against == null) {
        item.putNull("ratio");
      } else {
        ObjectNode ratio = item.putObject("ratio");
        ratio.put("count", against.count());
        JsonOut.number(ratio, "minutes", against.hours() * 60);
        ratio.put("countBefore", against.before());
        JsonOut.number(ratio, "minutesBefore", against.hoursBefore() * 60);
        JsonOut.number(ratio, "ratio", against.ratio());
        JsonOut.number(ratio, "low", against.low());
        JsonOut.number(ratio, "high", against.high());
        JsonOut.number(ratio, "level", against.level());
      }
      item.put("wording", part.text());
    }
    return node;
  }

  private static @Nullable ObjectNode recovery(@Nullable Recovery recovery) {
    if (recovery == null) {
      return null;
    }
    ObjectNode node = JsonOut.object();
    node.put("bitesBefore", recovery.before().bites());
    JsonOut.number(node, "baitMinutesBefore", recovery.before().baitMinutes());
    node.put("bitesAfter", recovery.after().bites());
    JsonOut.number(node, "baitMinutesAfter", recovery.after().baitMinutes());
    JsonOut.number(node, "awayMinutes", recovery.awayMinutes());
    JsonOut.number(node, "ratio", recovery.ratio());
    JsonOut.number(node, "low", recovery.low());
    JsonOut.number(node, "high", recovery.high());
    JsonOut.number(node, "level", recovery.level());
    JsonOut.number(node, "goingRate", recovery.goingRate());
    node.put("wording", recovery.wording());
    return node;
  }

  private static ObjectNode other(StayOrGo.OtherLine other) {
    ObjectNode node = JsonOut.object();
    node.put("line", other.lineId());
    node.put("source", other.source().word());
    node.put("nextFished", other.nextFished());
    JsonOut.number(node, "fishedMinutes", other.evidence().fishedMinutes());
    node.put("fish", other.evidence().fish());
    JsonOut.number(node, "perHour", other.evidence().rate().perHour());
    JsonOut.number(node, "low", other.evidence().rate().low());
    JsonOut.number(node, "high", other.evidence().rate().high());
    node.set("weightRate", JsonOut.rate(other.weight(), "gPerHour"));
    StayOrGo.Gain gain = other.gain();
    if (gain == null) {
      node.putNull("gain");
    } else {
      ObjectNode item = node.putObject("gain");
      JsonOut.number(item, "mean", gain.mean());
      JsonOut.number(item, "low", gain.low());
      JsonOut.number(item, "high", gain.high());
      JsonOut.number(item, "level", gain.level());
      JsonOut.number(item, "probabilityBetter", gain.probabilityBetter());
    }
    return node;
  }
}
