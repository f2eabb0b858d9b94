package org.fadeline.ui.compare;

import java.util.ArrayList;
import java.util.List;
import org.fadeline.analysis.compare.Alignment;
import org.fadeline.ui.control.ScreenFacts;
import org.fadeline.ui.control.ScreenWithBody;
import org.fadeline.ui.control.command.Command;
import org.fadeline.ui.control.file.PathChooser;
import org.fadeline.ui.control.picture.PictureMenu;
import org.fadeline.ui.state.PreferenceStore;
import org.fadeline.ui.state.Transport;
import org.fadeline.ui.state.Workbench;

/** Two matches side by side. It is built when first shown, so that the window opens sooner. */
public final class CompareScreen extends ScreenWithBody<CompareBody> {
  /** What the window must know of it. */
  public static final ScreenFacts FACTS = new ScreenFacts("Compare", true, true, null);

  private static final String GROUP = "Compare";
  private static final long MINUTE = 60_000;

  private final Workbench bench;
  private final PreferenceStore preferences;
  private final PathChooser paths;

  /** Makes the screen, which asks {@code paths} for files and folders. */
  public CompareScreen(Workbench bench, PreferenceStore preferences, PathChooser paths) {
    super(FACTS);
    this.bench = bench;
    this.preferences = preferences;
    this.paths = paths;
  }

  @Override
  protected CompareBody makeBody() {
    return new CompareBody(bench, preferences, paths);
  }

  @Override
  public List<Command> commands() {
    Transport t = bench.transport();
    List<Command> all = new ArrayList<>();
    all.add(Command.of(GROUP, "Choose the second match", () -> body().choose(), "S"));
    all.addAll(Command.numbered(GROUP, ComparePages.NAMES, "Alt+", page -> body().open(page)));
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
    all.addAll(PictureMenu.commands(GROUP, () -> body().putOnTalk(), () -> body().savePicture()));
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
    super.shown(shown);
    bodyIfMade().ifPresent(made -> made.shown(shown));
  }
}
