package org.fadeline.ui.season;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.IdentityHashMap;
import java.util.List;
import org.fadeline.analysis.season.Season;
import org.fadeline.analysis.season.SessionSummary;
import org.fadeline.analysis.season.SessionSummary.LineSummary;
import org.fadeline.index.SeasonFolder;

/**
 * A season with what its tables and pictures need beside it: worked out in the background, for of
 * many sessions it takes longer than a frame.
 *
 * @param season the season under the filter
 * @param feeds what each line of each session was fed
 * @param offers what can be filtered by
 * @param files where each session is, by the summary itself
 */
record SeasonShown(
    Season season,
    List<FeedRow> feeds,
    FilterOffers offers,
    IdentityHashMap<SessionSummary, Path> files) {
  /** What one line of one session was fed. */
  record FeedRow(int session, SessionSummary of, LineSummary line) {}

  static SeasonShown of(
      Season season, FilterOffers offers, IdentityHashMap<SessionSummary, Path> files) {
    return new SeasonShown(season, feeds(season), offers, files);
  }

  /** Returns where each session of a folder is. */
  static IdentityHashMap<SessionSummary, Path> files(SeasonFolder found) {
    IdentityHashMap<SessionSummary, Path> files = new IdentityHashMap<>();
    found.entries().forEach(e -> files.put(e.summary(), e.file()));
    return files;
  }

  private static List<FeedRow> feeds(Season season) {
    List<FeedRow> rows = new ArrayList<>();
    for (int i = 0; i < season.sessions().size(); i++) {
      SessionSummary session = season.sessions().get(i);
      for (LineSummary line : session.lines()) {
        if (line.feed().feeds() > 0 && season.filter().holds(line)) {
          rows.add(new FeedRow(i, session, line));
        }
      }
    }
    return rows;
  }
}
