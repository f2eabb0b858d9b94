package org.fadeline.cli;

import java.nio.file.Path;
import java.util.concurrent.Callable;
import org.fadeline.analysis.season.Season;
import org.fadeline.analysis.season.SeasonBuilder;
import org.fadeline.export.SeasonFigureSet;
import org.fadeline.export.SeasonTableSet;
import org.fadeline.figure.FigureStyle;
import org.fadeline.figure.Theme;
import org.fadeline.index.SeasonFolder;
import org.fadeline.index.SeasonIndex;
import org.fadeline.model.Units;
import org.fadeline.report.SeasonJson;
import org.fadeline.report.SeasonText;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;

/** Prints a season's tables. */
@Command(
    name = "season",
    mixinStandardHelpOptions = true,
    description =
        "Prints the tables of a folder of sessions; with --json - prints JSON alone. Broken files"
            + " are listed and left out.")
final class SeasonCommand implements Callable<Integer> {
  private final Console console;

  @Mixin private final Reading reading = new Reading();
  @Mixin private final UnitsOption units = new UnitsOption();
  @Mixin private final JsonOption json = new JsonOption();

  @Mixin private final SeasonFilterOptions filters = new SeasonFilterOptions();

  @Option(
      names = "--figures",
      paramLabel = "DIR",
      description = "writes the figures there, each as PNG, SVG and PDF")
  private @Nullable Path figures;

  @Option(
      names = "--tables",
      paramLabel = "DIR",
      description = "writes the tables there as CSV, weights in grams")
  private @Nullable Path tables;

  @Parameters(paramLabel = "DIR", description = "a folder of sessions")
  @SuppressWarnings("NullAway.Init") // picocli sets it before call()
  private Path folder;

  @Option(
      names = "--index",
      paramLabel = "FILE",
      description =
          "keeps what was worked out there, so that only changed sessions are read next time")
  private @Nullable Path index;

  SeasonCommand(Console console) {
    this.console = console;
  }

  @Override
  public Integer call() {
    SeasonIndex sessions = SeasonReading.of(folder, reading.options(console));
    Path keep = index;
    if (keep != null) {
      sessions.load(keep);
    }
    SeasonFolder found = SeasonReading.read(sessions, folder);
    if (keep != null) {
      Output.to(keep, () -> sessions.save(keep));
    }
    SeasonReading.tell(console, found);
    Season season = SeasonBuilder.build(found.summaries(), filters.filter());
    Units chosen = units.units();
    json.tell(
        console,
        () -> SeasonJson.toJson(season, found, folder),
        () -> SeasonText.toText(season, chosen));
    Path pictures = figures;
    if (pictures != null) {
      FigureStyle style = FigureStyle.of(Theme.LIGHT, chosen);
      Output.to(
          pictures,
          () ->
              say(
                  SeasonFigureSet.write(season, style, pictures).size()
                      + " files of figures written to "
                      + pictures));
    }
    Path sheets = tables;
    if (sheets != null) {
      Output.to(
          sheets,
          () -> say(SeasonTableSet.write(season, sheets).size() + " tables written to " + sheets));
    }
    return ExitCode.DONE;
  }

  private void say(String what) {
    json.notices(console).println(what);
  }
}
