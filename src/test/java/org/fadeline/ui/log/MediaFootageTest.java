package org.fadeline.ui.log;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static org.junit.jupiter.api.Assumptions.assumeTrue;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.concurrent.CopyOnWriteArrayList;
import java.util.concurrent.TimeUnit;
import javafx.scene.Scene;
import javafx.scene.media.MediaPlayer;
import javafx.scene.media.MediaView;
import javafx.stage.Stage;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.testfx.api.FxToolkit;
import org.testfx.util.WaitForAsyncUtils;

/**
 * A real film, made by ffmpeg's test pattern, in a real window; passed over where the machine has
 * no ffmpeg or cannot play H.264.
 */
@Tag("window")
class MediaFootageTest {
  @TempDir Path folder;

  private Path film() throws Exception {
    Path film = folder.resolve("peg.mp4");
    Process made;
    try {
      made =
          new ProcessBuilder(
                  "ffmpeg",
                  "-v",
                  "error",
                  "-f",
                  "lavfi",
                  "-i",
                  "testsrc=duration=20:size=320x180",
                  "-pix_fmt",
                  "yuv420p",
                  "-c:v",
                  "libx264",
                  film.toString())
              .redirectErrorStream(true)
              .redirectOutput(ProcessBuilder.Redirect.DISCARD)
              .start();
    } catch (java.io.IOException none) {
      assumeTrue(false, "no ffmpeg here");
      throw none;
    }
    assumeTrue(made.waitFor(1, TimeUnit.MINUTES) && made.exitValue() == 0, "ffmpeg made no film");
    return film;
  }

  @Test
  void theFilmIsPutWhereTheClockIsAndPlaysOn() throws Exception {
    Path film = film();
    assertTrue(Files.size(film) > 1_000);
    List<String> trouble = new CopyOnWriteArrayList<>();
    Stage stage = FxToolkit.registerPrimaryStage();
    Footage footage =
        WaitForAsyncUtils.asyncFx(
                () -> {
                  Footage opened = MediaFootage.open(film, trouble::add);
                  stage.setScene(new Scene(opened.view(), 320, 180));
                  stage.show();
                  return opened;
                })
            .get();
    MediaView view = (MediaView) footage.view().getChildrenUnmodifiable().get(0);
    MediaPlayer player = view.getMediaPlayer();
    long until = System.nanoTime() + TimeUnit.SECONDS.toNanos(20);
    while (player.getStatus() == MediaPlayer.Status.UNKNOWN
        && trouble.isEmpty()
        && System.nanoTime() < until) {
      Thread.sleep(100);
    }
    assumeTrue(trouble.isEmpty(), trouble.toString());
    assumeTrue(player.getStatus() != MediaPlayer.Status.UNKNOWN, "no player answered");
    WaitForAsyncUtils.asyncFx(() -> footage.follow(8_000, false, 1)).get();
    WaitForAsyncUtils.waitFor(
        20, TimeUnit.SECONDS, () -> Math.abs(player.getCurrentTime().toMillis() - 8_000) < 500);
    WaitForAsyncUtils.asyncFx(() -> footage.follow(8_000, true, 2)).get();
    WaitForAsyncUtils.waitFor(
        20, TimeUnit.SECONDS, () -> player.getStatus() == MediaPlayer.Status.PLAYING);
    assertEquals(2, player.getRate());
    WaitForAsyncUtils.waitFor(
        20, TimeUnit.SECONDS, () -> player.getCurrentTime().toMillis() > 8_600);
    WaitForAsyncUtils.asyncFx(() -> footage.close()).get();
  }
}
