package org.fadeline.ui.review;

import java.util.List;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import javafx.scene.Node;
import javafx.scene.layout.StackPane;
import org.fadeline.ui.control.Command;
import org.fadeline.ui.control.Navigation;
import org.fadeline.ui.control.Screen;
import org.fadeline.ui.state.PreferenceStore;
import org.fadeline.ui.state.Workbench;
import org.jspecify.annotations.Nullable;

/**
 * What the match says afterwards. It is built when first shown, so that the window opens sooner.
 */
public final class ReviewScreen implements Screen {
  /** The pages beside the list of stays, in order. */
  static final List<String> PAGES =
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
  private final StackPane view = new StackPane();
  private @Nullable ReviewBody body;

  /** Makes the screen. */
  public ReviewScreen(Workbench bench, PreferenceStore preferences, Navigation navigation) {
    this.bench = bench;
    this.preferences = preferences;
    this.navigation = navigation;
  }

  private ReviewBody body() {
    ReviewBody built = body;
    if (built == null) {
      built = new ReviewBody(bench, preferences, navigation);
      body = built;
      view.getChildren().setAll(built.view());
    }
    return built;
  }

  @Override
  public String title() {
    return "Review";
  }

  @Override
  public Node view() {
    return view;
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
                            () -> body().open(PAGES.get(i)),
                            "Alt+" + (i + 1))),
            body().pictureCommands().stream())
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
