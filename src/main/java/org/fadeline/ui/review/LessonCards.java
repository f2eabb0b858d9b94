package org.fadeline.ui.review;

import java.util.function.LongConsumer;
import javafx.scene.control.Button;
import javafx.scene.control.Label;
import javafx.scene.layout.HBox;
import javafx.scene.layout.Priority;
import javafx.scene.layout.VBox;
import org.fadeline.analysis.Course.Lesson;
import org.fadeline.analysis.Review;
import org.fadeline.ui.control.Labels;
import org.fadeline.ui.control.LineBar;
import org.fadeline.ui.control.Say;
import org.jspecify.annotations.Nullable;

/** At most three sentences, each with its figures and its minute. */
final class LessonCards {
  private final HBox view = new HBox(10);
  private final LongConsumer replay;

  LessonCards(LongConsumer replay) {
    this.replay = replay;
  }

  HBox view() {
    return view;
  }

  void show(@Nullable Review review) {
    view.getChildren().clear();
    if (review == null) {
      return;
    }
    for (Lesson lesson : review.course().lessons()) {
      view.getChildren().add(card(review, lesson));
    }
    if (view.getChildren().isEmpty()) {
      Label none = Labels.line("This record is too thin for a lesson.", "quiet");
      view.getChildren().add(none);
    }
  }

  private HBox card(Review review, Lesson lesson) {
    Label text = Labels.wrapped(lesson.text());
    String time = Say.shortClock(lesson.at(), review.session().occasion().zone());
    Button go = new Button("Go to " + time);
    go.getStyleClass().add("link");
    go.setOnAction(e -> replay.accept(lesson.at()));
    VBox words = new VBox(4, text, go);
    HBox.setHgrow(words, Priority.ALWAYS);
    int place = lesson.lineId() == null ? -1 : review.indexOf(lesson.lineId());
    LineBar bar = place < 0 ? new LineBar().in("-fl-accent") : new LineBar().of(place);
    HBox card = new HBox(10, bar, words);
    card.getStyleClass().addAll("panel", "lesson");
    HBox.setHgrow(card, Priority.ALWAYS);
    card.setPrefWidth(300);
    card.setMaxWidth(Double.MAX_VALUE);
    return card;
  }
}
