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
  record Side(double y, Block block, Color color, Ink.Style style) {}

  private SideLabels() {}

  static double height(List<Side> sides) {
    return sides.stream().mapToDouble(side -> side.block().height() + 5).sum();
  }

  /**
   * @param edge where the leaders start
   * @param low top of the room for labels
   */
  static void draw(Canvas canvas, List<Side> sides, double edge, double low, double high) {
    List<Side> sorted = new ArrayList<>(sides);
    sorted.sort(Comparator.comparingDouble(Side::y));
    double[] wanted = sorted.stream().mapToDouble(Side::y).toArray();
    double[] sizes = sorted.stream().mapToDouble(side -> side.block().height() + 5).toArray();
    double[] middles = Spread.middles(wanted, sizes, low, high);
    for (int i = 0; i < middles.length; i++) {
      Side side = sorted.get(i);
      double left = edge + LEAD;
      canvas.line(edge, side.y(), left - 6, middles[i], side.color(), Ink.solid(1));
      if (side.style() != null) {
        double at = middles[i] - side.block().height() / 2 + 9;
        canvas.line(left - 4, at, left + 42, at, side.color(), side.style().stroke());
        if (side.style().marker() != null) {
          canvas.marker(side.style().marker(), left + 19, at, side.color(), true);
        }
        left += 50;
      }
      canvas.block(
          side.block(), left, middles[i] - side.block().height() / 2, Letters.Anchor.START);
    }
  }
}
