package org.fadeline.report;

import org.fadeline.analysis.season.FeedGroup;
import org.fadeline.analysis.season.Season;
import org.fadeline.analysis.season.SessionSummary;
import org.jspecify.annotations.Nullable;
import tools.jackson.databind.node.ArrayNode;
import tools.jackson.databind.node.ObjectNode;

/** Feed given against what came, as the JSON of a season has it. */
final class SeasonFeedJson {
  private SeasonFeedJson() {}

  /** One row for each line of each session. */
  static ArrayNode bySession(Season season) {
    ArrayNode all = JsonOut.array();
    for (int s = 0; s < season.sessions().size(); s++) {
      for (SessionSummary.LineSummary line : season.sessions().get(s).lines()) {
        if (!season.filter().holds(line)) {
          continue;
        }
        ObjectNode node = all.addObject();
        node.put("session", s);
        node.put("line", line.group());
        node.put("name", line.name());
        node.put("feeds", line.feed().feeds());
        node.set("amounts", CompareJson.amounts(line.feed()));
        JsonOut.number(node, "fishedMinutes", line.fishedMinutes());
        node.put("fish", line.fish());
        JsonOut.number(node, "weightG", line.grams());
      }
    }
    return all;
  }

  /** Each kind of line: its sessions by feeds, and what those fed less and more gave. */
  static ArrayNode byLine(Season season) {
    ArrayNode all = JsonOut.array();
    for (FeedGroup group : season.feed()) {
      ObjectNode node = all.addObject();
      node.put("line", group.group());
      ArrayNode sessions = node.putArray("sessions");
      for (FeedGroup.Fed fed : group.sessions()) {
        ObjectNode item = sessions.addObject();
        item.put("session", fed.session());
        item.put("feeds", fed.feeds());
        JsonOut.number(item, "fishedMinutes", fed.fishedHours() * 60);
        item.put("fish", fed.fish());
        JsonOut.number(item, "weightG", fed.grams());
      }
      node.put("fedNotFished", group.fedOnly());
      share(node, "fewer", group.fewer());
      share(node, "more", group.more());
    }
    return all;
  }

  private static void share(ObjectNode parent, String name, FeedGroup.@Nullable Share share) {
    if (share == null) {
      parent.putNull(name);
      return;
    }
    ObjectNode node = parent.putObject(name);
    node.put("feedsFrom", share.fewest());
    node.put("feedsTo", share.most());
    SeasonJson.indices(node, share.sessions());
    node.set("fish", SeasonJson.perHour(share.fish(), "perHour"));
    node.set("weight", SeasonJson.perHour(share.weight(), "gPerHour"));
  }
}
