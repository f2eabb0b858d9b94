package org.fadeline.ui.review;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import javafx.beans.binding.Bindings;
import javafx.geometry.Pos;
import javafx.scene.Node;
import javafx.scene.control.Label;
import javafx.scene.control.ScrollPane;
import javafx.scene.layout.BorderPane;
import javafx.scene.layout.HBox;
import javafx.scene.layout.Priority;
import javafx.scene.layout.Region;
import javafx.scene.layout.StackPane;
import javafx.scene.layout.VBox;
import org.fadeline.analysis.Review;
import org.fadeline.analysis.StayOrGo;
import org.fadeline.figure.FigureStyle;
import org.fadeline.model.Units;
import org.fadeline.ui.control.Navigation;
import org.fadeline.ui.control.Say;
import org.fadeline.ui.control.ScreenWithBody;
import org.fadeline.ui.control.Watch;
import org.fadeline.ui.control.command.Command;
import org.fadeline.ui.control.file.PathChooser;
import org.fadeline.ui.control.form.Segments;
import org.fadeline.ui.control.picture.Looks;
import org.fadeline.ui.control.picture.PictureMenu;
import org.fadeline.ui.state.PreferenceStore;
import org.fadeline.ui.state.Workbench;
import org.jspecify.annotations.Nullable;

/** What the review screen shows: lessons, stay or go, tables and charts, the record itself. */
final class ReviewBody implements ScreenWithBody.Body {
  private final Workbench bench;
  private final PreferenceStore preferences;
  private final Navigation navigation;
  private final BorderPane view = new BorderPane();
  private boolean visible;
  private boolean stale = true;
  private final Label totals = new Label();
  private final Label from = new Label();
  private final LessonCards lessons = new LessonCards(this::replay);
  private final EvidencePane evidence = new EvidencePane();
  private final StayList stays = new StayList(this::evidenceOf, this::replay);
  private final LineTables tables = new LineTables(this::replay);
  private final ChartPages charts;
  private final RecordPane record;
  private final SettingsPage settings;
  private final Map<String, Node> pages = new LinkedHashMap<>();
  private final StackPane page = new StackPane();
  private final Segments<String> choice;
  private final PictureMenu pictures;

  ReviewBody(
      Workbench bench, PreferenceStore preferences, Navigation navigation, PathChooser paths) {
    this.bench = bench;
    charts = new ChartPages(tables, bench.tasks());
    this.preferences = preferences;
    this.navigation = navigation;
    record = new RecordPane(this::replay);
    settings = new SettingsPage(bench);
    PagePrint print = new PagePrint(bench, preferences, paths);
    pages.put(ReviewScreen.PAGES.get(0), evidence.view());
    pages.put(ReviewScreen.PAGES.get(1), charts.lines());
    pages.put(ReviewScreen.PAGES.get(2), charts.firstBites());
    pages.put(ReviewScreen.PAGES.get(3), charts.response());
    pages.put(ReviewScreen.PAGES.get(4), charts.quarters());
    pages.put(ReviewScreen.PAGES.get(5), charts.fish());
    pages.put(ReviewScreen.PAGES.get(6), new VBox(8, print.view(), charts.page()));
    pages.put(ReviewScreen.PAGES.get(7), record.view());
    pages.put(ReviewScreen.PAGES.get(8), settings.view());
    choice = new Segments<>("Show", List.copyOf(pages.keySet()), name -> name, this::open);
    choice.getStyleClass().add("tabs");
    pictures = new PictureMenu(bench, preferences, paths, () -> charts.picture(choiceNow()));
    pictures.on(page);
    layOut();
    Watch.part(
        bench.stateProperty(),
        s -> List.of(Optional.ofNullable(s.review().latest()), s.choices().units()),
        part -> changed());
    Watch.part(preferences.property(), p -> List.of(p.look(), p.textPercent()), p -> restyle());
    open(ReviewScreen.PAGES.get(0));
  }

