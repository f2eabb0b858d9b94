package org.fadeline.ui.compare;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import javafx.scene.Node;
import org.fadeline.analysis.compare.Alignment;
import org.fadeline.ui.control.Screen;
import org.fadeline.ui.control.WhenShown;
import org.fadeline.ui.control.command.Command;
import org.fadeline.ui.control.file.PathChooser;
import org.fadeline.ui.state.PreferenceStore;
import org.fadeline.ui.state.Transport;
import org.fadeline.ui.state.Workbench;

/** Two matches side by side. It is built when first shown, so that the window opens sooner. */
public final class CompareScreen implements Screen {
  private static final String GROUP = "Compare";
  private static final long MINUTE = 60_000;

  private final Workbench bench;
  private final WhenShown<CompareBody> body;

  /** Makes the screen, which asks {@code paths} for files and folders. */
  public CompareScreen(Workbench bench, PreferenceStore preferences, PathChooser paths) {
    this.bench = bench;
    this.body =
        new WhenShown<>(() -> new CompareBody(bench, preferences, paths), CompareBody::view);
  }

  /** Reads a session as the second one; what is shown stays until that has worked. */
  public void openSecond(Path path) {
    body.get().openSecond(path);
  }

  @Override
  public String title() {
    return "Compare";
  }

  @Override
  public Node view() {
    return body.view();
  }

  @Override
  public List<Command> commands() {
    Transport t = bench.transport();
    List<Command> all = new ArrayList<>();
    all.add(Command.of(GROUP, "Choose the second match", () -> body.get().choose(), "S"));
    for (int i = 0; i < ComparePages.NAMES.size(); i++) {
      String name = ComparePages.NAMES.get(i);
      all.add(Command.of(GROUP, name, () -> body.get().open(name), "Alt+" + (i + 1)));
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
        Command.of(
            GROUP, "Put this on the talk", () -> body.get().putOnTalk(), "Shortcut+Shift+T"));
    all.add(
        Command.of(GROUP, "Save this picture", () -> body.get().savePicture(), "Shortcut+Shift+P"));
    all.add(Command.of(GROUP, "Type the shift", () -> body.get().focusShift(), "T"));
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
    return body.get().compare();
  }

  @Override
  public void shown(boolean shown) {
    if (shown) {
      body.get();
    }
    body.ifMade(made -> made.shown(shown));
  }

  @Override
  public void takeFocus() {
    body.get().takeFocus();
  }
}
