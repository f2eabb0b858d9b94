package org.fadeline.ui.season;

import java.nio.file.Path;
import java.util.List;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import javafx.scene.Node;
import org.fadeline.ui.control.Navigation;
import org.fadeline.ui.control.Screen;
import org.fadeline.ui.control.WhenShown;
import org.fadeline.ui.control.command.Command;
import org.fadeline.ui.control.file.PathChooser;
import org.fadeline.ui.state.PreferenceStore;
import org.fadeline.ui.state.Workbench;

/** A folder of sessions as one. It is built when first shown, so that the window opens sooner. */
public final class SeasonScreen implements Screen {
  private final WhenShown<SeasonBody> body;

  /** Makes the screen, which asks {@code paths} for folders and files. */
  public SeasonScreen(
      Workbench bench, PreferenceStore preferences, Navigation navigation, PathChooser paths) {
    this.body =
        new WhenShown<>(
            () -> new SeasonBody(bench, preferences, navigation, paths), SeasonBody::view);
  }

  /** Opens a folder of sessions. */
  public void open(Path folder) {
    body.get().open(folder);
  }

  /** Ends the watch of the folder. */
  @Override
  public void close() {
    body.ifMade(SeasonBody::close);
  }

  @Override
  public String title() {
    return "Season";
  }

  @Override
  public Node view() {
    return body.view();
  }

  @Override
  public boolean needsSession() {
    return false;
  }

  @Override
  public String offer() {
    return "Look at a season";
  }

  @Override
  public List<Command> commands() {
    return Stream.concat(
            Stream.of(
                Command.of(
                    "Season", "Choose a folder", () -> body.get().choose(), "Shortcut+Shift+O"),
                Command.of("Season", "Read what changed", () -> body.get().readAgain(), "F5"),
                Command.of(
                    "Season",
                    "Put this on the talk",
                    () -> body.get().putOnTalk(),
                    "Shortcut+Shift+T"),
                Command.of(
                    "Season",
                    "Save this picture",
                    () -> body.get().savePicture(),
                    "Shortcut+Shift+P")),
            IntStream.range(0, SeasonPages.NAMES.size())
                .mapToObj(
                    i ->
                        Command.of(
                            "Season",
                            SeasonPages.NAMES.get(i),
                            () -> body.get().page(SeasonPages.NAMES.get(i)),
                            "Alt+" + (i + 1))))
        .toList();
  }

  @Override
  public void shown(boolean shown) {
    if (shown) {
      body.get();
    }
  }

  @Override
  public void takeFocus() {
    body.get().takeFocus();
  }
}
