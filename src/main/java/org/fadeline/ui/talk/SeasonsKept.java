package org.fadeline.ui.talk;

import java.io.IOException;
import java.nio.file.Path;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.concurrent.ConcurrentHashMap;
import org.fadeline.analysis.ReviewSettings;
import org.fadeline.analysis.season.Season;
import org.fadeline.analysis.season.SeasonBuilder;
import org.fadeline.export.TalkSeasons;
import org.fadeline.index.SeasonFolder;
import org.fadeline.index.SeasonIndex;
import org.fadeline.io.Problem;
import org.fadeline.io.ReadOptions;
import org.fadeline.model.talk.SeasonSource;

/**
 * The seasons that talks show, read off the thread that shows them. While a talk is typed at, a
 * folder is looked at again after a while only, for a season is long; what is written is always
 * looked at anew.
 */
final class SeasonsKept {
  private static final long LOOK_AGAIN_NANOS = 30_000_000_000L;

  private record Known(SeasonIndex index, SeasonFolder found, long looked) {}

  private final Map<Path, Known> folders = new ConcurrentHashMap<>();

  /** How fresh a season must be. */
  enum Freshness {
    /** As its folder was not long ago. */
    RECENT,
    /** As its folder is now. */
    NOW
  }

  /** Returns the seasons by their ids; what cannot be read is told. */
  Map<String, Season> load(
      List<SeasonSource> sources, Freshness freshness, List<Problem> problems) {
    Map<String, Season> seasons = new LinkedHashMap<>();
    for (SeasonSource source : sources) {
      try {
        seasons.put(
            source.id(),
            SeasonBuilder.build(
                found(source.folder(), freshness).summaries(),
                TalkSeasons.filterOf(source.sift())));
      } catch (IOException e) {
        problems.add(
            Problem.ofFile(
                String.valueOf(source.folder().getFileName()),
                "the folder cannot be read (" + e.getMessage() + ")",
                "check that it is there"));
      }
    }
    return seasons;
  }

  private SeasonFolder found(Path folder, Freshness freshness) throws IOException {
    Known known = folders.get(folder);
    long now = System.nanoTime();
    if (freshness == Freshness.RECENT && known != null && now - known.looked < LOOK_AGAIN_NANOS) {
      return known.found;
    }
    SeasonIndex index =
        known == null
            ? new SeasonIndex(folder, ReadOptions.DEFAULT, ReviewSettings.DEFAULT)
            : known.index;
    if (known == null) {
      // What the Season screen worked out need not be worked out again.
      index.load(folder.resolve(SeasonIndex.KEPT));
    }
    SeasonFolder found = index.read(SeasonIndex.Depth.WITH_FADES, SeasonIndex.Watcher.NONE);
    folders.put(folder, new Known(index, found, now));
    return found;
  }
}
