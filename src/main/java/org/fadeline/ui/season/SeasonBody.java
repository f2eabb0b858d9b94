package org.fadeline.ui.season;

import java.nio.file.Path;
import java.util.List;
import javafx.scene.Node;
import javafx.scene.control.Button;
import javafx.scene.control.CheckBox;
import javafx.scene.control.Label;
import javafx.scene.control.MenuButton;
import javafx.scene.control.MenuItem;
import javafx.scene.control.ScrollPane;
import javafx.scene.layout.BorderPane;
import javafx.scene.layout.HBox;
import javafx.scene.layout.Priority;
import javafx.scene.layout.Region;
import javafx.scene.layout.StackPane;
import javafx.scene.layout.VBox;
import org.fadeline.analysis.season.Season;
import org.fadeline.ui.control.Invitation;
import org.fadeline.ui.control.Navigation;
import org.fadeline.ui.control.ScreenWithBody;
import org.fadeline.ui.control.Watch;
import org.fadeline.ui.control.file.PathChooser;
import org.fadeline.ui.control.file.PathChooser.Question;
import org.fadeline.ui.control.form.Segments;
import org.fadeline.ui.state.OpenSession;
import org.fadeline.ui.state.PreferenceStore;
import org.fadeline.ui.state.Teaching;
import org.fadeline.ui.state.Workbench;
import org.jspecify.annotations.Nullable;

/** What the season screen shows: the folder, the filters, a page at a time, the sessions behind. */
final class SeasonBody implements ScreenWithBody.Body {
  private final Workbench bench;
  private final PreferenceStore preferences;
  private final SeasonDesk desk;
  private final PathChooser paths;
  private final SeasonExport export;
  private final SeasonPictures pictures;
  private final BorderPane view = new BorderPane();
  private final SeasonHead head;
  private final FilterBar filters;
  private final SessionsBehind behind;
  private final SeasonPages pages;
  private final Label waiting = new Label(SeasonWords.READING);
  private final Button begin = new Button("Choose a folder…");
  private final Invitation invitation =
      new Invitation(
          "A season as one",
          "Choose the folder your matches are kept in. You then see which line paid in which hour"
              + " of the match, how soon first bites came, which lines faded and when, and what"
              + " differed from match to match.",
          begin);
  private final Label foot =
      new Label(
          "Limits at 95%, from drawing whole matches; none below "
              + Season.FEWEST_FOR_LIMITS
              + " matches, but for what may pass for no fish at all");
  private final CheckBox teach = new CheckBox("Let reviews learn from these matches");
  private final StackPane page = new StackPane();
  private final Segments<String> pageChoice;
  private SeasonState drawn = SeasonState.EMPTY;
  private @Nullable Path wanted;

  SeasonBody(
      Workbench bench, PreferenceStore preferences, Navigation navigation, PathChooser paths) {
    this.paths = paths;
    this.bench = bench;
    this.preferences = preferences;
    desk = new SeasonDesk(bench.tasks());
    export = new SeasonExport(bench, desk, paths);
    pictures = new SeasonPictures(bench, preferences, desk, paths);
    head = new SeasonHead(this::choose, desk, exportMenu());
    filters = new FilterBar(desk::filter);
    behind =
        new SessionsBehind(
            file -> {
              wanted = file;
              bench.open(file);
            });
    // The replay has nothing to show until the session is in hand.
    Watch.part(
        bench.stateProperty(),
        s -> s.activity().opening() == null,
        settled -> {
          if (settled && wanted != null) {
            OpenSession open = bench.state().open();
            boolean arrived = open != null && wanted.equals(open.source().path());
            wanted = null;
            if (arrived) {
              navigation.show("Replay");
            }
          }
        });
    pages = new SeasonPages(preferences, bench.tasks(), teach, this::showBehind);
    pages.offer(pictures);
    begin.setId("season-begin");
    begin.getStyleClass().add("main-button");
    begin.setOnAction(e -> choose());
    teach.setId("season-teach");
    teach.setOnAction(e -> teach(desk.state()));
    Watch.part(bench.stateProperty(), s -> s.choices().teaching() != null, teach::setSelected);
    pageChoice = new Segments<>("Show", SeasonPages.NAMES, name -> name, this::page);
    pageChoice.getStyleClass().add("tabs");
    waiting.setId("season-waiting");
    foot.setId("season-foot");
    foot.getStyleClass().add("quiet");
    foot.setWrapText(true);
    layOut();
    Watch.part(desk.stateProperty(), s -> s, this::show);
    Watch.part(
        preferences.property(),
        p -> List.of(p.look(), p.textPercent(), p.units()),
        p -> showSeason(desk.state()));
    page(SeasonPages.NAMES.get(0));
  }

