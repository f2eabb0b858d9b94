package org.fadeline.cli;

import java.io.IOException;
import java.nio.file.Path;
import java.time.LocalTime;
import java.time.ZonedDateTime;
import org.fadeline.analysis.Review;
import org.fadeline.export.ExportMonitor;
import org.fadeline.export.ReplayGif;
import org.fadeline.export.TalkMaterial;
import org.fadeline.export.TalkPages;
import org.fadeline.export.Unnamed;
import org.fadeline.figure.FigureStyle;
import org.fadeline.model.Session;
import org.fadeline.model.talk.Talk;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.Option;

/** The options for a replay as a GIF: which part of the first session, and how fast. */
final class TalkFilmOptions {
  private static final double USUAL_SECONDS = 15;

  @Option(
      names = "--from",
      paramLabel = "HH:MM",
      description = "where the replay starts (default: all in)")
  private @Nullable LocalTime from;

  @Option(
      names = "--to",
      paramLabel = "HH:MM",
      description = "where the replay ends (default: all out)")
  private @Nullable LocalTime to;

  @Option(
      names = "--speed",
      paramLabel = "TIMES",
      description =
          "match seconds in one second of the replay (default: what makes it last 15 s); it has at"
              + " most 600 pictures")
  private @Nullable Double speed;

  void write(Talk talk, TalkMaterial material, Path out) throws IOException {
    if (talk.sources().isEmpty()) {
      throw new IllegalArgumentException("the talk names no session to replay");
    }
    Unnamed shown = Unnamed.of(talk, material);
    Review review = shown.material().review(talk.sources().get(0).id());
    Session session = review.session();
    long start = from == null ? session.match().allIn() : at(session, from);
    long end = to == null ? session.match().allOut() : at(session, to);
    if (end <= start) {
      throw new IllegalArgumentException("--to must be later than --from");
    }
    double times = speed == null ? (end - start) / 1000.0 / USUAL_SECONDS : speed;
    ReplayGif.write(
        review,
        FigureStyle.of(TalkPages.theme(talk.look().ground()), talk.look().units()),
        ReplayGif.Film.atSpeed(start, end, times),
        out,
        ExportMonitor.NONE);
  }

  /**
   * Returns the instant of a clock time: of the day of all in, or of the next in a match by night.
   */
  static long at(Session session, LocalTime time) {
    ZonedDateTime same = session.clock(session.match().allIn()).with(time);
    long next = same.plusDays(1).toInstant().toEpochMilli();
    return next <= session.match().allOut() ? next : same.toInstant().toEpochMilli();
  }
}
