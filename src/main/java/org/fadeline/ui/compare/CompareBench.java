package org.fadeline.ui.compare;

import java.io.IOException;
import java.nio.file.Path;
import java.util.Objects;
import java.util.function.UnaryOperator;
import javafx.beans.property.ReadOnlyObjectProperty;
import javafx.beans.property.ReadOnlyObjectWrapper;
import org.fadeline.analysis.KnownThen;
import org.fadeline.analysis.Review;
import org.fadeline.analysis.ReviewSettings;
import org.fadeline.analysis.Reviewer;
import org.fadeline.analysis.compare.Comparer;
import org.fadeline.analysis.compare.Comparison;
import org.fadeline.analysis.compare.ComparisonSetup;
import org.fadeline.analysis.compare.ComparisonSetup.DayToDay;
import org.fadeline.io.ReadOptions;
import org.fadeline.io.ReadResult;
import org.fadeline.io.open.SessionFiles;
import org.fadeline.model.Session;
import org.fadeline.model.Units;
import org.fadeline.ui.state.Activity;
import org.fadeline.ui.state.Desk;
import org.fadeline.ui.state.TaskService;
import org.fadeline.ui.state.Teaching;
import org.fadeline.ui.state.Workbench;
import org.fadeline.ui.state.WorkbenchState;
import org.jspecify.annotations.Nullable;

/**
 * Where the comparison's state changes: reads the second session, works the comparison out again
 * when either session, the alignment, the pairing or the units change. All of it in the background.
 */
final class CompareBench {
  private static final String READING = "compare-read";
  private static final String COMPARING = "compare";
  private static final String TELLING = "compare-known";

  private final Workbench bench;
  private final ReadOnlyObjectWrapper<CompareState> state =
      new ReadOnlyObjectWrapper<>(CompareState.EMPTY);
  private boolean followed;

  CompareBench(Workbench bench) {
    this.bench = bench;
  }

  ReadOnlyObjectProperty<CompareState> stateProperty() {
    return state.getReadOnlyProperty();
  }

  CompareState state() {
    return state.get();
  }

  /** Compares again whenever the match in hand, its review or the units change, from now on. */
  void follow() {
    if (!followed) {
      followed = true;
      bench.stateProperty().addListener((p, before, after) -> followed(before, after));
    }
    compare();
  }

  private void followed(WorkbenchState before, WorkbenchState after) {
    if (!Objects.equals(before.review().latest(), after.review().latest())) {
      compare();
    }
  }

  private void change(UnaryOperator<CompareState> step) {
    state.set(step.apply(state.get()));
  }

  /** Reads the session to compare with; what is shown stays until that has worked. */
  void open(Path path) {
    String name = String.valueOf(path.getFileName());
    ReviewSettings settings = bench.state().choices().settings();
    Units units = bench.state().choices().units();
    change(s -> s.withWork(s.work().comparison(), "Reading " + name));
    bench
        .tasks()
        .submit(
            READING,
            "Reading " + name,
            progress ->
                new CompareState.Second(path, Reviewer.review(read(path, name), settings, units)),
            new TaskService.Answer<>(this::install, this::refused));
  }

  private static Session read(Path path, String name) throws Desk.Refusal {
    ReadResult result = SessionFiles.read(path, ReadOptions.DEFAULT);
    return result
        .session()
        .orElseThrow(
            () ->
                new Desk.Refusal(
                    new Activity.Trouble(
                        name + " cannot be compared with",
                        "Nothing was changed: neither the file nor what is open here.",
                        Activity.Problem.of(result.report()),
                        null)));
  }

  private void install(CompareState.Second second) {
    bench.tasks().cancel(TELLING);
    change(s -> s.withSecond(second));
    compare();
  }

  private void refused(Exception failure) {
    change(s -> s.withWork(s.work().comparison(), null));
    bench.report(
        failure instanceof Desk.Refusal refusal
            ? refusal.trouble()
            : failure instanceof IOException
                ? Activity.Trouble.of(
                    "The second match could not be read",
                    "The disk refused: " + failure.getMessage() + ".")
                : Activity.Trouble.unforeseen(
                    "The second match could not be read", failure, "What was open is unchanged."));
  }

