package org.fadeline.ui.replay;

import java.time.ZoneId;
import java.time.ZoneOffset;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import javafx.animation.Animation;
import javafx.animation.PauseTransition;
import javafx.application.Platform;
import javafx.beans.binding.Bindings;
import javafx.beans.property.ReadOnlyIntegerWrapper;
import javafx.css.PseudoClass;
import javafx.scene.control.IndexedCell;
import javafx.scene.control.Label;
import javafx.scene.control.ListCell;
import javafx.scene.control.ListView;
import javafx.scene.control.MenuItem;
import javafx.scene.control.skin.VirtualFlow;
import javafx.scene.input.KeyCode;
import javafx.scene.layout.HBox;
import javafx.scene.layout.Priority;
import javafx.scene.layout.Region;
import javafx.scene.layout.VBox;
import javafx.scene.text.Text;
import javafx.util.Duration;
import org.fadeline.analysis.Course.TurningPoint;
import org.fadeline.model.Line;
import org.fadeline.ui.control.Labels;
import org.fadeline.ui.control.LineBar;
import org.fadeline.ui.control.NodeMenu;
import org.fadeline.ui.control.Nodes;
import org.fadeline.ui.control.Say;
import org.fadeline.ui.state.Workbench;
import org.fadeline.ui.state.WorkbenchState;
import org.jspecify.annotations.Nullable;

/** The moments worth going to; choosing one goes there. */
final class TurningList {
  /** A row is never lower than this, pixels. */
  private static final double LOWEST = 20;

  /** So many rows off, a point is come to by scrolling on. */
  private static final int NEAR = 20;

  private static final int MOST_STEPS = 60;

  /** While the playhead is dragged the list comes along so often: each lays out its rows anew. */
  private static final Duration PACE = Duration.millis(80);

  /** Scrolling goes on for so long in one frame. */
  private static final long AT_ONCE_NANOS = 5_000_000;

  private static final PseudoClass CURRENT = PseudoClass.getPseudoClass("current");

  private final Workbench bench;
  private final VBox view = new VBox();
  private final Label count = new Label();
  private final ListView<TurningPoint> list =
      new ListView<>() {
        @Override
        protected void layoutChildren() {
          super.layoutChildren();
          reveal();
        }
      };
  private final Map<String, Integer> places = new HashMap<>();
  private ZoneId zone = ZoneOffset.UTC;
  private List<TurningPoint> shown = List.of();
  private final ReadOnlyIntegerWrapper current = new ReadOnlyIntegerWrapper(-1);
  private boolean toReveal;

  /** What is to be shown once the list comes along, and how many of its rows may be seen now. */
  private List<TurningPoint> wanted = List.of();

  private int wantedCurrent = -1;
  private boolean hindsight;
  private final ReadOnlyIntegerWrapper seen = new ReadOnlyIntegerWrapper();
  private final PauseTransition pace = new PauseTransition(PACE);

  TurningList(Workbench bench) {
    this.bench = bench;
    Label title = Labels.line("Turning points", "strong");
    count.getStyleClass().add("quiet");
    Region space = Nodes.gap();
    HBox head = new HBox(title, space, count);
    head.setStyle("-fx-padding: 0.6em 0.9em 0.4em 0.9em;");
    list.setId("turning-points");
    list.setAccessibleText("Turning points; Enter goes to the one chosen");
    list.setCellFactory(l -> new Cell());
    Label nothing = Labels.line("Nothing yet", "quiet");
    list.setPlaceholder(nothing);
    list.setOnKeyPressed(
        e -> {
          if (e.getCode() == KeyCode.ENTER || e.getCode() == KeyCode.SPACE) {
            go(list.getFocusModel().getFocusedItem());
            e.consume();
          }
        });
    NodeMenu.on(list, asked -> menu());
    VBox.setVgrow(list, Priority.ALWAYS);
    view.getChildren().addAll(head, list);
    view.getStyleClass().add("panel");
    // One turning point in full, however large the letters: the peg gives way.
    view.setStyle("-fx-min-height: 8em;");
    pace.setOnFinished(e -> comeAlong());
  }

  VBox view() {
    return view;
  }

  private List<MenuItem> menu() {
    TurningPoint point = list.getSelectionModel().getSelectedItem();
    return point == null || !wanted.contains(point)
        ? List.of()
        : List.of(
            NodeMenu.item("Go to it", () -> go(point)),
            NodeMenu.item("Second cursor there", () -> bench.picking().mark(point.at())));
  }

  private void go(@Nullable TurningPoint point) {
    if (point != null && wanted.contains(point)) {
      bench.transport().seek(point.at());
    }
  }

  void show(WorkbenchState state) {
    if (state.open() != null) {
      zone = state.open().session().occasion().zone();
      places.clear();
      List<Line> lines = state.open().session().lines();
      for (int i = 0; i < lines.size(); i++) {
        places.put(lines.get(i).id(), i);
      }
    }
    List<TurningPoint> points = state.turningPoints();
    int now = -1;
    for (int i = 0; i < points.size(); i++) {
      if (points.get(i).at() <= state.playhead().at()) {
        now = i;
      }
    }
    if (!points.equals(wanted)) {
      wanted = points;
      count.setText(
          points.isEmpty() ? "" : points.size() + (state.choices().hindsight() ? "" : " so far"));
      // What is not known any more is hidden at once, whenever the list comes along.
      seen.set(Math.min(seen.get(), same(points, shown)));
    }
    wantedCurrent = now;
    boolean switched = state.choices().hindsight() != hindsight;
    hindsight = state.choices().hindsight();
    if (switched || pace.getStatus() != Animation.Status.RUNNING) {
      comeAlong();
    }
  }

