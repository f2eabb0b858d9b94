package org.fadeline.ui.review;

import java.time.ZoneId;
import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.function.LongConsumer;
import javafx.geometry.HPos;
import javafx.scene.Node;
import javafx.scene.control.Button;
import javafx.scene.control.Label;
import javafx.scene.control.ScrollPane;
import javafx.scene.layout.ColumnConstraints;
import javafx.scene.layout.GridPane;
import javafx.scene.layout.HBox;
import javafx.scene.layout.Priority;
import javafx.scene.layout.VBox;
import org.fadeline.analysis.Course.Warning;
import org.fadeline.analysis.NetScale;
import org.fadeline.analysis.Review;
import org.fadeline.model.EventKind;
import org.fadeline.model.Outcome.NetWeight;
import org.fadeline.model.Session;
import org.fadeline.model.Units;
import org.fadeline.ui.control.Labels;
import org.fadeline.ui.control.Say;
import org.fadeline.ui.control.picture.NetBars;
import org.jspecify.annotations.Nullable;

/** What kind of record it is, what that withholds, and its warnings. */
final class RecordPane {
  private final VBox body = new VBox(8);
  private final VBox held = new VBox(8);
  private final HBox columns = new HBox(28, body, held);
  private final ScrollPane view = new ScrollPane(columns);
  private final LongConsumer replay;

  RecordPane(LongConsumer replay) {
    this.replay = replay;
    view.setFitToWidth(true);
    view.getStyleClass().add("plain-scroll");
    // Longer lines are hard to read.
    body.getStyleClass().add("reading");
    for (VBox column : List.of(body, held)) {
      HBox.setHgrow(column, Priority.ALWAYS);
      column.setPrefWidth(100);
    }
    held.setMaxWidth(460);
  }

  ScrollPane view() {
    return view;
  }

  void show(@Nullable Review review, Units units) {
    List<Node> parts = new ArrayList<>();
    if (review != null) {
      Review.Summary summary = review.summary();
      parts.add(heading("This is a " + kind(summary) + "."));
      parts.add(Labels.wrapped(ReviewWords.of(summary.grade())));
      String precision = ReviewWords.precision(summary.clockPrecisionS());
      if (!precision.isEmpty()) {
        parts.add(Labels.wrapped(precision));
      }
      if (summary.unassignedMinutes() >= 1) {
        parts.add(
            Labels.wrapped(
                Math.round(summary.unassignedMinutes())
                    + " min belong to no line: the record shows no move there."));
        review.lines().stream()
            .filter(l -> l.rates().withUnassigned() != null)
            .forEach(l -> parts.add(Labels.wrapped(ReviewWords.range(l, units))));
      }
      parts.add(Labels.wrapped(scales(review, units)));
      parts.add(heading(warningsHead(review.course().warnings().size())));
      for (Warning warning : review.course().warnings()) {
        parts.add(warning(warning, review.session().occasion().zone()));
      }
    }
    body.getChildren().setAll(parts);
    held.getChildren().setAll(review == null ? List.of() : held(review.session(), units));
  }

  /** What the record holds, kind by kind, and its nets as bars. */
  private static List<Node> held(Session session, Units units) {
    List<Node> parts = new ArrayList<>();
    parts.add(heading("What it holds"));
    Map<EventKind, Integer> counts = new EnumMap<>(EventKind.class);
    session.events().forEach(e -> counts.merge(e.kind(), 1, Integer::sum));
    GridPane grid = new GridPane();
    grid.setHgap(14);
    grid.setVgap(4);
    int at = 0;
    int rows = (counts.size() + 1) / 2;
    for (Map.Entry<EventKind, Integer> kind : counts.entrySet()) {
      Label number = Labels.line(String.valueOf(kind.getValue()), "strong");
      GridPane.setHalignment(number, HPos.RIGHT);
      grid.add(number, 2 * (at / rows), at % rows);
      grid.add(new Label(kind.getKey().word()), 2 * (at / rows) + 1, at % rows);
      at++;
    }
    ColumnConstraints word = new ColumnConstraints();
    word.setMinWidth(110);
    grid.getColumnConstraints().addAll(new ColumnConstraints(), word);
    parts.add(grid);
    List<NetScale> nets = NetScale.of(session);
    if (nets.stream().anyMatch(n -> n.grams() > 0)) {
      parts.add(heading("Net by net"));
      NetBars bars = new NetBars();
      bars.show(nets, units);
      parts.add(bars);
    }
    return parts;
  }

  private static String kind(Review.Summary summary) {
    String label = summary.grade().label();
    return label.endsWith("record") ? label : "record of " + label;
  }

  private static String warningsHead(int count) {
    return count == 0 ? "Nothing odd in the record" : "To know about the record";
  }

  /** Estimates against the scales, net by net; never applied silently. */
  static String scales(Review review, Units units) {
    List<NetWeight> nets = review.session().outcome().weighIn();
    if (nets.isEmpty()) {
      return "No weigh-in is logged: weights are as "
          + review.summary().weightFrom().word()
          + " on the bank.";
    }
    double scales = nets.stream().mapToDouble(NetWeight::grams).sum();
    List<NetScale> byNet = NetScale.of(review.session());
    NetScale.Total total = NetScale.total(byNet);
    double logged = total.logged().grams();
    if (logged <= 0) {
      return "The scales said " + Say.weight(scales, units) + "; no single weights are logged.";
    }
    return "The scales said "
        + Say.weight(scales, units)
        + " in "
        + Say.count(nets.size(), "net")
        + "; the log adds up to "
        + Say.weight(logged, units)
        + ", foul-hooked fish included"
        + (total.factor() == null
            ? ". They do not speak of the same fish, so the one is not held against the other."
            : ": multiply by " + factor(total.factor()) + " to get from one to the other.")
        + netByNet(byNet)
        + " Figures here are as logged.";
  }

  private static String netByNet(List<NetScale> nets) {
    List<String> factors = new ArrayList<>();
    for (NetScale net : nets) {
      Double factor = net.factor();
      if (factor != null) {
        factors.add("net " + net.net() + " ×" + factor(factor));
      }
    }
    return factors.size() < 2 ? "" : " Net by net: " + String.join(", ", factors) + ".";
  }

  private static String factor(double factor) {
    return String.format(Locale.ROOT, "%.2f", factor);
  }

  private Node warning(Warning warning, ZoneId zone) {
    Label label = Labels.wrapped(warning.text());
    Long at = warning.at();
    if (at == null) {
      return label;
    }
    Button go = new Button("Go to " + Say.shortClock(at, zone));
    go.getStyleClass().add("link");
    go.setOnAction(e -> replay.accept(at));
    return new VBox(label, go);
  }

  private static Label heading(String words) {
    Label label = Labels.wrapped(words, "strong");
    label.setStyle("-fx-padding: 0.7em 0 0 0;");
    return label;
  }
}
