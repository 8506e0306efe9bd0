package seamsoak.chart;

import java.awt.Graphics2D;
import java.awt.geom.Rectangle2D;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import org.jfree.chart.axis.AxisState;
import org.jfree.chart.axis.LogAxis;
import org.jfree.chart.axis.NumberTick;
import org.jfree.chart.ui.RectangleEdge;
import org.jfree.chart.ui.TextAnchor;

/** Minutes and hours on a logarithmic axis at the left. */
final class DurationAxis extends LogAxis {
  private static final long serialVersionUID = 1;
  private static final double[] MINUTES = {
    0.1, 0.2, 0.5, 1, 2, 5, 10, 20, 30, 60, 120, 240, 480, 1440
  };

  private final boolean shorter;

  /**
   * @param shorter whether the lowest mark stands for all that is shorter: there is no zero
   */
  DurationAxis(boolean shorter) {
    this.shorter = shorter;
  }

  @Override
  public List<NumberTick> refreshTicks(
      Graphics2D graphics, AxisState state, Rectangle2D area, RectangleEdge edge) {
    List<NumberTick> ticks = new ArrayList<>();
    for (double minutes : MINUTES) {
      if (getRange().contains(minutes)) {
        String text = (shorter && ticks.isEmpty() ? "≤ " : "") + words(minutes);
        ticks.add(new NumberTick(minutes, text, TextAnchor.CENTER_RIGHT, TextAnchor.CENTER, 0));
      }
    }
    return ticks;
  }

  /** Minutes as people say them. */
  static String words(double minutes) {
    long whole = Math.round(minutes);
    if (minutes < 10) {
      return String.format(Locale.ROOT, "%.1f", minutes).replaceAll("\\.0$", "") + " min";
    }
    return whole < 60
        ? whole + " min"
        : whole / 60 + " h" + (whole % 60 == 0 ? "" : " " + whole % 60 + " min");
  }
}
