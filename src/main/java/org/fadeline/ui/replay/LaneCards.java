package org.fadeline.ui.replay;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import javafx.css.PseudoClass;
import javafx.geometry.Pos;
import javafx.scene.AccessibleRole;
import javafx.scene.control.Label;
import javafx.scene.layout.Pane;
import javafx.scene.layout.VBox;
import javafx.scene.text.Font;
import org.fadeline.figure.TimelineLayout;
import org.fadeline.ui.replay.Readout.Card;
import org.jspecify.annotations.Nullable;

/** What each line is doing at the playhead, at the end of its lane. */
final class LaneCards extends Pane {
  private static final PseudoClass FISHING = PseudoClass.getPseudoClass("fishing");

  private final List<CardView> views = new ArrayList<>();
  private List<Integer> lengthsShown = List.of();
  private @Nullable TimelineLayout layout;

  LaneCards() {
    setMinSize(0, 0);
  }

  void follow(@Nullable TimelineLayout newLayout) {
    layout = newLayout;
    requestLayout();
  }

  void show(List<Card> cards) {
    while (views.size() < cards.size()) {
      CardView more = new CardView();
      views.add(more);
      // Each card is a layout root: its words change often, its place hardly ever.
      more.box.setManaged(false);
      getChildren().add(more.box);
    }
    for (int i = 0; i < views.size(); i++) {
      boolean used = i < cards.size();
      views.get(i).show(used ? cards.get(i) : null);
    }
    List<Integer> lengths = lengths(cards);
    if (!lengths.equals(lengthsShown)) {
      // Longer words, or a row that comes or goes, change what fits.
      lengthsShown = lengths;
      requestLayout();
    }
  }

  private static List<Integer> lengths(List<Card> cards) {
    List<Integer> lengths = new ArrayList<>();
    for (Card card : cards) {
      lengths.add(card.now().length());
      lengths.add(card.rests().length());
      lengths.add(card.since().length());
    }
    return lengths;
  }

  @Override
  protected void layoutChildren() {
    TimelineLayout now = layout;
    for (CardView view : views) {
      Optional<TimelineLayout.Lane> lane =
          now == null || view.lineId == null
              ? Optional.empty()
              : now.lanes().stream().filter(l -> l.lineId().equals(view.lineId)).findFirst();
      view.box.setVisible(lane.isPresent());
      if (lane.isPresent()) {
        double top = lane.get().header().getMinY() + 2;
        double height = lane.get().plot().getMaxY() - top;
        view.fit(getWidth(), height);
        view.box.resizeRelocate(0, top, getWidth(), height);
      }
    }
  }

  /** What a card's rows were last fitted for. */
  private record Fitted(@Nullable Card card, Font font, double width, double height) {}

  /** One line's card. */
  private static final class CardView {
    private final Label now = new Label();
    private final Label rests = new Label();
    private final Label since = new Label();
    private final VBox box = new VBox(now, rests, since);
    private @Nullable Card shown;
    private @Nullable Fitted fitted;
    private boolean cut;
    private @Nullable String lineId;

    CardView() {
      now.getStyleClass().add("strong");
      now.setWrapText(true);
      rests.setWrapText(true);
      since.getStyleClass().add("quiet");
      since.setWrapText(true);
      for (Label row : List.of(now, rests, since)) {
        // A box a hair too low would take a whole line of words from a row.
        row.setMinHeight(USE_PREF_SIZE);
      }
      box.getStyleClass().add("lane-card");
      box.setAlignment(Pos.CENTER_LEFT);
      box.setAccessibleRole(AccessibleRole.TEXT);
    }

    /**
     * Shows as many rows as there is room for, the first ones first: none is cut short, but the
     * first keeps only what stands before its comma where it would be.
     */
    void fit(double width, double height) {
      Fitted asked = new Fitted(shown, now.getFont(), width, height);
      if (!asked.equals(fitted)) {
        fitted = asked;
        fitAnew(width, height);
      }
    }

    private void fitAnew(double width, double height) {
      say();
      double inside = width - box.snappedLeftInset() - box.snappedRightInset();
      double left = height - box.snappedTopInset() - box.snappedBottomInset();
      boolean first = true;
      cut = false;
      for (Label row : List.of(now, rests, since)) {
        boolean empty = row.getText().isEmpty();
        double needed = empty ? 0 : row.prefHeight(inside);
        // A hair more would be rounding.
        boolean fits = !empty && needed <= left + 2;
        if (first && !empty && !fits) {
          row.setText(row.getText().split(", ", 2)[0]);
          cut = true;
          needed = row.prefHeight(inside);
          fits = true;
        }
        first &= empty;
        row.setManaged(fits);
        row.setVisible(fits);
        if (!empty) {
          left -= fits ? needed + box.getSpacing() : height;
        }
      }
    }

    private void say() {
      if (shown != null) {
        now.setText(shown.now());
        rests.setText(shown.rests());
        since.setText(shown.since());
      }
    }

    void show(@Nullable Card card) {
      lineId = card == null ? null : card.lineId();
      if (card == null) {
        box.setVisible(false);
        return;
      }
      if (!card.equals(shown)) {
        shown = card;
        if (cut && fitted != null) {
          fit(fitted.width, fitted.height);
        } else {
          say();
        }
      }
      box.pseudoClassStateChanged(FISHING, card.fishing());
      box.setAccessibleText(card.now() + ". " + card.rests() + ". " + card.since());
    }
  }
}
