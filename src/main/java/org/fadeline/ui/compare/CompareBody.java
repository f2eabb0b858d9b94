package org.fadeline.ui.compare;

import java.util.List;
import java.util.Optional;
import javafx.geometry.Pos;
import javafx.scene.Node;
import javafx.scene.control.Button;
import javafx.scene.control.Label;
import javafx.scene.control.MenuButton;
import javafx.scene.control.ProgressIndicator;
import javafx.scene.layout.BorderPane;
import javafx.scene.layout.HBox;
import javafx.scene.layout.Priority;
import javafx.scene.layout.Region;
import javafx.scene.layout.StackPane;
import javafx.scene.layout.VBox;
import org.fadeline.analysis.compare.Alignment;
import org.fadeline.analysis.compare.Comparison;
import org.fadeline.figure.FigureStyle;
import org.fadeline.replay.Playhead;
import org.fadeline.ui.control.Nodes;
import org.fadeline.ui.control.ScreenWithBody;
import org.fadeline.ui.control.Watch;
import org.fadeline.ui.control.file.PathChooser;
import org.fadeline.ui.control.form.Segments;
import org.fadeline.ui.control.picture.Looks;
import org.fadeline.ui.state.Activity;
import org.fadeline.ui.state.PreferenceStore;
import org.fadeline.ui.state.TaskService;
import org.fadeline.ui.state.Workbench;
import org.jspecify.annotations.Nullable;

/** What the screen shows: the invitation, or both matches side by side. */
final class CompareBody implements ScreenWithBody.Body {
  private static final String LAYING_OUT = "compare-timelines";

  private final Workbench bench;
  private final PreferenceStore preferences;
  private final CompareBench compare;
  private final SecondChooser chooser;
  private final CompareSaves saves;
  private final LayingBar laying;
  private final ComparePages pages;
  private final CompareTransport transport;
  private final Segments<String> choice;
  private final FindingsPane findings = new FindingsPane();
  private final StackPane page = new StackPane();
  private final BorderPane beside = new BorderPane();
  private final StackPane invitation = new StackPane();
  private final Label doing = new Label();
  private final HBox busy;
  private final StackPane view;
  private String open = ComparePages.NAMES.get(0);
  private boolean visible;
  private @Nullable Laid laid;

  CompareBody(Workbench bench, PreferenceStore preferences, PathChooser paths) {
    this.bench = bench;
    this.preferences = preferences;
    compare = new CompareBench(bench);
    chooser = new SecondChooser(bench, preferences, compare, paths);
    saves = new CompareSaves(bench, preferences, compare, paths, () -> open);
    laying = new LayingBar(compare);
    pages =
        new ComparePages(
            compare,
            laying,
            bench.tasks(),
            at -> {
              bench.transport().pause();
              bench.transport().seek(at);
            },
            () -> bench.hindsight(true));
    transport = new CompareTransport(bench);
    choice = new Segments<>("Show", ComparePages.NAMES, name -> name, this::open);
    choice.getStyleClass().add("tabs");
    busy = busy();
    layOut();
    view = new StackPane(beside, invitation, busy);
    StackPane.setAlignment(busy, Pos.TOP_CENTER);
    chooser.acceptDrops(view);
    open(open);
    compare.follow();
    Watch.part(compare.stateProperty(), s -> s, this::show);
    Watch.part(
        preferences.property(),
        p -> List.of(p.look(), p.textPercent(), p.units()),
        p -> show(compare.state()));
    Watch.part(
        bench.stateProperty(),
        s ->
            List.of(
                s.playhead().at(),
                s.playhead().motion().playing(),
                s.choices().hindsight(),
                Optional.ofNullable(s.review().known())),
        s -> follow());
  }

  private HBox busy() {
    ProgressIndicator turning = new ProgressIndicator();
    turning.setMaxSize(20, 20);
    Button cancel = new Button("Give up");
    cancel.setOnAction(e -> compare.cancel());
    HBox box = new HBox(10, turning, doing, cancel);
    box.setAlignment(Pos.CENTER);
    box.getStyleClass().add("readout");
    box.setMaxSize(Region.USE_PREF_SIZE, Region.USE_PREF_SIZE);
    return box;
  }

