package org.fadeline.ui.review;

import java.time.ZoneId;
import javafx.scene.Node;
import javafx.scene.control.Label;
import javafx.scene.control.ScrollPane;
import javafx.scene.layout.Priority;
import javafx.scene.layout.Region;
import javafx.scene.layout.VBox;
import org.fadeline.analysis.LineReview;
import org.fadeline.analysis.OtherSettings;
import org.fadeline.analysis.OtherSettings.Found;
import org.fadeline.analysis.OtherSettings.Row;
import org.fadeline.analysis.Review;
import org.fadeline.ui.control.Labels;
import org.fadeline.ui.control.Nodes;
import org.fadeline.ui.control.Say;
import org.fadeline.ui.control.table.DataTable;
import org.fadeline.ui.state.TaskService;
import org.fadeline.ui.state.Workbench;
import org.jspecify.annotations.Nullable;

/** The settings of the review, and how the findings move with them. */
final class SettingsPage {
  private static final String CHANNEL = "other settings";

  private final Workbench bench;
  private final Label summary = new Label();
  private final VBox table = new VBox();
  private final VBox body;
  private final ScrollPane view;
  private @Nullable Review review;
  private @Nullable Review tried;
  private boolean open;

  SettingsPage(Workbench bench) {
    this.bench = bench;
    Label moves = heading("How the findings move with the settings");
    summary.setWrapText(true);
    summary.setMinHeight(Region.USE_PREF_SIZE);
    summary.setId("other-settings");
    body = new VBox(8, new SettingsPane(bench).view(), moves, summary, table);
    VBox.setVgrow(table, Priority.ALWAYS);
    view = Nodes.scrollFilled(body);
  }

  private static Label heading(String words) {
    Label label = Labels.line(words, "strong");
    label.setStyle("-fx-padding: 0.4em 0 0 0;");
    return label;
  }

  Node view() {
    return view;
  }

  /** Is told whether the page is the one shown: nothing is worked out for a page put away. */
  void shown(boolean nowShown) {
    open = nowShown;
    tryOthers();
  }

  void show(@Nullable Review newReview) {
    review = newReview;
    tryOthers();
  }

  private void tryOthers() {
    Review now = review;
    if (!open || now == null || now.equals(tried)) {
      return;
    }
    tried = now;
    summary.setText("Looking for the fades again with other settings\u2026");
    table.getChildren().clear();
    bench
        .tasks()
        .submit(
            CHANNEL,
            "Trying other settings",
            progress -> OtherSettings.of(now.session(), now.settings()),
            new TaskService.Answer<>(
                others -> show(now, others),
                failure ->
                    summary.setText(
                        "The other settings could not be tried ("
                            + failure.getClass().getSimpleName()
                            + "). The findings themselves are not affected.")));
  }

  private void show(Review of, OtherSettings others) {
    summary.setText(words(others));
    if (others.rows().isEmpty()) {
      return;
    }
    ZoneId zone = of.session().occasion().zone();
    DataTable<Row> rows = new DataTable<>("Each fade under each setting", "");
    rows.words("Spell", 170, row -> spell(of, row, zone));
    for (int i = 0; i < others.variants().size(); i++) {
      int variant = i;
      rows.words(
          others.variants().get(i).label(), 172, row -> words(row.found().get(variant), zone));
    }
    rows.words("Moves", 80, row -> row.isSteady() ? "hardly" : "yes");
    rows.show(others.rows());
    rows.hug().setMinHeight(240);
    VBox.setVgrow(rows, Priority.ALWAYS);
    table.getChildren().setAll(rows);
  }

  /** Says how many findings hang on a setting. */
  static String words(OtherSettings others) {
    int all = others.rows().size();
    long steady = others.rows().stream().filter(Row::isSteady).count();
    if (all == 0) {
      return "No spell is long enough to look for a fade (20 bait minutes are needed), whatever the"
          + " settings.";
    }
    String head = "One setting changed at a time. ";
    if (steady == all) {
      return head + "Every finding stays as it is: faded or not, within ten minutes.";
    }
    return head
        + steady
        + " of "
        + Say.count(all, "finding")
        + " stay as they are, within ten minutes; what moves hangs on the setting, so take it with"
        + " care.";
  }

  private static String spell(Review of, Row row, ZoneId zone) {
    String name =
        of.line(row.spell().lineId())
            .map(LineReview::line)
            .map(l -> Say.capital(l.name()))
            .orElse(row.spell().lineId());
    return Say.shortClock(row.spell().span().from(), zone)
        + "\u2013"
        + Say.shortClock(row.spell().span().to(), zone)
        + "  "
        + name;
  }

  /** What one setting found, the moment before the minute it was plain. */
  private static String words(@Nullable Found found, ZoneId zone) {
    if (found == null) {
      return "too short";
    }
    Long faded = found.fadedAt();
    if (faded == null) {
      return found.probability() < 0.2 ? "no sign" : "cannot tell";
    }
    Long plain = found.plainAt();
    return (found.probability() < 0.8 ? "probably " : "faded ")
        + Say.shortClock(faded, zone)
        + (plain == null ? ", not plain" : ", plain " + Say.shortClock(plain, zone));
  }
}
