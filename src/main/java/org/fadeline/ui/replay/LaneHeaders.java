package org.fadeline.ui.replay;

import java.util.ArrayList;
import java.util.List;
import javafx.scene.control.Label;
import javafx.scene.layout.Pane;
import org.fadeline.figure.Knowledge;
import org.fadeline.figure.TimelineLayout;
import org.fadeline.ui.control.Labels;
import org.jspecify.annotations.Nullable;

/** What each lane gave, on one line with its name. */
final class LaneHeaders extends Pane {
  private List<List<String>> figuresShown = List.of();

  /** Makes a place in every lane that has a header. */
  void build(@Nullable TimelineLayout now) {
    figuresShown = List.of();
    List<Label> labels = new ArrayList<>();
    if (now != null) {
      for (TimelineLayout.Lane lane : now.lanes()) {
        Label label = Labels.line("", "quiet", "lane-figures");
        label.setVisible(lane.header().getHeight() > 0);
        labels.add(label);
      }
    }
    getChildren().setAll(labels);
  }

  /** Shows the longest words that fit, as far as they are known. */
  void show(TimelineLayout now, Knowledge knowledge) {
    List<List<String>> figures = now.figures(knowledge);
    if (figures.equals(figuresShown)) {
      return;
    }
    figuresShown = figures;
    double right = now.plotArea().getMaxX();
    for (int i = 0; i < getChildren().size() && i < figures.size(); i++) {
      Label label = (Label) getChildren().get(i);
      TimelineLayout.Lane lane = now.lanes().get(i);
      double room = now.figuresRoom(lane);
      for (String text : figures.get(i)) {
        label.setText(text);
        label.applyCss();
        if (label.prefWidth(-1) <= room) {
          break;
        }
      }
      double w = Math.min(room, label.prefWidth(-1));
      double h = label.prefHeight(-1);
      label.resizeRelocate(right - w, now.headerBaseline(lane) - label.getBaselineOffset(), w, h);
    }
  }
}
