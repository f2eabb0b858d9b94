package org.fadeline.cli;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.Callable;
import org.fadeline.analysis.Review;
import org.fadeline.analysis.ReviewSettings;
import org.fadeline.analysis.Reviewer;
import org.fadeline.io.open.SampleSessions;
import org.fadeline.model.Session;
import org.fadeline.model.Units;
import org.fadeline.report.ReviewText;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Parameters;

/** Opens the workbench; where there is no display, does its job headless and says so. */
@Command(
    name = "open",
    mixinStandardHelpOptions = true,
    description =
        "Opens the workbench on a session; without a display prints the review and "
            + "writes the figures.")
final class OpenCommand implements Callable<Integer> {
  private static final Path FIGURES = Path.of("fadeline-figures");

  private final Console console;
  private final WindowLauncher window;

  @Mixin private final Reading reading = new Reading();

  @Parameters(arity = "0..1", paramLabel = "SESSION", description = "a .session.json or .csv")
  private @Nullable Path file;

  OpenCommand(Console console, WindowLauncher window) {
    this.console = console;
    this.window = window;
  }

  @Override
  public Integer call() {
    return open(file);
  }

  int open(@Nullable Path session) {
    if (session != null && !Files.exists(session)) {
      throw new InputFault(session + ":1:1: no such file; check the name");
    }
    if (mayHaveDisplay(System.getenv())) {
      try {
        window.launch(Optional.ofNullable(session));
        return ExitCode.DONE;
      } catch (UnsupportedOperationException noDisplay) {
        console.err().println("The display does not answer: going on without a window.");
      }
    }
    return withoutDisplay(session);
  }

  /** Whether a window can be tried: on Linux only where a display is named. */
  static boolean mayHaveDisplay(Map<String, String> environment) {
    String system = System.getProperty("os.name", "").toLowerCase(Locale.ROOT);
    return !system.contains("linux") || !environment.getOrDefault("DISPLAY", "").isEmpty();
  }

  private int withoutDisplay(@Nullable Path session) {
    Path path = session != null ? session : SampleSessions.first().orElse(null);
    if (path == null) {
      throw new InputFault(
          "There is no display and no sample was found; name a session: fadeline review SESSION");
    }
    console.out().println("No display here: the review of " + path + " in words and figures.");
    console.out().println();
    Session read = reading.readAccepted(console, path);
    Review review = Reviewer.review(read, ReviewSettings.DEFAULT);
    console.out().print(ReviewText.toText(review, Units.LB_OZ_AND_METRES));
    int written = ReviewFigures.write(review, Units.LB_OZ_AND_METRES, FIGURES);
    console.out().println(written + " files of figures written to " + FIGURES.toAbsolutePath());
    return ExitCode.DONE;
  }
}
