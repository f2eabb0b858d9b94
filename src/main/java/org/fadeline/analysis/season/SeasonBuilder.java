package org.fadeline.analysis.season;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.TreeMap;
import java.util.TreeSet;
import org.fadeline.analysis.season.Season.Cell;
import org.fadeline.analysis.season.Season.FadeGroup;
import org.fadeline.analysis.season.Season.LineHours;
import org.fadeline.analysis.season.Season.PastPlainTally;
import org.fadeline.analysis.season.SessionSummary.Behind;
import org.fadeline.analysis.season.SessionSummary.FadeFound;
import org.fadeline.analysis.season.SessionSummary.Hour;
import org.fadeline.analysis.season.SessionSummary.LineSummary;
import org.jspecify.annotations.Nullable;

/** Makes a season's tables of its sessions: a pure function of them and the filter. */
public final class SeasonBuilder {
  private static final long SEED = 20_260_102L;
  private static final double FADED_FROM = 0.8;

  private final List<SessionSummary> sessions;
  private final SeasonFilter filter;

  private SeasonBuilder(List<SessionSummary> sessions, SeasonFilter filter) {
    this.sessions = sessions;
    this.filter = filter;
  }

  /**
   * Makes the tables.
   *
   * @param all every session, in any order
   * @param filter which are looked at
   */
  public static Season build(List<SessionSummary> all, SeasonFilter filter) {
    List<SessionSummary> held =
        all.stream()
            .filter(filter::holds)
            .sorted(
                Comparator.comparing((SessionSummary s) -> s.about().date())
                    .thenComparing(s -> s.about().title())
                    .thenComparing(s -> s.about().id()))
            .toList();
    SeasonBuilder builder = new SeasonBuilder(held, filter);
    return new Season(
        held,
        filter,
        builder.lines(),
        new FirstBitesOverSessions(held, filter).groups(),
        builder.fades(),
        Learner.learn(held, filter));
  }

  /** What one session gave on all its lines of one group in one hour, or in all. */
  private static final class Given {
    private double minutes;
    private double fish;
    private double grams;

    void add(Hour hour) {
      minutes += hour.fishedMinutes();
      fish += hour.fish();
      grams += hour.grams();
    }
  }

  /** One hour of one group: what each session gave, in the order of the sessions. */
  private static final class Hourly {
    private final List<Integer> sessions = new ArrayList<>();
    private final List<Given> given = new ArrayList<>();

    void add(int session, Hour hour) {
      int last = sessions.size() - 1;
      if (last < 0 || sessions.get(last) != session) {
        sessions.add(session);
        given.add(new Given());
      }
      given.get(given.size() - 1).add(hour);
    }
  }

  /** One group by hours, −1 for the whole match. */
  private static final class Group {
    private final TreeMap<Integer, Hourly> hours = new TreeMap<>();

    void add(int session, Hour hour) {
      hours.computeIfAbsent(-1, h -> new Hourly()).add(session, hour);
      hours.computeIfAbsent(hour.hour(), h -> new Hourly()).add(session, hour);
    }
  }

  private List<LineHours> lines() {
    TreeMap<String, Group> groups = new TreeMap<>();
    for (int s = 0; s < sessions.size(); s++) {
      for (LineSummary line : sessions.get(s).lines()) {
        if (filter.holds(line)) {
          for (Hour hour : line.hours()) {
            groups.computeIfAbsent(line.group(), g -> new Group()).add(s, hour);
          }
        }
      }
    }
    List<LineHours> lines = new ArrayList<>();
    groups.forEach(
        (name, group) -> {
          List<Cell> cells = new ArrayList<>();
          group.hours.forEach((hour, given) -> cells.add(cell(hour < 0 ? null : hour, given)));
          lines.add(new LineHours(name, cells.get(0), cells.subList(1, cells.size())));
        });
    return lines;
  }

  private Cell cell(@Nullable Integer hour, Hourly hourly) {
    int n = hourly.sessions.size();
    double[] fish = new double[n];
    double[] hours = new double[n];
    List<Given> weighed = new ArrayList<>();
    for (int i = 0; i < n; i++) {
      Given one = hourly.given.get(i);
      fish[i] = one.fish;
      hours[i] = one.minutes / 60;
      if (sessions.get(hourly.sessions.get(i)).result().weights().missing() == 0) {
        weighed.add(one);
      }
    }
    double fished = 0;
    for (double h : hours) {
      fished += h;
    }
    return new Cell(
        hour,
        List.copyOf(hourly.sessions),
        fished,
        SessionDraws.perHour(fish, hours, true, SEED),
        SessionDraws.perHour(
            weighed.stream().mapToDouble(g -> g.grams).toArray(),
            weighed.stream().mapToDouble(g -> g.minutes / 60).toArray(),
            false,
            SEED));
  }

  /** Fades of one group as they add up. */
  private static final class Faded {
    private final TreeSet<Integer> sessions = new TreeSet<>();
    private final List<Double> minutes = new ArrayList<>();
    private int spells;
    private int faded;
    private PastPlainTally past = PastPlainTally.NONE;

    void add(int session, FadeFound fade) {
      sessions.add(session);
      spells++;
      if (fade.probability() >= FADED_FROM) {
        faded++;
        if (fade.minute() != null) {
          minutes.add(fade.minute());
        }
      }
      if (fade.pastPlain() != null) {
        past = past.plus(fade.pastPlain());
      }
    }

    FadeGroup group(String name) {
      minutes.sort(Comparator.naturalOrder());
      return new FadeGroup(name, List.copyOf(sessions), spells, faded, minutes, past);
    }
  }

  private List<FadeGroup> fades() {
    TreeMap<String, Faded> groups = new TreeMap<>();
    for (int s = 0; s < sessions.size(); s++) {
      for (LineSummary line : sessions.get(s).lines()) {
        Behind behind = line.behind();
        if (behind != null && filter.holds(line)) {
          for (FadeFound fade : behind.fades()) {
            groups.computeIfAbsent(line.group(), g -> new Faded()).add(s, fade);
          }
        }
      }
    }
    List<FadeGroup> fades = new ArrayList<>();
    groups.forEach((name, faded) -> fades.add(faded.group(name)));
    return fades;
  }
}
