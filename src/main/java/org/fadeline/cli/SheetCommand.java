package org.fadeline.cli;

import java.nio.file.Path;
import java.util.List;
import java.util.concurrent.Callable;
import org.fadeline.export.FigureExport;
import org.fadeline.figure.BankSheetFigure;
import org.fadeline.figure.BankSheetFigure.Paper;
import org.fadeline.figure.Figure;
import org.fadeline.figure.FigureStyle;
import org.fadeline.figure.Theme;
import org.fadeline.model.Session;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;

/** Writes a sheet to fill in by pencil on the bank. */
@Command(
    name = "sheet",
    mixinStandardHelpOptions = true,
    description =
        "Writes a sheet (.pdf) to fill in by pencil on the bank; its rows are the shorthand that"
            + " is read back.")
final class SheetCommand implements Callable<Integer> {
  private final Console console;

  @Mixin private final Reading reading = new Reading();
  @Mixin private final UnitsOption units = new UnitsOption();

  @Parameters(paramLabel = "SESSION", description = "the match with its lines set up")
  @SuppressWarnings("NullAway.Init") // picocli sets it before call()
  private Path file;

  @Option(names = "--out", required = true, paramLabel = "FILE", description = "the PDF written")
  @SuppressWarnings("NullAway.Init") // picocli sets it before call()
  private Path out;

  @Option(names = "--paper", paramLabel = "A4|A5", description = "size of the paper; A4 if unsaid")
  private Paper paper = Paper.A4;

  SheetCommand(Console console) {
    this.console = console;
  }

  @Override
  public Integer call() {
    if (!Output.endsIn(out, ".pdf")) {
      throw Output.wrongEnding(out, ".pdf");
    }
    Session session = reading.read(console, file);
    FigureStyle style = FigureStyle.of(Theme.PRINT, units.units());
    List<Figure> pages = BankSheetFigure.pages(session, style, paper);
    String title = "Bank sheet, " + pages.get(0).title();
    Output.to(out, () -> FigureExport.pdf(title, pages, out, paper.width(), paper.height()));
    console.out().println(out + ": " + pages.size() + (pages.size() == 1 ? " page" : " pages"));
    return ExitCode.DONE;
  }
}
