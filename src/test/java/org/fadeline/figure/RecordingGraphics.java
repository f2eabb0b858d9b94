package org.fadeline.figure;

import java.awt.Color;
import java.awt.Font;
import java.awt.FontMetrics;
import java.awt.Graphics;
import java.awt.GraphicsConfiguration;
import java.awt.Image;
import java.awt.Shape;
import java.awt.font.FontRenderContext;
import java.awt.geom.AffineTransform;
import java.awt.geom.Rectangle2D;
import java.awt.image.BufferedImage;
import java.awt.image.ImageObserver;
import java.awt.image.RenderedImage;
import java.awt.image.renderable.RenderableImage;
import java.text.AttributedCharacterIterator;
import java.util.ArrayList;
import java.util.List;
import org.apache.batik.ext.awt.g2d.AbstractGraphics2D;
import org.apache.batik.ext.awt.g2d.GraphicContext;

/** Keeps where each text was drawn and where each shape reached, and draws nothing. */
final class RecordingGraphics extends AbstractGraphics2D {
  /** A text and the box its letters fill, in pixels of the whole picture. */
  record Written(String text, Rectangle2D box, Color colour) {}

  final List<Written> texts = new ArrayList<>();
  final List<Rectangle2D> shapes = new ArrayList<>();

  RecordingGraphics() {
    super(false);
    gc = new GraphicContext(new AffineTransform());
  }

  /** Returns the texts that lie on another one. */
  List<String> overlaps() {
    List<String> found = new ArrayList<>();
    for (int i = 0; i < texts.size(); i++) {
      for (int j = i + 1; j < texts.size(); j++) {
        Rectangle2D common = texts.get(i).box.createIntersection(texts.get(j).box);
        if (common.getWidth() > 1 && common.getHeight() > 1) {
          found.add(texts.get(i).text + " / " + texts.get(j).text + " at " + common);
        }
      }
    }
    return found;
  }

  /** Returns the texts that reach outside the picture. */
  List<String> outside(double width, double height) {
    Rectangle2D page = new Rectangle2D.Double(-0.5, -0.5, width + 1, height + 1);
    return texts.stream()
        .filter(t -> !page.contains(t.box))
        .map(t -> t.text + " at " + t.box)
        .toList();
  }

  @Override
  public void drawString(String text, float x, float y) {
    Font font = gc.getFont();
    Rectangle2D ink =
        font.createGlyphVector(new FontRenderContext(null, true, true), text).getVisualBounds();
    Rectangle2D box =
        new Rectangle2D.Double(ink.getX() + x, ink.getY() + y, ink.getWidth(), ink.getHeight());
    texts.add(
        new Written(
            text, gc.getTransform().createTransformedShape(box).getBounds2D(), gc.getColor()));
  }

  @Override
  public void drawString(AttributedCharacterIterator iterator, float x, float y) {
    throw new UnsupportedOperationException();
  }

  @Override
  public void draw(Shape shape) {
    shapes.add(gc.getTransform().createTransformedShape(shape).getBounds2D());
  }

  @Override
  public void fill(Shape shape) {
    shapes.add(gc.getTransform().createTransformedShape(shape).getBounds2D());
  }

  @Override
  public Graphics create() {
    throw new UnsupportedOperationException();
  }

  @Override
  public void dispose() {}

  @Override
  public void setXORMode(Color colour) {}

  @Override
  public FontMetrics getFontMetrics(Font font) {
    return new BufferedImage(1, 1, BufferedImage.TYPE_INT_RGB)
        .createGraphics()
        .getFontMetrics(font);
  }

  @Override
  public void copyArea(int x, int y, int width, int height, int dx, int dy) {}

  @Override
  public boolean drawImage(Image image, int x, int y, ImageObserver observer) {
    throw new UnsupportedOperationException();
  }

  @Override
  public boolean drawImage(
      Image image, int x, int y, int width, int height, ImageObserver observer) {
    throw new UnsupportedOperationException();
  }

  @Override
  public void drawRenderedImage(RenderedImage image, AffineTransform transform) {}

  @Override
  public void drawRenderableImage(RenderableImage image, AffineTransform transform) {}

  @Override
  public GraphicsConfiguration getDeviceConfiguration() {
    throw new UnsupportedOperationException();
  }
}