  /** Puts the second session away. */
  void close() {
    bench.tasks().cancel(READING);
    bench.tasks().cancel(COMPARING);
    bench.tasks().cancel(TELLING);
    change(s -> s.withSecond(null));
  }

  /** Gives up reading. */
  void cancel() {
    bench.tasks().cancel(READING);
    change(s -> s.withWork(s.work().comparison(), null));
  }

  /** Lays the two otherwise. */
  void lay(Laying laying) {
    if (!laying.equals(state().laying())) {
      change(s -> s.withLaying(laying));
      compare();
    }
  }

  /** Moves the second session by hand from where it lies now. */
  void shift(double minutes) {
    Comparison now = state().work().comparison();
    if (now != null) {
      lay(state().laying().byHand(lag(now) + minutes));
    }
  }

  /** Returns how many minutes after the first session's all in the second's lies on the axis. */
  static double lag(Comparison comparison) {
    var alignment = comparison.setup().alignment();
    return Math.round(
            10
                * (alignment.secondMinutes(comparison.second().session().match().allIn())
                    - alignment.firstMinutes(comparison.first().session().match().allIn())))
        / 10.0;
  }

  /** Pairs lines by hand, or keeps the one given without counterpart. */
  void pair(@Nullable String first, @Nullable String second) {
    change(s -> s.pair(first, second));
    compare();
  }

  /** Keeps both lines of a pair without counterpart. */
  void unpair(String first, String second) {
    change(s -> s.unpair(first, second));
    compare();
  }

  /** Forgets what was paired by hand. */
  void pairByItself() {
    change(CompareState::pairedByItself);
    compare();
  }

  private void compare() {
    Review first = bench.state().review().latest();
    CompareState now = state();
    CompareState.Second second = now.second();
    if (first == null || second == null) {
      change(s -> s.withWork(null, s.work().doing()));
      return;
    }
    ReviewSettings settings = first.settings();
    Units units = bench.state().choices().units();
    Teaching teaching = bench.state().choices().teaching();
    change(s -> s.withWork(s.work().comparison(), "Comparing the two matches"));
    bench
        .tasks()
        .submit(
            COMPARING,
            "Comparing the two matches",
            progress -> {
              Review other =
                  second.review().settings().equals(settings)
                      ? second.review()
                      : Reviewer.review(second.session(), settings, units);
              ComparisonSetup setup = now.setup(first.session(), other.session());
              return Comparer.compare(first, other, withDays(setup, teaching, first, other), units);
            },
            new TaskService.Answer<>(
                comparison -> {
                  change(s -> s.withWork(comparison, null));
                  tellAsKnownThen(comparison.second(), units);
                },
                this::notCompared));
  }

  /** Works out what could be told of the second match at each of its moments, unless it is done. */
  private void tellAsKnownThen(Review second, Units units) {
    if (state().work().secondKnown() == null) {
      bench
          .tasks()
          .submit(
              TELLING,
              "Working out what was known then",
              progress ->
                  KnownThen.of(second.session(), second.settings(), units, progress::cancelled),
              new TaskService.Answer<>(
                  known -> change(s -> s.withSecondKnown(known)), this::notTold));
    }
  }

  private void notTold(Exception failure) {
    bench.report(
        Activity.Trouble.of(
            "What was known then of the second match could not be worked out",
            "Something went wrong that Fadeline did not foresee ("
                + failure.getClass().getSimpleName()
                + "). With hindsight the two can be seen."));
  }

  /** How much days differ by themselves, from the other sessions where reviews learn from them. */
  private static ComparisonSetup withDays(
      ComparisonSetup setup, @Nullable Teaching teaching, Review first, Review second) {
    return teaching == null
        ? setup
        : teaching
            .priors(first.session(), second.session())
            .map(DayToDay::learned)
            .map(setup::withDays)
            .orElse(setup);
  }

  private void notCompared(Exception failure) {
    change(s -> s.withWork(null, null));
    bench.report(
        Activity.Trouble.unforeseen(
            "The two matches could not be compared", failure, "Both records are unchanged."));
  }
}
