package org.fadeline.ui;

import java.util.List;
import java.util.function.Supplier;
import javafx.scene.Node;
import org.fadeline.ui.control.Screen;
import org.fadeline.ui.control.command.Command;
import org.jspecify.annotations.Nullable;

/** A screen that is made once it is wanted, so that the window need not wait for all of them. */
final class LateScreen implements Screen {
  /**
   * What the window must know of a screen that is not made yet.
   *
   * @param title as {@link Screen#title()}
   * @param needsSession as {@link Screen#needsSession()}
   * @param judges as {@link Screen#judges()}
   * @param offer as {@link Screen#offer()}
   */
  record Facts(String title, boolean needsSession, boolean judges, @Nullable String offer) {
    /** Returns those of a screen that is there. */
    static Facts of(Screen screen) {
      return new Facts(screen.title(), screen.needsSession(), screen.judges(), screen.offer());
    }
  }

  private final Facts facts;
  private final Supplier<Screen> maker;
  private @Nullable Screen made;

  LateScreen(Facts facts, Supplier<Screen> maker) {
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
  public String title() {
    return facts.title();
  }

  @Override
  public boolean needsSession() {
    return facts.needsSession();
  }

  @Override
  public boolean judges() {
    return facts.judges();
  }

  @Override
  public @Nullable String offer() {
    return facts.offer();
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
