package org.fadeline.cli;

import java.io.IOException;
import java.nio.file.Path;
import java.util.Locale;
import java.util.concurrent.Callable;
import org.fadeline.io.EventCsv;
import org.fadeline.io.SessionWriter;
import org.fadeline.io.WholeFile;
import org.fadeline.model.Session;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Parameters;

/** Converts between the session and CSV formats, by file ending. */
@Command(
    name = "convert",
    mixinStandardHelpOptions = true,
    description =
        "Converts between .session.json and .csv, by file ending; captions (.vtt, .srt) "
            + "become a session of proposed events.")
final class ConvertCommand implements Callable<Integer> {
  private final Console console;

  @Mixin private final Reading reading = new Reading();

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
    String name = String.valueOf(out.getFileName()).toLowerCase(Locale.ROOT);
    boolean csv = name.endsWith(".csv");
    if (!csv && !name.endsWith(".session.json")) {
      throw new InputFault(
          out + ":1:1: this ending cannot be written; end the name in .session.json or .csv");
    }
    Session session = reading.read(console, in);
    try {
      WholeFile.write(out, csv ? EventCsv.write(session) : SessionWriter.toJson(session));
    } catch (IOException e) {
      throw Writing.fault(out, e);
    }
    console.out().println(out + ": " + session.events().size() + " events written");
    return ExitCode.DONE;
  }
}
