package org.fadeline.export;

import java.util.ArrayList;
import java.util.List;
import org.fadeline.analysis.season.FeedGroup;
import org.fadeline.analysis.season.Learned.GroupLearned;
import org.fadeline.analysis.season.Season;
import org.fadeline.analysis.season.Season.FirstBiteGroup;
import org.fadeline.analysis.season.SessionSummary;
import org.fadeline.analysis.season.StandingOut;
import org.fadeline.stats.GammaPosterior;
import org.jspecify.annotations.Nullable;

/** Tables of a season by kind of line, bait or water, and of the sessions that stand out. */
final class SeasonKindTables {
  private SeasonKindTables() {}

  static Table firstBites(Season season) {
    List<List<@Nullable Object>> rows = new ArrayList<>();
    for (FirstBiteGroup group : season.firstBites()) {
      Season.Curve curve = group.curve();
      rows.add(
          Table.row(
              group.by().word(),
              group.name(),
              group.sessions().size(),
              group.tally().feeds(),
              group.tally().bites(),
              group.tally().late(),
              curve == null ? null : curve.medianMinutes(),
              curve == null ? null : curve.low(),
              curve == null ? null : curve.high(),
              group.againstOthers().p()));
    }
    return new Table(
        "season-first-bites",
        List.of(
            "by",
            "name",
            "sessions",
            "feeds",
            "bites",
            "first fished late",
            "half bit within min",
            "low",
            "high",
            "p against the others"),
        rows);
  }

  static Table fed(Season season) {
    List<List<@Nullable Object>> rows = new ArrayList<>();
    for (FeedGroup group : season.feed()) {
      FeedGroup.Share fewer = group.fewer();
      FeedGroup.Share more = group.more();
      if (fewer != null) {
        rows.add(share(group.group(), fewer));
      }
      if (more != null) {
        rows.add(share(group.group(), more));
      }
    }
    return new Table(
        "season-feed-by-line",
        List.of(
            "line",
            "feeds from",
            "feeds to",
            "sessions",
            "fish an hour",
            "fish low",
            "fish high",
            "g an hour",
            "g low",
            "g high"),
        rows);
  }

  private static List<@Nullable Object> share(String line, FeedGroup.Share share) {
    return Table.row(
        line,
        share.fewest(),
        share.most(),
        share.sessions().size(),
        share.fish().perHour(),
        share.fish().low(),
        share.fish().high(),
        share.weight().perHour(),
        share.weight().low(),
        share.weight().high());
  }

  static Table standingOut(Season season) {
    List<List<@Nullable Object>> rows = new ArrayList<>();
    for (StandingOut one : season.standing()) {
      SessionSummary session = season.sessions().get(one.session());
      rows.add(
          Table.row(
              SeasonTableSet.day(session),
              session.about().title(),
              one.measure().word(),
              one.value(),
              one.low(),
              one.high(),
              one.sessions()));
    }
    return new Table(
        "season-standing-out",
        List.of("date", "title", "in", "value", "lower quartile", "upper quartile", "sessions"),
        rows);
  }

  static Table learned(Season season) {
    List<List<@Nullable Object>> rows = new ArrayList<>();
    for (GroupLearned group : season.learned().groups()) {
      GammaPosterior pool = group.pool();
      rows.add(
          Table.row(
              group.group(),
              group.sessions(),
              group.bunching(),
              pool == null ? null : pool.mean(),
              pool == null ? null : pool.quantile(0.05),
              pool == null ? null : pool.quantile(0.95)));
    }
    return new Table(
        "season-learned",
        List.of("line", "sessions", "bunching", "fish an hour", "5% point", "95% point"),
        rows);
  }
}
