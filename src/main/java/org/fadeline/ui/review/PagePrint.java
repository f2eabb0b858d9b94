package org.fadeline.ui.review;

import java.nio.file.Path;
import javafx.print.PageLayout;
import javafx.print.PageOrientation;
import javafx.print.Paper;
import javafx.print.Printer;
import javafx.print.PrinterJob;
import javafx.scene.Group;
import javafx.scene.Scene;
import javafx.scene.control.Button;
import javafx.scene.layout.HBox;
import javafx.scene.transform.Scale;
import javafx.stage.Window;
import org.fadeline.analysis.Review;
import org.fadeline.export.FigureExport;
import org.fadeline.export.FileNames;
import org.fadeline.figure.FigureStyle;
import org.fadeline.figure.MatchPageFigure;
import org.fadeline.figure.Theme;
import org.fadeline.ui.control.file.PathChooser;
import org.fadeline.ui.control.file.PathChooser.Kind;
import org.fadeline.ui.control.file.PathChooser.Question;
import org.fadeline.ui.control.picture.FigureCanvas;
import org.fadeline.ui.state.Activity;
import org.fadeline.ui.state.PreferenceStore;
import org.fadeline.ui.state.Workbench;

/** The page of the match on paper: printed, or saved as a PDF to print elsewhere. */
final class PagePrint {
  private static final String ENDING = ".pdf";

  /** A5, ISO 216: 148 by 210 mm, in points. */
  private static final double WIDTH = 148 / 25.4 * 72;

  private static final double HEIGHT = 210 / 25.4 * 72;

  /** Dots a point: a canvas is dots, and paper shows more of them than a screen. */
  private static final double DOTS = 4;

  private final Workbench bench;
  private final PreferenceStore preferences;
  private final PathChooser paths;
  private final Button print = new Button("Print\u2026");
  private final Button save = new Button("Save as PDF\u2026");
  private final HBox view = new HBox(8, print, save);

  PagePrint(Workbench bench, PreferenceStore preferences, PathChooser paths) {
    this.bench = bench;
    this.paths = paths;
    this.preferences = preferences;
    print.setId("print-page");
    print.setAccessibleText("Print the page of the match on A5");
    print.setOnAction(e -> print());
    save.setId("save-page");
    save.setAccessibleText("Save the page of the match as a PDF, A5");
    save.setOnAction(e -> save());
  }

  HBox view() {
    return view;
  }

  /** Prints the page; where the machine has no printer it is saved instead. */
  void print() {
    Review review = bench.state().review().latest();
    if (review == null) {
      return;
    }
    PrinterJob job = PrinterJob.createPrinterJob();
    if (job == null) {
      bench.tell("No printer is set up on this machine: save the page as a PDF instead");
      save();
    } else if (job.showPrintDialog(window())) {
      print(job, page(review));
    }
  }

  private void print(PrinterJob job, MatchPageFigure page) {
    PageLayout layout =
        job.getPrinter()
            .createPageLayout(
                Paper.A5, PageOrientation.PORTRAIT, Printer.MarginType.HARDWARE_MINIMUM);
    double width =
        Math.min(layout.getPrintableWidth(), layout.getPrintableHeight() * page.aspect());
    FigureCanvas paper = new FigureCanvas();
    paper.show(
        (g, w, h) -> {
          g.scale(DOTS, DOTS);
          page.paint(g, w / DOTS, h / DOTS);
        },
        page.description());
    paper.resize(width * DOTS, width / page.aspect() * DOTS);
    paper.getTransforms().add(new Scale(1 / DOTS, 1 / DOTS));
    Group root = new Group(paper);
    // A node is drawn for print only once it has been laid out in a scene.
    new Scene(root);
    paper.layout();
    if (job.printPage(layout, root) && job.endJob()) {
      bench.tell("The page is on its way to " + job.getPrinter().getName());
    } else {
      bench.report(
          Activity.Trouble.of(
              "The page could not be printed",
              "The printer refused it. Save it as a PDF and print that."));
    }
  }

  /** Asks for a name and saves the page there. */
  void save() {
    Review review = bench.state().review().latest();
    if (review != null) {
      MatchPageFigure page = page(review);
      Path chosen =
          paths.save(
              Question.of("Save the page of the match", view)
                  .named(FileNames.of(page.title(), "pdf"))
                  .ofKinds(Kind.of("PDF", "*" + ENDING)),
              ENDING);
      if (chosen != null) {
        save(page, chosen);
      }
    }
  }

  /** Saves a page as a PDF of one A5 sheet. */
  void save(MatchPageFigure page, Path file) {
    bench.write("page", file, to -> FigureExport.pdf(page, to, WIDTH, HEIGHT));
  }

  /** Returns the page as it goes on paper, whatever the theme on screen. */
  MatchPageFigure page(Review review) {
    return new MatchPageFigure(review, FigureStyle.of(Theme.PRINT, preferences.get().units()));
  }

  private Window window() {
    return view.getScene().getWindow();
  }
}
