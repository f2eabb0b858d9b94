package org.fadeline.ui.control.picture;

import java.awt.Font;
import java.awt.RenderingHints;
import javafx.scene.canvas.GraphicsContext;
import org.jfree.fx.FXGraphics2D;

/** Draws figures on a canvas with the very fonts that are bundled, whatever is installed. */
final class CanvasGraphics extends FXGraphics2D {
  private final GraphicsContext context;

  CanvasGraphics(GraphicsContext context) {
    super(context);
    this.context = context;
    setRenderingHint(RenderingHints.KEY_ANTIALIASING, RenderingHints.VALUE_ANTIALIAS_ON);
  }

  @Override
  public void setFont(Font font) {
    super.setFont(font);
    if (font != null) {
      context.setFont(Fonts.of(font));
    }
  }
}
