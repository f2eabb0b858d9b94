package org.fadeline.ui.season;

import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.function.Supplier;
import javafx.scene.Node;
import org.fadeline.analysis.season.Season;
import org.fadeline.analysis.season.Season.By;
import org.fadeline.export.PictureMaker;
import org.fadeline.export.TalkMaterial;
import org.fadeline.export.TalkSeasons;
import org.fadeline.figure.FigureSheet;
import org.fadeline.figure.FigureStyle;
import org.fadeline.model.talk.Picture;
import org.fadeline.model.talk.SeasonSource;
import org.fadeline.ui.control.NodeMenu;
import org.fadeline.ui.control.file.PathChooser;
import org.fadeline.ui.control.picture.Looks;
import org.fadeline.ui.control.picture.PictureSave;
import org.fadeline.ui.state.PreferenceStore;
import org.fadeline.ui.state.TalkTray;
import org.fadeline.ui.state.Workbench;
import org.jspecify.annotations.Nullable;

/** Takes figures of the season away, onto the talk or into a file, over what is looked at here. */
final class SeasonPictures {
  private static final String ID = "season";

  private final Workbench bench;
  private final PreferenceStore preferences;
  private final SeasonDesk desk;
  private final PathChooser paths;

  SeasonPictures(Workbench bench, PreferenceStore preferences, SeasonDesk desk, PathChooser paths) {
    this.bench = bench;
    this.preferences = preferences;
    this.paths = paths;
    this.desk = desk;
  }

  /** Returns the picture of first bites by something. */
  static Picture.Kind firstBites(By by) {
    return switch (by) {
      case LINE -> Picture.Kind.SEASON_FIRST_BITE_LINE;
      case BAIT -> Picture.Kind.SEASON_FIRST_BITE_BAIT;
      case WATER -> Picture.Kind.SEASON_FIRST_BITE_WATER;
    };
  }

  /** Returns the picture of a page, or null where it has none. */
  static Picture.@Nullable Kind ofPage(int page, By by) {
    return switch (page) {
      case 0 -> Picture.Kind.SEASON_RESULTS;
      case 1 -> Picture.Kind.SEASON_HOURS;
      case 2 -> firstBites(by);
      case 3 -> Picture.Kind.SEASON_FADES;
      case 4 -> Picture.Kind.SEASON_FEED;
      default -> null;
    };
  }

  /** Offers the commands in a context menu of a figure. */
  void on(Node node, Supplier<Picture.Kind> kind) {
    NodeMenu.on(
        node,
        asked ->
            List.of(
                NodeMenu.item("Put this on the talk", () -> put(kind.get())),
                NodeMenu.item("Save this picture…", () -> save(node, kind.get()))));
  }

  /** Puts a figure on the talk, or says why it cannot be. */
  void put(Picture.@Nullable Kind kind) {
    SeasonState now = desk.state();
    Path folder = now.folder();
    if (kind == null || folder == null) {
      bench.tell("There is no picture here to put on the talk");
      return;
    }
    SeasonSource source =
        new SeasonSource(ID, folder.toAbsolutePath(), TalkSeasons.siftOf(now.season().filter()));
    bench
        .tray()
        .put(new TalkTray.Put(kind.label(), Picture.of(kind, ID), List.of(), List.of(source)));
  }

  /** Saves a figure on a sheet of its own, or says why it cannot be. */
  void save(Node owner, Picture.@Nullable Kind kind) {
    if (kind == null || desk.state().folder() == null) {
      bench.tell("There is no picture here to save");
      return;
    }
    Path file = PictureSave.ask(paths, owner, kind.label());
    if (file != null) {
      Season season = desk.state().season();
      FigureStyle style = Looks.saved(preferences.get());
      PictureSave.write(
          bench,
          file,
          () ->
              FigureSheet.of(
                  new PictureMaker(new TalkMaterial(Map.of(), Map.of(ID, season)), true)
                      .make(Picture.of(kind, ID), style)
                      .figure(),
                  season));
    }
  }
}
