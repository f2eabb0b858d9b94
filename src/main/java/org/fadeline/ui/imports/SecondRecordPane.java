package org.fadeline.ui.imports;

import java.nio.file.Path;
import java.util.HashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import javafx.geometry.Insets;
import javafx.geometry.Pos;
import javafx.scene.Node;
import javafx.scene.control.Button;
import javafx.scene.control.Label;
import javafx.scene.control.TableView;
import javafx.scene.layout.BorderPane;
import javafx.scene.layout.HBox;
import javafx.scene.layout.Region;
import javafx.scene.layout.VBox;
import org.fadeline.analysis.merge.Clash;
import org.fadeline.analysis.merge.ClockOffset;
import org.fadeline.analysis.merge.Merge;
import org.fadeline.model.EventText;
import org.fadeline.model.Session;
import org.fadeline.model.SessionEvent;
import org.fadeline.model.Units;
import org.fadeline.ui.control.Nodes;
import org.fadeline.ui.control.Say;
import org.fadeline.ui.control.Watch;
import org.fadeline.ui.control.table.DataTable;
import org.fadeline.ui.state.OpenSession;
import org.fadeline.ui.state.PreferenceStore;
import org.fadeline.ui.state.TaskService;
import org.fadeline.ui.state.Workbench;
import org.fadeline.ui.state.WorkbenchState;
import org.jspecify.annotations.Nullable;

/**
 * A second record of the match in hand, such as a friend's from the bank, beside it: what both tell
 * alike is taken once, and what they tell differently is decided one by one.
 */
final class SecondRecordPane {
  private static final String CHANNEL = "import-second-record";
  private static final String NOTHING_YET =
      "Two people logged this match? Open yours, choose the other record here, and both become"
          + " one.";

  private final Workbench bench;
  private final PreferenceStore preferences;
  private final Landing landing;
  private final BorderPane view = new BorderPane();
  private final DataTable<Clash> clashes =
      new DataTable<Clash>("Told differently", "Nothing is told differently.")
          .words("Time", 80, c -> clock(c.theirs().at()))
          .words("What differs", 170, c -> Say.capital(c.kind().words()))
          .words("Yours", 250, c -> words(c.mine()))
          .words("Theirs", 250, c -> words(c.theirs()))
          .words("Kept", 90, c -> word(chosen(c)));
  private final Label summary = new Label(NOTHING_YET);
  private final Label remarks = new Label();
  private final Button mine = keep("Keep yours", "second-mine", Clash.Choice.MINE);
  private final Button theirs = keep("Keep theirs", "second-theirs", Clash.Choice.THEIRS);
  private final Button both = keep("Keep both", "second-both", Clash.Choice.BOTH);
  private final Button together = new Button("Put the two together");
  private final Map<String, Clash.Choice> choices = new HashMap<>();
  private @Nullable Session other;
  private @Nullable Merge merge;

  SecondRecordPane(Workbench bench, PreferenceStore preferences, Landing landing) {
    this.bench = bench;
    this.preferences = preferences;
    this.landing = landing;
    for (Label label : List.of(summary, remarks)) {
      label.setWrapText(true);
      label.setMinHeight(Region.USE_PREF_SIZE);
    }
    summary.setId("second-summary");
    remarks.getStyleClass().add("quiet");
    clashes.table().setId("second-clashes");
    together.setId("second-together");
    together.getStyleClass().add("main-button");
    together.setOnAction(e -> putTogether());
    Region gap = Nodes.gap();
    HBox foot = new HBox(10, mine, theirs, both, gap, together);
    foot.setAlignment(Pos.CENTER_LEFT);
    foot.setPadding(new Insets(10, 0, 0, 0));
    VBox head = new VBox(6, summary, remarks);
    head.setPadding(new Insets(0, 0, 10, 0));
    view.setTop(head);
    view.setCenter(clashes);
    view.setBottom(foot);
    Watch.part(bench.stateProperty(), SecondRecordPane::inHand, session -> compare());
    Watch.part(preferences.property(), p -> p.units(), units -> show());
    landing.watch(can -> show());
  }

  private static @Nullable Session inHand(WorkbenchState state) {
    OpenSession open = state.open();
    return open == null ? null : open.session();
  }

  Node view() {
    return view;
  }

