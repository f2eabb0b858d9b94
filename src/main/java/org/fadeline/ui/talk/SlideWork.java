package org.fadeline.ui.talk;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.concurrent.ConcurrentHashMap;
import org.fadeline.analysis.Review;
import org.fadeline.analysis.ReviewSettings;
import org.fadeline.analysis.Reviewer;
import org.fadeline.export.SlideChecks;
import org.fadeline.export.TalkMaterial;
import org.fadeline.export.TalkPages;
import org.fadeline.export.Unnamed;
import org.fadeline.figure.SlideFigure;
import org.fadeline.io.Problem;
import org.fadeline.io.ReadOptions;
import org.fadeline.io.ReadResult;
import org.fadeline.io.open.SessionFiles;
import org.fadeline.model.Session;
import org.fadeline.model.Units;
import org.fadeline.model.talk.Slide;
import org.fadeline.model.talk.Source;
import org.fadeline.model.talk.Talk;
import org.jspecify.annotations.Nullable;

/**
 * Works the slides of a talk out, off the thread that shows them. Sessions are read and reviewed
 * once, until their file changes.
 */
final class SlideWork {
  private record Kept(Path file, Units units, long changed) {}

  private final SeasonsKept seasons = new SeasonsKept();
  private final Map<Kept, Review> kept = new ConcurrentHashMap<>();

  /** The session in hand, whose file may be behind it. */
  record Open(Path file, Review review) {}

  /**
   * The sessions of a talk.
   *
   * @param material a review for each that could be read
   * @param problems what is wrong with the others
   */
  record Loaded(TalkMaterial material, List<Problem> problems) {
    Loaded {
      problems = List.copyOf(problems);
    }
  }

  /**
   * One slide, ready to be looked at.
   *
   * @param page the slide, or null where it cannot be shown
   * @param remarks what is too much, too small or missing on it
   * @param leftOut what the talk leaves out
   * @param sessions the sessions by their ids in the talk
   */
  record Shown(
      @Nullable SlideFigure page,
      List<String> remarks,
      List<String> leftOut,
      Map<String, Session> sessions) {
    /** Nothing to be seen. */
    static final Shown NOTHING = new Shown(null, List.of(), List.of(), Map.of());

    Shown {
      remarks = List.copyOf(remarks);
      leftOut = List.copyOf(leftOut);
      sessions = Map.copyOf(sessions);
    }
  }

  /** Reads and reviews the sessions of a talk that are not known yet, its seasons as they are. */
  Loaded load(Talk talk, @Nullable Open open) {
    return load(talk, open, SeasonsKept.Freshness.NOW);
  }

  private Loaded load(Talk talk, @Nullable Open open, SeasonsKept.Freshness freshness) {
    Map<String, Review> reviews = new LinkedHashMap<>();
    List<Problem> problems = new ArrayList<>();
    for (Source source : talk.sources()) {
      Review review =
          open != null && open.file().toAbsolutePath().normalize().equals(source.file())
              ? open.review()
              : read(source.file(), talk.look().units(), problems);
      if (review != null) {
        reviews.put(source.id(), review);
      }
    }
    return new Loaded(
        new TalkMaterial(reviews, seasons.load(talk.seasons(), freshness, problems)), problems);
  }

  private @Nullable Review read(Path file, Units units, List<Problem> problems) {
    Kept key = new Kept(file, units, changed(file));
    Review known = kept.get(key);
    if (known != null) {
      return known;
    }
    ReadResult result = SessionFiles.read(file, ReadOptions.DEFAULT);
    result.report().problems().stream().filter(Problem::isError).forEach(problems::add);
    Review review =
        result.session().map(s -> Reviewer.review(s, ReviewSettings.DEFAULT, units)).orElse(null);
    if (review != null) {
      kept.keySet().removeIf(k -> k.file().equals(file) && k.units().equals(units));
      kept.put(key, review);
    }
    return review;
  }

  private static long changed(Path file) {
    try {
      return Files.getLastModifiedTime(file).toMillis();
    } catch (IOException gone) {
      return -1;
    }
  }

  /** Works one slide out. */
  Shown show(Talk talk, @Nullable Slide slide, @Nullable Open open) {
    Loaded loaded = load(talk, open, SeasonsKept.Freshness.RECENT);
    List<String> remarks = new ArrayList<>();
    loaded.problems().forEach(p -> remarks.add(p.toString()));
    Map<String, Session> sessions = new LinkedHashMap<>();
    loaded.material().reviews().forEach((id, review) -> sessions.put(id, review.session()));
    // The slide goes through the same hands as in the finished talk.
    Talk alone = talk.withSlides(slide == null ? List.of() : List.of(slide));
    Unnamed unnamed = Unnamed.of(alone, loaded.material());
    SlideFigure page = null;
    if (slide != null) {
      try {
        page = TalkPages.of(unnamed.talk(), unnamed.talk().slides().get(0), unnamed.material());
        remarks.addAll(SlideChecks.of(page));
      } catch (IllegalArgumentException missing) {
        remarks.add("The picture cannot be shown: " + missing.getMessage() + ".");
        Slide without = unnamed.talk().slides().get(0).withPicture(null);
        page = TalkPages.of(unnamed.talk(), without, unnamed.material());
      }
    }
    return new Shown(page, remarks, unnamed.leftOut(), sessions);
  }
}
