package org.fadeline.cli;

import java.nio.file.Path;
import java.util.concurrent.Callable;
import org.fadeline.io.ClockCorrection;
import org.fadeline.io.EventCsv;
import org.fadeline.io.Refused;
import org.fadeline.io.SessionNames;
import org.fadeline.io.SessionWriter;
import org.fadeline.io.WholeFile;
import org.fadeline.model.Session;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine;
import picocli.CommandLine.ArgGroup;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;

/** Converts between the session and CSV formats, by file ending. */
@Command(
    name = "convert",
    mixinStandardHelpOptions = true,
    description =
        "Converts between .session.json and .csv, by file ending; captions (.vtt, .srt) "
            + "and shorthand (.txt) become a session of proposed events.")
final class ConvertCommand implements Callable<Integer> {
  private final Console console;

  @Spec
  @SuppressWarnings("NullAway.Init") // picocli sets it before call()
  private CommandSpec spec;

  @Mixin private final Reading reading = new Reading();

  @ArgGroup private @Nullable Correction correction;

  /** How the clock of the device that wrote the file is put right. */
  static final class Correction {
    @Option(
        names = "--offset",
        paramLabel = "TIME",
        description = "moves every time of a CSV or of notes: -1:30, 0:12:05, 90s")
    private @Nullable String offset;

    @Option(
        names = "--clock",
        paramLabel = "SAID=TRUE",
        description = "what the device said and what the time was: 11:42=11:40:30")
    private @Nullable String clock;

    private ClockCorrection read() throws Refused {
      return offset != null
          ? ClockCorrection.offset(offset)
          : ClockCorrection.pair(clock == null ? "" : clock);
    }
  }

  @Parameters(index = "0", paramLabel = "IN")
  @SuppressWarnings("NullAway.Init") // picocli sets it before call()
  private Path in;

  @Parameters(index = "1", paramLabel = "OUT")
  @SuppressWarnings("NullAway.Init") // picocli sets it before call()
  private Path out;

  ConvertCommand(Console console) {
    this.console = console;
  }

  @Override
  public Integer call() {
    boolean csv = Output.endsIn(out, ".csv");
    if (!csv && !Output.endsIn(out, SessionNames.ENDING)) {
      throw Output.wrongEnding(out, ".session.json or .csv");
    }
    Session session = reading.read(console, in, correction());
    Output.to(
        out,
        () -> WholeFile.write(out, csv ? EventCsv.write(session) : SessionWriter.toJson(session)));
    console.out().println(out + ": " + session.events().size() + " events written");
    return ExitCode.DONE;
  }

  private ClockCorrection correction() {
    if (correction == null) {
      return ClockCorrection.NONE;
    }
    if (Output.endsIn(in, ".json")) {
      throw wrong("a session's own times are corrected in Replay, not by converting");
    }
    try {
      return correction.read();
    } catch (Refused refused) {
      throw wrong(refused.what() + "; " + refused.whatToDo());
    }
  }

  private CommandLine.ParameterException wrong(String what) {
    return new CommandLine.ParameterException(spec.commandLine(), what);
  }
}