  /** Reads the second record; what is shown stays until that has worked. */
  void read(Path file) {
    if (bench.state().open() == null) {
      bench.tell("Open your own record of the match first");
      return;
    }
    bench.look(
        file,
        session -> {
          other = session;
          choices.clear();
          compare();
        });
  }

  private void compare() {
    Session own = inHand(bench.state());
    Session second = other;
    if (own == null || second == null) {
      merge = null;
      show();
      return;
    }
    bench
        .tasks()
        .submit(
            CHANNEL,
            "Setting the two records side by side",
            progress -> Merge.of(own, second, null),
            new TaskService.Answer<>(
                found -> {
                  merge = found;
                  show();
                },
                failure -> bench.tell("The records could not be set side by side: " + failure)));
  }

  private void show() {
    Merge now = merge;
    boolean any = now != null;
    clashes.setVisible(any);
    for (Button button : List.of(mine, theirs, both)) {
      button.setDisable(now == null || now.clashes().isEmpty());
    }
    together.setDisable(!any || !landing.canAdd());
    summary.setText(now == null ? NOTHING_YET : summary(now));
    remarks.setText(now == null ? "" : String.join(" ", now.remarks()));
    remarks.setManaged(!remarks.getText().isEmpty());
    TableView<Clash> table = clashes.table();
    int at = Math.max(0, table.getSelectionModel().getSelectedIndex());
    clashes.show(now == null ? List.of() : now.clashes());
    table.getSelectionModel().select(at);
  }

  /** Says what both tell, what one tells alone, and how far the clocks are apart. */
  static String summary(Merge merge) {
    ClockOffset offset = merge.offset();
    double seconds = Math.abs(offset.millis()) / 1000.0;
    String apart =
        seconds < 0.05
            ? "agrees with yours"
            : String.format(
                Locale.UK,
                "is %.1f s %s yours",
                seconds,
                offset.millis() < 0 ? "behind" : "ahead of");
    String ahead =
        "Their clock " + apart + ", by " + Say.count(offset.inStep(), "event") + " in step. ";
    return (offset.inStep() == 0 ? "" : ahead)
        + Say.count(merge.same(), "event")
        + (merge.same() == 1 ? " is" : " are")
        + " told by both alike, "
        + (merge.added().isEmpty()
            ? "none by theirs alone, "
            : merge.added().size() + " by theirs alone and will be added, ")
        + (merge.clashes().isEmpty()
            ? "and nothing differs."
            : differing(merge.clashes().size())
                + ": yours is kept unless you choose otherwise, and what the other says goes into"
                + " the note.");
  }

  private static String differing(int clashes) {
    return clashes == 1 ? "1 differs" : clashes + " differ";
  }

  private Button keep(String text, String id, Clash.Choice choice) {
    Button button = new Button(text);
    button.setId(id);
    button.setOnAction(e -> keep(choice));
    return button;
  }

  /** Keeps one side of the difference picked, and goes to the next. */
  void keep(Clash.Choice choice) {
    TableView<Clash> table = clashes.table();
    Clash picked = table.getSelectionModel().getSelectedItem();
    if (picked == null) {
      return;
    }
    choices.put(key(picked), choice);
    table.refresh();
    table.getSelectionModel().selectNext();
  }

  private static String key(Clash clash) {
    SessionEvent own = clash.mine();
    return (own == null ? "" : own.id()) + '\n' + clash.theirs().id();
  }

  private Clash.Choice chosen(Clash clash) {
    return choices.getOrDefault(key(clash), Clash.Choice.MINE);
  }

  private static String word(Clash.Choice choice) {
    return switch (choice) {
      case MINE -> "yours";
      case THEIRS -> "theirs";
      case BOTH -> "both";
    };
  }

  private void putTogether() {
    Merge now = merge;
    if (now != null && landing.canAdd()) {
      Units units = preferences.get().units();
      Session after = now.session(this::chosen, units);
      other = null;
      landing.put("Put in a second record", after);
    }
  }

  private String clock(long at) {
    Session own = inHand(bench.state());
    return own == null ? "" : Say.clock(at, own.occasion().zone());
  }

  private String words(@Nullable SessionEvent event) {
    Session own = inHand(bench.state());
    if (event == null) {
      return "nothing";
    }
    return own == null ? "" : EventText.of(event, own, preferences.get().units());
  }

  void takeFocus() {
    clashes.table().requestFocus();
  }
}
