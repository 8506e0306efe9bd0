package seamsoak.chart;

import java.awt.geom.Rectangle2D;

/** The part of the page that a line of text takes, from cap height to baseline. */
record LetterBox(String text, Rectangle2D box) {

  static LetterBox of(Letters line) {
    double cap = 0.73 * line.print().size();
    double width = line.print().width(line.text());
    return new LetterBox(
        line.text(), new Rectangle2D.Double(line.left(), line.y() - cap, width, cap));
  }

  boolean within(double width, double height) {
    return box.getMinX() >= 0
        && box.getMaxX() <= width
        && box.getMinY() >= 0
        && box.getMaxY() <= height;
  }

  boolean covers(LetterBox other) {
    return box.intersects(other.box);
  }
}
