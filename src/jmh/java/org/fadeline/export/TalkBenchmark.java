package org.fadeline.export;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.TimeUnit;
import org.fadeline.analysis.Review;
import org.fadeline.analysis.ReviewSettings;
import org.fadeline.analysis.Reviewer;
import org.fadeline.demo.DemoMatch;
import org.fadeline.demo.DemoWaters;
import org.fadeline.figure.Theme;
import org.fadeline.model.Units;
import org.openjdk.jmh.annotations.Benchmark;
import org.openjdk.jmh.annotations.BenchmarkMode;
import org.openjdk.jmh.annotations.Fork;
import org.openjdk.jmh.annotations.Measurement;
import org.openjdk.jmh.annotations.Mode;
import org.openjdk.jmh.annotations.OutputTimeUnit;
import org.openjdk.jmh.annotations.Scope;
import org.openjdk.jmh.annotations.Setup;
import org.openjdk.jmh.annotations.State;
import org.openjdk.jmh.annotations.TearDown;
import org.openjdk.jmh.annotations.Warmup;

/** A talk of 40 slides, cold: under 10 s. */
// JMH fills the fields in its set-up.
@SuppressWarnings("NullAway.Init")
@State(Scope.Benchmark)
@BenchmarkMode(Mode.SingleShotTime)
@OutputTimeUnit(TimeUnit.SECONDS)
@Fork(1)
@Warmup(iterations = 0)
@Measurement(iterations = 2)
public class TalkBenchmark {
  private Review review;
  private Talk talk;
  private Path file;

  /** Makes the talk. */
  @Setup
  public void prepare() throws IOException {
    review =
        Reviewer.review(
            DemoMatch.generate(DemoWaters.waterA(), DemoWaters.planA(), 106),
            ReviewSettings.DEFAULT);
    Talk draft =
        TalkDraft.of(
            review, new Talk.Look(Theme.PROJECTOR, Units.LB_OZ_AND_METRES, Talk.Shape.WIDE), true);
    List<Slide> slides = new ArrayList<>();
    while (slides.size() < 40) {
      slides.addAll(draft.slides());
    }
    talk = draft.withSlides(slides.subList(0, 40));
    file = Files.createTempFile("talk", ".pptx");
  }

  /** Writes the slides. */
  @Benchmark
  public void slides() throws IOException {
    TalkExport.pptx(talk, review, file, ExportMonitor.NONE);
  }

  /** Writes the PDF. */
  @Benchmark
  public void pdf() throws IOException {
    TalkExport.pdf(talk, review, file, ExportMonitor.NONE);
  }

  /** Removes the file. */
  @TearDown
  public void remove() throws IOException {
    Files.delete(file);
  }
}
