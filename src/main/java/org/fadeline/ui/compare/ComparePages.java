package org.fadeline.ui.compare;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.function.LongConsumer;
import javafx.geometry.Pos;
import javafx.scene.Node;
import javafx.scene.control.Button;
import javafx.scene.control.Label;
import javafx.scene.control.ScrollPane;
import javafx.scene.layout.Priority;
import javafx.scene.layout.Region;
import javafx.scene.layout.StackPane;
import javafx.scene.layout.VBox;
import org.fadeline.analysis.compare.Comparison;
import org.fadeline.analysis.compare.RunningCatch.Point;
import org.fadeline.figure.CompareCatchFigure;
import org.fadeline.figure.CompareFirstBitesFigure;
import org.fadeline.figure.ComparePegsFigure;
import org.fadeline.figure.CompareRatesFigure;
import org.fadeline.figure.Figure;
import org.fadeline.figure.FigureStyle;
import org.fadeline.replay.ReplayFrame;
import org.fadeline.ui.control.Labels;
import org.fadeline.ui.control.Nodes;
import org.fadeline.ui.control.picture.FigureCanvas;
import org.fadeline.ui.control.table.DataTable;
import org.fadeline.ui.state.TaskService;
import org.jspecify.annotations.Nullable;

/** The pages of the screen, and how they follow the playhead. */
final class ComparePages {
  /** The pages in order. */
  static final List<String> NAMES =
      List.of("Timelines", "Pegs", "Catch", "Rates", "First bites", "Line by line", "Pairing");

  /** Freshness of feed and the sun move slowly: this often is often enough. */
  private static final long STEP_MILLIS = 15_000;

  private final ComparedTimelines timelines = new ComparedTimelines();
  private final FigureCanvas pegs = canvas("pegs");
  private final FigureCanvas running = canvas("running");
  private final FigureCanvas rates = canvas("rates");
  private final FigureCanvas bites = canvas("bites");
  private final Label days = Labels.wrapped("", "quiet");
  private final CompareTables tables = new CompareTables();
  private final PairingPane pairing;
  private final TaskService tasks;
  private final Map<String, Node> nodes = new LinkedHashMap<>();
  private final List<Node> laterPages = new ArrayList<>();
  private final List<Node> insteads = new ArrayList<>();
  private final Runnable toHindsight;
  private @Nullable Laid shown;
  private @Nullable PegKey pegsShown;
  private @Nullable CatchKey catchShown;
  private int catchRows;
  private boolean large;

  /** How much of the catch is shown: the points known then, or all with hindsight. */
  private record CatchKey(boolean hindsight, int known) {}

  /** What the picture of the pegs depends on. */
  private record PegKey(List<Integer> fish, List<String> fishing, long step) {}

  ComparePages(
      CompareBench bench,
      LayingBar laying,
      TaskService tasks,
      LongConsumer seek,
      Runnable toHindsight) {
    this.tasks = tasks;
    this.toHindsight = toHindsight;
    pairing = new PairingPane(bench);
    timelines.onSeek(seek);
    timelines.onShift(
        minutes -> {
          Laid now = shown;
          if (now != null) {
            laying.moving(now.comparison(), minutes);
          }
        },
        bench::shift);
    nodes.put(NAMES.get(0), timelines.view());
    nodes.put(NAMES.get(1), pegs);
    nodes.put(NAMES.get(2), page(running, tables.running));
    nodes.put(NAMES.get(3), afterwards(page(rates, days, tables.rates)));
    nodes.put(NAMES.get(4), afterwards(page(bites, tables.tests, tables.steps)));
    nodes.put(NAMES.get(5), afterwards(page(tables.sides)));
    nodes.put(NAMES.get(6), pairing.view());
  }

  /** A page that can only be told with hindsight; otherwise it says so, and offers that. */
  private Node afterwards(Node page) {
    Label words =
        new Label(
            "What the two paid, and how sure that is, can only be told with hindsight. As known"
                + " then, Timelines, Pegs and Catch show both matches up to the playhead.");
    words.setWrapText(true);
    words.setMaxWidth(460);
    words.getStyleClass().add("quiet");
    Button show = new Button("Show with hindsight");
    show.getStyleClass().add("show-hindsight");
    show.setOnAction(e -> toHindsight.run());
    VBox instead = new VBox(14, words, show);
    instead.setAlignment(Pos.CENTER);
    instead.setVisible(false);
    laterPages.add(page);
    insteads.add(instead);
    return new StackPane(page, instead);
  }

