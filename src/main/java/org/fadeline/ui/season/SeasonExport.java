package org.fadeline.ui.season;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.List;
import org.fadeline.analysis.season.Season;
import org.fadeline.export.SeasonFigureSet;
import org.fadeline.export.SeasonTableSet;
import org.fadeline.figure.FigureStyle;
import org.fadeline.figure.Theme;
import org.fadeline.io.WholeFile;
import org.fadeline.model.Units;
import org.fadeline.report.SeasonJson;
import org.fadeline.ui.control.PathChooser;
import org.fadeline.ui.control.PathChooser.Question;
import org.fadeline.ui.state.Activity.Trouble;
import org.fadeline.ui.state.TaskService;
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

  /** Writes something to a place, and returns what was written, in words. */
  private interface Written {
    String to(Path place) throws IOException;
  }

  void figures(Units units) {
    Season season = desk.state().season();
    intoFolder(
        "A folder for the figures",
        place -> {
          List<Path> files =
              SeasonFigureSet.write(season, FigureStyle.of(Theme.LIGHT, units), place);
          return files.size() + " files of figures";
        });
  }

  void tables() {
    Season season = desk.state().season();
    intoFolder(
        "A folder for the tables", place -> SeasonTableSet.write(season, place).size() + " tables");
  }

  void json() {
    SeasonState now = desk.state();
    Path root = now.folder();
    if (root == null) {
      return;
    }
    Path chosen = paths.save(Question.of("Save the season as JSON", null).named("season.json"));
    if (chosen != null) {
      write(
          chosen,
          place -> {
            String text = SeasonJson.toJson(now.season(), now.found(), root);
            WholeFile.write(place, out -> out.write(text.getBytes(StandardCharsets.UTF_8)));
            return "The season";
          });
    }
  }

  private void intoFolder(String title, Written written) {
    Path chosen = paths.folder(Question.of(title, null));
    if (chosen != null) {
      write(chosen, written);
    }
  }

  private void write(Path place, Written written) {
    bench
        .tasks()
        .submit(
            CHANNEL,
            "Exporting the season",
            progress -> written.to(place),
            new TaskService.Answer<>(
                what -> bench.tell(what + " written to " + place),
                failure ->
                    bench.report(
                        Trouble.of(
                            "The season was not exported",
                            place
                                + " could not be written: "
                                + failure.getMessage()
                                + ". Choose another place."))));
  }
}
