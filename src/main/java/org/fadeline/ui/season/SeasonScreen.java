package org.fadeline.ui.season;

import java.nio.file.Path;
import java.util.List;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import javafx.scene.Node;
import javafx.scene.layout.StackPane;
import org.fadeline.ui.control.Command;
import org.fadeline.ui.control.Navigation;
import org.fadeline.ui.control.PathChooser;
import org.fadeline.ui.control.Screen;
import org.fadeline.ui.state.PreferenceStore;
import org.fadeline.ui.state.Workbench;
import org.jspecify.annotations.Nullable;

/** A folder of sessions as one. It is built when first shown, so that the window opens sooner. */
public final class SeasonScreen implements Screen {
  private final Workbench bench;
  private final PreferenceStore preferences;
  private final Navigation navigation;
  private final PathChooser paths;
  private final StackPane view = new StackPane();
  private @Nullable SeasonBody body;

  /** Makes the screen. */
  public SeasonScreen(Workbench bench, PreferenceStore preferences, Navigation navigation) {
    this(bench, preferences, navigation, PathChooser.DIALOGS);
  }

  /** Makes the screen, which asks {@code paths} for folders and files. */
  public SeasonScreen(
      Workbench bench, PreferenceStore preferences, Navigation navigation, PathChooser paths) {
    this.paths = paths;
    this.bench = bench;
    this.preferences = preferences;
    this.navigation = navigation;
  }

  private SeasonBody body() {
    SeasonBody built = body;
    if (built == null) {
      built = new SeasonBody(bench, preferences, navigation, paths);
      body = built;
      view.getChildren().setAll(built.view());
    }
    return built;
  }

  /** Opens a folder of sessions. */
  public void open(Path folder) {
    body().open(folder);
  }

  /** Ends the watch of the folder. */
  @Override
  public void close() {
    if (body != null) {
      body.close();
    }
  }

  @Override
  public String title() {
    return "Season";
  }

  @Override
  public Node view() {
    return view;
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
                Command.of("Season", "Choose a folder", () -> body().choose(), "Shortcut+Shift+O"),
                Command.of("Season", "Read what changed", () -> body().readAgain(), "F5"),
                Command.of(
                    "Season", "Put this on the talk", () -> body().putOnTalk(), "Shortcut+Shift+T"),
                Command.of(
                    "Season", "Save this picture", () -> body().savePicture(), "Shortcut+Shift+P")),
            IntStream.range(0, SeasonBody.PAGES.size())
                .mapToObj(
                    i ->
                        Command.of(
                            "Season",
                            SeasonBody.PAGES.get(i),
                            () -> body().page(SeasonBody.PAGES.get(i)),
                            "Alt+" + (i + 1))))
        .toList();
  }

  @Override
  public void shown(boolean shown) {
    if (shown) {
      body();
    }
  }

  @Override
  public void takeFocus() {
    body().takeFocus();
  }
}
