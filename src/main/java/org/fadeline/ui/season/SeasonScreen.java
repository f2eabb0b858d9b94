package org.fadeline.ui.season;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import org.fadeline.ui.control.Navigation;
import org.fadeline.ui.control.ScreenFacts;
import org.fadeline.ui.control.ScreenWithBody;
import org.fadeline.ui.control.command.Command;
import org.fadeline.ui.control.file.PathChooser;
import org.fadeline.ui.control.picture.PictureMenu;
import org.fadeline.ui.state.PreferenceStore;
import org.fadeline.ui.state.Workbench;

/** A folder of sessions as one. It is built when first shown, so that the window opens sooner. */
public final class SeasonScreen extends ScreenWithBody<SeasonBody> {
  /** What the window must know of it. */
  public static final ScreenFacts FACTS =
      new ScreenFacts("Season", false, false, "Look at a season");

  private static final String GROUP = "Season";

  private final Workbench bench;
  private final PreferenceStore preferences;
  private final Navigation navigation;
  private final PathChooser paths;

  /** Makes the screen, which asks {@code paths} for folders and files. */
  public SeasonScreen(
      Workbench bench, PreferenceStore preferences, Navigation navigation, PathChooser paths) {
    super(FACTS);
    this.bench = bench;
    this.preferences = preferences;
    this.navigation = navigation;
    this.paths = paths;
  }

  @Override
  protected SeasonBody makeBody() {
    return new SeasonBody(bench, preferences, navigation, paths);
  }

  /** Opens a folder of sessions. */
  public void open(Path folder) {
    body().open(folder);
  }

  /** Ends the watch of the folder. */
  @Override
  public void close() {
    bodyIfMade().ifPresent(SeasonBody::close);
  }

  @Override
  public List<Command> commands() {
    List<Command> all = new ArrayList<>();
    all.add(Command.of(GROUP, "Choose a folder", () -> body().choose(), "Shortcut+Shift+O"));
    all.add(Command.of(GROUP, "Read what changed", () -> body().readAgain(), "F5"));
    all.addAll(PictureMenu.commands(GROUP, () -> body().putOnTalk(), () -> body().savePicture()));
    all.addAll(Command.numbered(GROUP, SeasonPages.NAMES, "Alt+", page -> body().page(page)));
    return all;
  }
}
