package seamsoak.chart;

import java.awt.BasicStroke;
import java.awt.Color;
import java.awt.Font;
import java.awt.FontMetrics;
import java.awt.Graphics;
import java.awt.Graphics2D;
import java.awt.GraphicsConfiguration;
import java.awt.Image;
import java.awt.RenderingHints;
import java.awt.Shape;
import java.awt.geom.AffineTransform;
import java.awt.geom.Line2D;
import java.awt.geom.Rectangle2D;
import java.awt.image.ImageObserver;
import java.awt.image.RenderedImage;
import java.awt.image.renderable.RenderableImage;
import java.text.AttributedCharacterIterator;
import java.text.CharacterIterator;
import java.util.ArrayList;
import java.util.List;
import org.apache.batik.ext.awt.g2d.AbstractGraphics2D;
import org.apache.batik.ext.awt.g2d.GraphicContext;

/**
 * What drawings and JFreeChart draw on. It passes shapes and images on at once and keeps the text,
 * which is set last and above all else, and pictures, which lie below.
 */
final class Canvas extends AbstractGraphics2D {
  private final Graphics2D page;
  private final List<Letters> letters = new ArrayList<>();
  private final List<Picture> pictures = new ArrayList<>();

  Canvas(Graphics2D page) {
    super(false);
    gc = new GraphicContext();
    this.page = page;
  }

  List<Letters> letters() {
    return letters;
  }

  List<Picture> pictures() {
    return pictures;
  }

  /** Sets a picture below all shapes. */
  void picture(byte[] png, Rectangle2D place) {
    pictures.add(new Picture(png, place));
  }

  void fill(Shape shape, Color color) {
    setPaint(color);
    fill(shape);
  }

  void outline(Shape shape, Color color, BasicStroke stroke) {
    setPaint(color);
    setStroke(stroke);
    draw(shape);
  }

  void line(double x1, double y1, double x2, double y2, Color color, BasicStroke stroke) {
    outline(new Line2D.Double(x1, y1, x2, y2), color, stroke);
  }

  void marker(Shape marker, double x, double y, Color color, boolean filled) {
    Shape there = AffineTransform.getTranslateInstance(x, y).createTransformedShape(marker);
    fill(there, filled ? color : Ink.PAPER);
    outline(there, filled ? Ink.PAPER : color, Ink.solid(filled ? 1 : 2));
  }

  void text(String text, double x, double y, Letters.Anchor anchor, Print print) {
    if (!text.isBlank()) {
      letters.add(new Letters(text, x, y, anchor, print));
    }
  }

  void text(String text, double x, double y, Print print) {
    text(text, x, y, Letters.Anchor.START, print);
  }

  /** Sets a block of text with its upper left corner at x, y. */
  void block(Block block, double x, double y, Letters.Anchor anchor) {
    double at = y;
    for (Block.Line line : block.lines()) {
      double baseline = at + line.print().size() * 0.95;
      text(line.text(), x + anchor.share * block.width(), baseline, anchor, line.print());
      at += line.print().leading();
    }
  }

  void block(Block block, double x, double y) {
    block(block, x, y, Letters.Anchor.START);
  }

  /** From here on only what lies within is drawn; null ends that. */
  void within(Shape shape) {
    page.setClip(shape);
  }

  @Override
  public void draw(Shape shape) {
    page.setPaint(getPaint());
    page.setStroke(getStroke());
    page.draw(shape);
  }

  @Override
  public void fill(Shape shape) {
    page.setPaint(getPaint());
    page.fill(shape);
  }

  /** JFreeChart gives the left end, counted from the width that the font has told it. */
  @Override
  public void drawString(String text, float x, float y) {
    Lettering font = (Lettering) getFont();
    double at = x + font.anchor.share * font.metrics().stringWidth(text);
    text(text, at, y, font.anchor, font.print);
  }

  @Override
  public FontMetrics getFontMetrics(Font font) {
    return ((Lettering) font).metrics();
  }

  /** Axes hold all that is drawn on them, so marks at an edge stay whole. */
  @Override
  public void clip(Shape shape) {}

  @Override
  public void setClip(Shape shape) {}

  /** JFreeChart hands back hints that were never set; a drawing of shapes has no use for any. */
  @Override
  public void setRenderingHint(RenderingHints.Key key, Object value) {}

  @Override
  public Graphics create() {
    return this;
  }

  @Override
  public void dispose() {}

  @Override
  public GraphicsConfiguration getDeviceConfiguration() {
    return null;
  }

  @Override
  public void setXORMode(Color color) {}

  @Override
  public void copyArea(int x, int y, int width, int height, int dx, int dy) {}

  /** All of it is set as its font says; a chart has no use for parts that look otherwise. */
  @Override
  public void drawString(AttributedCharacterIterator text, float x, float y) {
    StringBuilder all = new StringBuilder();
    for (char c = text.first(); c != CharacterIterator.DONE; c = text.next()) {
      all.append(c);
    }
    drawString(all.toString(), x, y);
  }

  @Override
  public boolean drawImage(Image image, int x, int y, ImageObserver observer) {
    return page.drawImage(image, x, y, observer);
  }

  @Override
  public boolean drawImage(Image image, int x, int y, int w, int h, ImageObserver observer) {
    return page.drawImage(image, x, y, w, h, observer);
  }

  @Override
  public void drawRenderedImage(RenderedImage image, AffineTransform place) {
    page.drawRenderedImage(image, place);
  }

  @Override
  public void drawRenderableImage(RenderableImage image, AffineTransform place) {
    page.drawRenderableImage(image, place);
  }
}
