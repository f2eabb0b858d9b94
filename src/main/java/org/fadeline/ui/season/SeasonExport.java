package org.fadeline.ui.season;

import java.nio.file.Path;
import org.fadeline.analysis.season.Season;
import org.fadeline.export.SeasonFigureSet;
import org.fadeline.export.SeasonTableSet;
import org.fadeline.figure.FigureStyle;
import org.fadeline.figure.Theme;
import org.fadeline.io.WholeFile;
import org.fadeline.model.Units;
import org.fadeline.report.SeasonJson;
import org.fadeline.ui.control.file.PathChooser;
import org.fadeline.ui.control.file.PathChooser.Question;
import org.fadeline.ui.state.FileWriting;
import org.fadeline.ui.state.Workbench;

/** Writes a season out, in the background, where the user says. */
final class SeasonExport {
  private static final String CHANNEL = "season-export";

  private final Workbench bench;
  private final SeasonDesk desk;
  private final PathChooser paths;

  SeasonExport(Workbench bench, SeasonDesk desk, PathChooser paths) {
    this.paths = paths;
    this.bench = bench;
    this.desk = desk;
  }

  void figures(Units units) {
    Season season = desk.state().season();
    intoFolder(
        "A folder for the figures",
        folder -> SeasonFigureSet.write(season, FigureStyle.of(Theme.LIGHT, units), folder));
  }

  void tables() {
    Season season = desk.state().season();
    intoFolder("A folder for the tables", folder -> SeasonTableSet.write(season, folder));
  }

  void json() {
    SeasonState now = desk.state();
    Path root = now.folder();
    if (root == null) {
      return;
    }
    Path chosen =
        paths.save(Question.of("Save the season as JSON", null).named("season.json"), ".json");
    if (chosen != null) {
      bench.write(
          CHANNEL,
          chosen,
          file -> WholeFile.write(file, SeasonJson.toJson(now.season(), now.found(), root)));
    }
  }

  private void intoFolder(String title, FileWriting writing) {
    Path chosen = paths.folder(Question.of(title, null));
    if (chosen != null) {
      bench.write(CHANNEL, chosen, writing);
    }
  }
}
