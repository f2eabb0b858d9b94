package org.fadeline.ui.talk;

import java.util.Arrays;
import java.util.List;
import java.util.function.Consumer;
import javafx.scene.Node;
import javafx.scene.control.Button;
import javafx.scene.control.Label;
import javafx.scene.control.Spinner;
import javafx.scene.layout.VBox;
import org.controlsfx.control.PopOver;
import org.fadeline.ui.control.Nodes;

/** Asks as what the talk is to be written. */
final class WritePane {
  private final Choice<Writing.Output> output;
  private final Spinner<Integer> width = new Spinner<>(160, 16_000, 1920, 160);
  private final Spinner<Integer> dpi = new Spinner<>(36, 2400, 144, 12);
  private final Spinner<Integer> speed = new Spinner<>(1, 3600, 1200, 60);
  private final Label says = new Label();
  private final Node size;
  private final Node film;
  private final PopOver over;

  WritePane(Consumer<Writing> write) {
    output = new Choice<>("Write as", Writing.Output::label, o -> follow());
    output.offer(Arrays.asList(Writing.Output.values()));
    output.box().setId("write-as");
    for (Spinner<Integer> spinner : List.of(width, dpi, speed)) {
      spinner.setEditable(true);
      spinner.setPrefWidth(120);
    }
    width.setAccessibleText("Width in pixels");
    dpi.setAccessibleText("Dots an inch");
    speed.setAccessibleText("Match seconds in one second of the replay");
    size =
        Fields.beside(Fields.labelled("Pixels wide", width), Fields.labelled("Dots an inch", dpi));
    film = Fields.labelled("Times as fast as the match", speed);
    says.setWrapText(true);
    says.setPrefWidth(300);
    says.getStyleClass().add("quiet");
    Button go = new Button("Write…");
    go.setId("write-go");
    go.getStyleClass().add("main-button");
    VBox box = new VBox(10, output.view(), size, film, says, go);
    // The button it hangs on would lend it its bolder face.
    box.setStyle("-fx-padding: 1em; -fx-font-family: 'IBM Plex Sans';");
    over = new PopOver(box);
    over.setArrowLocation(PopOver.ArrowLocation.TOP_RIGHT);
    over.setDetachable(false);
    go.setOnAction(
        e -> {
          over.hide();
          write.accept(
              new Writing(
                  output.box().getValue(), width.getValue(), dpi.getValue(), speed.getValue()));
        });
    output.show(Writing.Output.PPTX);
    follow();
  }

  void show(Node owner) {
    over.show(owner);
    output.box().requestFocus();
  }

  private void follow() {
    Writing.Output now = output.box().getValue();
    Nodes.show(size, now.hasSize());
    Nodes.show(film, now == Writing.Output.GIF);
    says.setText(
        switch (now) {
          case PPTX -> "Titles, words and notes can be edited there; the typeface goes with it.";
          case PDF -> "Vectors with their fonts; the same on every machine.";
          case PRINT -> "A page a slide. The print ground saves ink.";
          case PICTURES -> "Into a new or empty folder, numbered in order.";
          case ONE_PNG, ONE_SVG -> "The slide shown, as it is.";
          case GIF ->
              "The stretch of the slide shown, as known at each moment; at most 600 pictures.";
          case TABLES -> "Every table of every match of the talk, into a new or empty folder.";
        });
  }
}
