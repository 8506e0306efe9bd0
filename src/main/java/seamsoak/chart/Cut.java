package seamsoak.chart;

import java.awt.geom.Line2D;
import java.awt.geom.Rectangle2D;
import java.util.Optional;

/** Cuts lines to a rectangle: each side in turn narrows the stretch that is left (Liang-Barsky). */
final class Cut {
  private double from;
  private double to = 1;

  private Cut() {}

  static Optional<Line2D> within(Line2D line, Rectangle2D box) {
    double dx = line.getX2() - line.getX1();
    double dy = line.getY2() - line.getY1();
    Cut cut = new Cut();
    cut.side(-dx, line.getX1() - box.getMinX());
    cut.side(dx, box.getMaxX() - line.getX1());
    cut.side(-dy, line.getY1() - box.getMinY());
    cut.side(dy, box.getMaxY() - line.getY1());
    return cut.from < cut.to
        ? Optional.of(
            new Line2D.Double(
                line.getX1() + cut.from * dx,
                line.getY1() + cut.from * dy,
                line.getX1() + cut.to * dx,
                line.getY1() + cut.to * dy))
        : Optional.empty();
  }

  private void side(double towards, double room) {
    if (towards == 0) {
      to = room < 0 ? Double.NEGATIVE_INFINITY : to;
    } else if (towards < 0) {
      from = Math.max(from, room / towards);
    } else {
      to = Math.min(to, room / towards);
    }
  }
}
