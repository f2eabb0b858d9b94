package org.fadeline.ui.compare;

import java.util.List;
import javafx.css.PseudoClass;
import javafx.geometry.Pos;
import javafx.scene.Node;
import javafx.scene.control.ComboBox;
import javafx.scene.control.Label;
import javafx.scene.control.TextField;
import javafx.scene.layout.HBox;
import javafx.scene.layout.Priority;
import javafx.scene.layout.Region;
import org.fadeline.analysis.compare.Alignment;
import org.fadeline.analysis.compare.Comparison;
import org.fadeline.figure.Knowledge;
import org.fadeline.model.Session;
import org.fadeline.model.SessionEvent;
import org.fadeline.ui.control.Nodes;
import org.fadeline.ui.control.Say;
import org.fadeline.ui.control.form.Segments;
import org.fadeline.ui.control.form.Worded;
import org.jspecify.annotations.Nullable;

/** How the two are laid on each other: chosen, and stated in words. */
final class LayingBar {
  private final CompareBench bench;
  private final Segments<Alignment.Mode> modes;
  private final TextField shift = new TextField();
  private final ComboBox<SessionEvent> first = new ComboBox<>();
  private final ComboBox<SessionEvent> second = new ComboBox<>();
  private final Label stated = new Label();
  private final HBox view;
  private boolean showing;
  private @Nullable Comparison comparison;
  private @Nullable Moment moment;

  LayingBar(CompareBench bench) {
    this.bench = bench;
    modes =
        new Segments<>(
            "Lay on each other",
            Laying.MODES,
            Laying::words,
            mode -> bench.lay(bench.state().laying().withMode(mode)));
    shift.setId("shift");
    shift.setPrefColumnCount(5);
    shift.setMinWidth(Region.USE_PREF_SIZE);
    shift.setPromptText("± min");
    shift.setAccessibleText("Minutes by which the second match is laid later; then Enter");
    shift.setOnAction(e -> typed());
    prepare(first, "first-event", "Event of the first match");
    prepare(second, "second-event", "Event of the second match");
    first.setOnAction(e -> chosen(first.getValue(), null));
    second.setOnAction(e -> chosen(null, second.getValue()));
    stated.setId("stated");
    stated.setWrapText(true);
    stated.getStyleClass().add("quiet");
    view = new HBox(10, modes, shift, first, second, stated);
    view.setAlignment(Pos.CENTER_LEFT);
    HBox.setHgrow(stated, Priority.ALWAYS);
  }

  private static void prepare(ComboBox<SessionEvent> box, String id, String words) {
    box.setId(id);
    box.setAccessibleText(words);
    box.setPrefWidth(190);
  }

  Node view() {
    return view;
  }

  void focusShift() {
    bench.lay(bench.state().laying().withMode(Alignment.Mode.BY_HAND));
    shift.requestFocus();
    shift.selectAll();
  }

  private void typed() {
    try {
      double minutes =
          Double.parseDouble(shift.getText().strip().replace('−', '-').replace("min", "").strip());
      boolean fits = Math.abs(minutes) <= Laying.MOST_MINUTES;
      shift.pseudoClassStateChanged(PseudoClass.getPseudoClass("error"), !fits);
      if (fits) {
        bench.lay(bench.state().laying().byHand(minutes));
      }
    } catch (NumberFormatException notANumber) {
      shift.pseudoClassStateChanged(PseudoClass.getPseudoClass("error"), true);
    }
  }

  private void chosen(@Nullable SessionEvent one, @Nullable SessionEvent other) {
    if (!showing) {
      bench.lay(
          bench
              .state()
              .laying()
              .onEvents(one == null ? null : one.id(), other == null ? null : other.id()));
    }
  }

  /** Says where the second would lie while it is being dragged. */
  void moving(Comparison comparison, double minutes) {
    stated.setText(
        "The second match's all in "
            + CompareWords.shift(CompareBench.lag(comparison) + minutes)
            + " of the first's.");
  }

  void show(Laying laying, Comparison newComparison) {
    showing = true;
    comparison = newComparison;
    modes.choose(laying.mode());
    Nodes.show(shift, laying.mode() == Alignment.Mode.BY_HAND);
    shift.setText(CompareWords.shift(laying.minutes()).replace(" min", ""));
    boolean events = laying.mode() == Alignment.Mode.EVENT;
    Nodes.show(first, events);
    Nodes.show(second, events);
    offer();
    stated.setText(newComparison.setup().alignment().stated());
    showing = false;
  }

  /** Stands at a moment: as known then no later event is offered. */
  void follow(Moment newMoment) {
    Moment before = moment;
    moment = newMoment;
    boolean moved =
        before == null
            || before.hindsight() != newMoment.hindsight()
            || (!newMoment.hindsight() && !newMoment.playing());
    if (moved) {
      showing = true;
      offer();
      showing = false;
    }
  }

  private void offer() {
    Comparison now = comparison;
    if (now != null && first.isVisible()) {
      Laying laying = bench.state().laying();
      Moment seen = moment;
      fill(
          first,
          now.first().session(),
          seen == null ? Knowledge.hindsight() : seen.first(),
          laying.firstEvent());
      fill(
          second,
          now.second().session(),
          seen == null ? Knowledge.hindsight() : seen.second(),
          laying.secondEvent());
    }
  }

  /** Offers the events known; the one chosen stays, wherever it is. */
  private static void fill(
      ComboBox<SessionEvent> box, Session session, Knowledge knowledge, @Nullable String chosen) {
    String id = Laying.chosen(session, chosen);
    List<SessionEvent> offered =
        session.events().stream()
            .filter(e -> knowledge.knows(e.at()) || e.id().equals(id))
            .toList();
    if (!List.copyOf(box.getItems()).equals(offered)) {
      box.setConverter(new Worded<>(event -> words(event, session)));
      box.getItems().setAll(offered);
    }
    offered.stream().filter(e -> e.id().equals(id)).findFirst().ifPresent(box::setValue);
  }

  private static String words(SessionEvent event, Session session) {
    String line =
        event.lineId() == null
            ? ""
            : session.line(event.lineId()).map(l -> ", " + l.name()).orElse("");
    return Say.clock(event.at(), session.occasion().zone()) + " " + Alignment.said(event) + line;
  }
}
