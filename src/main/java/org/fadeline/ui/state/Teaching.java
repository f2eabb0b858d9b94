package org.fadeline.ui.state;

import java.util.List;
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

  /** Returns settings with what the sessions but the one reviewed teach, if they teach anything. */
  ReviewSettings of(Session reviewed, ReviewSettings settings) {
    return Learned.priors(reviewed, sessions).map(settings::withLearned).orElse(settings);
  }
}
