package org.fadeline.ui.control.picture;

import java.util.List;
import javafx.geometry.HPos;
import javafx.scene.AccessibleRole;
import javafx.scene.control.Label;
import javafx.scene.layout.ColumnConstraints;
import javafx.scene.layout.GridPane;
import javafx.scene.layout.Priority;
import javafx.scene.layout.Region;
import org.jspecify.annotations.Nullable;

/** Weights as bars on one scale, each with its name and its figures. */
public final class WeightBars extends GridPane {
  /**
   * A bar.
   *
   * @param name what weighs it
   * @param grams how much, 0 or more
   * @param tick a second weight it is held against, grams, or null
   * @param limit what it may weigh, grams, or null
   * @param words the figures
   * @param strong whether it is the one the others are held against
   */
  public record Bar(
      String name,
      double grams,
      @Nullable Double tick,
      @Nullable Double limit,
      String words,
      boolean strong) {
    private double most() {
      return Math.max(grams, Math.max(tick == null ? 0 : tick, limit == null ? 0 : limit));
    }
  }

  /** Makes an empty chart. */
  public WeightBars() {
    setHgap(12);
    setVgap(6);
    ColumnConstraints names = new ColumnConstraints();
    names.setMinWidth(USE_PREF_SIZE);
    ColumnConstraints bars = new ColumnConstraints();
    bars.setHgrow(Priority.ALWAYS);
    bars.setFillWidth(true);
    ColumnConstraints words = new ColumnConstraints();
    words.setMinWidth(USE_PREF_SIZE);
    words.setHalignment(HPos.RIGHT);
    getColumnConstraints().addAll(names, bars, words);
  }

  /** Shows bars from the top. */
  public void show(List<Bar> bars) {
    getChildren().clear();
    double most = bars.stream().mapToDouble(Bar::most).max().orElse(0);
    for (int i = 0; i < bars.size(); i++) {
      Bar bar = bars.get(i);
      Label name = new Label(bar.name);
      Label words = new Label(bar.words);
      if (bar.strong) {
        name.getStyleClass().add("strong");
        words.getStyleClass().add("strong");
      }
      addRow(i, name, new Track(bar, most), words);
    }
  }

  /** One bar on its track; the figures beside it say the same to a screen reader. */
  private static final class Track extends Region {
    private static final double HEIGHT_EMS = 1.5;

    private final Bar bar;
    private final double most;
    private final Region fill = piece("bar-fill");
    private final Region tick = piece("bar-tick");
    private final Region limit = piece("bar-limit");

    Track(Bar bar, double most) {
      this.bar = bar;
      this.most = most;
      getStyleClass().add("bar-track");
      setAccessibleRole(AccessibleRole.TEXT);
      setAccessibleText(bar.name + ": " + bar.words);
      setStyle("-fx-min-height: " + HEIGHT_EMS + "em; -fx-max-height: " + HEIGHT_EMS + "em;");
      setMinWidth(60);
      if (!bar.strong) {
        fill.getStyleClass().add("bar-plain");
      }
      tick.setVisible(bar.tick != null);
      limit.setVisible(bar.limit != null);
      getChildren().addAll(fill, limit, tick);
    }

    private static Region piece(String style) {
      Region region = new Region();
      region.getStyleClass().add(style);
      region.setManaged(false);
      return region;
    }

    @Override
    protected void layoutChildren() {
      double inset = Math.round(getHeight() * 0.22);
      fill.resizeRelocate(0, inset, along(bar.grams), getHeight() - 2 * inset);
      place(tick, bar.tick, 2);
      place(limit, bar.limit, 2);
    }

    private double along(double grams) {
      return most <= 0 ? 0 : Math.round(grams / most * (getWidth() - 2));
    }

    private void place(Region line, @Nullable Double grams, double width) {
      if (grams != null) {
        line.resizeRelocate(along(grams), 0, width, getHeight());
      }
    }
  }
}
