package org.fadeline.ui.season;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import javafx.scene.Node;
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
import org.fadeline.analysis.season.Season.By;
import org.fadeline.figure.Figure;
import org.fadeline.figure.FigureStyle;
import org.fadeline.figure.SeasonFadesFigure;
import org.fadeline.figure.SeasonFeedFigure;
import org.fadeline.figure.SeasonFirstBiteFigure;
import org.fadeline.figure.SeasonHoursFigure;
import org.fadeline.figure.SeasonPastPlainFigure;
import org.fadeline.figure.SeasonResultsFigure;
import org.fadeline.model.talk.Picture;
import org.fadeline.ui.control.DataTable;
import org.fadeline.ui.control.FigureCanvas;
import org.fadeline.ui.control.Invitation;
import org.fadeline.ui.control.Looks;
import org.fadeline.ui.control.Navigation;
import org.fadeline.ui.control.PathChooser;
import org.fadeline.ui.control.PathChooser.Question;
import org.fadeline.ui.control.Segments;
import org.fadeline.ui.control.Watch;
import org.fadeline.ui.state.OpenSession;
import org.fadeline.ui.state.PreferenceStore;
import org.fadeline.ui.state.Preferences;
import org.fadeline.ui.state.Teaching;
import org.fadeline.ui.state.Workbench;
import org.jspecify.annotations.Nullable;

/** What the season screen shows: the folder, the filters, a page at a time, the sessions behind. */
final class SeasonBody {
  static final List<String> PAGES =
      List.of("Results", "Line by hour", "First bites", "Fades", "Feed", "Learned", "Left out");

