package org.fadeline.ui.log;

import java.nio.file.Files;
import java.nio.file.Path;
import javafx.geometry.Pos;
import javafx.scene.control.Button;
import javafx.scene.control.Label;
import javafx.scene.layout.HBox;
import javafx.scene.layout.Region;
import javafx.scene.layout.VBox;
import org.fadeline.log.LogClock;
import org.fadeline.model.Outcome;
import org.fadeline.model.Session;
import org.fadeline.ui.control.Nodes;
import org.fadeline.ui.control.file.PathChooser;
import org.fadeline.ui.control.file.PathChooser.Kind;
import org.fadeline.ui.control.file.PathChooser.Question;
import org.jspecify.annotations.Nullable;

/**
 * The film beside the log, where the match has one and the machine can play it. The session keeps
 * its path, relative to its own file, and how it lies; all else works without.
 */
final class FootagePane {
  private static final double HEIGHT = 190;

  private final LogDesk desk;
  private final Footage.Opener opener;
  private final PathChooser paths;
  private final Label words = new Label();
  private final Button choose = new Button("Footage beside…");
  private final Button away = new Button("Put the film away");
  private final VBox view = new VBox(6);
  private @Nullable Path shown;
  private @Nullable Footage footage;

  FootagePane(LogDesk desk, Footage.Opener opener, PathChooser paths) {
    this.desk = desk;
    this.opener = opener;
    this.paths = paths;
    words.setWrapText(true);
    words.setMinHeight(Region.USE_PREF_SIZE);
    words.getStyleClass().add("quiet");
    words.setId("log-film-words");
    choose.setId("log-film");
    choose.setFocusTraversable(false);
    choose.setOnAction(e -> choose());
    away.setId("log-film-away");
    away.setFocusTraversable(false);
    away.setOnAction(e -> desk.film(null));
    view.getStyleClass().add("panel");
    view.setStyle("-fx-padding: 0.7em 1em 0.8em 1em;");
    lay();
  }

  VBox view() {
    return view;
  }

  private void choose() {
    Path chosen =
        paths.open(
            Question.of("A film of the match", view)
                .ofKinds(Kind.of("Films", "*.mp4", "*.m4v", "*.MP4"), Kind.ALL));
    if (chosen != null) {
      take(chosen);
    }
  }

  /** Puts a film beside the log; the session keeps where it is. */
  void take(Path film) {
    String problem = desk.film(film);
    if (problem != null) {
      words.setText(problem);
      lay();
    }
  }

  /** Shows the film of a session, or none. */
  void show(Session session) {
    Path film =
        session.outcome().media().stream()
            .findFirst()
            .map(Outcome.Media::path)
            .flatMap(desk::filmFile)
            .orElse(null);
    if (film == null ? shown == null : film.equals(shown)) {
      return;
    }
    close();
    shown = film;
    words.setText("");
    if (film != null && !Files.isReadable(film)) {
      words.setText(
          film.getFileName()
              + " is not at "
              + film.getParent()
              + " any more. Logging goes on without; choose the film again where it is now.");
    } else if (film != null) {
      footage = opener.open(film, this::trouble);
    }
    lay();
  }

  private void trouble(String what) {
    words.setText(what + " Play it beside the window and log all the same.");
    Footage unplayable = footage;
    footage = null;
    if (unplayable != null) {
      unplayable.close();
    }
    lay();
  }

  private void lay() {
    HBox row = new HBox(8, choose);
    row.setAlignment(Pos.CENTER_LEFT);
    if (shown != null) {
      choose.setText("Another film…");
      row.getChildren().add(away);
    } else {
      choose.setText("Footage beside…");
    }
    view.getChildren().clear();
    Footage now = footage;
    if (now != null) {
      Region film = now.view();
      film.setPrefHeight(HEIGHT);
      film.setMinHeight(HEIGHT);
      view.getChildren().add(film);
    }
    if (!words.getText().isEmpty()) {
      view.getChildren().add(words);
    }
    view.getChildren().add(row);
  }

  /** Brings the film to where the clock is. */
  void tick(LogClock clock) {
    boolean recording = clock.source() == LogClock.Source.RECORDING;
    Nodes.show(view, recording);
    Footage now = footage;
    if (now != null) {
      now.follow(desk.position(), recording && clock.running(), clock.speed());
    }
  }

  /** Stands still while the screen is put away. */
  void pause() {
    Footage now = footage;
    if (now != null) {
      now.follow(desk.position(), false, 1);
    }
  }

  /** Lets the film go. */
  void close() {
    Footage now = footage;
    if (now != null) {
      now.close();
    }
    footage = null;
    shown = null;
  }
}
