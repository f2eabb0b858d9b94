package org.fadeline.ui.talk;

import java.util.Arrays;
import java.util.List;
import javafx.geometry.Pos;
import javafx.scene.Node;
import javafx.scene.control.Button;
import javafx.scene.control.CheckBox;
import javafx.scene.control.Label;
import javafx.scene.control.TextField;
import javafx.scene.layout.VBox;
import org.fadeline.model.Units;
import org.fadeline.model.talk.Discretion;
import org.fadeline.model.talk.Look;
import org.fadeline.model.talk.Source;
import org.fadeline.ui.control.Labels;
import org.fadeline.ui.control.Nodes;
import org.fadeline.ui.control.Say;
import org.fadeline.ui.control.form.Segments;

/** What concerns the whole talk: its name, look, sessions, and what it leaves out. */
final class TalkSettings {
  private final TextField title = new TextField();
  private final Segments<Look.Ground> ground;
  private final Segments<Look.Shape> shape;
  private final Segments<Units.Weight> weights;
  private final Segments<Units.Length> lengths;
  private final CheckBox unnamed = new CheckBox("Leave out names, place and notes");
  private final TextField names = new TextField();
  private final Label leftOut = new Label();
  private final Label sessions = new Label();
  private final VBox view;
  private boolean filling;

  TalkSettings(TalkModel model, Runnable addSession) {
    title.setId("talk-title");
    title.setAccessibleText("What the talk is called");
    title
        .textProperty()
        .addListener(
            (p, before, text) -> {
              if (!filling) {
                model.type("Name the talk", "talk title", t -> t.withTitle(text));
              }
            });
    ground =
        new Segments<>(
            "Ground",
            List.of(Look.Ground.values()),
            g -> Say.capital(g.word()),
            g -> model.change("Change the ground", t -> t.withLook(t.look().withGround(g))));
    shape =
        new Segments<>(
            "Shape of the slides",
            List.of(Look.Shape.values()),
            Look.Shape::word,
            s -> model.change("Change the shape", t -> t.withLook(t.look().withShape(s))));
    weights =
        new Segments<>(
            "Weights in",
            List.of(Units.Weight.values()),
            Units.Weight::word,
            w ->
                model.change(
                    "Change the units",
                    t -> t.withLook(t.look().withUnits(t.look().units().withWeight(w)))));
    lengths =
        new Segments<>(
            "Distances in",
            List.of(Units.Length.values()),
            Units.Length::word,
            l ->
                model.change(
                    "Change the units",
                    t -> t.withLook(t.look().withUnits(t.look().units().withLength(l)))));
    unnamed.setId("unnamed");
    unnamed.setOnAction(
        e ->
            model.change(
                "Leave names out",
                t ->
                    t.withDiscretion(
                        new Discretion(unnamed.isSelected(), t.discretion().names()))));
    names.setPromptText("Other names to leave out, with commas");
    names.setAccessibleText("Other people's names to leave out of the words, with commas between");
    names
        .textProperty()
        .addListener(
            (p, before, text) -> {
              if (!filling) {
                model.type(
                    "Leave names out",
                    "names",
                    t -> t.withDiscretion(new Discretion(t.discretion().unnamed(), split(text))));
              }
            });
    leftOut.setWrapText(true);
    leftOut.setId("left-out");
    leftOut.getStyleClass().add("quiet");
    sessions.setWrapText(true);
    sessions.setId("talk-matches");
    Button add = new Button("Add a match…");
    add.setId("add-match");
    add.setOnAction(e -> addSession.run());
    view =
        new VBox(
            8,
            Fields.labelled("Called", title),
            row("Ground", ground),
            row("Shape", shape),
            row("Weights", weights),
            row("Distances", lengths),
            Fields.labelled("Matches it shows", sessions),
            add,
            unnamed,
            names,
            leftOut);
  }

  private static Node row(String name, Segments<?> segments) {
    Label label = Labels.line(name, "quiet");
    label.setPrefWidth(80);
    var row = Fields.beside(label, segments);
    row.setAlignment(Pos.CENTER_LEFT);
    return row;
  }

  private static List<String> split(String text) {
    return Arrays.stream(text.split(",", -1)).map(String::strip).filter(n -> !n.isEmpty()).toList();
  }

  Node view() {
    return view;
  }

  void show(TalkModel.State state, SlideWork.Shown shown) {
    filling = true;
    if (!title.getText().equals(state.talk().title())) {
      title.setText(state.talk().title());
    }
    Discretion discretion = state.talk().discretion();
    unnamed.setSelected(discretion.unnamed());
    if (!split(names.getText()).equals(discretion.names())) {
      names.setText(String.join(", ", discretion.names()));
    }
    filling = false;
    Look look = state.talk().look();
    ground.choose(look.ground());
    shape.choose(look.shape());
    weights.choose(look.units().weight());
    lengths.choose(look.units().length());
    List<String> files =
        state.talk().sources().stream()
            .map(Source::file)
            .map(f -> String.valueOf(f.getFileName()))
            .toList();
    sessions.setText(files.isEmpty() ? "none yet" : String.join("\n", files));
    leftOut.setText(
        shown.leftOut().isEmpty()
            ? ""
            : "Left out: "
                + String.join("; ", shown.leftOut())
                + ". The names of lines are kept: look through them.");
    Nodes.show(leftOut, !leftOut.getText().isEmpty());
  }
}