  private void layOut() {
    MenuButton menu = chooser.menu();
    Region gap = Nodes.gap();
    HBox tabs = new HBox(10, choice, gap, menu, saves.menu(this::putOnTalk));
    tabs.setAlignment(Pos.CENTER_LEFT);
    VBox right = new VBox(10, tabs, page);
    right.getStyleClass().add("panel");
    right.setStyle("-fx-padding: 0.8em;");
    right.setMinWidth(0);
    right.setPrefWidth(100);
    VBox.setVgrow(page, Priority.ALWAYS);
    page.setMinHeight(0);
    page.setFocusTraversable(true);
    page.setAccessibleText("The comparison; Space plays both matches");
    page.setAlignment(Pos.TOP_LEFT);
    HBox.setHgrow(right, Priority.ALWAYS);
    Region left = findings.view();
    left.setMinWidth(230);
    left.prefWidthProperty().bind(beside.widthProperty().multiply(0.2));
    left.setMaxWidth(340);
    HBox middle = new HBox(10, left, right);
    middle.setStyle("-fx-padding: 0 0.9em 0.8em 0.9em;");
    VBox top = new VBox(laying.view());
    top.setStyle("-fx-padding: 0.7em 0.9em 0.7em 0.9em;");
    beside.setTop(top);
    beside.setCenter(middle);
    beside.setBottom(transport.view());
    invitation.setStyle("-fx-padding: 2em;");
  }

  @Override
  public Node view() {
    return view;
  }

  CompareBench compare() {
    return compare;
  }

  void choose() {
    chooser.choose(view);
  }

  void putOnTalk() {
    ComparePictures.putOnTalk(bench, compare.state(), open);
  }

  void savePicture() {
    saves.one(view);
  }

  void focusShift() {
    laying.focusShift();
  }

  void open(String name) {
    open = name;
    choice.choose(name);
    page.getChildren().setAll(pages.node(name));
  }

  @Override
  public void takeFocus() {
    if (compare.state().work().comparison() == null) {
      invitation.lookupAll("#choose-second").forEach(Node::requestFocus);
    } else {
      // Not a button: it would keep the space bar to itself.
      page.requestFocus();
    }
  }

  void shown(boolean nowShown) {
    visible = nowShown;
    if (visible) {
      show(compare.state());
    } else {
      bench.transport().reach(null);
    }
  }

  private FigureStyle style() {
    return Looks.onScreen(preferences.get());
  }

  private void show(CompareState state) {
    Comparison comparison = state.work().comparison();
    busy.setVisible(state.work().doing() != null);
    doing.setText(state.work().doing() == null ? "" : state.work().doing());
    beside.setVisible(comparison != null);
    invitation.setVisible(comparison == null);
    if (!visible) {
      return;
    }
    if (comparison == null) {
      invitation.getChildren().setAll(chooser.invitation());
      return;
    }
    if (!invitation.getChildren().isEmpty()) {
      invitation.getChildren().clear();
      page.requestFocus();
    }
    laying.show(state.laying(), comparison);
    FigureStyle style = style();
    Laid before = laid;
    if (before != null && before.isOf(comparison, style)) {
      bench.transport().reach(beside(before));
      follow();
    } else if (Laid.isLarge(comparison)) {
      layOut(comparison, style, before);
    } else {
      take(Laid.of(comparison, style, before));
    }
  }

  /** Off the window's thread; what was shown stays until then. */
  private void layOut(Comparison comparison, FigureStyle style, @Nullable Laid before) {
    bench
        .tasks()
        .submit(
            LAYING_OUT,
            "Laying out the two matches",
            progress -> Laid.of(comparison, style, before),
            new TaskService.Answer<>(
                this::take,
                failure ->
                    bench.report(
                        Activity.Trouble.unforeseen(
                            "The two matches could not be laid out", failure, ""))));
  }

  private void take(Laid fresh) {
    if (!visible) {
      return;
    }
    laid = fresh;
    bench.transport().reach(beside(fresh));
    pages.show(fresh);
    transport.show(fresh.comparison());
    findings.show(fresh.comparison());
    follow();
  }

  /** The second match's range, at the first match's instants. */
  private static Playhead.Range beside(Laid laid) {
    Playhead.Range range = laid.secondRange();
    Alignment alignment = laid.comparison().setup().alignment();
    return new Playhead.Range(
        alignment.firstInstant(alignment.secondMinutes(range.from())),
        alignment.firstInstant(alignment.secondMinutes(range.to())));
  }

  private void follow() {
    Laid now = laid;
    boolean any = compare.state().work().comparison() != null;
    if (visible && any && now != null && bench.state().open() != null) {
      Moment moment =
          Moment.of(bench.state(), now.comparison(), compare.state().work().secondKnown());
      pages.follow(moment);
      laying.follow(moment);
      findings.follow(moment.hindsight() ? null : pages.soFar(moment), preferences.get().units());
    }
  }
}
