package org.fadeline.ui.control.picture;

import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Supplier;
import javafx.scene.Node;
import javafx.scene.control.MenuItem;
import org.fadeline.analysis.Review;
import org.fadeline.export.PictureMaker;
import org.fadeline.export.TalkMaterial;
import org.fadeline.figure.FigureSheet;
import org.fadeline.figure.FigureStyle;
import org.fadeline.model.talk.Picture;
import org.fadeline.ui.control.NodeMenu;
import org.fadeline.ui.control.command.Command;
import org.fadeline.ui.control.file.PathChooser;
import org.fadeline.ui.state.PreferenceStore;
import org.fadeline.ui.state.TalkTray;
import org.fadeline.ui.state.Workbench;
import org.jspecify.annotations.Nullable;

/** Takes a figure of the session in hand away: onto the talk, or into a file. */
public final class PictureMenu {
  private static final String GROUP = "Picture";

  private final Workbench bench;
  private final PreferenceStore preferences;
  private final PathChooser paths;
  private final Supplier<Optional<Picture>> picture;

  /**
   * Makes the commands of a place that shows figures.
   *
   * @param paths asks which file is meant
   * @param picture what is shown there now, its session called {@link TalkTray#OPEN}; empty where
   *     nothing is
   */
  public PictureMenu(
      Workbench bench,
      PreferenceStore preferences,
      PathChooser paths,
      Supplier<Optional<Picture>> picture) {
    this.bench = bench;
    this.preferences = preferences;
    this.paths = paths;
    this.picture = picture;
  }

  /** Returns the commands for the keyboard. */
  public List<Command> commands() {
    return commands(GROUP, this::putOnTalk, () -> save(null));
  }

  /** Returns the commands of a screen that takes its pictures away itself. */
  public static List<Command> commands(String group, Runnable putOnTalk, Runnable save) {
    return List.of(
        Command.of(group, "Put this on the talk", putOnTalk, "Shortcut+Shift+T"),
        Command.of(group, "Save this picture", save, "Shortcut+Shift+P"));
  }

  /** Offers the commands in a menu on a node. */
  public void on(Node node) {
    NodeMenu.on(node, asked -> items(node));
  }

  /** Returns the commands as entries of a menu on a node; none while there is no picture. */
  public List<MenuItem> items(Node node) {
    return picture.get().isEmpty()
        ? List.of()
        : List.of(
            NodeMenu.item("Put this on the talk", this::putOnTalk),
            NodeMenu.item("Save this picture…", () -> save(node)));
  }

  private void putOnTalk() {
    picture
        .get()
        .ifPresentOrElse(
            shown -> bench.tray().putOpen(shown.kind().label(), shown),
            () -> bench.tell("There is no picture here to put on the talk"));
  }

  private void save(@Nullable Node owner) {
    Review review = bench.state().review().latest();
    Picture shown = picture.get().orElse(null);
    if (review == null || shown == null) {
      bench.tell("There is no picture here to save");
      return;
    }
    Path chosen = PictureSave.ask(paths, owner, shown.kind().label());
    if (chosen != null) {
      FigureStyle style = Looks.saved(preferences.get());
      PictureSave.write(bench, chosen, () -> sheet(review, shown, style));
    }
  }

  private static FigureSheet sheet(Review review, Picture shown, FigureStyle style) {
    TalkMaterial material = new TalkMaterial(Map.of(TalkTray.OPEN, review));
    return FigureSheet.of(new PictureMaker(material, true).make(shown, style).figure(), review);
  }
}
