package org.fadeline.ui.review;

import java.util.Optional;
import java.util.function.Supplier;
import javafx.scene.Node;
import javafx.scene.control.ComboBox;
import javafx.scene.control.ScrollPane;
import javafx.scene.layout.StackPane;
import org.fadeline.analysis.LineReview;
import org.fadeline.analysis.Review;
import org.fadeline.figure.CatchWeightsFigure;
import org.fadeline.figure.FeedResponseFigure;
import org.fadeline.figure.Figure;
import org.fadeline.figure.FigureStyle;
import org.fadeline.figure.Knowledge;
import org.fadeline.figure.MatchPageFigure;
import org.fadeline.figure.QuarterHourFigure;
import org.fadeline.figure.WeightFigure;
import org.fadeline.model.talk.Picture;
import org.fadeline.ui.control.Nodes;
import org.fadeline.ui.control.Say;
import org.fadeline.ui.control.form.Worded;
import org.fadeline.ui.control.picture.FigureCanvas;
import org.fadeline.ui.state.TalkTray;
import org.fadeline.ui.state.TaskService;
import org.jspecify.annotations.Nullable;

/** The charts of a review with their tables; a chart is left out where it would be empty. */
final class ChartPages {
  private static final double PAGE_WIDTH = 620;

  private final ComboBox<LineReview> responseLine = new ComboBox<>();

  /** Events whose charts are drawn within a frame. */
  private static final int MOST_AT_ONCE = 2000;

  private final TaskService tasks;
  private final FirstBitePage firstBites = new FirstBitePage();
  private final ChartPage response;
  private final ChartPage quarters;
  private final ChartPage fish;
  private final ChartPage weight;
  private final FigureCanvas page = new FigureCanvas();
  private final ScrollPane pageScroll = new ScrollPane(new StackPane(page));
  private @Nullable Review review;
  private @Nullable FigureStyle style;

  ChartPages(LineTables tables, TaskService tasks) {
    this.tasks = tasks;
    response = new ChartPage(tables.response).under(responseLine);
    quarters = new ChartPage(tables.quarters);
    fish = new ChartPage(tables.fish);
    weight = new ChartPage(tables.lines);
    pageScroll.getStyleClass().add("plain-scroll");
    pageScroll.setFitToWidth(true);
    page.getStyleClass().add("paper");
    responseLine.setAccessibleText("Line whose feeding is shown");
    responseLine.setConverter(new Worded<>(line -> Say.capital(line.line().name())));
    responseLine.setOnAction(e -> showResponse());
  }

  Node firstBites() {
    return firstBites.view();
  }

  Node response() {
    return response.view();
  }

  Node quarters() {
    return quarters.view();
  }

  Node fish() {
    return fish.view();
  }

  Node lines() {
    return weight.view();
  }

  Node page() {
    return pageScroll;
  }

  /** Returns the picture on a page, its session being the one in hand; empty where it has none. */
  Optional<Picture> picture(String name) {
    LineReview line = responseLine.getValue();
    return switch (name) {
      case "Lines" -> Optional.of(Picture.of(Picture.Kind.WEIGHT, TalkTray.OPEN));
      case "First bites" -> Optional.of(Picture.of(firstBites.picture(), TalkTray.OPEN));
      case "After feeding" ->
          Optional.ofNullable(line)
              .map(l -> Picture.ofLine(Picture.Kind.FEED_RESPONSE, TalkTray.OPEN, l.line().id()));
      case "Quarter-hours" -> Optional.of(Picture.of(Picture.Kind.QUARTER_HOURS, TalkTray.OPEN));
      case "Fish" -> Optional.of(Picture.of(Picture.Kind.CATCH_WEIGHTS, TalkTray.OPEN));
      case "One page" -> Optional.of(Picture.of(Picture.Kind.MATCH_PAGE, TalkTray.OPEN));
      default -> Optional.empty();
    };
  }

  void show(@Nullable Review newReview, FigureStyle newStyle) {
    review = newReview;
    style = newStyle;
    firstBites.show(newReview, newStyle);
    if (newReview == null) {
      return;
    }
    boolean caught = newReview.summary().caught().landed() > 0;
    boolean weights = newReview.summary().caught().weightG() > 0;
    show(quarters, caught, () -> new QuarterHourFigure(newReview, newStyle));
    show(fish, weights, () -> new CatchWeightsFigure(newReview, newStyle));
    show(weight, weights, () -> new WeightFigure(newReview, newStyle, Knowledge.hindsight()));
    showPage(new MatchPageFigure(newReview, newStyle));
    LineReview before = responseLine.getValue();
    responseLine
        .getItems()
        .setAll(
            newReview.lines().stream()
                .filter(l -> l.firstBite().feedResponse().stream().anyMatch(b -> b.baitHours() > 0))
                .toList());
    Nodes.show(responseLine, !responseLine.getItems().isEmpty());
    LineReview kept =
        responseLine.getItems().stream()
            .filter(l -> before != null && l.line().id().equals(before.line().id()))
            .findFirst()
            .orElse(responseLine.getItems().isEmpty() ? null : responseLine.getItems().get(0));
    responseLine.setValue(kept);
    showResponse();
  }

  /** The page keeps its shape, so that it looks here as it will in print. */
  private void showPage(MatchPageFigure figure) {
    double width = PAGE_WIDTH * figure.style().textScale();
    page.setPrefSize(width, width / figure.aspect());
    page.setMinSize(width, width / figure.aspect());
    page.setMaxSize(width, width / figure.aspect());
    page.showFigure(() -> figure, ahead());
  }

  private void show(ChartPage chart, boolean any, Supplier<Figure> figure) {
    if (any) {
      chart.show(figure, ahead());
    } else {
      chart.showNone();
    }
  }

  /** Returns what draws charts of so many events that a frame would not do, or null. */
  private @Nullable TaskService ahead() {
    Review now = review;
    return now != null && now.session().events().size() > MOST_AT_ONCE ? tasks : null;
  }

  private void showResponse() {
    Review now = review;
    FigureStyle look = style;
    LineReview line = responseLine.getValue();
    if (now == null || look == null || line == null) {
      response.showNone();
    } else {
      response.show(() -> new FeedResponseFigure(now, line.line().id(), look), null);
    }
  }
}
