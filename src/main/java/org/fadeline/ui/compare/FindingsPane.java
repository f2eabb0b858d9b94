package org.fadeline.ui.compare;

import java.util.Locale;
import javafx.scene.control.Label;
import javafx.scene.control.ScrollPane;
import javafx.scene.layout.Priority;
import javafx.scene.layout.Region;
import javafx.scene.layout.VBox;
import org.fadeline.analysis.compare.Comparison;
import org.fadeline.analysis.compare.RunningCatch.Point;
import org.fadeline.analysis.compare.RunningCatch.SoFar;
import org.fadeline.model.Units;
import org.fadeline.ui.control.Labels;
import org.fadeline.ui.control.Nodes;
import org.fadeline.ui.control.Say;
import org.jspecify.annotations.Nullable;

/** What differed most, with hindsight; as known then, what each match had given by the playhead. */
final class FindingsPane {
  private final VBox afterwards = column();
  private final Label first = Labels.wrapped("");
  private final Label second = Labels.wrapped("");
  private final Label apart = Labels.wrapped("");
  private final VBox then = column();
  private final VBox view;

  FindingsPane() {
    afterwards.setId("compare-afterwards");
    then.setId("compare-so-far");
    then.getChildren()
        .addAll(
            Labels.wrapped("So far", "strong"),
            Labels.wrapped("As known then: nothing ahead of the playhead is told.", "quiet"),
            first,
            second,
            apart);
    ScrollPane told = Nodes.scroll(new VBox(afterwards, then));
    view = new VBox(told);
    VBox.setVgrow(told, Priority.ALWAYS);
    view.getStyleClass().add("panel");
    view.setStyle("-fx-padding: 0.8em;");
  }

  private static VBox column() {
    VBox column = new VBox(10);
    column.managedProperty().bind(column.visibleProperty());
    return column;
  }

  Region view() {
    return view;
  }

  void show(Comparison comparison) {
    afterwards
        .getChildren()
        .setAll(
            Labels.wrapped("What differed most", "strong"),
            Labels.wrapped("With hindsight, as are rates, first bites and tables.", "quiet"));
    comparison
        .findings()
        .sentences()
        .forEach(f -> afterwards.getChildren().add(Labels.wrapped(f.text())));
    afterwards.getChildren().add(Labels.wrapped(comparison.findings().caution(), "quiet"));
    String withheld = comparison.lines().bitesWithheld();
    if (withheld != null) {
      afterwards.getChildren().add(Labels.wrapped(withheld, "quiet"));
    }
  }

  /**
   * Stands at a moment.
   *
   * @param soFar what both had given by then; null with hindsight
   */
  void follow(@Nullable Point soFar, Units units) {
    afterwards.setVisible(soFar == null);
    then.setVisible(soFar != null);
    if (soFar != null) {
      first.setText("First: " + soFar(soFar.first(), units));
      second.setText("Second: " + soFar(soFar.second(), units));
      apart.setText(apart(soFar.first(), soFar.second(), units));
    }
  }

  private static String soFar(@Nullable SoFar soFar, Units units) {
    if (soFar == null) {
      return "not begun";
    }
    Double grams = soFar.grams();
    return grams == null || soFar.fish() == 0
        ? fish(soFar.fish())
        : Say.weight(grams, units) + ", " + fish(soFar.fish());
  }

  private static String apart(@Nullable SoFar one, @Nullable SoFar other, Units units) {
    if (one == null || other == null) {
      return "";
    }
    Double first = one.grams();
    Double second = other.grams();
    double apart = first != null && second != null ? first - second : one.fish() - other.fish();
    String by =
        first != null && second != null
            ? Say.weight(Math.abs(apart), units)
            : fish((int) Math.abs(apart));
    return apart == 0
        ? "Level."
        : String.format(Locale.ROOT, "The %s is %s ahead.", apart > 0 ? "first" : "second", by);
  }

  private static String fish(int fish) {
    return fish == 0 ? "no fish" : fish + " fish";
  }
}
