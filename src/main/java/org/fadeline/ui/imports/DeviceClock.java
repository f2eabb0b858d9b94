package org.fadeline.ui.imports;

import java.util.Optional;
import java.util.function.LongConsumer;
import java.util.function.Supplier;
import javafx.geometry.Pos;
import javafx.scene.Node;
import javafx.scene.control.Label;
import javafx.scene.control.TextField;
import javafx.scene.layout.HBox;
import javafx.scene.layout.Region;
import org.fadeline.io.ClockCorrection;
import org.fadeline.io.Refused;
import org.fadeline.model.SessionEvent;
import org.fadeline.ui.control.Labels;
import org.fadeline.ui.control.Say;
import org.fadeline.ui.state.Workbench;
import org.jspecify.annotations.Nullable;

/**
 * The clock of the device that the notes come from put right: what it said and what the time was,
 * or by how much to move all times.
 */
final class DeviceClock {
  private static final long DAY = 86_400_000;

  private final Workbench bench;
  private final Supplier<Optional<Draft>> draft;
  private final LongConsumer moved;
  private final TextField said =
      field("import-said", "11:42", "What the device said; empty for the time of the one picked");
  private final TextField was =
      field("import-align", "11:40:30", "What the time was then; all proposals move with it");
  private final TextField offset =
      field("import-offset", "-1:30", "By how much all times are moved");
  private final HBox view;
  private @Nullable SessionEvent picked;

  /**
   * The clock of the notes at hand.
   *
   * @param moved takes by how much the device's times are to be moved in all, milliseconds
   */
  DeviceClock(Workbench bench, Supplier<Optional<Draft>> draft, LongConsumer moved) {
    this.bench = bench;
    this.draft = draft;
    this.moved = moved;
    said.setOnAction(e -> was.requestFocus());
    was.setOnAction(e -> align());
    offset.setOnAction(e -> shift());
    view =
        new HBox(
            10,
            quiet("The device said"),
            said,
            quiet("when it was"),
            was,
            quiet("that is, times moved by"),
            offset);
    view.setAlignment(Pos.CENTER_LEFT);
  }

  Node view() {
    return view;
  }

  private static TextField field(String id, String prompt, String words) {
    TextField field = new TextField();
    field.setId(id);
    field.setPrefColumnCount(7);
    field.setPromptText(prompt);
    field.setAccessibleText(words);
    return field;
  }

  private static Label quiet(String words) {
    Label label = Labels.line(words, "quiet");
    label.setMinWidth(Region.USE_PREF_SIZE);
    return label;
  }

  /** Shows the device's time of a proposal and how far the times are moved. */
  void show(@Nullable SessionEvent event) {
    picked = event;
    Draft now = draft.get().orElse(null);
    view.setDisable(now == null);
    if (now == null) {
      return;
    }
    said.setPromptText(
        event == null
            ? "11:42"
            : Say.clock(event.at() - now.movedMillis(), now.session().occasion().zone()));
    offset.setText(now.movedMillis() == 0 ? "" : new ClockCorrection(now.movedMillis()).toString());
  }

  void takeFocus() {
    was.requestFocus();
  }

  private void align() {
    Draft now = draft.get().orElse(null);
    if (now == null) {
      return;
    }
    SessionEvent event = picked;
    boolean typed = !said.getText().isBlank();
    if (!typed && event == null) {
      bench.tell("Type what the device said, or pick the proposal whose time you know");
      return;
    }
    long near = (event == null ? now.session().match().allIn() : event.at()) - now.movedMillis();
    Optional<Long> device = typed ? time(said, near, now) : Optional.of(near);
    Optional<Long> truth = device.flatMap(at -> time(was, at, now));
    if (device.isPresent() && truth.isPresent()) {
      move(truth.get() - device.get());
      said.clear();
      was.clear();
    }
  }

  private Optional<Long> time(TextField field, long near, Draft now) {
    Optional<Long> at = Say.typedTime(field.getText(), near, now.session().occasion().zone());
    if (at.isEmpty()) {
      bench.tell("“" + field.getText() + "” is not a clock time; type it as 11:42:10");
    }
    return at;
  }

  private void shift() {
    try {
      move(offset.getText().isBlank() ? 0 : ClockCorrection.offset(offset.getText()).movedMillis());
    } catch (Refused refused) {
      bench.tell(refused.what() + "; " + refused.whatToDo());
    }
  }

  private void move(long millis) {
    if (Math.abs(millis) > DAY) {
      bench.tell("That is more than a day; correct the date of the match instead");
      return;
    }
    moved.accept(millis);
    bench.tell(
        millis == 0
            ? "Times as the device had them"
            : "All times moved by " + new ClockCorrection(millis));
  }
}
