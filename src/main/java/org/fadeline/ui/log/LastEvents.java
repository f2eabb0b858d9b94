package org.fadeline.ui.log;

import java.time.ZoneId;
import java.util.List;
import java.util.Optional;
import javafx.css.PseudoClass;
import javafx.scene.control.Button;
import javafx.scene.control.Label;
import javafx.scene.layout.FlowPane;
import javafx.scene.layout.Priority;
import javafx.scene.layout.Region;
import javafx.scene.layout.VBox;
import org.fadeline.model.EventText;
import org.fadeline.model.Session;
import org.fadeline.model.SessionEvent;
import org.fadeline.model.Units;
import org.fadeline.ui.control.Labels;
import org.fadeline.ui.control.Say;
import org.jspecify.annotations.Nullable;

/** The last events, the latest on top; the one in hand can be put right at once. */
final class LastEvents {
  private static final PseudoClass CURRENT = PseudoClass.getPseudoClass("current");

  private final LogDesk desk;
  private final VBox rows = new VBox(2);
  private final FlowPane amend = new FlowPane(6, 6);
  private final VBox view;

  LastEvents(LogDesk desk) {
    this.desk = desk;
    Label title = Labels.line("Logged last", "title");
    amend
        .getChildren()
        .addAll(
            button("10 s earlier", "log-earlier", () -> desk.nudge(-10_000)),
            button("10 s later", "log-later", () -> desk.nudge(10_000)),
            button("Next line", "log-line", desk::nextLine),
            button("Take out", "log-remove", desk::remove));
    view = new VBox(8, title, rows, amend);
    view.getStyleClass().add("panel");
    view.setStyle("-fx-padding: 0.9em 1em 1em 1em;");
    VBox.setVgrow(rows, Priority.ALWAYS);
    view.setPrefWidth(330);
    view.setMinWidth(280);
  }

  private static Button button(String words, String id, Runnable action) {
    Button button = new Button(words);
    button.setId(id);
    button.setFocusTraversable(false);
    button.setOnAction(e -> action.run());
    return button;
  }

  VBox view() {
    return view;
  }

  /** Shows the last events of a session. */
  void show(Session session, Units units) {
    List<SessionEvent> latest = desk.latest();
    String chosen = desk.inHandProperty().get();
    rows.getChildren().setAll(latest.stream().map(e -> row(session, e, units, chosen)).toList());
    if (latest.isEmpty()) {
      Label none = new Label("Nothing yet. A pad or its key logs at the clock's time.");
      none.setWrapText(true);
      none.getStyleClass().add("quiet");
      rows.getChildren().add(none);
    }
    boolean inHand = latest.stream().anyMatch(e -> e.id().equals(chosen));
    amend.setDisable(!inHand);
  }

  private Button row(Session session, SessionEvent event, Units units, @Nullable String chosen) {
    Button row = new Button(words(session, event, units));
    row.getStyleClass().add("row-button");
    row.setWrapText(true);
    row.setMinHeight(Region.USE_PREF_SIZE);
    row.setFocusTraversable(false);
    row.pseudoClassStateChanged(CURRENT, event.id().equals(chosen));
    row.setOnAction(e -> desk.choose(event.id()));
    return row;
  }

  /** Returns an event in a line: "11:42:10 landed, short, carp 3 lb 2 oz". */
  static String words(Session session, SessionEvent event, Units units) {
    ZoneId zone = session.occasion().zone();
    StringBuilder words = new StringBuilder(Say.clock(event.at(), zone));
    words.append("  ").append(PadGrid.word(event.kind()));
    Optional.ofNullable(event.lineId())
        .flatMap(session::line)
        .ifPresent(line -> words.append(", ").append(line.name()));
    String details = EventText.details(event, units);
    words.append(details.isEmpty() ? "" : ", " + details);
    if (event.note() != null) {
      words.append(" – ").append(event.note());
    }
    return words.toString();
  }
}