  /** Hands on what reviews learn from, or takes it back. */
  private void teach(SeasonState state) {
    Path of = state.folder();
    bench.teach(
        teach.isSelected() && of != null
            ? new Teaching(String.valueOf(of.getFileName()), state.found().summaries())
            : null);
  }

  private void layOut() {
    VBox top = new VBox(8, head.view(), head.problem(), filters.view());
    top.setStyle("-fx-padding: 0.7em 0.9em 0.7em 0.9em;");
    ScrollPane tabs = new ScrollPane(pageChoice);
    tabs.getStyleClass().add("plain-scroll");
    tabs.setVbarPolicy(ScrollPane.ScrollBarPolicy.NEVER);
    tabs.setMinHeight(Region.USE_PREF_SIZE);
    VBox main = new VBox(10, tabs, page, foot);
    main.getStyleClass().add("panel");
    main.setStyle("-fx-padding: 0.9em;");
    VBox.setVgrow(page, Priority.ALWAYS);
    page.setMinHeight(0);
    HBox.setHgrow(main, Priority.ALWAYS);
    main.setMinWidth(0);
    main.setPrefWidth(100);
    HBox middle = new HBox(10, main, behind.view());
    middle.setStyle("-fx-padding: 0 0.9em 0.8em 0.9em;");
    view.setTop(top);
    view.setCenter(middle);
  }

  private MenuButton exportMenu() {
    MenuButton take = new MenuButton("Export");
    take.setId("season-export");
    take.setAccessibleText("Export figures, JSON or tables of the season");
    take.getItems()
        .setAll(
            item("Figures…", () -> export.figures(preferences.get().units())),
            item("Tables (CSV)…", export::tables),
            item("JSON…", export::json));
    return take;
  }

  private static MenuItem item(String words, Runnable action) {
    MenuItem item = new MenuItem(words);
    item.setOnAction(e -> action.run());
    return item;
  }

  @Override
  public Node view() {
    return view;
  }

  @Override
  public void takeFocus() {
    if (desk.state().folder() == null) {
      begin.requestFocus();
    } else {
      head.takeFocus();
    }
  }

  void choose() {
    Path chosen =
        paths.folder(
            Question.of("A folder of matches", view).near(preferences.get().recentFolder()));
    if (chosen != null) {
      open(chosen);
    }
  }

  void close() {
    desk.close();
  }

  void open(Path chosen) {
    desk.open(chosen);
  }

  void readAgain() {
    desk.readAgain();
  }

  void putOnTalk() {
    pictures.put(pages.picture());
  }

  void savePicture() {
    pictures.save(view, pages.picture());
  }

  void page(String name) {
    pageChoice.choose(name);
    pages.show(name);
    foot.setVisible(pages.hasLimits());
    foot.setManaged(pages.hasLimits());
    arrange();
  }

  /** The page chosen; in its place, while nothing is read yet, that the folder is being read. */
  private void arrange() {
    SeasonState state = desk.state();
    boolean nothing = state.reading() != null && state.found().entries().isEmpty();
    boolean none = state.folder() == null;
    for (Node node : List.of(filters.view(), behind.view(), pageChoice)) {
      node.setVisible(!none);
      node.setManaged(!none);
    }
    Node shown = none ? invitation : nothing ? waiting : pages.page();
    if (!page.getChildren().equals(List.of(shown))) {
      page.getChildren().setAll(shown);
    }
  }

  private void showBehind(List<Integer> sessions) {
    behind.show(sessions, desk.state().shown());
  }

  private void show(SeasonState state) {
    head.show(state);
    pages.reading(state.reading() != null);
    if (isNew(state)) {
      drawn = state;
      filters.offer(state.shown().offers());
      showSeason(state);
      if (teach.isSelected() && state.reading() == null) {
        teach(state);
      }
    }
    arrange();
  }

  /** Whether there is more to show than how far the reading is. */
  @SuppressWarnings("ReferenceEquality") // comparing ten thousand summaries would take too long
  private boolean isNew(SeasonState state) {
    return state.shown() != drawn.shown() || state.found() != drawn.found();
  }

  private void showSeason(SeasonState state) {
    pages.take(state);
    behind.show(List.of(), state.shown());
  }
}
