package org.fadeline.ui.review;

import java.time.ZoneId;
import java.util.ArrayList;
import java.util.List;
import java.util.function.Consumer;
import java.util.function.LongConsumer;
import javafx.animation.AnimationTimer;
import javafx.css.PseudoClass;
import javafx.geometry.Pos;
import javafx.geometry.VPos;
import javafx.scene.AccessibleRole;
import javafx.scene.control.Button;
import javafx.scene.control.Label;
import javafx.scene.control.ScrollPane;
import javafx.scene.input.KeyCode;
import javafx.scene.layout.FlowPane;
import javafx.scene.layout.HBox;
import javafx.scene.layout.Priority;
import javafx.scene.layout.Region;
import javafx.scene.layout.VBox;
import org.fadeline.analysis.Review;
import org.fadeline.analysis.StayOrGo;
import org.fadeline.model.Line;
import org.fadeline.model.Units;
import org.fadeline.ui.control.Labels;
import org.fadeline.ui.control.LineBar;
import org.fadeline.ui.control.Nodes;
import org.fadeline.ui.control.Say;
import org.jspecify.annotations.Nullable;

/** Every stay in time order: what it paid, whether it faded, when that was plain, what it took. */
final class StayList {
  /** Cards made when a review is shown; more are made one frame after the other. */
  private static final int AT_ONCE = 10;

  private static final int EACH_FRAME = 2;

  private static final PseudoClass CURRENT = PseudoClass.getPseudoClass("current");

  private final VBox view = new VBox();
  private final VBox findings = new VBox();
  private final Consumer<StayOrGo> choose;
  private final LongConsumer replay;
  private final List<VBox> cards = new ArrayList<>();
  private @Nullable Rest rest;

  /** Start of the stay looked at, epoch milliseconds: it is kept when the review comes anew. */
  private long chosenFrom = Long.MIN_VALUE;

  StayList(Consumer<StayOrGo> choose, LongConsumer replay) {
    this.choose = choose;
    this.replay = replay;
    Label title = Labels.line("Stay or go", "title");
    title.setMinWidth(Region.USE_PREF_SIZE);
    Label note =
        Labels.line("what each paid, when it faded, when it was left", "quiet", "stay-note");
    note.setWrapText(true);
    note.setMinHeight(Region.USE_PREF_SIZE);
    note.maxWidthProperty().bind(view.widthProperty().subtract(40));
    FlowPane head = new FlowPane(10, 0, title, note);
    head.setRowValignment(VPos.BASELINE);
    head.setStyle("-fx-padding: 0.8em 1em 0.4em 1em;");
    ScrollPane scroll = Nodes.scroll(findings);
    VBox.setVgrow(scroll, Priority.ALWAYS);
    view.getChildren().addAll(head, scroll);
    view.getStyleClass().addAll("panel", "stay-list");
    view.setMinHeight(0);
  }

  VBox view() {
    return view;
  }

  void show(@Nullable Review review, Units units) {
    cards.clear();
    findings.getChildren().clear();
    Rest before = rest;
    if (before != null) {
      before.stop();
    }
    List<StayOrGo> stays = review == null ? List.of() : review.stays();
    if (review != null) {
      Rest fresh = new Rest(review, units);
      rest = fresh;
      fresh.add(AT_ONCE);
    }
    if (review != null && stays.isEmpty()) {
      Label none = new Label("No line was fished in this record, so there is nothing to judge.");
      none.setWrapText(true);
      none.getStyleClass().add("quiet");
      none.setStyle("-fx-padding: 1em;");
      findings.getChildren().setAll(none);
    }
    if (!stays.isEmpty()) {
      List<Long> starts = stays.stream().map(s -> s.spell().span().from()).toList();
      look(stays, Math.max(0, starts.indexOf(chosenFrom)));
    }
  }

  /** Adds cards: of hundreds of stays those that are seen first, and then a few in each frame. */
  private final class Rest extends AnimationTimer {
    private final Review review;
    private final Units units;

    Rest(Review review, Units units) {
      this.review = review;
      this.units = units;
    }

