package org.fadeline.ui.review;

import java.util.ArrayList;
import java.util.List;
import org.fadeline.ui.control.Navigation;
import org.fadeline.ui.control.ScreenFacts;
import org.fadeline.ui.control.ScreenWithBody;
import org.fadeline.ui.control.command.Command;
import org.fadeline.ui.control.command.Undoing;
import org.fadeline.ui.control.file.PathChooser;
import org.fadeline.ui.state.PreferenceStore;
import org.fadeline.ui.state.Workbench;

/**
 * What the match says afterwards. It is built when first shown, so that the window opens sooner.
 */
public final class ReviewScreen extends ScreenWithBody<ReviewBody> {
  /** What the window must know of it. */
  public static final ScreenFacts FACTS = new ScreenFacts("Review", true, true, null);

  /** The pages beside the list of stays, in order. */
  public static final List<String> PAGES =
      List.of(
          "Evidence",
          "Lines",
          "First bites",
          "After feeding",
          "Quarter-hours",
          "Fish",
          "One page",
          "The record",
          "Settings");

  private final Workbench bench;
  private final PreferenceStore preferences;
  private final Navigation navigation;
  private final PathChooser paths;

  /** Makes the screen. */
  public ReviewScreen(
      Workbench bench, PreferenceStore preferences, Navigation navigation, PathChooser paths) {
    super(FACTS);
    this.bench = bench;
    this.preferences = preferences;
    this.navigation = navigation;
    this.paths = paths;
  }

  @Override
  protected ReviewBody makeBody() {
    return new ReviewBody(bench, preferences, navigation, paths);
  }

  @Override
  public void shown(boolean shown) {
    super.shown(shown);
    bodyIfMade().ifPresent(body -> body.shown(shown));
  }

  @Override
  public List<Command> commands() {
    List<Command> all =
        new ArrayList<>(Command.numbered("Review", PAGES, "Alt+", page -> body().open(page)));
    all.addAll(body().pictureCommands());
    all.addAll(Undoing.of("Review", bench));
    return all;
  }
}
