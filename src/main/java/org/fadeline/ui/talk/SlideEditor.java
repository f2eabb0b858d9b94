package org.fadeline.ui.talk;

import java.util.ArrayList;
import java.util.List;
import java.util.function.UnaryOperator;
import javafx.scene.Node;
import javafx.scene.control.TextArea;
import javafx.scene.control.TextField;
import javafx.scene.control.TextInputControl;
import javafx.scene.layout.Priority;
import javafx.scene.layout.Region;
import javafx.scene.layout.VBox;
import org.fadeline.model.talk.Look;
import org.fadeline.model.talk.Slide;
import org.fadeline.model.talk.Talk;
import org.fadeline.ui.control.Say;
import org.jspecify.annotations.Nullable;

/** The slide being worked on: its title, words, picture, ground and notes. */
final class SlideEditor {
  private final TextField title = new TextField();
  private final TextArea words = new TextArea();
  private final TextArea notes = new TextArea();
  private final PicturePane picture;
  private final Choice<Look.@Nullable Ground> ground;
  private final VBox notesField = Fields.labelled("Notes for you, not shown", notes);
  private final VBox view;
  private boolean filling;

  SlideEditor(TalkModel model, UnaryOperator<Talk> withOpen) {
    picture = new PicturePane(model, withOpen);
    title.setId("slide-title");
    title.setAccessibleText("Title of the slide: its one message");
    title
        .textProperty()
        .addListener(
            (p, before, text) -> {
              if (!filling) {
                model.slide("Change the title", "title", s -> s.withTitle(text));
              }
            });
    words.setId("slide-words");
    words.setAccessibleText("Words on the slide, a paragraph each row");
    words.setPrefRowCount(3);
    words.setWrapText(true);
    words
        .textProperty()
        .addListener(
            (p, before, text) -> {
              if (!filling) {
                model.slide("Change the words", "words", s -> s.withWords(rows(text)));
              }
            });
    notes.setId("slide-notes");
    notes.setAccessibleText("What you say at this slide; not shown on it");
    notes.setPrefRowCount(4);
    notes.setWrapText(true);
    VBox.setVgrow(notes, Priority.ALWAYS);
    notesField.setMinHeight(Region.USE_PREF_SIZE);
    notes
        .textProperty()
        .addListener(
            (p, before, text) -> {
              if (!filling) {
                model.slide("Change the notes", "notes", s -> s.withNotes(text));
              }
            });
    ground =
        new Choice<>(
            "Ground of this slide",
            g -> g == null ? "The talk's" : Say.capital(g.word()),
            g -> model.slide("Change the ground", "ground", s -> s.withGround(g)));
    List<Look.@Nullable Ground> grounds = new ArrayList<>();
    grounds.add(null);
    grounds.addAll(List.of(Look.Ground.values()));
    ground.offer(grounds);
    view =
        new VBox(
            8,
            Fields.labelled("Title", title),
            Fields.labelled("Words", words),
            picture.view(),
            ground.view());
  }

  private static List<String> rows(String text) {
    return text.isEmpty() ? List.of() : List.of(text.split("\n", -1));
  }

  /** Returns the field of the notes, which stands below the slide as on a speaker's sheet. */
  Region notes() {
    return notesField;
  }

  Node view() {
    return view;
  }

  void takeFocus() {
    title.requestFocus();
  }

  void show(TalkModel.State state, SlideWork.Shown shown) {
    Slide slide = state.slide();
    view.setDisable(slide == null);
    notesField.setDisable(slide == null);
    filling = true;
    fill(title, slide == null ? "" : slide.title());
    fill(words, slide == null ? "" : String.join("\n", slide.words()));
    fill(notes, slide == null ? "" : slide.notes());
    filling = false;
    ground.show(slide == null ? null : slide.ground());
    picture.show(state, shown.sessions());
  }

  /** Leaves the caret alone where the field holds the text already. */
  private static void fill(TextInputControl field, String text) {
    if (!field.getText().equals(text)) {
      field.setText(text);
    }
  }
}
