package org.fadeline.analysis.season;

import java.util.ArrayList;
import java.util.Arrays;
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
import org.jspecify.annotations.Nullable;

/**
 * Makes a season's tables: a pure function of the sessions and the filter. The sessions are laid
 * out once; each filter then takes one pass over them.
 */
public final class SeasonBuilder {
  private static final long SEED = 20_260_102L;

  private final SeasonColumns columns;
  private final FirstBitesOverSessions firstBites;

  /**
   * Lays the sessions out.
   *
   * @param all every session, in any order
   */
  public SeasonBuilder(List<SessionSummary> all) {
    columns = new SeasonColumns(all);
    firstBites = new FirstBitesOverSessions(columns);
  }

  /** Makes the tables of the sessions and lines a filter holds. */
  public Season build(SeasonFilter filter) {
    SeasonColumns.Held held = columns.held(filter);
    // First bites take longer than the rest: each has a core, and the first that is free helps.
    CompletableFuture<Season> rest =
        CompletableFuture.supplyAsync(
            () ->
                new Season(
                    held.sessions,
                    filter,
                    lines(held),
                    List.of(),
                    fades(held),
                    FeedGroup.of(held),
                    StandingOut.of(held),
                    Learner.learn(held)));
    List<FirstBiteGroup> bites = firstBites.groups(held);
    return rest.join().withFirstBites(bites);
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

    void add(int session, LineColumns from, int row) {
      if (size == 0 || sessions[size - 1] != session) {
        if (size == sessions.length) {
          grow();
        }
        sessions[size++] = session;
      }
      minutes[size - 1] += from.hourMinutes[row];
      fish[size - 1] += from.hourFish[row];
      grams[size - 1] += from.hourGrams[row];
    }

    private void grow() {
      sessions = Arrays.copyOf(sessions, 2 * size);
      minutes = Arrays.copyOf(minutes, 2 * size);
      fish = Arrays.copyOf(fish, 2 * size);
      grams = Arrays.copyOf(grams, 2 * size);
    }

    Cell cell(SeasonColumns.Held held) {
      double[] hours = new double[size];
      double[] weighed = new double[size];
      double[] weighedHours = new double[size];
      double fished = 0;
      int kept = 0;
      for (int i = 0; i < size; i++) {
        hours[i] = minutes[i] / 60;
        fished += hours[i];
        if (held.columns().weighed[held.of[sessions[i]]]) {
          weighed[kept] = grams[i];
          weighedHours[kept++] = hours[i];
        }
      }
      return new Cell(
          hour,
          SessionIndices.of(sessions, size),
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

    void add(int session, LineColumns from, int row) {
      whole.add(session, from, row);
      int hour = from.hour[row];
      while (hours.size() <= hour) {
        hours.add(null);
      }
      Given given = hours.get(hour);
      if (given == null) {
        given = new Given(hour);
        hours.set(hour, given);
      }
      given.add(session, from, row);
    }

    Stream<Given> all() {
      return Stream.concat(Stream.of(whole), hours.stream().filter(Objects::nonNull));
    }
  }

  private List<LineHours> lines(SeasonColumns.Held held) {
    @Nullable Group[] groups = new @Nullable Group[columns.groups.length];
    LineColumns from = columns.lines;
    held.eachLine(
        (session, kind, line) -> {
          for (int row = from.firstHour[line]; row < from.firstHour[line + 1]; row++) {
            Group group = groups[kind];
            if (group == null) {
              group = new Group();
              groups[kind] = group;
            }
            group.add(session, from, row);
          }
        });
    List<LineHours> lines = new ArrayList<>();
    for (int g = 0; g < groups.length; g++) {
      Group group = groups[g];
      if (group != null) {
        // Each cell draws its own sessions: both cores share them.
        List<Cell> cells = group.all().parallel().map(given -> given.cell(held)).toList();
        lines.add(new LineHours(columns.groups[g], cells.get(0), cells.subList(1, cells.size())));
      }
    }
    return lines;
  }

  /** Fades of one group as they add up. */
  private static final class Faded {
    private int[] sessions = new int[16];
    private double[] minutes = new double[16];
    private int held;
    private int timed;
    private int spells;
    private int faded;
    private int stays;
    private double pastMinutes;
    private int pastFish;
    private double pastGrams;

    void add(int session, LineColumns from, int fade) {
      if (held == 0 || sessions[held - 1] != session) {
        sessions = held == sessions.length ? Arrays.copyOf(sessions, 2 * held) : sessions;
        sessions[held++] = session;
      }
      spells++;
      if (from.fadeProbability[fade] >= ReviewSettings.MARKED_FROM) {
        faded++;
        if (!Double.isNaN(from.fadeMinute[fade])) {
          minutes = timed == minutes.length ? Arrays.copyOf(minutes, 2 * timed) : minutes;
          minutes[timed++] = from.fadeMinute[fade];
        }
      }
      if (!Double.isNaN(from.pastMinutes[fade])) {
        stays++;
        pastMinutes += from.pastMinutes[fade];
        pastFish += from.pastFish[fade];
        pastGrams += from.pastGrams[fade];
      }
    }

    FadeGroup group(String name) {
      return new FadeGroup(
          name,
          SessionIndices.of(sessions, held),
          spells,
          faded,
          Arrays.stream(minutes, 0, timed).sorted().boxed().toList(),
          new PastPlainTally(stays, pastMinutes, pastFish, pastGrams));
    }
  }

  private List<FadeGroup> fades(SeasonColumns.Held held) {
    @Nullable Faded[] groups = new @Nullable Faded[columns.groups.length];
    LineColumns from = columns.lines;
    held.eachLine(
        (session, kind, line) -> {
          for (int fade = from.firstFade[line]; fade < from.firstFade[line + 1]; fade++) {
            Faded faded = groups[kind] == null ? new Faded() : groups[kind];
            groups[kind] = faded;
            faded.add(session, from, fade);
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
