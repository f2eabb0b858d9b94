package org.fadeline.cli;

import java.nio.file.Path;
import java.util.concurrent.Callable;
import org.fadeline.io.ImportReport;
import org.fadeline.io.ReadResult;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Parameters;

/** Validates a file, listing every problem with its place. */
@Command(
    name = "check",
    mixinStandardHelpOptions = true,
    description = "Validates a session or event CSV, listing every problem with its place.")
final class CheckCommand implements Callable<Integer> {
  private final Console console;

  @Mixin private final Reading reading = new Reading();

  @Parameters(
      paramLabel = "FILE",
      description = "a .session.json, an event .csv, .vtt, .srt or .txt")
  @SuppressWarnings("NullAway.Init") // picocli sets it before call()
  private Path file;

  CheckCommand(Console console) {
    this.console = console;
  }

  @Override
  public Integer call() {
    ReadResult result = reading.result(console, file);
    Reading.tell(console, result);
    ImportReport report = result.report();
    boolean usable = result.session().isPresent() && !report.hasErrors();
    String found =
        usable
            ? result.session().orElseThrow().events().size() + " events"
            : count(report.errors(), "error");
    console.out().println(file + ": " + found + ", " + count(report.warnings(), "warning"));
    return usable ? ExitCode.DONE : ExitCode.INPUT;
  }

  private static String count(int n, String what) {
    return n + " " + what + (n == 1 ? "" : "s");
  }
}
