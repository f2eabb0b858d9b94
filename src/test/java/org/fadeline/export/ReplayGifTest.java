package org.fadeline.export;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.awt.image.BufferedImage;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.CancellationException;
import javax.imageio.ImageIO;
import javax.imageio.ImageReader;
import javax.imageio.stream.ImageInputStream;
import org.fadeline.analysis.Review;
import org.fadeline.analysis.ReviewSettings;
import org.fadeline.analysis.Reviewer;
import org.fadeline.figure.FigureStyle;
import org.fadeline.figure.Theme;
import org.fadeline.figure.TimelineView;
import org.fadeline.io.ReadOptions;
import org.fadeline.io.open.SessionFiles;
import org.fadeline.model.Session;
import org.fadeline.model.Units;
import org.fadeline.ui.replay.RoughLog;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** A filmed replay shows of each moment what was known then. */
class ReplayGifTest {
  private static final FigureStyle STYLE = FigureStyle.of(Theme.LIGHT, Units.LB_OZ_AND_METRES);

  @TempDir Path folder;

  /** Matches whose later log changes what the review says of earlier minutes. */
  @ParameterizedTest
  @CsvSource({"2, 31", "5, 52", "13, 52"})
  void nothingLoggedLaterIsFilmed(long seed, int minute) throws IOException {
    Session whole = RoughLog.of(seed);
    long allIn = whole.match().allIn();
    long at = allIn + minute * 60_000L;
    Session cut = whole.withEvents(whole.events().stream().filter(e -> e.at() <= at).toList());
    assertArrayEquals(lastFrame(cut, allIn, at), lastFrame(whole, allIn, at));
  }

  private int[] lastFrame(Session session, long from, long to) throws IOException {
    Review review = Reviewer.review(session, ReviewSettings.DEFAULT);
    Path file = folder.resolve("film.gif");
    ReplayGif.Film film = new ReplayGif.Film(from, to, 2, 5, 640, 400);
    ReplayGif.write(review, STYLE, film, file, ExportMonitor.NONE);
    ImageReader reader = ImageIO.getImageReadersByFormatName("gif").next();
    try (ImageInputStream in = ImageIO.createImageInputStream(file.toFile())) {
      reader.setInput(in);
      BufferedImage image = reader.read(1);
      int w = image.getWidth();
      return image.getRGB(0, 0, w, image.getHeight(), null, 0, w);
    } finally {
      reader.dispose();
      Files.delete(file);
    }
  }

  /** A stretch fills the picture, with what led up to it; a whole match is shown whole. */
  @Test
  void theTimelineShowsTheStretchFilmed() {
    Session session = RoughLog.of(2);
    long allIn = session.match().allIn();
    long minute = 60_000L;
    TimelineView stretch = shown(session, allIn + 40 * minute, allIn + 72 * minute);
    assertEquals(allIn + 32 * minute, stretch.from());
    assertEquals(allIn + 72 * minute, stretch.to());
    TimelineView moment = shown(session, allIn + 40 * minute, allIn + 40 * minute + 1000);
    assertEquals(allIn + 45 * minute, moment.to());
    TimelineView all = shown(session, allIn, session.match().allOut());
    assertEquals(TimelineView.whole(session).from(), all.from());
    assertEquals(session.match().allOut(), all.to());
  }

  private static TimelineView shown(Session session, long from, long to) {
    return ReplayGif.shown(session, new ReplayGif.Film(from, to, 2, 5, 640, 400));
  }

  /** What was known at each moment is worked out first: it tells how far it is, and can stop. */
  @Test
  void whatWasKnownThenIsPartOfTheWork() throws IOException {
    Path sample = Path.of("sample-sessions", "evening-moves-and-fish.session.json");
    Session session = SessionFiles.read(sample, ReadOptions.DEFAULT).session().orElseThrow();
    Review review = Reviewer.review(session, ReviewSettings.DEFAULT);
    List<Double> shares = new ArrayList<>();
    ExportMonitor stopsEarly =
        new ExportMonitor() {
          @Override
          public void progress(double share) {
            shares.add(share);
          }

          @Override
          public boolean isCancelled() {
            return shares.size() > 20;
          }
        };
    ReplayGif.Film film =
        new ReplayGif.Film(session.match().allIn(), session.match().allOut(), 2, 5, 640, 400);
    Path file = folder.resolve("stopped.gif");
    assertThrows(
        CancellationException.class, () -> ReplayGif.write(review, STYLE, film, file, stopsEarly));
    assertEquals(21, shares.size());
    assertTrue(shares.get(20) > shares.get(0) && shares.get(20) < 0.2);
    assertFalse(Files.exists(file));
  }
}
