package org.fadeline.ui.control;

import java.io.File;
import java.io.IOException;
import java.nio.file.Path;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.function.Supplier;
import javafx.scene.Node;
import javafx.scene.control.ContextMenu;
import javafx.scene.control.MenuItem;
import javafx.scene.input.ContextMenuEvent;
import javafx.stage.FileChooser;
import org.fadeline.analysis.Review;
import org.fadeline.export.FigureExport;
import org.fadeline.export.FileNames;
import org.fadeline.export.PictureMaker;
import org.fadeline.export.TalkMaterial;
import org.fadeline.figure.FigureSheet;
import org.fadeline.figure.FigureStyle;
import org.fadeline.model.talk.Picture;
import org.fadeline.ui.state.Activity.Trouble;
import org.fadeline.ui.state.PreferenceStore;
import org.fadeline.ui.state.Preferences;
import org.fadeline.ui.state.TalkTray;
import org.fadeline.ui.state.TaskService.Answer;
import org.fadeline.ui.state.Workbench;

/** Takes a figure of the session in hand away: onto the talk, or into a file. */
public final class PictureMenu {
  private static final String GROUP = "Picture";
  private static final double WIDTH = 1200;

  private final Workbench bench;
  private final PreferenceStore preferences;
  private final Supplier<Optional<Picture>> picture;

  /**
   * Makes the commands of a place that shows figures.
   *
   * @param picture what is shown there now, its session called {@link TalkTray#OPEN}; empty where
   *     nothing is
   */
  public PictureMenu(
      Workbench bench, PreferenceStore preferences, Supplier<Optional<Picture>> picture) {
    this.bench = bench;
    this.preferences = preferences;
    this.picture = picture;
  }

  /** Returns the commands for the keyboard. */
  public List<Command> commands() {
    return List.of(
        Command.of(GROUP, "Put this on the talk", this::putOnTalk, "Shortcut+Shift+T"),
        Command.of(GROUP, "Save this picture", () -> save(null), "Shortcut+Shift+P"));
  }

  /** Offers the commands in a context menu of a node. */
  public void on(Node node) {
    MenuItem put = new MenuItem("Put this on the talk");
    put.setOnAction(e -> putOnTalk());
    MenuItem save = new MenuItem("Save this picture…");
    save.setOnAction(e -> save(node));
    ContextMenu menu = new ContextMenu(put, save);
    node.addEventHandler(
        ContextMenuEvent.CONTEXT_MENU_REQUESTED,
        e -> {
          if (picture.get().isPresent()) {
            menu.show(node, e.getScreenX(), e.getScreenY());
            e.consume();
          }
        });
  }

  private void putOnTalk() {
    picture
        .get()
        .ifPresentOrElse(
            shown -> bench.putOnTalk(shown.kind().label(), shown),
            () -> bench.tell("There is no picture here to put on the talk"));
  }

  private void save(@org.jspecify.annotations.Nullable Node owner) {
    Review review = bench.state().review().latest();
    Picture shown = picture.get().orElse(null);
    if (review == null || shown == null) {
      bench.tell("There is no picture here to save");
      return;
    }
    FileChooser chooser = new FileChooser();
    chooser.setTitle("Save the picture");
    for (String ending : List.of("png", "svg", "pdf")) {
      chooser
          .getExtensionFilters()
          .add(
              new FileChooser.ExtensionFilter(
                  ending.toUpperCase(Locale.ROOT) + " picture", "*." + ending));
    }
    chooser.setInitialFileName(FileNames.of(shown.kind().label(), "png"));
    File chosen = chooser.showSaveDialog(owner == null ? null : owner.getScene().getWindow());
    if (chosen != null) {
      write(review, shown, chosen.toPath());
    }
  }

  private void write(Review review, Picture shown, Path file) {
    Preferences now = preferences.get();
    FigureStyle style = FigureStyle.of(Looks.theme(now.look()), now.units());
    String name = String.valueOf(file.getFileName());
    bench
        .tasks()
        .submit(
            "picture-save",
            "Writing " + name,
            progress -> {
              write(sheet(review, shown, style), file);
              return name;
            },
            new Answer<>(
                written -> bench.tell(written + " is written"),
                failure ->
                    bench.report(
                        Trouble.of(
                            name + " was not written",
                            failure.getMessage() + ". Nothing was left behind."))));
  }

  private static FigureSheet sheet(Review review, Picture shown, FigureStyle style) {
    TalkMaterial material = new TalkMaterial(Map.of(TalkTray.OPEN, review));
    return FigureSheet.of(
        new PictureMaker(material, true).make(shown, style).figure(), review, true);
  }

  private static void write(FigureSheet sheet, Path file) throws IOException {
    String name = file.toString().toLowerCase(Locale.ROOT);
    double height = Math.round(WIDTH / sheet.aspect());
    if (name.endsWith(".svg")) {
      FigureExport.svg(sheet, file, WIDTH, height);
    } else if (name.endsWith(".pdf")) {
      FigureExport.pdf(sheet, file, WIDTH * 0.75, height * 0.75);
    } else {
      FigureExport.png(
          sheet, file, new FigureExport.Raster((int) (2 * WIDTH), (int) (2 * height), 192));
    }
  }
}
