package org.fadeline.analysis.season;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.TreeMap;
import org.fadeline.analysis.season.Season.PerHour;
import org.fadeline.analysis.season.SessionSummary.LineSummary;
import org.jspecify.annotations.Nullable;

/**
 * Feed given against what came, of one kind of line. How often it was fed is counted, for amounts
 * are logged in units that do not add up. More is often fed because fish come, so that a difference
 * is no proof that feed made it.
 *
 * @param group the kind, or the name of a line without one
 * @param sessions each session in which it was fished, by feeds
 * @param fedOnly sessions in which it was fed and never fished
 * @param fewer the sessions fed at most as often as the middle one; null without any
 * @param more those fed more often; null where all were fed alike
 */
public record FeedGroup(
    String group, List<Fed> sessions, int fedOnly, @Nullable Share fewer, @Nullable Share more) {
  private static final long SEED = 20_260_104L;

  /** Copies the list. */
  public FeedGroup {
    sessions = List.copyOf(sessions);
  }

  /**
   * All lines of the kind in one session.
   *
   * @param session index of the session in {@link Season#sessions()}
   * @param feeds how often it was fed, each feed of a pattern counted
   * @param fishedHours above 0
   * @param fish landed, those of a spell's opening left out
   * @param grams their weight, or null where a fish of the session has none
   */
  public record Fed(int session, int feeds, double fishedHours, int fish, @Nullable Double grams) {
    /** Returns fish an hour fished. */
    public double fishPerHour() {
      return fish / fishedHours;
    }

    /** Returns grams an hour fished, or null where weights are missing. */
    public @Nullable Double gramsPerHour() {
      return grams == null ? null : (Double) (grams / fishedHours);
    }
  }

  /**
   * Sessions fed about as often.
   *
   * @param fewest feeds of the session fed least
   * @param most feeds of the session fed most
   * @param sessions their indices
   * @param fish landed an hour fished
   * @param weight grams an hour fished, over sessions with every fish's weight
   */
  public record Share(int fewest, int most, List<Integer> sessions, PerHour fish, PerHour weight) {
    /** Copies the list. */
    public Share {
      sessions = List.copyOf(sessions);
    }
  }

  /** Returns every kind of line that was fed, in alphabetical order. */
  public static List<FeedGroup> of(Season season) {
    TreeMap<String, List<Fed>> groups = new TreeMap<>();
    TreeMap<String, Integer> fedOnly = new TreeMap<>();
    for (int s = 0; s < season.sessions().size(); s++) {
      SessionSummary session = season.sessions().get(s);
      TreeMap<String, List<LineSummary>> lines = new TreeMap<>();
      for (LineSummary line : session.lines()) {
        if (season.filter().holds(line)) {
          lines.computeIfAbsent(line.group(), g -> new ArrayList<>()).add(line);
        }
      }
      for (var kind : lines.entrySet()) {
        Fed fed = fed(s, session.result().weights().missing() == 0, kind.getValue());
        if (fed.fishedHours > 0) {
          groups.computeIfAbsent(kind.getKey(), g -> new ArrayList<>()).add(fed);
        } else if (fed.feeds > 0) {
          fedOnly.merge(kind.getKey(), 1, Integer::sum);
        }
      }
    }
    fedOnly.keySet().forEach(g -> groups.computeIfAbsent(g, n -> new ArrayList<>()));
    List<FeedGroup> all = new ArrayList<>();
    groups.forEach(
        (name, sessions) -> {
          int only = fedOnly.getOrDefault(name, 0);
          if (only > 0 || sessions.stream().anyMatch(f -> f.feeds > 0)) {
            all.add(group(name, sessions, only));
          }
        });
    return all;
  }

  private static Fed fed(int session, boolean weighed, List<LineSummary> lines) {
    int feeds = 0;
    int fish = 0;
    double minutes = 0;
    double grams = 0;
    for (LineSummary line : lines) {
      feeds += line.feed().feeds();
      fish += line.fish();
      minutes += line.fishedMinutes();
      grams += line.grams();
    }
    return new Fed(session, feeds, minutes / 60, fish, weighed ? (Double) grams : null);
  }

  private static FeedGroup group(String name, List<Fed> sessions, int fedOnly) {
    List<Fed> byFeeds =
        sessions.stream()
            .sorted(Comparator.comparingInt(Fed::feeds).thenComparingInt(Fed::session))
            .toList();
    if (byFeeds.isEmpty()) {
      return new FeedGroup(name, byFeeds, fedOnly, null, null);
    }
    int middle = byFeeds.get((byFeeds.size() - 1) / 2).feeds;
    return new FeedGroup(
        name,
        byFeeds,
        fedOnly,
        share(byFeeds.stream().filter(f -> f.feeds <= middle).toList()),
        share(byFeeds.stream().filter(f -> f.feeds > middle).toList()));
  }

  private static @Nullable Share share(List<Fed> sessions) {
    if (sessions.isEmpty()) {
      return null;
    }
    List<Fed> weighed = sessions.stream().filter(f -> f.grams != null).toList();
    return new Share(
        sessions.get(0).feeds,
        sessions.get(sessions.size() - 1).feeds,
        sessions.stream().map(Fed::session).sorted().toList(),
        SessionDraws.perHour(
            sessions.stream().mapToDouble(Fed::fish).toArray(), hours(sessions), true, SEED),
        SessionDraws.perHour(
            weighed.stream().mapToDouble(f -> f.grams == null ? 0 : f.grams).toArray(),
            hours(weighed),
            false,
            SEED));
  }

  private static double[] hours(List<Fed> sessions) {
    return sessions.stream().mapToDouble(Fed::fishedHours).toArray();
  }
}
