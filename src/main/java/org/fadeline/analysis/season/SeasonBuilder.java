package org.fadeline.analysis.season;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.List;
import java.util.Objects;
import java.util.concurrent.CompletableFuture;
import java.util.stream.Stream;
import org.fadeline.analysis.ReviewSettings;
import org.fadeline.analysis.season.Season.Cell;
import org.fadeline.analysis.season.Season.FadeGroup;
import org.fadeline.analysis.season.Season.FirstBiteGroup;
import org.fadeline.analysis.season.Season.LineHours;
import org.fadeline.analysis.season.Season.PastPlainTally;
import org.fadeline.analysis.season.SessionSummary.Behind;
import org.fadeline.analysis.season.SessionSummary.FadeFound;
import org.fadeline.analysis.season.SessionSummary.Hour;
import org.jspecify.annotations.Nullable;

/**
 * Makes a season's tables: a pure function of the sessions and the filter. The sessions are laid
 * out once; each filter then takes one pass over them.
 */
public final class SeasonBuilder {
  private static final long SEED = 20_260_102L;

  private final SeasonColumns columns;

  /**
   * Lays the sessions out.
   *
   * @param all every session, in any order
   */
  public SeasonBuilder(List<SessionSummary> all) {
    columns = new SeasonColumns(all);
  }

  /** Makes the tables of the sessions and lines a filter holds. */
  public Season build(SeasonFilter filter) {
    SeasonColumns.Held held = columns.held(filter);
    // First bites take about as long as the rest: each has a core.
    CompletableFuture<List<FirstBiteGroup>> firstBites =
        CompletableFuture.supplyAsync(new FirstBitesOverSessions(held)::groups);
    List<LineHours> lines = lines(held);
    List<FadeGroup> fades = fades(held);
    Learned learned = Learner.learn(held);
    return new Season(held.sessions, filter, lines, firstBites.join(), fades, learned);
  }

  /**
   * Lays the sessions out and makes the tables.
   *
   * @param all every session, in any order
   * @param filter which are looked at
   */
  public static Season build(List<SessionSummary> all, SeasonFilter filter) {
    return new SeasonBuilder(all).build(filter);
  }

  /** One hour of one kind of line, or all its hours: what each session gave, by date. */
  private static final class Given {
    private final @Nullable Integer hour;
    private int size;
    private int[] sessions = new int[16];
    private double[] minutes = new double[16];
    private double[] fish = new double[16];
    private double[] grams = new double[16];

    Given(@Nullable Integer hour) {
      this.hour = hour;
    }

    void add(int session, Hour more) {
      if (size == 0 || sessions[size - 1] != session) {
        if (size == sessions.length) {
          grow();
        }
        sessions[size++] = session;
      }
      minutes[size - 1] += more.fishedMinutes();
      fish[size - 1] += more.fish();
      grams[size - 1] += more.grams();
    }

    private void grow() {
      sessions = Arrays.copyOf(sessions, 2 * size);
      minutes = Arrays.copyOf(minutes, 2 * size);
      fish = Arrays.copyOf(fish, 2 * size);
      grams = Arrays.copyOf(grams, 2 * size);
    }

    Cell cell(List<SessionSummary> all) {
      double[] hours = new double[size];
      double[] weighed = new double[size];
      double[] weighedHours = new double[size];
      double fished = 0;
      int kept = 0;
      for (int i = 0; i < size; i++) {
        hours[i] = minutes[i] / 60;
        fished += hours[i];
        if (all.get(sessions[i]).result().weights().missing() == 0) {
          weighed[kept] = grams[i];
          weighedHours[kept++] = hours[i];
        }
      }
      return new Cell(
          hour,
          Arrays.stream(sessions, 0, size).boxed().toList(),
          fished,
          SessionDraws.perHour(Arrays.copyOf(fish, size), hours, true, SEED),
          SessionDraws.perHour(
              Arrays.copyOf(weighed, kept), Arrays.copyOf(weighedHours, kept), false, SEED));
    }
  }

  /** One kind of line, in all and by hours. */
  private static final class Group {
    private final Given whole = new Given(null);
    private final List<@Nullable Given> hours = new ArrayList<>();

    void add(int session, Hour hour) {
      whole.add(session, hour);
      while (hours.size() <= hour.hour()) {
        hours.add(null);
      }
      Given given = hours.get(hour.hour());
      if (given == null) {
        given = new Given(hour.hour());
        hours.set(hour.hour(), given);
      }
      given.add(session, hour);
    }

    Stream<Given> all() {
      return Stream.concat(Stream.of(whole), hours.stream().filter(Objects::nonNull));
    }
  }

  private List<LineHours> lines(SeasonColumns.Held held) {
    @Nullable Group[] groups = new @Nullable Group[columns.groups.length];
    held.eachLine(
        (session, kind, line) -> {
          for (Hour hour : line.hours()) {
            Group group = groups[kind];
            if (group == null) {
              group = new Group();
              groups[kind] = group;
            }
            group.add(session, hour);
          }
        });
    List<LineHours> lines = new ArrayList<>();
    for (int g = 0; g < groups.length; g++) {
      Group group = groups[g];
      if (group != null) {
        // Each cell draws its own sessions: both cores share them.
        List<Cell> cells = group.all().parallel().map(given -> given.cell(held.sessions)).toList();
        lines.add(new LineHours(columns.groups[g], cells.get(0), cells.subList(1, cells.size())));
      }
    }
    return lines;
  }

  /** Fades of one group as they add up. */
  private static final class Faded {
    private final List<Integer> sessions = new ArrayList<>();
    private final List<Double> minutes = new ArrayList<>();
    private int spells;
    private int faded;
    private PastPlainTally past = PastPlainTally.NONE;

    void add(int session, FadeFound fade) {
      if (sessions.isEmpty() || sessions.get(sessions.size() - 1) != session) {
        sessions.add(session);
      }
      spells++;
      if (fade.probability() >= ReviewSettings.MARKED_FROM) {
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
      return new FadeGroup(name, sessions, spells, faded, minutes, past);
    }
  }

  private List<FadeGroup> fades(SeasonColumns.Held held) {
    @Nullable Faded[] groups = new @Nullable Faded[columns.groups.length];
    held.eachLine(
        (session, kind, line) -> {
          Behind behind = line.behind();
          if (behind != null && !behind.fades().isEmpty()) {
            Faded faded = groups[kind] == null ? new Faded() : groups[kind];
            groups[kind] = faded;
            behind.fades().forEach(fade -> faded.add(session, fade));
          }
        });
    List<FadeGroup> fades = new ArrayList<>();
    for (int g = 0; g < groups.length; g++) {
      Faded faded = groups[g];
      if (faded != null) {
        fades.add(faded.group(columns.groups[g]));
      }
    }
    return fades;
  }
}