  private void layOut() {
    totals.getStyleClass().add("figure-large");
    from.getStyleClass().add("quiet");
    HBox head = new HBox(14, totals, from);
    head.setAlignment(Pos.BASELINE_LEFT);
    VBox top = new VBox(8, head, lessons.view());
    top.setStyle("-fx-padding: 0.7em 0.9em 0.7em 0.9em;");
    ScrollPane tabs = new ScrollPane(choice);
    tabs.getStyleClass().add("plain-scroll");
    tabs.setVbarPolicy(ScrollPane.ScrollBarPolicy.NEVER);
    // Where they do not fit they are scrolled, and the bar needs room below them.
    tabs.minHeightProperty()
        .bind(
            choice
                .heightProperty()
                .add(
                    Bindings.when(choice.widthProperty().greaterThan(tabs.widthProperty()))
                        .then(14)
                        .otherwise(2)));
    VBox right = new VBox(10, tabs, page);
    right.getStyleClass().add("panel");
    right.setStyle("-fx-padding: 0.9em;");
    choice.setMaxWidth(Region.USE_PREF_SIZE);
    VBox.setVgrow(page, Priority.ALWAYS);
    page.setMinHeight(0);
    page.setAlignment(Pos.TOP_LEFT);
    HBox.setHgrow(right, Priority.ALWAYS);
    right.setMinWidth(0);
    right.setPrefWidth(100);
    HBox middle = new HBox(10, stays.view(), right);
    middle.setStyle("-fx-padding: 0 0.9em 0.8em 0.9em;");
    view.setTop(top);
    view.setCenter(middle);
  }

  @Override
  public Node view() {
    return view;
  }

  List<Command> pictureCommands() {
    return pictures.commands();
  }

  @Override
  public void takeFocus() {
    // What lies in a scroll pane is part of the scene, and can have the focus, only from then on.
    view.applyCss();
    choice.button(choiceNow()).requestFocus();
  }

  private String choiceNow() {
    return pages.entrySet().stream()
        .filter(e -> page.getChildren().contains(e.getValue()))
        .map(Map.Entry::getKey)
        .findFirst()
        .orElse(ReviewScreen.PAGES.get(0));
  }

  void open(String name) {
    choice.choose(name);
    Node node = pages.get(name);
    if (node != null) {
      page.getChildren().setAll(node);
    }
    settings.shown(node == settings.view());
  }

  private FigureStyle style() {
    return Looks.onScreen(preferences.get());
  }

  private void restyle() {
    evidence.restyle(style());
    charts.show(bench.state().review().latest(), style());
  }

  private void replay(long at) {
    bench.transport().pause();
    bench.transport().seek(at);
    navigation.show("Replay");
  }

  private void evidenceOf(StayOrGo stay) {
    Review review = bench.state().review().latest();
    if (review != null) {
      evidence.show(review, stay, style());
    }
  }

  void shown(boolean nowShown) {
    visible = nowShown;
    if (visible && stale) {
      changed();
    }
  }

  /** What nobody looks at is put together once somebody does: after an edit that takes a while. */
  private void changed() {
    stale = !visible;
    if (visible) {
      show(bench.state().review().latest());
    }
  }

  private void show(@Nullable Review review) {
    Units units = preferences.get().units();
    totals.setText(review == null ? "Working out the review" : totals(review, units));
    from.setText(
        review == null
            ? ""
            : review.summary().weightFrom().word()
                + " · "
                + review.summary().grade().label()
                + " · with hindsight, so nothing here was known in full then");
    lessons.show(review);
    stays.show(review, units);
    tables.show(review, units);
    charts.show(review, style());
    record.show(review, units);
    settings.show(review);
  }

  private static String totals(Review review, Units units) {
    int landed = review.summary().caught().landed();
    double grams = review.summary().caught().weightG();
    return grams > 0
        ? Say.weight(grams, units) + ", " + Say.fish(landed)
        : Say.capital(Say.fish(landed));
  }
}