  private void comeAlong() {
    boolean other = !wanted.equals(shown);
    if (other) {
      replace(wanted);
    }
    seen.set(shown.size());
    if (other || wantedCurrent != current.get()) {
      toReveal = wantedCurrent >= 0 && wantedCurrent != current.get();
      current.set(wantedCurrent);
      list.requestLayout();
      pace.playFromStart();
    }
  }

  /** Returns how many points at the head of two lists are the same. */
  private static int same(List<TurningPoint> points, List<TurningPoint> others) {
    int same = 0;
    while (same < Math.min(points.size(), others.size())
        && points.get(same).equals(others.get(same))) {
      same++;
    }
    return same;
  }

  /** Takes in other points, those at the head of the list that are the same left as they are. */
  private void replace(List<TurningPoint> points) {
    int same = same(points, shown);
    if (points.size() < shown.size() && list.lookup(".virtual-flow") instanceof VirtualFlow<?> f) {
      // Before the rows at the end go, so that no room is left over below those that stay.
      comeNear(f, points.size() - 1, points.size());
    }
    shown = points;
    list.getItems().remove(same, list.getItems().size());
    list.getItems().addAll(points.subList(same, points.size()));
  }

  /**
   * Scrolls to the current point once the list knows its cells. The list's own way puts a cell at
   * the top even where too few follow to fill the room, before it knows how high they are.
   */
  private void reveal() {
    if (!toReveal || !(list.lookup(".virtual-flow") instanceof VirtualFlow<?> flow)) {
      return;
    }
    toReveal = false;
    long until = System.nanoTime() + AT_ONCE_NANOS;
    flow.layout();
    int now = current.get();
    IndexedCell<?> first = flow.getFirstVisibleCell();
    IndexedCell<?> last = flow.getLastVisibleCell();
    if (first == null || last == null || now >= list.getItems().size()) {
      return;
    }
    if (now < first.getIndex() - NEAR || now > last.getIndex() + NEAR) {
      comeNear(flow, now, list.getItems().size());
    }
    for (int i = 0; i < MOST_STEPS && isBelow(flow, now); i++) {
      if (System.nanoTime() > until) {
        // The first rows take long, while Java meets them: the rest of the way is for the next
        // frame.
        toReveal = true;
        Platform.runLater(list::requestLayout);
        return;
      }
      flow.scrollPixels(flow.getHeight() / 2);
    }
    flow.scrollTo(now);
  }

  /** Puts a row in or just below the room, with rows enough after the first to fill it. */
  private static void comeNear(VirtualFlow<?> flow, int index, int rows) {
    int room = (int) Math.ceil(flow.getHeight() / LOWEST);
    flow.scrollToTop(Math.max(0, Math.min(index - 2, rows - room)));
    flow.layout();
  }

  private static boolean isBelow(VirtualFlow<?> flow, int index) {
    IndexedCell<?> last = flow.getLastVisibleCell();
    return last != null && last.getIndex() < index;
  }

  /** Time, the line's colour, what happened, what it rests on. */
  private final class Cell extends ListCell<TurningPoint> {
    private final Label time = new Label();
    private final LineBar bar = new LineBar();
    private final Text title = new Text();
    private final Text detail = new Text();
    private final HBox box = new HBox(10, time, bar, new VBox(1, title, detail));
    private String words = "";

    Cell() {
      box.getStyleClass().add("turning-cell");
      time.getStyleClass().add("quiet");
      time.setMinWidth(Region.USE_PREF_SIZE);
      title.getStyleClass().add("strong");
      detail.getStyleClass().add("quiet");
      // A list asks a cell's height without a width: the texts must know theirs.
      var room =
          Bindings.createDoubleBinding(
              () -> Math.max(60, list.getWidth() - 34 - 4.9 * time.getFont().getSize()),
              list.widthProperty(),
              time.fontProperty());
      title.wrappingWidthProperty().bind(room);
      detail.wrappingWidthProperty().bind(room);
      setOnMouseClicked(e -> go(getItem()));
      current.addListener(now -> mark());
      seen.addListener(rows -> mark());
      indexProperty().addListener(index -> mark());
    }

    private void mark() {
      boolean known = !isEmpty() && getIndex() < seen.get();
      box.setVisible(known);
      setAccessibleText(known ? words : null);
      pseudoClassStateChanged(CURRENT, known && getIndex() == current.get());
    }

    @Override
    protected void updateItem(@Nullable TurningPoint point, boolean empty) {
      super.updateItem(point, empty);
      if (empty || point == null) {
        setGraphic(null);
        mark();
        return;
      }
      time.setText(Say.shortClock(point.at(), zone));
      title.setText(point.title());
      detail.setText(point.detail());
      detail.setManaged(!point.detail().isEmpty());
      Integer place = point.lineId() == null ? null : places.get(point.lineId());
      if (place == null) {
        bar.in("-fl-hairline");
      } else {
        bar.of(place);
      }
      setGraphic(box);
      words = time.getText() + ", " + point.title() + ", " + point.detail();
      mark();
    }
  }
}
