package org.fadeline.ui;

import java.util.List;
import java.util.function.Supplier;
import javafx.scene.Node;
import org.fadeline.ui.control.Screen;
import org.fadeline.ui.control.ScreenFacts;
import org.fadeline.ui.control.command.Command;
import org.jspecify.annotations.Nullable;

/** A screen that is made once it is wanted, so that the window need not wait for all of them. */
final class LateScreen implements Screen {
  private final ScreenFacts facts;
  private final Supplier<Screen> maker;
  private @Nullable Screen made;

  LateScreen(ScreenFacts facts, Supplier<Screen> maker) {
    this.facts = facts;
    this.maker = maker;
  }

  /** Returns the screen itself, made now if it was not before. */
  Screen make() {
    Screen screen = made;
    if (screen == null) {
      screen = maker.get();
      made = screen;
    }
    return screen;
  }

  /** Returns whether it was made. */
  boolean isMade() {
    return made != null;
  }

  @Override
  public ScreenFacts facts() {
    return facts;
  }

  @Override
  public Node view() {
    return make().view();
  }

  @Override
  public List<Command> commands() {
    return make().commands();
  }

  @Override
  public void takeFocus() {
    make().takeFocus();
  }

  @Override
  public void shown(boolean shown) {
    make().shown(shown);
  }

  @Override
  public void close() {
    if (made != null) {
      made.close();
    }
  }
}
