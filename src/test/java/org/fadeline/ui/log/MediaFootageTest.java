package org.fadeline.ui.log;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assumptions.assumeTrue;

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
import org.testfx.api.FxToolkit;
import org.testfx.util.WaitForAsyncUtils;

/** A real film (MP4, H.264) in a real window; passed over where the machine cannot play it. */
@Tag("window")
class MediaFootageTest {
  /** A float crossing the water in twelve seconds, drawn for this test; see its folder. */
  private static final Path FILM = Path.of("src/test/resources/film/float.mp4");

  @Test
  void theFilmIsPutWhereTheClockIsAndPlaysOn() throws Exception {
    List<String> trouble = new CopyOnWriteArrayList<>();
    Stage stage = FxToolkit.registerPrimaryStage();
    Footage footage =
        WaitForAsyncUtils.asyncFx(
                () -> {
                  Footage opened = MediaFootage.open(FILM, trouble::add);
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
