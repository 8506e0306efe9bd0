package seamsoak.chart;

import java.awt.geom.Line2D;
import java.awt.geom.Point2D;
import java.awt.geom.Rectangle2D;
import java.util.ArrayList;
import java.util.List;

/** Finds room for a label among the curves and labels already there. */
final class Placer {
  private final Rectangle2D bounds;
  private final List<Line2D> lines = new ArrayList<>();
  private final List<Rectangle2D> boxes = new ArrayList<>();

  /** Within a plot, a little off its edges. */
  Placer(Rectangle2D area) {
    bounds =
        new Rectangle2D.Double(
            area.getX() + 6, area.getY() + 6, area.getWidth() - 12, area.getHeight() - 12);
  }

  void avoid(double x1, double y1, double x2, double y2) {
    lines.add(new Line2D.Double(x1, y1, x2, y2));
  }

  void avoid(Rectangle2D box) {
    boxes.add(box);
  }

  /** A curve, broken at points that are no number. */
  void avoid(List<Point2D> curve) {
    for (int i = 1; i < curve.size(); i++) {
      Line2D line = new Line2D.Double(curve.get(i - 1), curve.get(i));
      if (!Double.isNaN(line.getY1() + line.getY2())) {
        lines.add(line);
      }
    }
  }

  /**
   * Sets a block where, within bounds, least is in its way, the nearest to the point if several
   * places are free; it is kept free from then on.
   */
  Rectangle2D set(Canvas canvas, Block block, double x, double y) {
    double width = block.width();
    double height = block.height();
    Rectangle2D best = null;
    double least = Double.POSITIVE_INFINITY;
    double right = bounds.getMaxX() - width;
    double bottom = bounds.getMaxY() - height;
    for (double left = bounds.getMinX(); left <= Math.max(right, bounds.getMinX()); left += 4) {
      for (double top = bounds.getMinY(); top <= Math.max(bottom, bounds.getMinY()); top += 4) {
        Rectangle2D box = new Rectangle2D.Double(left, top, width, height);
        double far = distance(box, x, y);
        // farther off than the best is with all that lies in its way
        if (far >= least) {
          continue;
        }
        double cost = far + hindrance(box, least);
        if (cost < least) {
          least = cost;
          best = box;
        }
      }
    }
    boxes.add(best);
    canvas.block(block, best.getX(), best.getY());
    return best;
  }

  private static double distance(Rectangle2D box, double x, double y) {
    double dx = Math.max(0, Math.max(box.getMinX() - x, x - box.getMaxX()));
    double dy = Math.max(0, Math.max(box.getMinY() - y, y - box.getMaxY()));
    double off = Math.hypot(x - box.getCenterX(), y - box.getCenterY());
    return Math.hypot(dx, dy) + off / 100;
  }

  private double hindrance(Rectangle2D box, double enough) {
    double cost = 0;
    Rectangle2D wide =
        new Rectangle2D.Double(
            box.getX() - 5, box.getY() - 3, box.getWidth() + 10, box.getHeight() + 6);
    for (Rectangle2D other : boxes) {
      if (other.intersects(wide)) {
        cost += 5000;
      }
    }
    for (Line2D line : lines) {
      if (cost > enough) {
        return cost;
      }
      if (wide.intersectsLine(line)) {
        cost += 1000;
      }
    }
    return cost;
  }
}
