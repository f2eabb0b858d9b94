package org.fadeline.ui.season;

import java.nio.file.Path;
import java.util.IdentityHashMap;
import java.util.List;
import org.fadeline.analysis.season.Season;
import org.fadeline.analysis.season.SeasonBuilder;
import org.fadeline.analysis.season.SeasonFilter;
import org.fadeline.index.SeasonFolder;
import org.jspecify.annotations.Nullable;

/**
 * What the season screen shows. Two are equal only where they are the same: comparing ten thousand
 * summaries at each step would take too long.
 *
 * @param folder the folder chosen, or null
 * @param found what it holds as far as it was read
 * @param shown its tables under the filter
 * @param reading how far the reading is, or null while nothing is read
 * @param changed how many files changed since
 * @param problem what went wrong with the folder as a whole, or null
 */
record SeasonState(
    @Nullable Path folder,
    SeasonFolder found,
    SeasonShown shown,
    @Nullable Reading reading,
    int changed,
    @Nullable String problem) {
  static final SeasonState EMPTY = of(null);

  /**
   * A reading under way.
   *
   * @param what is being done, in a few words
   * @param done files done
   * @param of files in all
   */
  record Reading(String what, int done, int of) {}

  /** Returns a folder of which nothing is read yet. */
  static SeasonState of(@Nullable Path folder) {
    return new SeasonState(
        folder,
        new SeasonFolder(List.of(), List.of(), List.of()),
        SeasonShown.of(
            SeasonBuilder.build(List.of(), SeasonFilter.ALL),
            FilterOffers.of(List.of()),
            new IdentityHashMap<>()),
        null,
        0,
        null);
  }

  Season season() {
    return shown.season();
  }

  SeasonState withFound(SeasonFolder newFound, SeasonShown newShown) {
    return new SeasonState(folder, newFound, newShown, reading, changed, problem);
  }

  SeasonState withShown(SeasonShown newShown) {
    return withFound(found, newShown);
  }

  SeasonState withReading(@Nullable Reading newReading) {
    return new SeasonState(folder, found, shown, newReading, changed, problem);
  }

  SeasonState withChanged(int newChanged) {
    return new SeasonState(folder, found, shown, reading, newChanged, problem);
  }

  SeasonState withProblem(String newProblem) {
    return new SeasonState(folder, found, shown, null, changed, newProblem);
  }

  @Override
  public boolean equals(@Nullable Object other) {
    return this == other;
  }

  @Override
  public int hashCode() {
    return System.identityHashCode(this);
  }
}
