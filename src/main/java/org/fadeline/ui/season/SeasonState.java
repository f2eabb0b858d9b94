package org.fadeline.ui.season;

import java.nio.file.Path;
import java.util.List;
import org.fadeline.analysis.season.Season;
import org.fadeline.analysis.season.SeasonBuilder;
import org.fadeline.analysis.season.SeasonFilter;
import org.fadeline.index.SeasonFolder;
import org.jspecify.annotations.Nullable;

/**
 * What the season screen shows.
 *
 * @param folder the folder chosen, or null
 * @param found what it holds as far as it was read
 * @param season its tables under the filter
 * @param reading how far the reading is, or null while nothing is read
 * @param changed how many files changed since
 * @param problem what went wrong with the folder as a whole, or null
 */
record SeasonState(
    @Nullable Path folder,
    SeasonFolder found,
    Season season,
    @Nullable Reading reading,
    int changed,
    @Nullable String problem) {
  static final SeasonState EMPTY =
      new SeasonState(
          null,
          new SeasonFolder(List.of(), List.of(), List.of()),
          SeasonBuilder.build(List.of(), SeasonFilter.ALL),
          null,
          0,
          null);

  /**
   * A reading under way.
   *
   * @param what is being done, in a few words
   * @param done files done
   * @param of files in all
   */
  record Reading(String what, int done, int of) {}

  SeasonState withFound(SeasonFolder newFound, Season newSeason) {
    return new SeasonState(folder, newFound, newSeason, reading, changed, problem);
  }

  SeasonState withSeason(Season newSeason) {
    return withFound(found, newSeason);
  }

  SeasonState withReading(@Nullable Reading newReading) {
    return new SeasonState(folder, found, season, newReading, changed, problem);
  }

  SeasonState withChanged(int newChanged) {
    return new SeasonState(folder, found, season, reading, newChanged, problem);
  }

  SeasonState withProblem(String newProblem) {
    return new SeasonState(folder, found, season, null, changed, newProblem);
  }
}
