package org.fadeline.ui.review;

import java.util.List;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import javafx.scene.Node;
import org.fadeline.ui.control.Navigation;
import org.fadeline.ui.control.Screen;
import org.fadeline.ui.control.WhenShown;
import org.fadeline.ui.control.command.Command;
import org.fadeline.ui.control.command.Undoing;
import org.fadeline.ui.control.file.PathChooser;
import org.fadeline.ui.state.PreferenceStore;
import org.fadeline.ui.state.Workbench;

/**
 * What the match says afterwards. It is built when first shown, so that the window opens sooner.
 */
public final class ReviewScreen implements Screen {
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
  private final WhenShown<ReviewBody> body;

  /** Makes the screen. */
  public ReviewScreen(
      Workbench bench, PreferenceStore preferences, Navigation navigation, PathChooser paths) {
    this.bench = bench;
    this.body =
        new WhenShown<>(
            () -> new ReviewBody(bench, preferences, navigation, paths), ReviewBody::view);
  }

  @Override
  public String title() {
    return "Review";
  }

  @Override
  public Node view() {
    return body.view();
  }

  @Override
  public List<Command> commands() {
    return Stream.concat(
            IntStream.range(0, PAGES.size())
                .mapToObj(
                    i ->
                        Command.of(
                            "Review",
                            PAGES.get(i),
                            () -> body.get().open(PAGES.get(i)),
                            "Alt+" + (i + 1))),
            Stream.concat(
                body.get().pictureCommands().stream(), Undoing.of("Review", bench).stream()))
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
