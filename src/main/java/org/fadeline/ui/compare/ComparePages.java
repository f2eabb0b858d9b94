package org.fadeline.ui.compare;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.function.LongConsumer;
import javafx.scene.Node;
import javafx.scene.control.Label;
import javafx.scene.control.ScrollPane;
import javafx.scene.layout.Priority;
import javafx.scene.layout.Region;
import javafx.scene.layout.VBox;
import org.fadeline.analysis.compare.Alignment;
import org.fadeline.analysis.compare.Comparison;
import org.fadeline.figure.CompareCatchFigure;
import org.fadeline.figure.CompareFirstBitesFigure;
import org.fadeline.figure.ComparePegsFigure;
import org.fadeline.figure.CompareRatesFigure;
import org.fadeline.figure.CompareTimelinesFigure;
import org.fadeline.figure.DayAxis;
import org.fadeline.figure.Figure;
import org.fadeline.figure.FigureStyle;
import org.fadeline.replay.ReplayFrame;
import org.fadeline.replay.ReplayTrack;
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

  /** Events of both matches that are drawn within a frame; more are drawn off this thread. */
  private static final int MOST_AT_ONCE = 1_000;

  private final TimelineStrip first = new TimelineStrip("first-timeline");
  private final TimelineStrip second = new TimelineStrip("second-timeline");
  private final Label firstName = new Label();
  private final Label secondName = new Label();
  private final FigureCanvas pegs = canvas("pegs");
  private final FigureCanvas running = canvas("running");
  private final FigureCanvas rates = canvas("rates");
  private final FigureCanvas bites = canvas("bites");
  private final Label days = Labels.wrapped("", "quiet");
  private final CompareTables tables = new CompareTables();
  private final PairingPane pairing;
  private final TaskService tasks;
  private final Map<String, Node> nodes = new LinkedHashMap<>();
  private @Nullable Shown shown;
  private @Nullable PegKey pegsShown;
  private @Nullable Double catchShown;
  private boolean catchHindsight;
  private boolean large;

  /** The comparison shown, prepared for replay. */
  private record Shown(
      Comparison comparison, FigureStyle style, ReplayTrack first, ReplayTrack second) {}

  /** What the picture of the pegs depends on. */
  private record PegKey(List<Integer> fish, List<String> fishing, long step) {}

  ComparePages(CompareBench bench, LayingBar laying, TaskService tasks, LongConsumer seek) {
    this.tasks = tasks;
    pairing = new PairingPane(bench);
    firstName.getStyleClass().add("strong");
    secondName.getStyleClass().add("strong");
    first.onSeek(seek);
    second.onShift(
        minutes -> {
          Shown now = shown;
          if (now != null) {
            laying.moving(now.comparison, minutes);
          }
        },
        bench::shift);
    VBox timelines = new VBox(4, firstName, first, secondName, second);
    VBox.setVgrow(first, Priority.ALWAYS);
    VBox.setVgrow(second, Priority.ALWAYS);
    first.setPrefHeight(100);
    second.setPrefHeight(100);
    nodes.put(NAMES.get(0), timelines);
    nodes.put(NAMES.get(1), pegs);
    nodes.put(NAMES.get(2), page(running, tables.running));
    nodes.put(NAMES.get(3), page(rates, days, tables.rates));
    nodes.put(NAMES.get(4), page(bites, tables.tests, tables.steps));
    nodes.put(NAMES.get(5), page(tables.sides));
    nodes.put(NAMES.get(6), pairing.view());
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

  void show(Comparison comparison, FigureStyle style) {
    Shown before = shown;
    boolean same =
        before != null
            && before.comparison.first().equals(comparison.first())
            && before.comparison.second().equals(comparison.second());
    shown =
        new Shown(
            comparison,
            style,
            same && before != null ? before.first : ReplayTrack.of(comparison.first().session()),
            same && before != null ? before.second : ReplayTrack.of(comparison.second().session()));
    pegsShown = null;
    catchShown = null;
    catchHindsight = false;
    CompareTimelinesFigure timelines = new CompareTimelinesFigure(comparison, style);
    large =
        comparison.first().session().events().size() + comparison.second().session().events().size()
            > MOST_AT_ONCE;
    first.show(timelines.first(), large ? tasks : null);
    second.show(timelines.second(), large ? tasks : null);
    firstName.setText("First, whole stroke: " + name(comparison, true));
    secondName.setText("Second, dashed stroke (drag to move it): " + name(comparison, false));
    show(rates, new CompareRatesFigure(comparison, style));
    show(bites, new CompareFirstBitesFigure(comparison, style));
    days.setText(CompareWords.days(comparison));
    tables.show(comparison, style.units());
    pairing.show(comparison, style.units());
  }

  private static String name(Comparison comparison, boolean ofFirst) {
    var occasion = (ofFirst ? comparison.first() : comparison.second()).session().occasion();
    return occasion.title() + ", " + DayAxis.say(occasion.date());
  }

  private static void show(FigureCanvas canvas, Figure figure) {
    canvas.show(figure::paint, figure.description());
  }

  /** Stands at an instant of the first session, as known then or with hindsight. */
  void follow(long at, boolean hindsight) {
    Shown now = shown;
    if (now == null) {
      return;
    }
    Alignment alignment = now.comparison.setup().alignment();
    double place = alignment.firstMinutes(at);
    long other = alignment.secondInstant(place);
    first.follow(at, hindsight);
    second.follow(other, hindsight);
    followPegs(now, now.first.frameAt(at), now.second.frameAt(other));
    // With hindsight the curves stand still.
    double known = known(now.comparison, place);
    if (hindsight != catchHindsight || catchShown == null || (!hindsight && known != catchShown)) {
      boolean asMuchKnown = catchShown != null && !catchHindsight && known >= catchShown;
      catchHindsight = hindsight;
      catchShown = known;
      CompareCatchFigure figure =
          new CompareCatchFigure(now.comparison, now.style, hindsight ? null : (Double) known);
      if (large) {
        running.showAhead(
            figure::paint,
            figure.description(),
            new FigureCanvas.Ahead(tasks, hindsight || asMuchKnown));
      } else {
        show(running, figure);
      }
    }
  }

  /** Returns the last place of the axis at or before one at which a curve steps. */
  private static double known(Comparison comparison, double place) {
    double last = Double.NEGATIVE_INFINITY;
    for (var point : comparison.running().points()) {
      if (point.minutes() > place) {
        break;
      }
      last = point.minutes();
    }
    return last;
  }

  private void followPegs(Shown now, ReplayFrame one, ReplayFrame other) {
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
      show(pegs, new ComparePegsFigure(now.comparison, now.style, one, other));
    }
  }
}