    @Override
    public void handle(long now) {
      add(EACH_FRAME);
    }

    void add(int many) {
      List<StayOrGo> stays = review.stays();
      List<VBox> more = new ArrayList<>();
      for (StayOrGo stay :
          stays.subList(cards.size(), Math.min(stays.size(), cards.size() + many))) {
        VBox card = card(review, stay, units);
        card.pseudoClassStateChanged(CURRENT, stay.spell().span().from() == chosenFrom);
        more.add(card);
      }
      cards.addAll(more);
      findings.getChildren().addAll(more);
      if (cards.size() < stays.size()) {
        start();
      } else {
        stop();
      }
    }
  }

  private void look(List<StayOrGo> stays, int index) {
    StayOrGo stay = stays.get(index);
    chosenFrom = stay.spell().span().from();
    mark(index);
    choose.accept(stay);
  }

  private void mark(int index) {
    for (int i = 0; i < cards.size(); i++) {
      cards.get(i).pseudoClassStateChanged(CURRENT, i == index);
    }
  }

  private VBox card(Review review, StayOrGo stay, Units units) {
    ZoneId zone = review.session().occasion().zone();
    Line line = review.session().line(stay.spell().lineId()).orElseThrow();
    int place = review.indexOf(line.id());
    LineBar bar = new LineBar().of(place);
    bar.setMinHeight(18);
    String from = Say.shortClock(stay.spell().span().from(), zone);
    String to = Say.shortClock(stay.spell().span().to(), zone);
    Label name = Labels.wrapped(from + "–" + to + "  " + Say.capital(line.name()), "strong");
    Label paid =
        Labels.line(
            stay.paid().weight() == null
                ? stay.paid().fish() == null
                    ? ""
                    : Say.number(stay.paid().fish().perHour()) + " fish an hour"
                : Say.roughWeight(stay.paid().weight().perHour(), units) + " an hour",
            "strong");
    paid.setMinWidth(Region.USE_PREF_SIZE);
    Region space = Nodes.gap();
    HBox first = new HBox(8, bar, name, space, paid);
    first.setAlignment(Pos.CENTER_LEFT);
    String reason = stay.spell().reasonForLeaving(review.session());
    Label verdict =
        new Label(
            ReviewWords.of(stay.wording().verdict())
                + (reason == null ? "" : "; reason noted: " + reason));
    verdict.setWrapText(true);
    verdict.getStyleClass().add(isLate(stay) ? "warning-text" : "quiet");
    Label text = Labels.wrapped(withoutTimes(stay.wording().text(), from + "–" + to));
    Button go = new Button("Replay from " + from);
    go.getStyleClass().add("link");
    go.setOnAction(e -> replay.accept(stay.spell().span().from()));
    HBox links = new HBox(14, go);
    if (stay.past() != null) {
      long plain = stay.past().plainAt();
      Button when = new Button("From " + Say.shortClock(plain, zone) + ", when it was plain");
      when.getStyleClass().add("link");
      when.setOnAction(e -> replay.accept(plain));
      links.getChildren().add(when);
    }
    VBox card = new VBox(first, verdict, text, links);
    card.getStyleClass().add("finding");
    card.setFocusTraversable(true);
    card.setAccessibleRole(AccessibleRole.BUTTON);
    card.setAccessibleText(name.getText() + ": " + verdict.getText() + ". " + text.getText());
    Runnable chosen = () -> look(review.stays(), cards.indexOf(card));
    card.setOnMouseClicked(e -> chosen.run());
    card.setOnKeyPressed(
        e -> {
          if (e.getTarget() == card
              && (e.getCode() == KeyCode.ENTER || e.getCode() == KeyCode.SPACE)) {
            chosen.run();
            e.consume();
          }
        });
    return card;
  }

  /** The words of a stay begin with its times, which its heading says already. */
  private static String withoutTimes(String text, String times) {
    return text.startsWith(times + ": ") ? Say.capital(text.substring(times.length() + 2)) : text;
  }

  private static boolean isLate(StayOrGo stay) {
    return stay.wording().verdict() == StayOrGo.Verdict.STAYED_PAST_PLAIN;
  }
}
