package seamsoak.chart;

import java.awt.BasicStroke;
import java.awt.Color;
import java.awt.Graphics2D;
import java.awt.Shape;
import java.awt.geom.AffineTransform;
import java.awt.geom.Line2D;
import java.util.ArrayList;
import java.util.List;

/** Takes lines and shapes at once and keeps the text, which is set last and above all else. */
final class Canvas {
  final Graphics2D graphics;
  final Type type;
  private final List<Letters> letters = new ArrayList<>();

  Canvas(Graphics2D graphics, Type type) {
    this.graphics = graphics;
    this.type = type;
  }

  List<Letters> letters() {
    return letters;
  }

  void fill(Shape shape, Color color) {
    graphics.setPaint(color);
    graphics.fill(shape);
  }

  void outline(Shape shape, Color color, BasicStroke stroke) {
    graphics.setPaint(color);
    graphics.setStroke(stroke);
    graphics.draw(shape);
  }

  void line(double x1, double y1, double x2, double y2, Color color, BasicStroke stroke) {
    outline(new Line2D.Double(x1, y1, x2, y2), color, stroke);
  }

  void marker(Shape marker, double x, double y, Color color, boolean filled) {
    Shape there = AffineTransform.getTranslateInstance(x, y).createTransformedShape(marker);
    fill(there, filled ? color : Ink.PAPER);
    outline(there, filled ? Ink.PAPER : color, Ink.solid(filled ? 1 : 2));
  }

  void text(Letters line) {
    if (!line.text().isBlank()) {
      letters.add(line);
    }
  }

  /** Sets a block of text with its upper left corner at x, y. */
  void block(Block block, double x, double y, Letters.Anchor anchor) {
    double at = y;
    for (Block.Line line : block.lines()) {
      double baseline = at + line.size() * 0.95;
      text(
          new Letters(
              line.text(),
              x + anchor.share * block.width(),
              baseline,
              anchor,
              line.size(),
              line.bold(),
              line.color()));
      at += line.height();
    }
  }
}
