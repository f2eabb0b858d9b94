package org.fadeline.cli;

import java.io.IOException;
import java.nio.file.Path;
import java.util.Locale;
import java.util.concurrent.Callable;
import org.fadeline.analysis.Review;
import org.fadeline.analysis.ReviewSettings;
import org.fadeline.analysis.Reviewer;
import org.fadeline.export.ExportMonitor;
import org.fadeline.export.ReplayGif;
import org.fadeline.export.Talk;
import org.fadeline.export.TalkDraft;
import org.fadeline.export.TalkExport;
import org.fadeline.figure.FigureStyle;
import org.fadeline.figure.Theme;
import org.fadeline.model.Match;
import org.fadeline.model.Session;
import org.fadeline.model.Units;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;

/** Writes a first draft of a club talk on a match. */
@Command(
    name = "talk",
    mixinStandardHelpOptions = true,
    description =
        "Writes a first draft of a club talk on a match, by file ending: .pptx, .pdf, .gif (the"
            + " match replayed); a folder for .png and .svg pictures.")
final class TalkCommand implements Callable<Integer> {
  private static final int FRAMES = 150;
  private static final double FRAMES_PER_SECOND = 10;

  private final Console console;

  @Mixin private final Reading reading = new Reading();
  @Mixin private final UnitsOption units = new UnitsOption();

  @Parameters(paramLabel = "SESSION", description = "the match the talk is on")
  @SuppressWarnings("NullAway.Init") // picocli sets it before call()
  private Path file;

  @Option(names = "--out", required = true, paramLabel = "FILE", description = "what is written")
  @SuppressWarnings("NullAway.Init") // picocli sets it before call()
  private Path out;

  @Option(names = "--standard", description = "slides in 4:3 rather than 16:9")
  private boolean standard;

  @Option(names = "--unnamed", description = "leaves out the session's title and the venue's name")
  private boolean unnamed;

  TalkCommand(Console console) {
    this.console = console;
  }

  @Override
  public Integer call() {
    Session session = reading.readAccepted(console, file);
    Units chosen = units.units();
    Review review = Reviewer.review(session, ReviewSettings.DEFAULT, chosen);
    Talk.Shape shape = standard ? Talk.Shape.STANDARD : Talk.Shape.WIDE;
    Talk talk = TalkDraft.of(review, new Talk.Look(Theme.PROJECTOR, chosen, shape), !unnamed);
    try {
      write(talk, review, chosen);
    } catch (IOException e) {
      throw Writing.fault(out, e);
    }
    console.out().println(out + ": written");
    return ExitCode.DONE;
  }

  private void write(Talk talk, Review review, Units chosen) throws IOException {
    String name = String.valueOf(out.getFileName()).toLowerCase(Locale.ROOT);
    if (name.endsWith(".pptx")) {
      TalkExport.pptx(talk, review, out, ExportMonitor.NONE);
    } else if (name.endsWith(".pdf")) {
      TalkExport.pdf(talk, review, out, ExportMonitor.NONE);
    } else if (name.endsWith(".gif")) {
      Match match = review.session().match();
      ReplayGif.Film film =
          new ReplayGif.Film(match.allIn(), match.allOut(), FRAMES, FRAMES_PER_SECOND, 960, 540);
      ReplayGif.write(review, FigureStyle.of(Theme.LIGHT, chosen), film, out, ExportMonitor.NONE);
    } else if (name.contains(".")) {
      throw new InputFault(
          out
              + ":1:1: this ending cannot be written; end the name in .pptx, .pdf or .gif, or name"
              + " a folder");
    } else {
      TalkExport.pictures(talk, review, out, TalkExport.Picture.PNG, ExportMonitor.NONE);
      TalkExport.pictures(talk, review, out, TalkExport.Picture.SVG, ExportMonitor.NONE);
    }
  }
}
