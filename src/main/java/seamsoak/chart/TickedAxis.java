package seamsoak.chart;

import java.awt.Graphics2D;
import java.awt.geom.Rectangle2D;
import java.util.ArrayList;
import java.util.List;
import org.jfree.chart.axis.AxisState;
import org.jfree.chart.axis.LogAxis;
import org.jfree.chart.axis.NumberAxis;
import org.jfree.chart.axis.NumberTick;
import org.jfree.chart.axis.ValueAxis;
import org.jfree.chart.ui.RectangleEdge;
import org.jfree.chart.ui.TextAnchor;

/**
 * Axes whose marks are given, since two scales share each axis and every one has its own round
 * numbers. Their numbers are lettered by {@link Frame}, so that no text is measured by the machine.
 */
final class TickedAxis {
  private TickedAxis() {}

  static ValueAxis linear(double low, double high, List<Tick> ticks) {
    return styled(new Linear(ticks), low, high);
  }

  static ValueAxis log(double low, double high, List<Tick> ticks) {
    return styled(new Log(ticks), low, high);
  }

  private static ValueAxis styled(ValueAxis axis, double low, double high) {
    axis.setRange(low, high);
    axis.setTickLabelsVisible(false);
    axis.setAxisLinePaint(Ink.SOFT);
    axis.setTickMarkPaint(Ink.SOFT);
    axis.setAxisLineStroke(Ink.solid(1.2));
    axis.setTickMarkStroke(Ink.solid(1.2));
    axis.setTickMarkOutsideLength(5);
    return axis;
  }

  private static List<NumberTick> marks(List<Tick> ticks) {
    List<NumberTick> marks = new ArrayList<>();
    for (Tick tick : ticks) {
      marks.add(new NumberTick(tick.at(), "", TextAnchor.CENTER, TextAnchor.CENTER, 0));
    }
    return marks;
  }

  private static final class Linear extends NumberAxis {
    private static final long serialVersionUID = 1;
    private final transient List<Tick> ticks;

    Linear(List<Tick> ticks) {
      this.ticks = ticks;
    }

    @Override
    public List<NumberTick> refreshTicks(
        Graphics2D g, AxisState state, Rectangle2D area, RectangleEdge edge) {
      return marks(ticks);
    }
  }

  private static final class Log extends LogAxis {
    private static final long serialVersionUID = 1;
    private final transient List<Tick> ticks;

    Log(List<Tick> ticks) {
      this.ticks = ticks;
    }

    @Override
    public List<NumberTick> refreshTicks(
        Graphics2D g, AxisState state, Rectangle2D area, RectangleEdge edge) {
      return marks(ticks);
    }
  }
}
