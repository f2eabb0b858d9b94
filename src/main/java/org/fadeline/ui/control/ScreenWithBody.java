package org.fadeline.ui.control;

import java.util.Optional;
import javafx.scene.Node;
import javafx.scene.layout.StackPane;
import org.jspecify.annotations.Nullable;

/**
 * A screen whose body is made when it is first needed: a screen not looked at costs a start
 * nothing.
 *
 * @param <B> type of the body
 */
public abstract class ScreenWithBody<B extends ScreenWithBody.Body> implements Screen {
  /** What a screen shows. */
  public interface Body {
    /** Returns what is seen; always the same node. */
    Node view();

    /** Takes the keyboard's focus to where the screen's keys work. */
    void takeFocus();
  }

  private final ScreenFacts facts;
  private final StackPane view = new StackPane();
  private @Nullable B made;

  /** Makes a screen without its body. */
  protected ScreenWithBody(ScreenFacts facts) {
    this.facts = facts;
  }

  /** Makes the body; called once. */
  protected abstract B makeBody();

  /** Returns the body, made now if it was not needed before. */
  protected final B body() {
    B known = made;
    if (known == null) {
      known = makeBody();
      made = known;
      view.getChildren().setAll(known.view());
    }
    return known;
  }

  /** Returns the body, or empty where it was never needed. */
  protected final Optional<B> bodyIfMade() {
    return Optional.ofNullable(made);
  }

  @Override
  public final ScreenFacts facts() {
    return facts;
  }

  /** Returns where the body is shown; empty until it is made. */
  @Override
  public final Node view() {
    return view;
  }

  @Override
  public void takeFocus() {
    body().takeFocus();
  }

  @Override
  public void shown(boolean shown) {
    if (shown) {
      body();
    }
  }
}
