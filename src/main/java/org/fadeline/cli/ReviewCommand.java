package org.fadeline.cli;

import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.concurrent.Callable;
import org.fadeline.analysis.HandlingTimes;
import org.fadeline.analysis.Review;
import org.fadeline.analysis.ReviewSettings;
import org.fadeline.analysis.Reviewer;
import org.fadeline.model.Session;
import org.fadeline.model.Units;
import org.fadeline.report.ReviewJson;
import org.fadeline.report.ReviewText;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;

/** Prints the review of a session. */
@Command(
    name = "review",
    mixinStandardHelpOptions = true,
    description = "Prints the review of a session; with --json - prints JSON alone.")
final class ReviewCommand implements Callable<Integer> {
  private final Console console;

  @Mixin private final Reading reading = new Reading();
  @Mixin private final UnitsOption units = new UnitsOption();
  @Mixin private final JsonOption json = new JsonOption();

  @Parameters(paramLabel = "SESSION", description = "a .session.json or an event .csv")
  @SuppressWarnings("NullAway.Init") // picocli sets it before call()
  private Path file;

  @Option(names = "--figures", paramLabel = "DIR", description = "writes the figures there")
  private @Nullable Path figures;

  @Option(
      names = "--handling",
      paramLabel = "KIND=SECONDS",
      description = {
        "seconds a fish takes on lines of that kind whose casts are not logged,",
        "such as edge=100; nothing is taken off without it"
      })
  private Map<String, Double> handling = Map.of();

  @Option(
      names = "--season",
      paramLabel = "DIR",
      description = {
        "learns from the other sessions of that folder how often rates change, how bites bunch",
        "and what each kind of line pays, and says so"
      })
  private @Nullable Path season;

  ReviewCommand(Console console) {
    this.console = console;
  }

  @Override
  public Integer call() {
    Session session = reading.readAccepted(console, file);
    Units chosen = units.units();
    ReviewSettings settings = settings(session);
    Review review = Reviewer.review(session, settings, chosen);
    json.tell(console, () -> ReviewJson.toJson(review), () -> ReviewText.toText(review, chosen));
    if (figures != null) {
      int written = ReviewFigures.write(review, chosen, figures);
      json.notices(console).println(written + " files of figures written to " + figures);
    }
    return ExitCode.DONE;
  }

  private ReviewSettings settings(Session session) {
    ReviewSettings plain = ReviewSettings.DEFAULT.withHandling(new HandlingTimes(handling));
    Path folder = season;
    if (folder == null) {
      return plain;
    }
    return plain.withLearned(
        SeasonReading.priors(console, folder, reading.options(console), List.of(session)));
  }
}
