package org.fadeline.ui.control;

import java.util.function.Consumer;
import java.util.function.Function;
import java.util.function.Supplier;
import javafx.scene.Node;
import javafx.scene.layout.StackPane;
import org.jspecify.annotations.Nullable;

/**
 * What a screen shows, made when it is first needed: a screen not looked at costs a start nothing.
 */
public final class WhenShown<B> {
  private final Supplier<B> maker;
  private final Function<B, Node> face;
  private final StackPane view = new StackPane();
  private @Nullable B made;

  /**
   * @param maker makes it, once
   * @param face the node of what was made
   */
  public WhenShown(Supplier<B> maker, Function<B, Node> face) {
    this.maker = maker;
    this.face = face;
  }

  /** Returns it, made now if it was not needed before. */
  public B get() {
    B known = made;
    if (known == null) {
      known = maker.get();
      made = known;
      view.getChildren().setAll(face.apply(known));
    }
    return known;
  }

  /** Does something with it, unless it was never needed. */
  public void ifMade(Consumer<B> action) {
    if (made != null) {
      action.accept(made);
    }
  }

  /** Returns where it is shown; always the same node, empty until it is made. */
  public Node view() {
    return view;
  }
}
