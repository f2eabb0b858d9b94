package org.fadeline.ui.state;

import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;
import org.fadeline.analysis.Course.TurningPoint;
import org.fadeline.analysis.KnownThen;
import org.fadeline.analysis.Review;
import org.fadeline.model.SessionEvent;
import org.fadeline.replay.Playhead;
import org.jspecify.annotations.Nullable;

/**
 * Everything the window shows, at one moment. A new one replaces it as a whole: nobody sees a new
 * session with an old playhead.
 *
 * @param open the session in hand, or null at the start
 * @param review its review, or how far that is
 * @param playhead where the replay stands; of no meaning while nothing is open
 * @param selection the events picked and the second cursor
 * @param choices what is chosen about how to look at it
 * @param activity what is going on and what went wrong
 */
public record WorkbenchState(
    @Nullable OpenSession open,
    ReviewStatus review,
    Playhead playhead,
    Selection selection,
    Choices choices,
    Activity activity) {
  /** Nothing open. */
  public static final WorkbenchState EMPTY =
      new WorkbenchState(
          null,
          ReviewStatus.NONE,
          Playhead.startOf(new Playhead.Range(0, 0)),
          Selection.NONE,
          Choices.DEFAULT,
          Activity.QUIET);

  /**
   * Returns whether figures and verdicts must stay away: the match is being logged as it happens
   * and its rules are not said to allow them.
   */
  public boolean figuresBarred() {
    return choices.logging()
        && open != null
        && !open.session().match().rules().liveFiguresAllowed();
  }

  /**
   * Returns what may be told at the playhead: with hindsight the whole review, as known then what
   * could be told from the record up to it; null before that is worked out.
   */
  public @Nullable Review told() {
    if (open == null || choices.hindsight()) {
      return review.latest();
    }
    KnownThen known = review.known();
    return known == null ? null : known.at(playhead.at());
  }

  /** Returns the turning points that may be shown at the playhead. */
  public List<TurningPoint> turningPoints() {
    Review told = told();
    return told == null || open == null
        ? List.of()
        : told.course().turningPoints().stream()
            .filter(p -> choices.hindsight() || p.at() <= playhead.at())
            .toList();
  }

  /** Returns this state without the events that are picked but not known yet as known then. */
  WorkbenchState withoutPicksAhead() {
    if (choices.hindsight() || open == null || selection.events().isEmpty()) {
      return this;
    }
    Set<String> known = new LinkedHashSet<>(selection.events());
    for (SessionEvent event : open.session().events()) {
      if (event.at() > playhead.at()) {
        known.remove(event.id());
      }
    }
    if (known.size() == selection.events().size()) {
      return this;
    }
    String lead = selection.lead();
    return withSelection(selection.withEvents(known, known.contains(lead) ? lead : null));
  }

  WorkbenchState withOpen(
      @Nullable OpenSession newOpen, ReviewStatus newReview, Playhead newPlayhead) {
    return new WorkbenchState(newOpen, newReview, newPlayhead, selection, choices, activity);
  }

  WorkbenchState withReview(ReviewStatus newReview) {
    return new WorkbenchState(open, newReview, playhead, selection, choices, activity);
  }

  WorkbenchState withPlayhead(Playhead newPlayhead) {
    return new WorkbenchState(open, review, newPlayhead, selection, choices, activity);
  }

  WorkbenchState withSelection(Selection newSelection) {
    return new WorkbenchState(open, review, playhead, newSelection, choices, activity);
  }

  WorkbenchState withChoices(Choices newChoices) {
    return new WorkbenchState(open, review, playhead, selection, newChoices, activity);
  }

  WorkbenchState withActivity(Activity newActivity) {
    return new WorkbenchState(open, review, playhead, selection, choices, newActivity);
  }
}
