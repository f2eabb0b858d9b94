package org.fadeline.ui.talk;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Set;
import java.util.concurrent.CancellationException;
import javax.print.PrintService;
import org.fadeline.analysis.Review;
import org.fadeline.export.ExportMonitor;
import org.fadeline.export.FigureExport;
import org.fadeline.export.ReplayGif;
import org.fadeline.export.TalkExport;
import org.fadeline.export.TalkMaterial;
import org.fadeline.export.TalkPages;
import org.fadeline.export.Unnamed;
import org.fadeline.figure.FigureStyle;
import org.fadeline.figure.SlideFigure;
import org.fadeline.model.Session;
import org.fadeline.model.talk.Picture;
import org.fadeline.model.talk.Slide;
import org.fadeline.model.talk.Talk;
import org.fadeline.ui.state.Activity.Problem;
import org.fadeline.ui.state.Activity.Trouble;
import org.fadeline.ui.state.FileWriting;
import org.fadeline.ui.state.TaskService;
import org.fadeline.ui.state.Workbench;
import org.jspecify.annotations.Nullable;

/** Writes talks in the background, with progress, until told to give up. */
final class TalkWriting {
  static final String CHANNEL = "talk-write";

  private final Workbench bench;
  private final SlideWork work;

  TalkWriting(Workbench bench, SlideWork work) {
    this.bench = bench;
    this.work = work;
  }

  /** What is written, and where. */
  record Order(Talk talk, int slide, Writing as, Path target) {}

  void write(Order order, SlideWork.@Nullable Open open) {
    String name = String.valueOf(order.target().getFileName());
    bench
        .tasks()
        .submit(
            CHANNEL,
            "Writing " + name,
            progress -> {
              run(order, open, monitor(progress));
              return name;
            },
            new TaskService.Answer<>(
                written -> bench.tell(written + " is written"),
                failure -> tell(name, order.target(), failure)));
  }

  /** Prints a talk, a page a slide. */
  void print(Talk talk, int slide, PrintService printer, SlideWork.@Nullable Open open) {
    bench
        .tasks()
        .submit(
            CHANNEL,
            "Printing on " + printer.getName(),
            progress -> {
              Path pdf = Files.createTempFile("talk", ".pdf");
              try {
                Writing as = new Writing(Writing.Output.PDF, 1920, 144, 1);
                run(new Order(talk, slide, as, pdf), open, monitor(progress));
                TalkPrinting.print(pdf, printer);
              } finally {
                Files.deleteIfExists(pdf);
              }
              return printer.getName();
            },
            new TaskService.Answer<>(
                name -> bench.tell("Sent to " + name),
                failure -> tell("The talk", Path.of(printer.getName()), failure)));
  }

  /** Stops what is being written; nothing of it is left. */
  void giveUp() {
    bench.tasks().cancel(CHANNEL);
    bench.tell("Given up; nothing was written");
  }

  static ExportMonitor monitor(TaskService.Progress progress) {
    return new ExportMonitor() {
      @Override
      public void progress(double share) {
        progress.report(share);
      }

      @Override
      public boolean isCancelled() {
        return progress.cancelled();
      }
    };
  }

  private void run(Order order, SlideWork.@Nullable Open open, ExportMonitor monitor)
      throws IOException {
    SlideWork.Loaded loaded = work.load(order.talk(), open);
    if (!loaded.problems().isEmpty()) {
      throw new Unreadable(loaded.problems().stream().map(Problem::of).toList());
    }
    Talk talk = order.talk();
    TalkMaterial material = loaded.material();
    Path target = order.target();
    TalkExport.Size size = new TalkExport.Size(order.as().width(), order.as().dpi());
    switch (order.as().output()) {
      case PPTX -> TalkExport.pptx(talk, material, target, monitor);
      case PDF, PRINT -> TalkExport.pdf(talk, material, target, monitor);
      case PICTURES ->
          TalkExport.pictures(
              talk,
              material,
              target,
              new TalkExport.Pictures(Set.of(TalkExport.Picture.PNG, TalkExport.Picture.SVG), size),
              monitor);
      case ONE_PNG ->
          FigureExport.png(page(order, material), target, size.raster(talk.look().shape()));
      case ONE_SVG ->
          FigureExport.svg(
              page(order, material), target, talk.look().shape().width(), SlideFigure.HEIGHT);
      case GIF -> film(order, material, monitor);
      case TABLES -> TalkExport.tables(talk, material, target, monitor);
    }
  }

  private static SlideFigure page(Order order, TalkMaterial material) {
    Talk alone = order.talk().withSlides(List.of(order.talk().slides().get(order.slide())));
    Unnamed shown = Unnamed.of(alone, material);
    return TalkPages.of(shown.talk(), shown.material()).get(0);
  }

  private static void film(Order order, TalkMaterial material, ExportMonitor monitor)
      throws IOException {
    Talk talk = order.talk();
    Slide slide = order.slide() < 0 ? Slide.EMPTY : talk.slides().get(order.slide());
    Picture picture = slide.picture();
    if (talk.sources().isEmpty()) {
      throw new IllegalArgumentException("this talk shows no match that could be replayed");
    }
    String source =
        picture == null || picture.kind().ofSeason()
            ? talk.sources().get(0).id()
            : picture.sources().get(0);
    Review review = Unnamed.of(talk, material).material().review(source);
    Session session = review.session();
    Picture.Window window = picture == null ? Picture.Window.WHOLE : picture.window();
    long from = window.from() == null ? session.match().allIn() : window.from();
    long to = window.to() == null ? session.match().allOut() : window.to();
    ReplayGif.write(
        review,
        FigureStyle.of(TalkPages.theme(talk.look().ground()), talk.look().units()),
        ReplayGif.Film.atSpeed(from, Math.max(to, from + 1000), order.as().speed()),
        order.target(),
        monitor);
  }

  private void tell(String name, Path target, Exception failure) {
    if (failure instanceof CancellationException) {
      return;
    }
    if (failure instanceof Unreadable unreadable) {
      bench.report(
          new Trouble(
              name + " was not written",
              "A match of this talk cannot be read. Nothing was left behind.",
              unreadable.problems,
              null));
    } else {
      bench.report(FileWriting.trouble(target, failure));
    }
  }

  /** A session of the talk cannot be read. */
  private static final class Unreadable extends IOException {
    private static final long serialVersionUID = 1;

    private final transient List<Problem> problems;

    Unreadable(List<Problem> problems) {
      this.problems = problems;
    }
  }
}