  private static final List<String> PAGES_WITH_LIMITS =
      List.of("Line by hour", "First bites", "Feed");

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
  private final SeasonTables tables;
  private final KindTables kinds;
  private final Map<String, Node> pages = new LinkedHashMap<>();
  private final FigureCanvas results = canvas();
  private final FigureCanvas hours = canvas();
  private final FigureCanvas firstBites = canvas();
  private final FigureCanvas fades = canvas();
  private final FigureCanvas pastPlain = canvas();
  private final FigureCanvas feed = canvas();
  private final Label waiting = new Label(SeasonWords.READING);
  private final Invitation invitation =
      new Invitation(
          "A season as one",
          "Choose the folder your matches are kept in. You then see which line paid in which hour of"
              + " the match, how soon first bites came, which lines faded and when, and what"
              + " differed from match to match.");
  private final Label foot =
      new Label(
          "Limits at 95%, from drawing whole sessions; none below "
              + Season.FEWEST_FOR_LIMITS
              + " sessions");
  private final Label learned = new Label();
  private final CheckBox teach = new CheckBox("Let reviews learn from these sessions");
  private final StackPane page = new StackPane();
  private final Segments<String> pageChoice;
  private final Segments<By> byChoice;
  private final Set<String> stale = new HashSet<>();
  private String shownPage = PAGES.get(0);
  private SeasonState drawn = SeasonState.EMPTY;
  private By by = By.LINE;
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
    pictures.on(results, () -> Picture.Kind.SEASON_RESULTS);
    pictures.on(hours, () -> Picture.Kind.SEASON_HOURS);
    pictures.on(firstBites, () -> SeasonPictures.firstBites(by));
    pictures.on(fades, () -> Picture.Kind.SEASON_FADES);
    pictures.on(pastPlain, () -> Picture.Kind.SEASON_PAST_PLAIN);
    pictures.on(feed, () -> Picture.Kind.SEASON_FEED);
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
    tables = new SeasonTables(this::showBehind);
    kinds = new KindTables(this::showBehind);
    byChoice = new Segments<>("By", List.of(By.values()), By::word, this::showBy);
    byChoice.setMaxWidth(Region.USE_PREF_SIZE);
    byChoice.choose(by);
    pages.put(PAGES.get(0), page(results, tables.results));
    pages.put(PAGES.get(1), page(hours, kinds.hours));
    pages.put(PAGES.get(2), page(byChoice, firstBites, kinds.firstBites));
    pages.put(PAGES.get(3), page(beside(fades, pastPlain), kinds.fades));
    HBox fedAndFeed = beside(kinds.fed, tables.feed);
    // The second has twice the columns.
    kinds.fed.setPrefWidth(423);
    tables.feed.setPrefWidth(580);
    pages.put(PAGES.get(4), page(feed, fedAndFeed));
    learned.setWrapText(true);
    learned.setMinHeight(Region.USE_PREF_SIZE);
    teach.setId("season-teach");
    teach.setOnAction(e -> teach(desk.state()));
    Watch.part(bench.stateProperty(), s -> s.choices().teaching() != null, teach::setSelected);
    pages.put(PAGES.get(5), page(learned, teach, kinds.learned));
    pages.put(PAGES.get(6), page(tables.files));
    pageChoice = new Segments<>("Show", PAGES, name -> name, this::page);
    pageChoice.getStyleClass().add("tabs");
    hours.setOnMouseClicked(
        e -> {
          Season.Cell cell =
              new SeasonHoursFigure(desk.state().season(), style())
                  .at(e.getX(), e.getY(), hours.getWidth(), hours.getHeight());
          if (cell != null) {
            showBehind(cell.sessions());
          }
        });
    pastPlain.setId("season-past-plain");
    feed.setId("season-feed");
    hours.setId("season-hours");
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
    page(PAGES.get(0));
  }

  /** Hands on what reviews learn from, or takes it back. */
  private void teach(SeasonState state) {
    Path of = state.folder();
    bench.teach(
        teach.isSelected() && of != null
            ? new Teaching(String.valueOf(of.getFileName()), state.found().summaries())
            : null);
  }

  private static FigureCanvas canvas() {
    FigureCanvas canvas = new FigureCanvas();
    canvas.setMinHeight(200);
    canvas.setPrefHeight(300);
    return canvas;
  }

  private static HBox beside(Region... parts) {
    HBox box = new HBox(10, parts);
    for (Region part : parts) {
      HBox.setHgrow(part, Priority.ALWAYS);
      part.setPrefWidth(100);
    }
    return box;
  }

  private static VBox page(Region... parts) {
    VBox box = new VBox(10, parts);
    for (Region part : parts) {
      if (part instanceof DataTable<?> table) {
        table.hug();
      }
      if (!(part instanceof Segments || part instanceof Label || part instanceof CheckBox)) {
        VBox.setVgrow(part, Priority.ALWAYS);
      }
    }
    return box;
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

  Node view() {
    return view;
  }

  void takeFocus() {
    head.takeFocus();
  }

  void choose() {
    Path near =
        preferences.get().recent().stream()
            .map(path -> Path.of(path).getParent())
            .filter(parent -> parent != null && Files.isDirectory(parent))
            .findFirst()
            .orElse(null);
    Path chosen = paths.folder(Question.of("A folder of sessions", view).near(near));
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
    pictures.put(SeasonPictures.ofPage(PAGES.indexOf(shownPage), by));
  }

  void savePicture() {
    pictures.save(view, SeasonPictures.ofPage(PAGES.indexOf(shownPage), by));
  }

  void page(String name) {
    pageChoice.choose(name);
    Node node = pages.get(name);
    if (node != null) {
      shownPage = name;
      fill(name);
      boolean limits = PAGES_WITH_LIMITS.contains(name);
      foot.setVisible(limits);
      foot.setManaged(limits);
      arrange();
    }
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
    Node shown = none ? invitation : nothing ? waiting : pages.get(shownPage);
    if (shown != null && !page.getChildren().equals(List.of(shown))) {
      page.getChildren().setAll(shown);
    }
  }

  private void showBy(By chosen) {
    by = chosen;
    draw(firstBites, new SeasonFirstBiteFigure(desk.state().season(), by, style()));
  }

  private void showBehind(List<Integer> sessions) {
    SeasonState now = desk.state();
    behind.show(sessions, now.season(), now.found());
  }

  private FigureStyle style() {
    Preferences now = preferences.get();
    return Looks.style(now.look(), now.units(), now.textPercent());
  }

  private void show(SeasonState state) {
    SeasonState.Reading now = state.reading();
    head.show(state);
    tables.reading(now != null);
    kinds.reading(now != null);
    if (isNew(state)) {
      drawn = state;
      filters.offer(state.found().summaries());
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
    return state.season() != drawn.season() || state.found() != drawn.found();
  }

  /** Takes the season in: the page shown is made anew, the others when they are next shown. */
  private void showSeason(SeasonState state) {
    tables.take(state.season(), preferences.get().units());
    kinds.take(state.season(), preferences.get().units());
    stale.addAll(PAGES);
    fill(shownPage);
    behind.show(List.of(), state.season(), state.found());
  }

  private void fill(String name) {
    if (!stale.remove(name)) {
      return;
    }
    SeasonState state = desk.state();
    Season season = state.season();
    switch (PAGES.indexOf(name)) {
      case 0 -> {
        draw(results, new SeasonResultsFigure(season, style()));
        tables.showResults();
      }
      case 1 -> {
        draw(hours, new SeasonHoursFigure(season, style()));
        kinds.showHours();
      }
      case 2 -> {
        draw(firstBites, new SeasonFirstBiteFigure(season, by, style()));
        kinds.showFirstBites();
      }
      case 3 -> {
        draw(fades, new SeasonFadesFigure(season, style()));
        draw(pastPlain, new SeasonPastPlainFigure(season, style()));
        kinds.showFades();
      }
      case 4 -> {
        draw(feed, new SeasonFeedFigure(season, style()));
        kinds.showFed();
        tables.showFeed();
      }
      case 5 -> {
        learned.setText(SeasonWords.learned(season.learned()));
        kinds.showLearned();
      }
      default -> tables.showFiles(state.found());
    }
  }

  private static void draw(FigureCanvas canvas, Figure figure) {
    canvas.show(figure::paint, figure.description());
  }
}
