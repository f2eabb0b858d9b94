package org.fadeline.ui.imports;

import java.util.Optional;
import java.util.Set;
import java.util.function.Consumer;
import java.util.function.Function;
import java.util.function.UnaryOperator;
import javafx.geometry.Pos;
import javafx.scene.control.ComboBox;
import javafx.scene.control.TextField;
import javafx.scene.input.KeyCode;
import javafx.scene.input.KeyEvent;
import javafx.scene.layout.HBox;
import org.fadeline.model.EventEdits;
import org.fadeline.model.EventKind;
import org.fadeline.model.Fish;
import org.fadeline.model.Line;
import org.fadeline.model.Session;
import org.fadeline.model.SessionEvent;
import org.fadeline.model.WeightText;
import org.fadeline.ui.control.Say;
import org.fadeline.ui.control.form.Worded;
import org.fadeline.ui.state.PreferenceStore;
import org.jspecify.annotations.Nullable;

/** Time, kind, line and weight of the proposal picked, to be changed before it is accepted. */
final class ProposalEditor {
  private final PreferenceStore preferences;
  private final Consumer<UnaryOperator<Session>> change;
  private final Consumer<String> tell;
  private final TextField time = field("proposal-time", "Time of the proposal", 6);
  private final ComboBox<EventKind> kind = new ComboBox<>();
  private final ComboBox<Optional<Line>> line = new ComboBox<>();
  private final TextField weight = field("proposal-weight", "Weight of the fish", 6);
  private final HBox view = new HBox(8, time, kind, line, weight);
  private @Nullable Session session;
  private @Nullable SessionEvent event;
  private boolean showing;

  /**
   * Makes an editor that shows nothing.
   *
   * @param change is handed each change
   * @param tell says what cannot be used
   * @param done gives the keys back to the list: Escape
   */
  ProposalEditor(
      PreferenceStore preferences,
      Consumer<UnaryOperator<Session>> change,
      Consumer<String> tell,
      Runnable done) {
    this.preferences = preferences;
    this.change = change;
    this.tell = tell;
    view.setAlignment(Pos.CENTER_LEFT);
    weight.setPromptText("weight");
    kind.setId("proposal-kind");
    kind.setAccessibleText("Kind of event proposed");
    kind.getItems().setAll(EventKind.values());
    kind.setConverter(new Worded<>(EventKind::word));
    line.setId("proposal-line");
    line.setAccessibleText("Line of the proposal");
    line.setConverter(new Worded<>(l -> l.map(x -> Say.capital(x.name())).orElse("no line")));
    time.setOnAction(e -> retime());
    kind.setOnAction(e -> each(id -> EventEdits.kind(Set.of(id), kind.getValue())));
    line.setOnAction(
        e -> {
          Optional<Line> to = line.getValue();
          each(id -> EventEdits.line(Set.of(id), to.map(Line::id).orElse(null)));
        });
    weight.setOnAction(e -> reweigh());
    view.addEventHandler(
        KeyEvent.KEY_PRESSED,
        e -> {
          if (e.getCode() == KeyCode.ESCAPE) {
            e.consume();
            done.run();
          }
        });
    view.setVisible(false);
  }

  HBox view() {
    return view;
  }

  void takeFocus() {
    time.requestFocus();
  }

  private static TextField field(String id, String words, int columns) {
    TextField field = new TextField();
    field.setId(id);
    field.setAccessibleText(words);
    field.setPrefColumnCount(columns);
    return field;
  }

  /** Shows a proposal of a session, or nothing. */
  void show(Session of, @Nullable SessionEvent shown) {
    session = of;
    event = shown;
    view.setVisible(shown != null);
    if (shown == null) {
      return;
    }
    showing = true;
    time.setText(Say.clock(shown.at(), of.occasion().zone()));
    kind.setValue(shown.kind());
    line.getItems().setAll(of.lines().stream().map(Optional::of).toList());
    line.getItems().add(0, Optional.empty());
    line.setValue(Optional.ofNullable(shown.lineId()).flatMap(of::line));
    Fish fish = shown.fishOrNull();
    weight.setDisable(fish == null);
    weight.setText(
        fish == null || fish.grams() == null
            ? ""
            : Say.fishWeight(fish.grams(), preferences.get().units()));
    showing = false;
  }

  private void each(Function<String, UnaryOperator<Session>> edit) {
    SessionEvent now = event;
    if (!showing && now != null) {
      change.accept(edit.apply(now.id()));
    }
  }

  private void retime() {
    SessionEvent now = event;
    Session of = session;
    if (now == null || of == null) {
      return;
    }
    Say.typedTime(time.getText(), now.at(), of.occasion().zone())
        .ifPresentOrElse(
            at -> each(id -> EventEdits.shift(Set.of(id), at - now.at())),
            () -> tell.accept("“" + time.getText() + "” is not a clock time; type it as 12:48:30"));
  }

  private void reweigh() {
    String text = weight.getText().strip();
    try {
      Double grams =
          text.isEmpty() ? null : WeightText.grams(text, preferences.get().units().weight());
      each(id -> EventEdits.weight(id, grams));
    } catch (IllegalArgumentException notAWeight) {
      tell.accept(String.valueOf(notAWeight.getMessage()));
    }
  }
}
