package org.fadeline.ui.compare;

import java.util.ArrayList;
import java.util.List;
import javafx.scene.Node;
import javafx.scene.layout.StackPane;
import org.fadeline.analysis.compare.Alignment;
import org.fadeline.ui.control.Command;
import org.fadeline.ui.control.PathChooser;
import org.fadeline.ui.control.Screen;
import org.fadeline.ui.state.PreferenceStore;
import org.fadeline.ui.state.Transport;
import org.fadeline.ui.state.Workbench;
import org.jspecify.annotations.Nullable;

/** Two matches side by side. It is built when first shown, so that the window opens sooner. */
public final class CompareScreen implements Screen {
  private static final String GROUP = "Compare";
  private static final long MINUTE = 60_000;

  private final Workbench bench;
  private final PreferenceStore preferences;
  private final PathChooser paths;
  private final StackPane view = new StackPane();
  private @Nullable CompareBody body;

  /** Makes the screen. */
  public CompareScreen(Workbench bench, PreferenceStore preferences) {
    this(bench, preferences, PathChooser.DIALOGS);
  }

  /** Makes the screen, which asks {@code paths} for files and folders. */
  public CompareScreen(Workbench bench, PreferenceStore preferences, PathChooser paths) {
    this.paths = paths;
    this.bench = bench;
    this.preferences = preferences;
  }

  CompareBody body() {
    CompareBody built = body;
    if (built == null) {
      built = new CompareBody(bench, preferences, paths);
      body = built;
      view.getChildren().setAll(built.view());
    }
    return built;
  }

  /** Reads a session as the second one; what is shown stays until that has worked. */
  public void openSecond(java.nio.file.Path path) {
    body().openSecond(path);
  }

  @Override
  public String title() {
    return "Compare";
  }

  @Override
  public Node view() {
    return view;
  }

  @Override
  public List<Command> commands() {
    Transport t = bench.transport();
    List<Command> all = new ArrayList<>();
    all.add(Command.of(GROUP, "Choose the second match", () -> body().choose(), "S"));
    for (int i = 0; i < ComparePages.NAMES.size(); i++) {
      String name = ComparePages.NAMES.get(i);
      all.add(Command.of(GROUP, name, () -> body().open(name), "Alt+" + (i + 1)));
    }
    for (int i = 0; i < Laying.MODES.size(); i++) {
      Alignment.Mode mode = Laying.MODES.get(i);
      all.add(
          Command.of(
              GROUP,
              "Lay on each other " + Laying.words(mode),
              () -> compare().lay(compare().state().laying().withMode(mode)),
              "Alt+Shift+" + (i + 1)));
    }
    all.add(
        Command.of(GROUP, "Second match a minute later", () -> compare().shift(1), "Alt+Right"));
    all.add(
        Command.of(GROUP, "Second match a minute earlier", () -> compare().shift(-1), "Alt+Left"));
    all.add(
        Command.of(GROUP, "Put this on the talk", () -> body().putOnTalk(), "Shortcut+Shift+T"));
    all.add(Command.of(GROUP, "Save this picture", () -> body().savePicture(), "Shortcut+Shift+P"));
    all.add(Command.of(GROUP, "Type the shift", () -> body().focusShift(), "T"));
    all.add(Command.of(GROUP, "Play or pause both", t::toggle, "Space"));
    all.add(Command.of(GROUP, "Next event of the first match", () -> t.step(true), "Right"));
    all.add(Command.of(GROUP, "Event before, of the first match", () -> t.step(false), "Left"));
    all.add(Command.of(GROUP, "A minute on", () -> t.nudge(MINUTE), "Shift+Right"));
    all.add(Command.of(GROUP, "A minute back", () -> t.nudge(-MINUTE), "Shift+Left"));
    all.add(Command.of(GROUP, "To the start", t::toStart, "Home"));
    all.add(Command.of(GROUP, "To the end", t::toEnd, "End"));
    all.add(
        Command.of(
            GROUP,
            "As known then, or with hindsight",
            () -> bench.hindsight(!bench.state().choices().hindsight()),
            "K"));
    return all;
  }

  private CompareBench compare() {
    return body().compare();
  }

  @Override
  public void shown(boolean shown) {
    if (shown || body != null) {
      body().shown(shown);
    }
  }

  @Override
  public void takeFocus() {
    body().takeFocus();
  }
}
