package org.fadeline.export;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.concurrent.TimeUnit;
import org.fadeline.analysis.Review;
import org.fadeline.analysis.ReviewSettings;
import org.fadeline.analysis.Reviewer;
import org.fadeline.demo.DemoMatch;
import org.fadeline.demo.DemoWaters;
import org.fadeline.model.talk.Look;
import org.fadeline.model.talk.Slide;
import org.fadeline.model.talk.Source;
import org.fadeline.model.talk.Talk;
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
  private TalkMaterial material;
  private Talk talk;
  private Path file;

  /** Makes the talk. */
  @Setup
  public void prepare() throws IOException {
    Review review =
        Reviewer.review(
            DemoMatch.generate(DemoWaters.waterA(), DemoWaters.planA(), 106),
            ReviewSettings.DEFAULT);
    material = new TalkMaterial(Map.of("s1", review));
    Talk draft = TalkDraft.of(List.of(new Source("s1", Path.of("s1"))), material, Look.USUAL, true);
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
    TalkExport.pptx(talk, material, file, ExportMonitor.NONE);
  }

  /** Writes the PDF. */
  @Benchmark
  public void pdf() throws IOException {
    TalkExport.pdf(talk, material, file, ExportMonitor.NONE);
  }

  /** Removes the file. */
  @TearDown
  public void remove() throws IOException {
    Files.delete(file);
  }
}
