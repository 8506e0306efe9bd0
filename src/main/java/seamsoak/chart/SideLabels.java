package seamsoak.chart;

import java.awt.Color;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;

/** Labels in the margin right of a plot, each led to its height on the plot's edge. */
final class SideLabels {
  private static final double LEAD = 26;

  /**
   * @param y the height that it belongs to
   * @param style of the line, shown beside the label; null shows none
   */
  record Side(double y, Block block, Color color, Ink.Style style) {
    double height() {
      return block.height() + 5;
    }
  }

  private SideLabels() {}

  static double height(List<Side> sides) {
    return sides.stream().mapToDouble(Side::height).sum();
  }

  /** In the margin beside a plot, a little higher and deeper than the plot itself. */
  static void draw(Canvas canvas, List<Side> sides, Frame frame) {
    List<Side> sorted = new ArrayList<>(sides);
    sorted.sort(Comparator.comparingDouble(Side::y));
    double[] wanted = sorted.stream().mapToDouble(Side::y).toArray();
    double[] sizes = sorted.stream().mapToDouble(Side::height).toArray();
    double[] middles =
        Spread.middles(wanted, sizes, frame.area.getMinY() - 10, frame.area.getMaxY() + 10);
    double edge = frame.edge();
    for (int i = 0; i < middles.length; i++) {
      Side side = sorted.get(i);
      double left = edge + LEAD;
      double top = middles[i] - side.block().height() / 2;
      canvas.line(edge, side.y(), left - 6, middles[i], side.color(), Ink.solid(1));
      if (side.style() != null) {
        canvas.line(left - 4, top + 9, left + 42, top + 9, side.color(), side.style().stroke());
        if (side.style().marker() != null) {
          canvas.marker(side.style().marker(), left + 19, top + 9, side.color(), true);
        }
        left += 50;
      }
      canvas.block(side.block(), left, top);
    }
  }
}
