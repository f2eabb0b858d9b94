package org.fadeline.ui.log;

import java.nio.file.Path;
import java.util.function.Consumer;
import javafx.scene.layout.Region;
import javafx.scene.layout.StackPane;
import javafx.scene.media.Media;
import javafx.scene.media.MediaException;
import javafx.scene.media.MediaPlayer;
import javafx.scene.media.MediaView;
import javafx.util.Duration;
import org.jspecify.annotations.Nullable;

/**
 * A film played by JavaFX where the machine can: on Linux it needs libavcodec for H.264 and AAC.
 * The log's clock leads and the film follows; its own clock ticks ten times a second only, so it is
 * left alone while it is near enough.
 */
final class MediaFootage implements Footage {
  /** A playing film is put right from here on, milliseconds. */
  private static final double NEAR_WHILE_PLAYING = 400;

  /** A standing film is put right from here on, milliseconds: about two pictures. */
  private static final double NEAR_WHILE_STANDING = 80;

  /** JavaFX plays no faster; above, the film stands and is put on again and again. */
  private static final double FASTEST = 8;

  private final StackPane view = new StackPane();
  private @Nullable MediaPlayer player;

  private MediaFootage() {
    view.setMinSize(0, 0);
    view.getStyleClass().add("footage");
  }

  /** Opens a film as {@link Footage.Opener} says. */
  static Footage open(Path file, Consumer<String> trouble) {
    MediaFootage footage = new MediaFootage();
    try {
      MediaPlayer opened = new MediaPlayer(new Media(file.toUri().toString()));
      opened.setOnError(() -> trouble.accept(words(opened.getError())));
      MediaView shown = new MediaView(opened);
      shown.setPreserveRatio(true);
      shown.fitWidthProperty().bind(footage.view.widthProperty());
      shown.fitHeightProperty().bind(footage.view.heightProperty());
      footage.view.getChildren().setAll(shown);
      footage.player = opened;
    } catch (MediaException unplayable) {
      trouble.accept(words(unplayable));
    } catch (LinkageError noPlayer) {
      trouble.accept("This machine has no player for films.");
    }
    return footage;
  }

  private static String words(@Nullable MediaException failure) {
    MediaException.Type type = failure == null ? MediaException.Type.UNKNOWN : failure.getType();
    return switch (type) {
      case MEDIA_UNSUPPORTED, MEDIA_UNSPECIFIED, UNKNOWN ->
          "This machine cannot play that film: MP4 with H.264 and AAC plays where the system has"
              + " them.";
      case PLAYBACK_HALTED -> "Playing halted: a film with sound needs a sound device.";
      case MEDIA_CORRUPTED -> "The film is damaged and cannot be played.";
      case MEDIA_INACCESSIBLE, MEDIA_UNAVAILABLE -> "The film cannot be read.";
      default -> "The film cannot be played (" + type + ").";
    };
  }

  @Override
  public Region view() {
    return view;
  }

  @Override
  public void follow(double position, boolean running, double speed) {
    MediaPlayer now = player;
    if (now == null || now.getStatus() == MediaPlayer.Status.UNKNOWN) {
      return;
    }
    boolean plays = running && speed <= FASTEST;
    double apart = Math.abs(now.getCurrentTime().toMillis() - position);
    Duration end = now.getTotalDuration();
    boolean within = end.isUnknown() || position < end.toMillis();
    if (within && apart > (plays ? NEAR_WHILE_PLAYING * Math.max(1, speed) : NEAR_WHILE_STANDING)) {
      now.seek(Duration.millis(position));
    }
    if (now.getRate() != Math.min(FASTEST, speed)) {
      now.setRate(Math.min(FASTEST, speed));
    }
    boolean isPlaying = now.getStatus() == MediaPlayer.Status.PLAYING;
    if (plays && within && !isPlaying) {
      now.play();
    } else if (!(plays && within) && isPlaying) {
      now.pause();
    }
  }

  @Override
  public void close() {
    MediaPlayer now = player;
    if (now != null) {
      now.dispose();
      player = null;
    }
    view.getChildren().clear();
  }
}
