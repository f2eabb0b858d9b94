package org.fadeline.cli;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Locale;
import java.util.concurrent.Callable;
import org.fadeline.analysis.merge.Clash;
import org.fadeline.analysis.merge.Clash.Choice;
import org.fadeline.analysis.merge.ClockOffset;
import org.fadeline.analysis.merge.Merge;
import org.fadeline.io.SessionNames;
import org.fadeline.io.SessionWriter;
import org.fadeline.io.WholeFile;
import org.fadeline.model.EventText;
import org.fadeline.model.Session;
import org.fadeline.model.SessionEvent;
import org.fadeline.model.Units;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;

/** Puts two records of one match together. */
@Command(
    name = "merge",
    mixinStandardHelpOptions = true,
    description =
        "Puts two records of one match together: what both tell is taken once, what one tells is"
            + " taken, and what they tell differently is listed.")
final class MergeCommand implements Callable<Integer> {
  private final Console console;

  @Mixin private final Reading reading = new Reading();
  @Mixin private final UnitsOption units = new UnitsOption();

  @Parameters(index = "0", paramLabel = "FIRST", description = "its clock and rules are kept")
  @SuppressWarnings("NullAway.Init") // picocli sets it before call()
  private Path first;

  @Parameters(index = "1", paramLabel = "SECOND")
  @SuppressWarnings("NullAway.Init") // picocli sets it before call()
  private Path second;

  @Option(names = "--out", required = true, paramLabel = "FILE", description = "a .session.json")
  @SuppressWarnings("NullAway.Init") // picocli sets it before call()
  private Path out;

  @Option(
      names = "--ahead",
      paramLabel = "SECONDS",
      description = "how far the second clock is ahead; found from the events if unsaid")
  private @Nullable Double ahead;

  @Option(
      names = "--clashes",
      paramLabel = "mine|theirs|both",
      description = "what is kept where they differ; the other goes into the note (mine if unsaid)")
  private Choice clashes = Choice.MINE;

  MergeCommand(Console console) {
    this.console = console;
  }

  @Override
  public Integer call() {
    if (!Output.endsIn(out, SessionNames.ENDING)) {
      throw Output.wrongEnding(out, SessionNames.ENDING);
    }
    if (isSame(out, first) || isSame(out, second)) {
      throw new InputFault(out + ":1:1: this is one of the two records; choose another name");
    }
    Session mine = reading.readAccepted(console, first);
    Session theirs = reading.readAccepted(console, second);
    ClockOffset given = ahead == null ? null : ClockOffset.given(Math.round(ahead * 1000));
    Merge merge = Merge.of(mine, theirs, given);
    Units chosen = units.units();
    Session merged = merge.session(clash -> clashes, chosen);
    Output.to(out, () -> WholeFile.write(out, SessionWriter.toJson(merged)));
    tell(merge, merged, chosen);
    return ExitCode.DONE;
  }

  private static boolean isSame(Path a, Path b) {
    try {
      return Files.exists(a) && Files.exists(b) && Files.isSameFile(a, b);
    } catch (IOException e) {
      return false;
    }
  }

  private void tell(Merge merge, Session merged, Units chosen) {
    ClockOffset offset = merge.offset();
    say(
        String.format(
            Locale.ROOT,
            "The second clock is %.1f s ahead%s.",
            offset.millis() / 1000.0,
            offset.inStep() == 0 ? "" : ", by " + offset.inStep() + " events in step"));
    say(
        merge.same()
            + " events are told by both, "
            + merge.added().size()
            + " by the second alone.");
    merge.remarks().forEach(this::say);
    say(merge.clashes().size() + " clashes" + (merge.clashes().isEmpty() ? "." : ":"));
    for (Clash clash : merge.clashes()) {
      SessionEvent mine = clash.mine();
      say("  " + clash.kind().words());
      say("    first:  " + (mine == null ? "nothing" : EventText.of(mine, merged, chosen)));
      say("    second: " + EventText.of(clash.theirs(), merged, chosen));
    }
    say(out + ": " + merged.events().size() + " events written");
  }

  private void say(String words) {
    console.out().println(words);
  }
}
