package org.fadeline.ui.state;

import java.util.List;
import java.util.Optional;
import org.fadeline.analysis.LearnedPriors;
import org.fadeline.analysis.ReviewSettings;
import org.fadeline.analysis.season.Learned;
import org.fadeline.analysis.season.SessionSummary;
import org.fadeline.model.Session;

/**
 * Other sessions that the angler lets reviews learn from.
 *
 * @param name what they are called, such as their folder's name
 * @param sessions their summaries, with fades
 */
public record Teaching(String name, List<SessionSummary> sessions) {
  /** Copies the list. */
  public Teaching {
    sessions = List.copyOf(sessions);
  }

  /** Returns what the sessions but those reviewed teach, or empty where they teach nothing. */
  public Optional<LearnedPriors> priors(Session... reviewed) {
    return Learned.priors(List.of(reviewed), sessions);
  }

  /** Returns settings with what the sessions but the one reviewed teach, if they teach anything. */
  ReviewSettings of(Session reviewed, ReviewSettings settings) {
    return priors(reviewed).map(settings::withLearned).orElse(settings);
  }
}
