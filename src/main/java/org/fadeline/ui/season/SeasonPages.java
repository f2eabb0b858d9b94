package org.fadeline.ui.season;

import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Set;
import java.util.function.Consumer;
import javafx.scene.control.CheckBox;
import javafx.scene.control.Label;
import javafx.scene.layout.HBox;
import javafx.scene.layout.Priority;
import javafx.scene.layout.Region;
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
import org.fadeline.ui.control.form.Segments;
import org.fadeline.ui.control.picture.FigureCanvas;
import org.fadeline.ui.control.picture.Looks;
import org.fadeline.ui.control.table.DataTable;
import org.fadeline.ui.state.PreferenceStore;
import org.fadeline.ui.state.TaskService;
import org.jspecify.annotations.Nullable;

/** The pages of a season, each with its pictures and tables; filled when they are shown. */
final class SeasonPages {
  static final List<String> NAMES =
      List.of("Results", "Line by hour", "First bites", "Fades", "Feed", "Learned", "Left out");

  private static final List<String> WITH_LIMITS = List.of("Line by hour", "First bites", "Feed");

  /** Sessions from which on a picture takes longer to draw than a frame may. */
  private static final int MANY = 500;

  private final PreferenceStore preferences;
  private final TaskService tasks;
  private final SeasonTables tables;
  private final KindTables kinds;
  private final FigureCanvas results = canvas("season-results");
  private final FigureCanvas hours = canvas("season-hours");
  private final FigureCanvas firstBites = canvas("season-first-bites");
  private final FigureCanvas fades = canvas("season-fades");
  private final FigureCanvas pastPlain = canvas("season-past-plain");
  private final FigureCanvas feed = canvas("season-feed");
  private final Label learned = new Label();
  private final Map<String, Region> pages = new LinkedHashMap<>();
  private final Set<String> stale = new HashSet<>();
  private SeasonState state = SeasonState.EMPTY;
  private String shown = NAMES.get(0);
  private By by = By.LINE;

  /**
   * Makes the pages.
   *
   * @param teach what lets reviews learn
   * @param behind is told the sessions that a chosen row or cell rests on
   */
  SeasonPages(
      PreferenceStore preferences,
      TaskService tasks,
      CheckBox teach,
      Consumer<List<Integer>> behind) {
    this.preferences = preferences;
    this.tasks = tasks;
    tables = new SeasonTables(behind);
    kinds = new KindTables(behind);
    Segments<By> byChoice = new Segments<>("By", List.of(By.values()), By::word, this::showBy);
    byChoice.setMaxWidth(Region.USE_PREF_SIZE);
    byChoice.choose(by);
    HBox fedAndFeed = beside(kinds.fed, tables.feed);
    // The second has twice the columns.
    kinds.fed.setPrefWidth(423);
    tables.feed.setPrefWidth(580);
    learned.setWrapText(true);
    learned.setMinHeight(Region.USE_PREF_SIZE);
    pages.put(NAMES.get(0), page(results, tables.results));
    pages.put(NAMES.get(1), page(hours, kinds.hours));
    pages.put(NAMES.get(2), page(byChoice, firstBites, kinds.firstBites));
    pages.put(NAMES.get(3), page(beside(fades, pastPlain), kinds.fades));
    pages.put(NAMES.get(4), page(feed, fedAndFeed));
    pages.put(NAMES.get(5), page(learned, teach, kinds.learned));
    pages.put(NAMES.get(6), page(tables.files));
    hours.setOnMouseClicked(
        e -> {
          Season.Cell cell =
              new SeasonHoursFigure(state.season(), style())
                  .at(e.getX(), e.getY(), hours.getWidth(), hours.getHeight());
          if (cell != null) {
            behind.accept(cell.sessions());
          }
        });
  }

  /** Gives each picture its menu. */
  void offer(SeasonPictures pictures) {
    pictures.on(results, () -> Picture.Kind.SEASON_RESULTS);
    pictures.on(hours, () -> Picture.Kind.SEASON_HOURS);
    pictures.on(firstBites, () -> SeasonPictures.firstBites(by));
    pictures.on(fades, () -> Picture.Kind.SEASON_FADES);
    pictures.on(pastPlain, () -> Picture.Kind.SEASON_PAST_PLAIN);
    pictures.on(feed, () -> Picture.Kind.SEASON_FEED);
  }

  private static FigureCanvas canvas(String id) {
    FigureCanvas canvas = new FigureCanvas();
    canvas.setId(id);
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

  /** Returns the page shown. */
  Region page() {
    return Objects.requireNonNull(pages.get(shown), shown);
  }

  /** Returns whether limits stand on the page shown. */
  boolean hasLimits() {
    return WITH_LIMITS.contains(shown);
  }

  /** Returns what the page shown is as a picture of a talk. */
  Picture.@Nullable Kind picture() {
    return SeasonPictures.ofPage(NAMES.indexOf(shown), by);
  }

  /** Goes to a page; an unknown one does nothing. */
  void show(String name) {
    if (pages.containsKey(name)) {
      shown = name;
      fill(name);
    }
  }

  /** While the folder is read nothing is said to be missing. */
  void reading(boolean reading) {
    tables.reading(reading);
    kinds.reading(reading);
  }

  /** Takes a season in: the page shown is made anew, the others when they are next shown. */
  void take(SeasonState newState) {
    state = newState;
    tables.take(state.shown(), preferences.get().units());
    kinds.take(state.shown(), preferences.get().units());
    stale.addAll(NAMES);
    fill(shown);
  }

  private void showBy(By chosen) {
    by = chosen;
    draw(firstBites, new SeasonFirstBiteFigure(state.season(), by, style()));
  }

  private FigureStyle style() {
    return Looks.onScreen(preferences.get());
  }

  private void fill(String name) {
    if (!stale.remove(name)) {
      return;
    }
    Season season = state.season();
    switch (NAMES.indexOf(name)) {
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

  private void draw(FigureCanvas canvas, Figure figure) {
    canvas.showFigure(() -> figure, state.season().sessions().size() < MANY ? null : tasks);
  }
}
