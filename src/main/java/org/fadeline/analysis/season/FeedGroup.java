package org.fadeline.analysis.season;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.List;
import org.fadeline.analysis.season.Season.PerHour;
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
      sessions = SessionIndices.copyOf(sessions);
    }

    /** Returns how often they were fed: "3", "2–5". */
    public String feeds() {
      return fewest == most ? Integer.toString(most) : fewest + "–" + most;
    }
  }

  /** Returns every kind of line held that was fed, in alphabetical order. */
  static List<FeedGroup> of(SeasonColumns.Held held) {
    SeasonColumns columns = held.columns();
    @Nullable Sums[] kinds = new @Nullable Sums[columns.groups.length];
    held.eachLine(
        (session, kind, line) -> {
          Sums sums = kinds[kind] == null ? new Sums(held) : kinds[kind];
          kinds[kind] = sums;
          sums.add(session, line);
        });
    List<FeedGroup> all = new ArrayList<>();
    for (int kind = 0; kind < kinds.length; kind++) {
      Sums sums = kinds[kind];
      if (sums != null) {
        sums.close();
        if (sums.anyFed) {
          all.add(group(columns.groups[kind], sums.sessions, sums.fedOnly));
        }
      }
    }
    return all;
  }

  /** One kind of line, session after session. */
  private static final class Sums {
    private final SeasonColumns.Held held;
    private final List<Fed> sessions = new ArrayList<>();
    private int fedOnly;
    private boolean anyFed;
    private int session = -1;
    private int feeds;
    private int fish;
    private double minutes;
    private double grams;

    Sums(SeasonColumns.Held held) {
      this.held = held;
    }

    void add(int newSession, int line) {
      if (newSession != session) {
        close();
        session = newSession;
      }
      LineColumns lines = held.columns().lines;
      feeds += lines.feeds[line];
      fish += lines.fish[line];
      minutes += lines.minutes[line];
      grams += lines.grams[line];
    }

    /** Puts the session in hand to the others. */
    void close() {
      anyFed |= feeds > 0;
      if (minutes > 0) {
        boolean weighed = held.columns().weighed[held.of[session]];
        sessions.add(new Fed(session, feeds, minutes / 60, fish, weighed ? (Double) grams : null));
      } else if (feeds > 0) {
        fedOnly++;
      }
      feeds = 0;
      fish = 0;
      minutes = 0;
      grams = 0;
    }
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
    int first = 0;
    while (first < byFeeds.size() && byFeeds.get(first).feeds <= middle) {
      first++;
    }
    return new FeedGroup(
        name,
        byFeeds,
        fedOnly,
        share(byFeeds.subList(0, first)),
        share(byFeeds.subList(first, byFeeds.size())));
  }

  private static @Nullable Share share(List<Fed> sessions) {
    if (sessions.isEmpty()) {
      return null;
    }
    int n = sessions.size();
    int[] indices = new int[n];
    double[] fish = new double[n];
    double[] hours = new double[n];
    double[] grams = new double[n];
    double[] weighedHours = new double[n];
    int weighed = 0;
    for (int i = 0; i < n; i++) {
      Fed fed = sessions.get(i);
      indices[i] = fed.session;
      fish[i] = fed.fish;
      hours[i] = fed.fishedHours;
      if (fed.grams != null) {
        grams[weighed] = fed.grams;
        weighedHours[weighed++] = fed.fishedHours;
      }
    }
    Arrays.sort(indices);
    return new Share(
        sessions.get(0).feeds,
        sessions.get(n - 1).feeds,
        SessionIndices.of(indices, n),
        SessionDraws.perHour(fish, hours, true, SEED),
        SessionDraws.perHour(
            Arrays.copyOf(grams, weighed), Arrays.copyOf(weighedHours, weighed), false, SEED));
  }
}
