package org.fadeline.report;

import org.fadeline.analysis.LeavingRule;
import org.fadeline.analysis.LeavingRule.Decline;
import org.fadeline.analysis.LeavingRule.LeaveAfter;
import org.fadeline.analysis.LeavingRule.Withheld;
import org.jspecify.annotations.Nullable;
import tools.jackson.databind.node.ObjectNode;

/** How long a stay on a line pays, as JSON. */
final class LeavingJson {
  private LeavingJson() {}

  /** Returns the rule, or null where the line was not fished. */
  static @Nullable ObjectNode of(@Nullable LeavingRule rule) {
    if (rule == null) {
      return null;
    }
    ObjectNode node = JsonOut.object();
    node.put("visits", rule.visits());
    node.put("bites", rule.bites());
    JsonOut.number(node, "movingMinutes", rule.movingMinutes());
    Decline decline = rule.decline();
    if (decline == null) {
      node.putNull("decline");
    } else {
      ObjectNode item = node.putObject("decline");
      JsonOut.number(item, "startPerHour", decline.startingRate());
      JsonOut.number(item, "perMinute", decline.decay());
      JsonOut.number(item, "low", decline.limits().low());
      JsonOut.number(item, "high", decline.limits().high());
      JsonOut.number(item, "lowWide", decline.wide().low());
      JsonOut.number(item, "highWide", decline.wide().high());
      JsonOut.number(item, "halfLifeMinutes", decline.halfLifeMinutes());
      JsonOut.number(item, "p", decline.limits().p());
      JsonOut.number(item, "pWide", decline.wide().p());
      JsonOut.number(item, "bunching", decline.bunching());
    }
    LeaveAfter leave = rule.leaveAfter();
    if (leave == null) {
      node.putNull("leaveAfter");
    } else {
      ObjectNode item = node.putObject("leaveAfter");
      JsonOut.number(item, "minutes", leave.minutes());
      JsonOut.number(item, "low", leave.limits().low());
      JsonOut.number(item, "high", leave.limits().high());
      JsonOut.number(item, "lowWide", leave.wide().low());
      JsonOut.number(item, "highWide", leave.wide().high());
      JsonOut.number(item, "level", leave.level());
    }
    Withheld withheld = rule.withheld();
    node.put("withheld", withheld == null ? null : withheld.word());
    node.put("wording", rule.wording());
    return node;
  }
}
