package org.fadeline.cli;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Objects;
import java.util.concurrent.Callable;
import java.util.stream.Stream;
import org.fadeline.analysis.LearnedPriors;
import org.fadeline.analysis.Review;
import org.fadeline.analysis.ReviewSettings;
import org.fadeline.analysis.Reviewer;
import org.fadeline.analysis.compare.Alignment;
import org.fadeline.analysis.compare.Comparer;
import org.fadeline.analysis.compare.Comparison;
import org.fadeline.analysis.compare.ComparisonSetup;
import org.fadeline.analysis.compare.ComparisonSetup.DayToDay;
import org.fadeline.analysis.compare.LinePairing;
import org.fadeline.export.CompareFigureSet;
import org.fadeline.figure.FigureStyle;
import org.fadeline.figure.Theme;
import org.fadeline.model.Line;
import org.fadeline.model.Session;
import org.fadeline.model.Units;
import org.fadeline.report.CompareJson;
import org.fadeline.report.CompareText;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.Command;
import picocli.CommandLine.ITypeConverter;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.ParameterException;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;
import picocli.CommandLine.TypeConversionException;

/** Sets two sessions side by side. */
@Command(
    name = "compare",
    mixinStandardHelpOptions = true,
    description = "Sets two sessions side by side; with --json - prints JSON alone.")
final class CompareCommand implements Callable<Integer> {
  private final Console console;

  @Mixin private final Reading reading = new Reading();
  @Mixin private final UnitsOption units = new UnitsOption();
  @Mixin private final JsonOption json = new JsonOption();

  @Spec
  @SuppressWarnings("NullAway.Init") // picocli sets it before call()
  private CommandSpec spec;

  @Parameters(
      arity = "2",
      paramLabel = "SESSION",
      description = "two sessions, each a .session.json or an event .csv")
  @SuppressWarnings("NullAway.Init") // picocli sets it before call()
  private List<Path> files;

  @Option(
      names = "--figures",
      paramLabel = "DIR",
      description = "writes the figures there, each as PNG and SVG")
  private @Nullable Path figures;

  @Option(
      names = "--align",
      paramLabel = "clock|all-in|first-fed",
      converter = AlignWord.class,
      description = "what is laid on what (default: all-in)")
  private Alignment.@Nullable Mode align;

  @Option(
      names = "--events",
      paramLabel = "ID=ID",
      description = "lays an event of the first session on one of the second, by their ids")
  private @Nullable String events;

  @Option(
      names = "--shift",
      paramLabel = "MINUTES",
      description = "lays by hand: the second session's all in at that minute of the first's")
  private @Nullable Double shift;

  @Option(
      names = "--pair",
      paramLabel = "LINE=LINE",
      description =
          "pairs a line of the first session with one of the second, by name; may be repeated")
  private List<String> pairs = new ArrayList<>();

  @Option(
      names = "--season",
      paramLabel = "DIR",
      description = {
        "learns from the other sessions of that folder, how much days differ by themselves among",
        "it; only then are p-values given"
      })
  private @Nullable Path season;

  CompareCommand(Console console) {
    this.console = console;
  }

  @Override
  public Integer call() {
    Session first = reading.readAccepted(console, files.get(0));
    Session second = reading.readAccepted(console, files.get(1));
    ComparisonSetup setup =
        ComparisonSetup.usual(first, second)
            .withAlignment(alignment(first, second))
            .withPairing(pairing(first, second));
    Units chosen = units.units();
    ReviewSettings settings = ReviewSettings.DEFAULT;
    Path folder = season;
    if (folder != null) {
      LearnedPriors learned =
          SeasonReading.priors(console, folder, reading.options(console), List.of(first, second));
      settings = settings.withLearned(learned);
      setup = setup.withDays(DayToDay.learned(learned));
    }
    Review one = Reviewer.review(first, settings, chosen);
    Review other = Reviewer.review(second, settings, chosen);
    Comparison comparison = Comparer.compare(one, other, setup, chosen);
    json.tell(
        console,
        () -> CompareJson.toJson(comparison),
        () -> CompareText.toText(comparison, chosen));
    if (figures != null) {
      writeFigures(comparison, chosen, figures);
    }
    return ExitCode.DONE;
  }

  private void writeFigures(Comparison comparison, Units chosen, Path folder) {
    FigureStyle style = FigureStyle.of(Theme.LIGHT, chosen);
    Output.to(
        folder,
        () ->
            json.notices(console)
                .println(
                    CompareFigureSet.write(comparison, style, folder).size()
                        + " figures written to "
                        + folder));
  }

  private Alignment alignment(Session first, Session second) {
    if (Stream.of(align, events, shift).filter(Objects::nonNull).count() > 1) {
      throw wrong("--align, --events and --shift exclude each other: choose one");
    }
    if (events != null) {
      return byEvents(first, second, events);
    }
    if (shift != null) {
      try {
        return Alignment.byHand(first, second, shift);
      } catch (IllegalArgumentException e) {
        throw wrong("--shift: " + e.getMessage());
      }
    }
    return switch (align == null ? Alignment.Mode.ALL_IN : align) {
      case CLOCK -> Alignment.byClock(first, second);
      case FIRST_FED -> Alignment.byFirstFed(first, second);
      default -> Alignment.byAllIn(first, second);
    };
  }

  private Alignment byEvents(Session first, Session second, String chosen) {
    String[] ids = chosen.split("=", -1);
    if (ids.length != 2) {
      throw wrong("--events takes ID=ID, not '" + chosen + "'");
    }
    try {
      return Alignment.byEvents(first, ids[0].strip(), second, ids[1].strip());
    } catch (IllegalArgumentException e) {
      throw wrong("--events: " + e.getMessage());
    }
  }

  private LinePairing pairing(Session first, Session second) {
    List<LinePairing.Choice> choices = new ArrayList<>();
    for (String pair : pairs) {
      String[] names = pair.split("=", -1);
      if (names.length != 2) {
        throw wrong("--pair takes LINE=LINE, not '" + pair + "'");
      }
      choices.add(
          new LinePairing.Choice(
              id(first, names[0], files.get(0)), id(second, names[1], files.get(1))));
    }
    try {
      return LinePairing.of(first, second, choices);
    } catch (IllegalArgumentException twice) {
      throw wrong("--pair names a line twice: each line can be paired once");
    }
  }

  private String id(Session session, String name, Path file) {
    return session.lines().stream()
        .filter(l -> l.name().equalsIgnoreCase(name.strip()))
        .map(Line::id)
        .findFirst()
        .orElseThrow(
            () ->
                wrong(
                    "--pair: "
                        + file
                        + " has no line '"
                        + name.strip()
                        + "'; it has "
                        + String.join(", ", session.lines().stream().map(Line::name).toList())));
  }

  private ParameterException wrong(String message) {
    return new ParameterException(spec.commandLine(), message);
  }

  /** Reads the word of an alignment the command line offers. */
  static final class AlignWord implements ITypeConverter<Alignment.Mode> {
    @Override
    public Alignment.Mode convert(String word) {
      return switch (word.toLowerCase(Locale.ROOT)) {
        case "clock" -> Alignment.Mode.CLOCK;
        case "all-in" -> Alignment.Mode.ALL_IN;
        case "first-fed" -> Alignment.Mode.FIRST_FED;
        default ->
            throw new TypeConversionException(
                "takes clock, all-in or first-fed, not '" + word + "'");
      };
    }
  }
}