  private static FigureCanvas canvas(String id) {
    FigureCanvas canvas = new FigureCanvas();
    canvas.setId(id);
    canvas.setMinHeight(300);
    canvas.setPrefHeight(340);
    return canvas;
  }

  private static Node page(Node... parts) {
    VBox column = new VBox(10, parts);
    for (Node part : parts) {
      if (!(part instanceof Label)) {
        VBox.setVgrow(part, Priority.ALWAYS);
        Region region = (Region) part;
        if (part instanceof DataTable<?> table) {
          table.hug();
        }
        region.setMinHeight(Math.max(190, region.getMinHeight()));
      }
    }
    ScrollPane scroll = Nodes.scrollFilled(column);
    return scroll;
  }

  /** Returns the pages by name. */
  Node node(String name) {
    return Objects.requireNonNull(nodes.get(name));
  }

  void show(Laid laid) {
    Comparison comparison = laid.comparison();
    FigureStyle style = laid.style();
    shown = laid;
    pegsShown = null;
    catchShown = null;
    catchRows = -1;
    large = Laid.isLarge(comparison);
    timelines.show(laid, large ? tasks : null);
    show(rates, new CompareRatesFigure(comparison, style));
    show(bites, new CompareFirstBitesFigure(comparison, style));
    days.setText(CompareWords.days(comparison));
    tables.show(comparison, style.units());
    pairing.show(comparison, style.units());
  }

  private static void show(FigureCanvas canvas, Figure figure) {
    canvas.show(figure::paint, figure.description());
  }

  /** Stands at a moment. */
  void follow(Moment moment) {
    Laid now = shown;
    if (now == null) {
      return;
    }
    timelines.follow(moment);
    followPegs(now, now.first().frameAt(moment.at()), now.second().frameAt(moment.other()));
    followCatch(now, moment);
    laterPages.forEach(page -> page.setVisible(moment.hindsight()));
    insteads.forEach(instead -> instead.setVisible(!moment.hindsight()));
  }

  /** Returns what both had given by a moment. */
  Point soFar(Moment moment) {
    return Objects.requireNonNull(shown).then().at(moment.place());
  }

  /** The catch as known then grows with the playhead; with hindsight it stands still. */
  private void followCatch(Laid now, Moment moment) {
    boolean hindsight = moment.hindsight();
    List<Point> known =
        hindsight ? now.comparison().running().points() : now.then().upTo(moment.place());
    // A long table is not filled anew for every fish while it plays; it never tells more than
    // known.
    boolean rest = large && moment.playing() && known.size() >= catchRows;
    if (!rest && known.size() != catchRows) {
      catchRows = known.size();
      tables.running.show(known);
    }
    CatchKey key = new CatchKey(hindsight, known.size());
    CatchKey before = catchShown;
    if (!key.equals(before)) {
      catchShown = key;
      boolean growing =
          before != null && hindsight == before.hindsight && key.known >= before.known;
      CompareCatchFigure figure =
          hindsight
              ? new CompareCatchFigure(now.comparison(), now.style())
              : CompareCatchFigure.asKnownThen(now.comparison(), now.style(), known);
      if (large) {
        running.showAhead(
            figure::paint,
            figure.description(),
            new FigureCanvas.Ahead(tasks, hindsight || growing));
      } else {
        show(running, figure);
      }
    }
  }

  private void followPegs(Laid now, ReplayFrame one, ReplayFrame other) {
    List<Integer> fish = new ArrayList<>();
    one.lines().forEach(l -> fish.add(l.fish()));
    other.lines().forEach(l -> fish.add(l.fish()));
    PegKey key =
        new PegKey(
            fish,
            List.of(CompareWords.or(one.fishing()), CompareWords.or(other.fishing())),
            Math.floorDiv(one.at(), STEP_MILLIS));
    if (!key.equals(pegsShown)) {
      pegsShown = key;
      show(pegs, new ComparePegsFigure(now.comparison(), now.style(), one, other));
    }
  }
}
