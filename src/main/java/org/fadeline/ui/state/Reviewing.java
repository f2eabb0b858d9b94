package org.fadeline.ui.state;

import org.fadeline.analysis.KnownThen;
import org.fadeline.analysis.Review;
import org.fadeline.analysis.ReviewSettings;
import org.fadeline.model.Units;

/**
 * Works reviews out in the background: of the session in hand, by what is chosen; then what could
 * be told at each moment of it. The old review stays until the new one is there.
 */
final class Reviewing {
  private static final String REVIEWING = "review";
  private static final String TELLING = "known then";

  private final Workbench bench;
  private final Workbench.ReviewWork work;

  Reviewing(Workbench bench, Workbench.ReviewWork work) {
    this.bench = bench;
    this.work = work;
  }

  /** Reviews the session in hand anew; does nothing without one. */
  void review() {
    OpenSession open = bench.state().open();
    if (open == null) {
      return;
    }
    ReviewSettings settings = bench.state().choices().settings();
    Teaching teaching = bench.state().choices().teaching();
    Units units = bench.state().choices().units();
    bench.change(s -> s.withReview(s.review().underWay()));
    bench.tasks().cancel(TELLING);
    bench
        .tasks()
        .submit(
            REVIEWING,
            "Reviewing the match",
            progress ->
                work.review(
                    open.session(),
                    teaching == null ? settings : teaching.of(open.session(), settings),
                    units),
            new TaskService.Answer<>(
                review -> {
                  bench.change(s -> s.withReview(s.review().withLatest(review)));
                  tell(review);
                },
                failure ->
                    bench.change(
                        s ->
                            s.withReview(
                                ReviewStatus.failed(
                                    "The review could not be worked out ("
                                        + failure.getClass().getSimpleName()
                                        + "). The replay is not affected.")))));
  }

  /** Works out what could be told at each moment, unless that is done or its review is not. */
  void tellAsKnownThen() {
    ReviewStatus status = bench.state().review();
    Review latest = status.latest();
    if (latest != null && status.known() == null && !status.pending()) {
      tell(latest);
    }
  }

  /** After the review, which shows sooner. */
  private void tell(Review review) {
    Units units = bench.state().choices().units();
    bench
        .tasks()
        .submit(
            TELLING,
            "Working out what was known then",
            progress ->
                KnownThen.of(review.session(), review.settings(), units, progress::cancelled),
            new TaskService.Answer<>(
                known -> bench.change(s -> s.withReview(s.review().withKnown(known))),
                failure ->
                    bench.change(
                        s ->
                            s.withReview(
                                s.review()
                                    .withoutKnown(
                                        "What was known then could not be worked out ("
                                            + failure.getClass().getSimpleName()
                                            + "). With hindsight the match can be seen.")))));
  }

  /** Lets the review under way go. */
  void cancel() {
    bench.tasks().cancel(REVIEWING);
  }
}
